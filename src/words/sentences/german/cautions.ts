/** Dangers, the care against them, and what both rest on. */
export const cautions: Readonly<Record<string, string>> = {
  'Local codes, safety data sheets and licensed practice come first; these lines are the usual care, not a substitute.':
    'Örtliche Vorschriften, Sicherheitsdatenblätter und anerkannte Praxis gehen vor; diese Zeilen sind die übliche Vorsicht, kein Ersatz.',
  'Hot steel burns, and glows less than it burns: black heat is still 400 °C.':
    'Heißer Stahl verbrennt, und er glüht weniger, als er brennt: Schwarzhitze hat noch 400 °C.',
  'Tongs that fit, cotton or leather, nothing synthetic, a clear floor; say "hot" when you carry.':
    'Passende Zangen, Baumwolle oder Leder, nichts Synthetisches, freier Boden; „heiß“ rufen, wenn man trägt.',
  'common practice; fire: NFPA 51B (hot work)': 'allgemein üblich; Feuer: NFPA 51B (Feuerarbeiten)',
  'A fire at welding heat harms eyes by infrared over the years.':
    'Ein Feuer bei Schweißhitze schadet den Augen mit den Jahren durch Infrarot.',
  'Filter spectacles for infrared (EN 171 scale 4) beside impact protection.':
    'Filterbrille gegen Infrarot (EN 171, Skala 4) neben dem Schutz gegen Stöße.',
  '29 CFR 1910.133 asks for a suitable filter; EN 171 infrared scale':
    '29 CFR 1910.133 verlangt einen passenden Filter; EN 171, Infrarotskala',
  'Fuel gas leaks, and every forge makes carbon monoxide.':
    'Brenngas tritt aus, und jede Esse erzeugt Kohlenmonoxid.',
  'Open air or a hood, a CO alarm, a leak test at each fitting, the bottle outside or chained.':
    'Freie Luft oder Abzug, CO-Melder, Dichtprobe an jeder Verbindung, die Flasche draußen oder angekettet.',
  'NFPA 58 and 54 for the gas; CO limit 50 ppm, 29 CFR 1910.1000 Table Z-1':
    'NFPA 58 und 54 für das Gas; CO-Grenze 50 ppm, 29 CFR 1910.1000 Tabelle Z-1',
  'Molten borax splashes and sticks; fluoride fluxes give off hydrogen fluoride.':
    'Geschmolzener Borax spritzt und klebt; fluoridhaltige Flussmittel setzen Fluorwasserstoff frei.',
  'First blows light, from one end, nobody in line with the edge; face cover; no fluorspar without extraction.':
    'Erste Schläge leicht, von einem Ende her, niemand in Richtung der Kante; Gesichtsschutz; kein Flussspat ohne Absaugung.',
  'safety data of the flux; borates: REACH candidate list, reproductive toxicity':
    'Sicherheitsdaten des Flussmittels; Borate: REACH-Kandidatenliste, fortpflanzungsgefährdend',
  'Hammer and press throw scale and broken pieces, pinch, and are loud enough to deafen.':
    'Hammer und Presse schleudern Zunder und Bruchstücke, quetschen und sind laut genug, taub zu machen.',
  'Eye and ear protection, hands out of the line of the dies, work held so that it cannot turn.':
    'Augen- und Gehörschutz, Hände aus der Linie der Gesenke, das Werkstück so gehalten, dass es sich nicht drehen kann.',
  'noise above 100 dBA was measured in a forge shop (NIOSH); 29 CFR 1910.95':
    'über 100 dBA wurden in einer Schmiede gemessen (NIOSH); 29 CFR 1910.95',
  'Grinding dust of nickel and chromium steels harms lungs and skin; sparks set fires.':
    'Schleifstaub von Nickel- und Chromstählen schadet Lunge und Haut; Funken legen Brände.',
  'Wet or extracted grinding, a P100 or FFP3 respirator, no wood or magnesium dust in the same collector.':
    'Nass oder mit Absaugung schleifen, Atemschutz P100 oder FFP3, kein Holz- oder Magnesiumstaub im selben Abscheider.',
  'nickel 1 mg/m³ (OSHA), 0.015 mg/m³ (NIOSH); chromium(VI) 5 µg/m³, 29 CFR 1910.1026':
    'Nickel 1 mg/m³ (OSHA), 0.015 mg/m³ (NIOSH); Chrom(VI) 5 µg/m³, 29 CFR 1910.1026',
  'A saw or a cut-off wheel catches the work and throws it; cut ends are razors.':
    'Säge oder Trennscheibe packen das Werkstück und schleudern es; Schnittkanten sind Rasiermesser.',
  'Clamp the work, guard on, no gloves near the blade, deburr before handling.':
    'Werkstück einspannen, Schutz auflassen, keine Handschuhe am Blatt, vor dem Anfassen entgraten.',
  'common practice; 29 CFR 1910.215 (abrasive wheels)':
    'allgemein üblich; 29 CFR 1910.215 (Schleifscheiben)',
  'Arc welding burns eyes and skin and fumes; plated or oily sheets fume worse.':
    'Lichtbogenschweißen verbrennt Augen und Haut und raucht; beschichtete oder ölige Bleche rauchen schlimmer.',
  'Welding helmet, bare clean steel, fresh air; never weld galvanised sheet into a stack.':
    'Schweißhelm, blanker sauberer Stahl, frische Luft; nie verzinktes Blech in ein Paket schweißen.',
  '29 CFR 1910.133 shade table; AWS/ANSI Z49.1':
    '29 CFR 1910.133, Tafel der Schutzstufen; AWS/ANSI Z49.1',
  'A sealed can or a sealed edge with air, oil or water inside can burst in the fire.':
    'Ein dichter Kanister oder Rand mit Luft, Öl oder Wasser darin kann im Feuer bersten.',
  'Leave a vent, dry everything, stand aside on the first heat.':
    'Eine Entlüftung lassen, alles trocknen, bei der ersten Hitze zur Seite treten.',
  'common practice, no source': 'allgemein üblich, ohne Quelle',
  'Quench oil flares when a hot blade goes in slowly or the oil is warm; water in it erupts.':
    'Härteöl flammt auf, wenn eine heiße Klinge langsam eintaucht oder das Öl warm ist; Wasser darin schießt heraus.',
  'A metal tank with a lid, oil 28 °C or more below its flash point, the whole blade under at once, an extinguisher for oil at hand.':
    'Metallwanne mit Deckel, Öl mindestens 28 °C unter seinem Flammpunkt, die ganze Klinge auf einmal eintauchen, ein Löscher für Öl zur Hand.',
  'oil supplier data; NFPA 86 and 51B': 'Angaben der Öllieferanten; NFPA 86 und 51B',
  'Ferric chloride and other etchants burn eyes, stain and corrode; acid into water is safe, water into acid is not.':
    'Eisenchlorid und andere Ätzmittel verätzen die Augen, färben und fressen; Säure ins Wasser ist sicher, Wasser in die Säure nicht.',
  'Goggles, gloves, fresh air, soda at hand to neutralise; spent acid holds iron, nickel and copper: hazardous waste.':
    'Schutzbrille, Handschuhe, frische Luft, Soda zum Neutralisieren zur Hand; verbrauchte Säure enthält Eisen, Nickel und Kupfer: Sondermüll.',
  'safety data sheet of ferric chloride: H290, H302, H315, H318':
    'Sicherheitsdatenblatt von Eisenchlorid: H290, H302, H315, H318',
  'A hardened blade can break when straightened, and the pieces fly.':
    'Eine gehärtete Klinge kann beim Richten brechen, und die Stücke fliegen.',
  'Straighten while it is still above hardening, or after tempering, behind a guard.':
    'Richten, solange sie noch nicht hart ist, oder nach dem Anlassen, hinter einem Schutz.',
  'A drill that breaks through grabs the work and spins it.':
    'Ein durchbrechender Bohrer packt das Werkstück und schleudert es herum.',
  'Clamp it, slow and with coolant, hair and sleeves tied back.':
    'Einspannen, langsam und mit Kühlmittel, Haare und Ärmel zurückgebunden.',
}
