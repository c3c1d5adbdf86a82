/** Operations, t to w, by their folders. */
export const operationsTW: Readonly<Record<string, string>> = {
  'no flux: a sealed stack, or a fire that burns rich':
    'kein Flussmittel: ein dichtes Paket, oder ein Feuer, das fett brennt',
  'borax, dried or not': 'Borax, getrocknet oder nicht',
  'another flux: read its safety data': 'ein anderes Flussmittel: seine Sicherheitsdaten lesen',
  'Flux put on as soon as the stack is hot enough to melt it':
    'Flussmittel, aufgestreut, sobald das Paket heiß genug ist, es zu schmelzen',
  'What the tacks are made of, for the record': 'Woraus die Heftpunkte sind, zum Merken',
  'Tack the clean stack, or seal it all round, so that it goes into the fire as one.':
    'Das saubere Paket heften oder rundum dicht schweißen, damit es als Ganzes ins Feuer geht.',
  'The metal of the tacks is not counted: trim {0} off each side once welded, or it is folded into the bar.':
    'Das Metall der Heftpunkte zählt nicht mit: nach dem Schweißen {0} von jeder Seite beschneiden, sonst wird es in den Stab gefaltet.',
  'Heat slowly: the bead cracks where the sheets bend as they warm (common practice).':
    'Langsam wärmen: die Naht reißt, wo die Bleche sich beim Warmwerden verbiegen (allgemein üblich).',
  'nothing lies loose here: the bar is welded already':
    'hier liegt nichts lose: der Stab ist schon geschweißt',
  'tacks hold sheets until they are welded': 'Heftpunkte halten Bleche, bis sie geschweißt sind',
  'tack before the weld': 'vor dem Schweißen heften',
  'flux is shut in behind the bead': 'Flussmittel ist hinter der Naht eingeschlossen',
  'flux must run out as the stack closes; sealed in, it stays as an inclusion':
    'Flussmittel muss auslaufen, wenn das Paket sich schließt; eingeschlossen bleibt es als Einschluss',
  'seal clean and dry, without flux': 'sauber und trocken dicht schweißen, ohne Flussmittel',
  'tack the corners only and use flux': 'nur die Ecken heften und Flussmittel nehmen',
  'Grade of the bar': 'Sorte des Stabs',
  'Width of the bar; of a round bar its diameter':
    'Breite des Stabs; bei einem Rundstab sein Durchmesser',
  'Thickness of the bar; left out, as much as its width':
    'Dicke des Stabs; ohne Angabe gleich der Breite',
  'Length cut off the bar': 'Vom Stab geschnittene Länge',
  'Section of the bar': 'Querschnitt des Stabs',
  'Cut a length of plain bar of one steel off the rack and clean it bright.':
    'Eine Länge schlichten Stabs aus einem Stahl vom Regal schneiden und blank putzen.',
  'Length taken of it, measured': 'Davon genommene Länge, gemessen',
  'Width, measured': 'Breite, gemessen',
  'Thickness, measured': 'Dicke, gemessen',
  'Section of the billet': 'Querschnitt des Stücks',
  'Steels in it, in the order they lie, and the share of each':
    'Stähle darin, in der Reihenfolge, in der sie liegen, und der Anteil eines jeden',
  'Share of the volume that is this steel': 'Anteil dieses Stahls am Volumen',
  'Layers counted, or as the label says after merging':
    'Gezählte Lagen, oder wie das Schild nach dem Verschmelzen sagt',
  'Sheets as they were ever laid; left out, as many as there are layers':
    'Bleche, wie sie je gelegt wurden; ohne Angabe so viele wie Lagen',
  'What was done to it that bent its layers: twisted, laddered, feathered; left out, they lie straight':
    'Was damit geschah und die Lagen verbog: tordiert, Leiter, Feder; ohne Angabe liegen sie gerade',
  'Height left of its youngest weld since it was closed, as a share':
    'Höhe, die von der jüngsten Schweißung seit dem Schließen geblieben ist, als Anteil',
  'Mass on the scales: compared with what its sizes say':
    'Masse auf der Waage: verglichen mit dem, was die Maße sagen',
  'Take a billet that is there already, by its measured sizes and its label.':
    'Ein Stück nehmen, das schon da ist, nach seinen gemessenen Maßen und seinem Schild.',
  '{0} cannot hold {1}': 'in {0} gehen keine {1}',
  'each steel is in one layer at least': 'jeder Stahl ist in mindestens einer Lage',
  'count again: at least {0}': 'noch einmal zählen: mindestens {0}',
  'leave out a steel': 'einen Stahl weglassen',
  'the shares add up to {0}': 'die Anteile ergeben zusammen {0}',
  'the steels together are the whole billet': 'die Stähle zusammen sind das ganze Stück',
  'make the shares add up to 100 %': 'die Anteile auf 100 % bringen',
  'it weighs {0}; its sizes say {1}': 'es wiegt {0}; seine Maße sagen {1}',
  'a void, a wrong size or a wrong steel: they differ by more than 3 %':
    'ein Hohlraum, ein falsches Maß oder ein falscher Stahl: sie weichen um mehr als 3 % ab',
  'measure again': 'noch einmal messen',
  'look for an open weld': 'nach einer offenen Schweißung suchen',
  'check the label against a test etch': 'das Schild an einer Probeätzung prüfen',
  'Length of the tapered part when it is done; left out, the whole bar tapers':
    'Länge des verjüngten Teils, wenn er fertig ist; ohne Angabe verjüngt sich der ganze Stab',
  'Thickness at the thin end': 'Dicke am dünnen Ende',
  'Width at the thin end; left out, the width stays':
    'Breite am dünnen Ende; ohne Angabe bleibt die Breite',
  'Heats taken; left out, as many as the reduction at the thin end needs':
    'Zahl der Hitzen; ohne Angabe so viele, wie die Abnahme am dünnen Ende braucht',
  'Draw the bar thinner, narrower or both towards its far end; the layers stay parallel to its faces.':
    'Den Stab zum fernen Ende hin dünner, schmaler oder beides ausschmieden; die Lagen bleiben parallel zu seinen Flächen.',
  'drawing a taper': 'das Verjüngen',
  'the thin end ({0} × {1}) is not inside the bar ({2} × {3})':
    'das dünne Ende ({0} × {1}) liegt nicht innerhalb des Stabs ({2} × {3})',
  'a taper draws metal along the bar, never back into it':
    'Verjüngen zieht Metall den Stab entlang, nie in ihn zurück',
  'a thinner end': 'ein dünneres Ende',
  'the bar holds metal for a taper {0} long, not {1}':
    'der Stab hat Metall für eine {0} lange Verjüngung, nicht {1}',
  'tapered to {0} × {1} it is used up after that':
    'auf {0} × {1} verjüngt ist er danach aufgebraucht',
  'a taper of {0}': 'eine Verjüngung von {0}',
  'Of the bar, {0} goes into {1} of taper; the bar becomes {2} long.':
    'Vom Stab gehen {0} in {1} Verjüngung; der Stab wird {2} lang.',
  'At the thin end every length in the pattern is drawn {0} times.':
    'Am dünnen Ende ist jede Länge im Muster auf das {0}-Fache gereckt.',
  'Tempering heat: higher is tougher and softer': 'Anlasshitze: höher ist zäher und weicher',
  'Time at heat, each time (common practice: one to two hours)':
    'Zeit auf Hitze, jedes Mal (allgemein üblich: ein bis zwei Stunden)',
  'How often (common practice: twice)': 'Wie oft (allgemein üblich: zweimal)',
  'Warm the hardened piece and hold it, twice, so that it is tough and keeps an edge.':
    'Das gehärtete Stück zweimal wärmen und halten, damit es zäh ist und die Schneide hält.',
  'it is {0}, not hardened': 'es ist {0}, nicht gehärtet',
  'tempering only softens what the quench has made hard':
    'Anlassen macht nur weicher, was das Abschrecken hart gemacht hat',
  'harden it first': 'erst härten',
  'Go by a thermometer at the blade, not by the dial: {0} is wanted, and nickel steel colours later than carbon steel.':
    'Nach einem Thermometer an der Klinge gehen, nicht nach der Skala: gewünscht sind {0}, und Nickelstahl läuft später an als Kohlenstoffstahl.',
  "Taken off each of the two sides; left out, the shop's":
    'Von jeder der beiden Seiten genommen; ohne Angabe der Wert der Werkstatt',
  'Taken off top and bottom as well': 'Auch oben und unten genommen',
  'Take the sides back to sound metal, and the tacks with them.':
    'Die Seiten bis auf gesundes Metall zurücknehmen, und die Heftpunkte mit.',
  'Lost with the trimmed sides: {0}.': 'Mit den beschnittenen Seiten gehen ab: {0}.',
  'taking {0} off both {1} leaves nothing of {2}':
    '{0} von beiden ({1}) zu nehmen lässt von {2} nichts übrig',
  'it comes off both': 'es geht von beiden ab',
  'take less than {0} off each': 'weniger als {0} von jeder nehmen',
  'a quarter turn about its length: flat layers stand up, lines will run along the bar':
    'eine Vierteldrehung um seine Länge: flache Lagen stehen hochkant, Linien laufen den Stab entlang',
  'its height becomes its length, its length its height: layers will cross the length':
    'seine Höhe wird zur Länge, seine Länge zur Höhe: die Lagen kreuzen die Länge',
  'its width becomes its length': 'seine Breite wird zur Länge',
  'its height becomes its length and its length its width: layers will cross the length, standing on edge':
    'seine Höhe wird zur Länge und seine Länge zur Breite: die Lagen kreuzen die Länge und stehen hochkant',
  'Which side the bar is laid on': 'Auf welche Seite der Stab gelegt wird',
  'Lay the bar on another side, so that the layers lie the way the pattern needs.':
    'Den Stab auf eine andere Seite legen, damit die Lagen liegen, wie das Muster es braucht.',
  'How tight: length to one full turn, or turns to the inch; give this or `turn`':
    'Wie eng: Länge einer ganzen Umdrehung, oder Umdrehungen je Zoll; dies angeben oder „wenden“',
  'How far each twisted zone is turned in all, such as "3 turns"; give this or `pitch`':
    'Wie weit jeder tordierte Abschnitt insgesamt gedreht wird, etwa „3 turns“; dies angeben oder „Steigung“',
  'right-hand, like a common screw: stripes on the top face fall to the right':
    'rechts, wie eine gewöhnliche Schraube: Streifen auf der Oberseite fallen nach rechts',
  'left-hand: stripes on the top face fall to the left':
    'links: Streifen auf der Oberseite fallen nach links',
  'right-hand in the first zone, left-hand in the next, and so on':
    'im ersten Abschnitt rechts, im nächsten links und so weiter',
  'Which way the bar is turned': 'In welche Richtung der Stab gedreht wird',
  'How far the section already stands turned where the twist begins: matches bars laid side by side':
    'Wie weit der Querschnitt schon gedreht steht, wo die Torsion beginnt: passt nebeneinandergelegte Stäbe aneinander an',
  'Twisted zones along the bar; more than one is an interrupted twist':
    'Tordierte Abschnitte entlang des Stabs; mehr als einer ist eine unterbrochene Torsion',
  'Straight bar left between two zones': 'Gerader Stab zwischen zwei Abschnitten',
  'Straight bar left at each end, in the vice and in the wrench':
    'Gerader Stab an jedem Ende, im Schraubstock und im Windeisen',
  'Length twisted in one heat, at one even colour (common practice: 100 to 150 mm)':
    'In einer Hitze tordierte Länge, bei gleichmäßiger Farbe (allgemein üblich: 100 bis 150 mm)',
  'Twist the bar at one even heat, a zone at a time, over its whole length or in zones.':
    'Den Stab bei gleichmäßiger Hitze tordieren, Abschnitt für Abschnitt, auf ganzer Länge oder stückweise.',
  'how tight to twist is not said': 'wie eng tordiert wird, ist nicht gesagt',
  'pitch and turn are both given': 'Steigung und Drehung sind beide angegeben',
  'one follows from the other and the length of the zone':
    'eines folgt aus dem anderen und der Länge des Abschnitts',
  'give `pitch`, such as "25 mm pitch" or "1 per inch"':
    '„Steigung“ angeben, etwa "25 mm pitch" oder "1 per inch"',
  'give `turn`, such as "3 turns"': '„wenden“ angeben, etwa "3 turns"',
  'nothing of a bar {0} long is left to twist':
    'von einem {0} langen Stab bleibt nichts zum Tordieren',
  '{0} at each end{1} stay straight': '{0} an jedem Ende{1} bleiben gerade',
  ' and {0} of {1}': ' und {0} von {1}',
  'leave less straight': 'weniger gerade lassen',
  '{0} in {1}: one turn every {2}.': '{0} auf {1}: eine Umdrehung alle {2}.',
  '{0} of bar': '{0} Stab',
  'each of {0} zones of {1}': 'jedem von {0} Abschnitten mit {1}',
  'Ground to its middle it shows a star every {0}; stars stand upright (within 10°) only where no more than {1} is left over the middle.':
    'Bis zur Mitte geschliffen zeigt er alle {0} einen Stern; aufrecht stehen die Sterne (innerhalb 10°) nur, wo höchstens {1} über der Mitte bleiben.',
  'The skin is sheared by {0}; a bar that still has corners shows four ridges to the turn, {1} apart.':
    'Die Haut wird um {0} geschert; ein Stab, der noch Ecken hat, zeigt vier Grate je Umdrehung, {1} auseinander.',
  'A twisted bar changes its length by 1 to 2 %; the account leaves it as it was: measure it.':
    'Ein tordierter Stab ändert seine Länge um 1 bis 2 %; die Rechnung lässt sie, wie sie war: messen.',
  'Keep the colour even: only the hottest, thinnest place turns. Note the hand on each bar.':
    'Die Farbe gleichmäßig halten: nur die heißeste, dünnste Stelle dreht sich. Den Drehsinn auf jedem Stab vermerken.',
  '{0} on a bar with corners': '{0} an einem Stab mit Ecken',
  'the corners stretch most and tear first; a square bar takes 1½ to 2 turns (common practice)':
    'die Ecken strecken sich am meisten und reißen zuerst; ein Vierkantstab verträgt 1½ bis 2 Umdrehungen (allgemein üblich)',
  'forge it to an octagon or round first': 'erst zum Achtkant oder rund schmieden',
  'twist less': 'weniger tordieren',
  'the skin is sheared by {0} at one turn every {1}':
    'die Haut wird um {0} geschert, bei einer Umdrehung alle {1}',
  'shear at the skin is 2π × radius ÷ pitch; at about 2.4 spiral cracks have opened when the bar was flattened (common practice, one account)':
    'Scherung an der Haut ist 2π × Radius ÷ Steigung; bei etwa 2.4 öffneten sich beim Flachschmieden spiralige Risse (allgemein üblich, ein Bericht)',
  'a slacker twist: one turn every {0}': 'eine weitere Torsion: eine Umdrehung alle {0}',
  'a thinner bar': 'ein dünnerer Stab',
  'forge it round first, twist near welding heat, and grind the ridges off before flattening':
    'erst rund schmieden, nahe der Schweißhitze tordieren und vor dem Flachschmieden die Grate abschleifen',
  '{0} twisted to one turn every {1}': '{0}, tordiert mit einer Umdrehung alle {1}',
  'over about 100 layers a tight twist blurs into grey; bold twists have 5 to 50 (common practice)':
    'über etwa 100 Lagen verschwimmt eine enge Torsion zu Grau; kräftige haben 5 bis 50 (allgemein üblich)',
  'a slacker twist': 'eine weitere Torsion',
  'How much shorter the bar becomes': 'Um wie viel der Stab kürzer wird',
  'Length of the end that is heated and upset, before; left out, the whole bar':
    'Länge des Endes, das gewärmt und gestaucht wird, vorher; ohne Angabe der ganze Stab',
  'Heats taken; left out, as many as the gain in section needs':
    'Zahl der Hitzen; ohne Angabe so viele, wie der Zuwachs im Querschnitt braucht',
  'Drive the bar shorter and thicker, whole or at one end, for metal where it is wanted.':
    'Den Stab kürzer und dicker treiben, ganz oder an einem Ende, für Metall, wo man es braucht.',
  'The section grows {0} times each way, to {1} × {2}.':
    'Der Querschnitt wächst in jeder Richtung auf das {0}-Fache, auf {1} × {2}.',
  'the bar is {0} long; {1} of it cannot be upset':
    'der Stab ist {0} lang; {1} davon lassen sich nicht stauchen',
  'the end worked is part of the bar': 'das bearbeitete Ende ist ein Teil des Stabs',
  'a shorter end': 'ein kürzeres Ende',
  'leave it out to upset the whole bar': 'weglassen, um den ganzen Stab zu stauchen',
  '{0} of bar cannot become {1} shorter': '{0} Stab können nicht {1} kürzer werden',
  'something must be left of it': 'etwas muss davon übrig bleiben',
  '{0} or less': '{0} oder weniger',
  'heat a longer end': 'ein längeres Ende wärmen',
  '{0} of hot bar {1} thick will buckle': '{0} heißer, {1} dicker Stab knicken aus',
  'free length over 2½ times the thickness bends before it upsets (common practice)':
    'freie Länge über dem 2½-Fachen der Dicke biegt sich, bevor sie staucht (allgemein üblich)',
  'heat {0} or less at a time': '{0} oder weniger auf einmal wärmen',
  'straighten after each blow, or upset in a block':
    'nach jedem Schlag richten, oder in einem Block stauchen',
  "Lost in each cut; left out, the shop's":
    'Bei jedem Schnitt verloren; ohne Angabe der Wert der Werkstatt',
  "Ground off each face that will be welded; left out, the shop's":
    'Von jeder Fläche abgeschliffen, die geschweißt wird; ohne Angabe der Wert der Werkstatt',
  "Cut off each end first; left out, the shop's":
    'Zuerst von jedem Ende abgeschnitten; ohne Angabe der Wert der Werkstatt',
  'square or flat': 'vierkant oder flach',
  'How far the wedge drags the layers down at the cut (from memory: 10 to 30 mm)':
    'Wie weit der Keil die Lagen am Schnitt mit hinunternimmt (aus dem Gedächtnis: 10 bis 30 mm)',
  'Distance from the cut over which the drag dies away to about a third (from memory: 5 to 12 mm)':
    'Abstand vom Schnitt, auf dem die Mitnahme auf etwa ein Drittel abklingt (aus dem Gedächtnis: 5 bis 12 mm)',
  'Heats it is split in': 'Hitzen, in denen gespalten wird',
  'Width left when the halves are welded together again, as a share of the width before':
    'Breite, die bleibt, wenn die Hälften wieder zusammengeschweißt sind, als Anteil der Breite vorher',
  'Welding heats to close the cut': 'Schweißhitzen, um den Schnitt zu schließen',
  'Time at welding heat once the colour is even':
    'Zeit auf Schweißhitze, sobald die Farbe gleichmäßig ist',
  'Drive a dull wedge through the hot block along its length, clean the halves and weld them together again.':
    'Einen stumpfen Keil der Länge nach durch den heißen Block treiben, die Hälften putzen und wieder zusammenschweißen.',
  'the wedge': 'der Keil',
  'Barbs leave the quill at about {0}° to straight across.':
    'Die Federäste verlassen den Kiel mit etwa {0}° gegen die Querrichtung.',
  'Wedge: a convex edge with a small flat, polished; too blunt it drags until the welds open.':
    'Keil: eine ballige Schneide mit kleiner Abflachung, poliert; zu stumpf nimmt er mit, bis die Schweißungen aufgehen.',
  'the wedge runs along the layers and drags none of them':
    'der Keil läuft entlang der Lagen und nimmt keine mit',
  'a feather wants layers that cross the length of the block':
    'eine Feder braucht Lagen, die die Länge des Blocks kreuzen',
  'turn the block on end first': 'den Block erst auf den Kopf stellen',
  'restack it tall, and turn it "stack along"': 'hoch neu legen und „längs stapeln“ wenden',
  'a round or eight-sided bar rolls away under the wedge':
    'ein runder oder achtkantiger Stab rollt unter dem Keil weg',
  'it must stand flat on the anvil, and its halves must meet flush':
    'er muss flach auf dem Amboss stehen, und seine Hälften müssen bündig aufeinandertreffen',
  'grinding {0} off both split faces leaves nothing of a block {1} wide':
    '{0} von beiden Spaltflächen zu schleifen lässt von einem {1} breiten Block nichts übrig',
  'both halves are ground clean where they meet':
    'beide Hälften werden blank geschliffen, wo sie sich treffen',
  'start from a wider block': 'mit einem breiteren Block anfangen',
  'Height left after the weld, as a share of the height before (common practice: 80 to 90 % in the first heat)':
    'Höhe, die nach der Schweißung bleibt, als Anteil der Höhe vorher (allgemein üblich: 80 bis 90 % in der ersten Hitze)',
  'Welding heats taken': 'Zahl der Schweißhitzen',
  "Welding heat; left out, the shop's": 'Schweißhitze; ohne Angabe die der Werkstatt',
  'Time at heat once the colour is even; left out, 5 min for each 25 mm of the thinnest way through, and 10 min at least while the joints are open (common practice)':
    'Zeit auf Hitze, sobald die Farbe gleichmäßig ist; ohne Angabe 5 min je 25 mm des dünnsten Wegs hindurch, und mindestens 10 min, solange die Fugen offen sind (allgemein üblich)',
  'Bring the stack to welding heat right through and close it, lightly first, from the middle out.':
    'Das Paket ganz durch auf Schweißhitze bringen und schließen, anfangs leicht, von der Mitte nach außen.',
  'A line that stays dark while the bar cools is not welded: mark it and weld again.':
    'Eine Linie, die beim Abkühlen dunkel bleibt, ist nicht geschweißt: zeichnen und noch einmal schweißen.',
  'These steels weld at {0} to {1} °C: soak {2} min once the colour is even, and take off {3} to {4} % in the first heat (common practice).':
    'Diese Stähle schweißen bei {0} bis {1} °C: {2} min durchwärmen, sobald die Farbe gleichmäßig ist, und in der ersten Hitze {3} bis {4} % abnehmen (allgemein üblich).',
  'the stack is only {0}: {1} would tear it apart':
    'das Paket ist nur {0}: {1} risse es auseinander',
  '{0} pulls young welds open': '{0} zieht junge Schweißungen auf',
  'forging on edge': 'das Hochkantschmieden',
  'short arc tacks at the corners and along the ends':
    'kurze Heftpunkte an den Ecken und entlang der Enden',
  'a bead all round, so that no air gets in: welded dry, without flux':
    'eine Naht rundum, damit keine Luft eindringt: trocken geschweißt, ohne Flussmittel',
  'bound with wire or held in a clamp, no arc':
    'mit Draht gebunden oder in einer Klammer gehalten, kein Lichtbogen',
  'How the stack is held together until it is welded':
    'Wie das Paket zusammenhält, bis es geschweißt ist',
  'layers lie flat, square to its height': 'die Lagen liegen flach, quer zur Höhe',
  'layers stand on edge, square to its width': 'die Lagen stehen hochkant, quer zur Breite',
  'layers cross its length': 'die Lagen kreuzen die Länge',
  'How its layers lie': 'Wie die Lagen liegen',
}
