/** What is asked of the shop, its rack, rates and tolerances. */
export const shop: Readonly<Record<string, string>> = {
  'gas forge, run a little rich': 'Gasesse, leicht fett eingestellt',
  'coal or coke fire': 'Kohle- oder Koksfeuer',
  'induction coil': 'Induktionsspule',
  'electric kiln': 'Elektroofen',
  'What heats the steel; it sets scale and soak':
    'Was den Stahl wärmt; danach richten sich Zunder und Durchwärmen',
  'Length of bar the fire brings to one even heat':
    'Länge des Stabs, die das Feuer auf eine gleichmäßige Hitze bringt',
  'Welding heat for the usual stack': 'Schweißhitze für das übliche Paket',
  'Forging heat once the welds are made': 'Schmiedehitze, wenn die Schweißungen gemacht sind',
  'Stop forging and go back to the fire at this heat':
    'Bei dieser Hitze mit dem Schmieden aufhören und zurück ins Feuer',
  'hand hammer': 'Handhammer',
  'power hammer': 'Krafthammer',
  'no hammer': 'kein Hammer',
  'The hammer that draws the bar out': 'Der Hammer, der den Stab ausschmiedet',
  'Mass of the hammer head, or of the falling parts of a power hammer':
    'Masse des Hammerkopfs oder der fallenden Teile eines Krafthammers',
  'Speed of the head when it strikes (hand: from memory, low confidence)':
    'Geschwindigkeit des Kopfs beim Auftreffen (von Hand: aus dem Gedächtnis, unsicher)',
  'Greatest force of the press; left out, there is no press':
    'Größte Kraft der Presse; ohne Angabe gibt es keine Presse',
  'Speed of the press ram on the work': 'Geschwindigkeit des Pressenstößels bei der Arbeit',
  'flat dies': 'flache Gesenke',
  'narrow drawing dies': 'schmale Reckgesenke',
  'crowned dies': 'ballige Gesenke',
  'Dies that draw the bar out; narrow dies lengthen more and spread less':
    'Gesenke, die den Stab ausschmieden; schmale längen mehr und breiten weniger',
  'Length of bar under the dies at one blow: the bite':
    'Länge des Stabs unter den Gesenken bei einem Schlag: der Biss',
  'Tallest billet that goes between the dies': 'Höchster Block, der zwischen die Gesenke passt',
  "This shop's measured share of a reduction that goes into width; left out, it is computed from bite and width":
    'Gemessener Anteil einer Abnahme, der in dieser Werkstatt in die Breite geht; ohne Angabe aus Biss und Breite errechnet',
  'How uneven forging leaves the bar, as a share of its thickness; left out, 2.5 % by hand and 1 % under a press or a power hammer (common practice: 1 to 4 %, and 0.5 to 1.5 %)':
    'Wie ungleich das Schmieden den Stab lässt, als Anteil der Dicke; ohne Angabe 2.5 % von Hand und 1 % unter Presse oder Krafthammer (allgemein üblich: 1 bis 4 % und 0.5 bis 1.5 %)',
  'the three figures below': 'nach den drei Zahlen unten',
  'worked out from fire, heat and time; a figure stated below stays':
    'errechnet aus Feuer, Hitze und Zeit; eine Zahl, die unten steht, gilt',
  'What the steel burnt off in the fire is reckoned by':
    'Wonach der im Feuer verbrannte Stahl gerechnet wird',
  'open to the air': 'offen an der Luft',
  'air to spare': 'Luft im Überschuss',
  'neither gas nor air to spare': 'weder Gas noch Luft im Überschuss',
  'short of air: a flame at the door': 'Luft im Mangel: eine Flamme an der Tür',
  'How the fire burns, for the scale worked out; left out, rich for gas, neutral for coal, air for the others':
    'Wie das Feuer brennt, für den errechneten Zunder; ohne Angabe fett bei Gas, neutral bei Kohle, Luft bei den anderen',
  'Steel burnt off each face in one welding heat (common practice: 0.05 to 0.15 mm, more with flux in an oxidising fire)':
    'Stahl, der bei einer Schweißhitze von jeder Fläche verbrennt (allgemein üblich: 0.05 bis 0.15 mm, mehr mit Flussmittel im oxidierenden Feuer)',
  'Steel burnt off each face in one forging heat':
    'Stahl, der bei einer Schmiedehitze von jeder Fläche verbrennt',
  'Steel burnt off each face in one normalising or hardening heat':
    'Stahl, der bei einer Hitze zum Normalisieren oder Härten von jeder Fläche verbrennt',
  'Cut off each end after welding (common practice: 5 to 15 mm)':
    'Von jedem Ende nach dem Schweißen abgeschnitten (allgemein üblich: 5 bis 15 mm)',
  'Steel turned to dust by one cut (common practice: bandsaw 1.0 to 1.6 mm, abrasive 2 to 3 mm)':
    'Stahl, den ein Schnitt zu Staub macht (allgemein üblich: Bandsäge 1.0 bis 1.6 mm, Trennscheibe 2 bis 3 mm)',
  'Ground off each face to bright metal before it is welded again (common practice: 0.3 to 0.6 mm)':
    'Von jeder Fläche blank abgeschliffen, bevor sie wieder geschweißt wird (allgemein üblich: 0.3 bis 0.6 mm)',
  'Taken off each side where the stack did not weld to its edge (common practice: 2 to 5 mm)':
    'Von jeder Seite genommen, wo das Paket nicht bis zum Rand verschweißt ist (allgemein üblich: 2 bis 5 mm)',
  'Left on each face after forging, to be ground off (common practice: 0.5 to 1.0 mm for a knife, 1.0 to 1.5 mm for a sword)':
    'Nach dem Schmieden auf jeder Fläche belassen, zum Abschleifen (allgemein üblich: 0.5 bis 1.0 mm beim Messer, 1.0 bis 1.5 mm beim Schwert)',
  'Left on each face after rough grinding, to be polished off':
    'Nach dem Vorschleifen auf jeder Fläche belassen, zum Abpolieren',
  'How far the dark steel is etched below the bright (from memory: 5 to 20 µm for a normal etch)':
    'Wie weit der dunkle Stahl unter den hellen geätzt wird (aus dem Gedächtnis: 5 bis 20 µm bei üblicher Ätzung)',
  'Its grade; of a patterned remnant the steel it has most of':
    'Seine Sorte; bei einem gemusterten Reststück der Stahl, aus dem es am meisten besteht',
  Thickness: 'Dicke',
  Width: 'Breite',
  Length: 'Länge',
  'How many alike': 'Wie viele gleiche',
  'Where it lies, or its batch': 'Wo es liegt, oder seine Charge',
  'Cut off each end of a bought bar because it is crooked or sheared (common practice)':
    'Von jedem Ende eines gekauften Stabs abgeschnitten, weil es krumm oder abgeschert ist (allgemein üblich)',
  'The shortest piece worth putting back on the rack (common practice)':
    'Das kürzeste Stück, das ins Regal zurückzulegen lohnt (allgemein üblich)',
  'millimetres and metres': 'Millimeter und Meter',
  'inches and feet': 'Zoll und Fuß',
  'Standard sizes in which steel is bought': 'Normmaße, in denen Stahl gekauft wird',
  'Sign of the money all sums are in; nothing is exchanged':
    'Zeichen des Geldes, in dem alle Summen stehen; es wird nichts umgerechnet',
  'One hour at the anvil or the grinder': 'Eine Stunde am Amboss oder an der Schleifmaschine',
  'Gas, coal or current for one heat': 'Gas, Kohle oder Strom für eine Hitze',
  'One kilogram of steel whose own price is not known':
    'Ein Kilogramm Stahl, dessen eigener Preis nicht bekannt ist',
  'Price of a kilogram, grade by grade': 'Kilopreis, Sorte für Sorte',
  Grade: 'Sorte',
  'Price of a kilogram of it': 'Kilopreis davon',
  'One grinding belt': 'Ein Schleifband',
  'Steel one belt grinds off before it is dull':
    'Stahl, den ein Band abschleift, bis es stumpf ist',
  'Acid, soda and oil for one etch': 'Säure, Soda und Öl für eine Ätzung',
  'Rod, flux and wire for one weld of a stack':
    'Elektrode, Flussmittel und Draht für eine Paketschweißung',
  'Handle, sheath, screws, whatever is bought in for the piece':
    'Griff, Scheide, Schrauben und was sonst für das Stück gekauft wird',
  'Warming once and working until the stop heat, soak not counted (common practice: by hand 45 to 60 min for a draw and weld of some seven heats)':
    'Einmal wärmen und bis zur Schlusshitze arbeiten, ohne Durchwärmen (allgemein üblich: von Hand 45 bis 60 min für Ausschmieden und Schweißen in etwa sieben Hitzen)',
  'Cutting one sheet and cleaning it': 'Ein Blech schneiden und putzen',
  'One saw cut through a bar': 'Ein Sägeschnitt durch einen Stab',
  'Grinding one face clean for a weld': 'Eine Fläche zum Schweißen blank schleifen',
  'Laying and tacking one stack': 'Ein Paket legen und heften',
  'Grinding a kilogram of steel away by hand on the belt':
    'Ein Kilogramm Stahl von Hand am Band wegschleifen',
  'One hole, groove or dimple': 'Ein Loch, eine Nut oder eine Mulde',
  'Setting up and hardening one piece': 'Ein Stück einrichten und härten',
  'Time at the kiln for one temper': 'Zeit am Ofen für einmal Anlassen',
  'Polishing the piece by hand': 'Das Stück von Hand polieren',
  'Etching, wiping, neutralising, oiling': 'Ätzen, wischen, neutralisieren, ölen',
  'Any other step': 'Jeder andere Schritt',
  'Handle, fittings, sheath and packing': 'Griff, Beschläge, Scheide und Verpackung',
  'Chance that one weld of a stack does not take (common practice: 5 to 10 % of pattern work by experienced smiths fails, learners 30 to 40 %)':
    'Wie oft eine Paketschweißung nicht hält (allgemein üblich: 5 bis 10 % der Musterarbeit Erfahrener misslingen, bei Lernenden 30 bis 40 %)',
  'How far hours turn out from what was reckoned, nine times in ten':
    'Wie weit die Stunden vom Gerechneten abweichen, in neun von zehn Fällen',
  'Put on top of what the work costs': 'Aufschlag auf das, was die Arbeit kostet',
  'hot-rolled flats to EN 10058 [BSSA]': 'warmgewalzter Flachstahl nach EN 10058 [BSSA]',
  'hot-rolled flats to ASTM A29 [LUC]': 'warmgewalzter Flachstahl nach ASTM A29 [LUC]',
  'every bar was measured: its size is what it is':
    'jeder Stab ist gemessen: sein Maß ist, was es ist',
  'Mill tolerance of bars 5 mm and thicker as bought; sizes are never beyond it':
    'Walztoleranz gekaufter Stäbe ab 5 mm Dicke; weiter weichen die Maße nie ab',
  'Thickness of sheet and strip under 5 mm (from memory)':
    'Dicke von Blech und Band unter 5 mm (aus dem Gedächtnis)',
  'Length sheets and bars are cut to': 'Länge, auf die Bleche und Stäbe geschnitten werden',
  'Steel burnt off in one heat (common practice: 0.05 to 0.15 mm around 0.10 mm)':
    'In einer Hitze verbrannter Stahl (allgemein üblich: 0.05 bis 0.15 mm um 0.10 mm)',
  'Kelvin by which a heat read by eye is off; scale grows with it as the root of its rate in air [STAN]':
    'Um wie viel Kelvin eine nach Augenmaß gelesene Hitze danebenliegt; der Zunder wächst mit, als Wurzel seiner Rate an Luft [STAN]',
  'Share of a reduction that goes into width': 'Anteil einer Abnahme, der in die Breite geht',
  'Thickness forged to (common practice: 0.3 mm by hand, 0.15 mm with a press and stops)':
    'Dicke, auf die geschmiedet wird (allgemein üblich: 0.3 mm von Hand, 0.15 mm mit Presse und Anschlägen)',
  'Width forged to': 'Breite, auf die geschmiedet wird',
  'Height a weld is closed to': 'Höhe, auf die eine Schweißung gestaucht wird',
  'Width of a saw cut': 'Breite eines Sägeschnitts',
  'Where an end is cropped': 'Wo ein Ende abgeschnitten wird',
  'How deep the sides are trimmed': 'Wie tief die Seiten beschnitten werden',
  'How deep a face is ground clean': 'Wie tief eine Fläche blank geschliffen wird',
  'Pitch of a twist (common practice: 10 %; along a bar twisted by hand 5 to 15 %)':
    'Steigung einer Torsion (allgemein üblich: 10 %; entlang eines von Hand tordierten Stabs 5 bis 15 %)',
  'Pitch of grooves and dimples as cut': 'Teilung von Nuten und Mulden, wie geschnitten',
  'Depth of grooves and dimples': 'Tiefe von Nuten und Mulden',
  'Finished thickness of the piece': 'Fertige Dicke des Stücks',
  'bar or sheet as bought': 'Stab oder Blech, wie gekauft',
  'what was left of another job': 'was von einem anderen Auftrag übrig war',
  'What it is; remnants are used first': 'Was es ist; Reststücke werden zuerst verbraucht',
}
