/** Operations, f to g, by their folders. */
export const operationsFG: Readonly<Record<string, string>> = {
  'the {0} of the piece have been made already': 'die {0} des Stücks sind schon gemacht',
  'the piece has no {0}': 'das Stück hat keine {0}',
  'where they are and how large they are comes from the piece':
    'wo sie sind und wie groß, kommt vom Stück',
  'leave this step out': 'diesen Schritt weglassen',
  'describe them in the piece': 'sie im Stück beschreiben',
  'there is not that much metal in {0}': 'so viel Metall ist in {0} nicht',
  'the cuts take more of one steel than the bar holds there':
    'die Schnitte nehmen von einem Stahl mehr, als der Stab dort hat',
  'make them smaller': 'sie kleiner machen',
  'start from a larger bar': 'mit einem größeren Stab anfangen',
  'the steel is {0}': 'der Stahl ist {0}',
  'drills and cutters blunt on hardened steel, and heat from forcing them draws the temper':
    'Bohrer und Fräser werden an gehärtetem Stahl stumpf, und die Wärme vom Erzwingen lässt ihn an',
  'make this step before hardening': 'diesen Schritt vor dem Härten machen',
  'use carbide, with coolant': 'Hartmetall nehmen, mit Kühlmittel',
  'grooves cut now lose {0} of their depth when the faces are ground':
    'jetzt geschnittene Nuten verlieren {0} ihrer Tiefe, wenn die Flächen geschliffen werden',
  'the bar is not ground to the piece yet': 'der Stab ist noch nicht auf das Stück geschliffen',
  'grind to shape first': 'erst in Form schleifen',
  'cut them {0} deeper': 'sie {0} tiefer schneiden',
  'Thickness the bar is forged flat to': 'Dicke, auf die der Stab flach geschmiedet wird',
  'Width it is kept to; left out, it spreads as the dies make it':
    'Breite, auf der er gehalten wird; ohne Angabe breitet er sich, wie die Gesenke es geben',
  'Forge a grooved, dimpled or stamped bar flat again, at welding heat at first, so that what was cut comes up to the face.':
    'Einen genuteten, gemuldeten oder gestempelten Stab wieder flach schmieden, anfangs bei Schweißhitze, sodass das Eingeschnittene zur Fläche heraufkommt.',
  'level, this bar stands {0} thick; it cannot be forged flat to {1}':
    'eingeebnet ist dieser Stab {0} dick; er lässt sich nicht auf {1} flach schmieden',
  'what was cut out is gone: the metal left fills no more than that':
    'was herausgeschnitten ist, ist weg: das übrige Metall füllt nicht mehr als das',
  'forge it flat to {0} or less': 'auf {0} oder weniger flach schmieden',
  'cut less out': 'weniger herausschneiden',
  'the metal does not fill {0} × {1}': 'das Metall füllt keine {0} × {1}',
  'level, it is {0} × {1}': 'eingeebnet ist es {0} × {1}',
  'forge it thinner': 'dünner schmieden',
  'keep it narrower': 'schmaler halten',
  'The bar goes to {0} % of its full thickness; the pitch of what was cut grows {1} times.':
    'Der Stab kommt auf {0} % seiner vollen Dicke; die Teilung des Eingeschnittenen wächst auf das {1}-Fache.',
  'Work from one end at welding heat so that air leaves each groove; look for dark lines as it cools.':
    'Bei Schweißhitze von einem Ende her arbeiten, damit die Luft aus jeder Nut entweicht; beim Abkühlen auf dunkle Linien achten.',
  'the outer layer is thinner than what comes off':
    'die äußere Lage ist dünner als das, was abgeht',
  'lay a thicker outside sheet': 'außen ein dickeres Blech legen',
  'take less off': 'weniger abnehmen',
  'count on the fewer layers': 'mit den weniger gewordenen Lagen rechnen',
  'nothing of the bar would be left': 'vom Stab bliebe nichts übrig',
  'each heat burns {0} off every face': 'jede Hitze verbrennt {0} von jeder Fläche',
  'take fewer heats': 'weniger Hitzen nehmen',
  'eight flats: what a bar is forged to before it is twisted':
    'acht Flächen: darauf wird ein Stab geschmiedet, bevor er tordiert wird',
  'round, over the octagon': 'rund, über den Achtkant',
  'Section the bar is forged to': 'Querschnitt, auf den der Stab geschmiedet wird',
  'Across the flats, or diameter; left out, of the same area as the bar has':
    'Über die Flächen, oder der Durchmesser; ohne Angabe mit gleicher Querschnittsfläche wie der Stab',
  'Forge the corners down to an octagon, or on to a round: a bar to be twisted tightly has no corners.':
    'Die Ecken zum Achtkant oder weiter zum Rund niederschmieden: ein Stab, der eng tordiert wird, hat keine Ecken.',
  'forging the corners down': 'das Niederschmieden der Ecken',
  'a round': 'Rundstab',
  'an octagon': 'Achtkant',
  'this section makes {0} of {1} at most, not {2}':
    'dieser Querschnitt gibt höchstens {1} ({0}), nicht {2}',
  'forging the corners down moves metal along the bar, never back into it':
    'die Ecken niederzuschmieden schiebt Metall den Stab entlang, nie in ihn zurück',
  'ask for {0} or less': '{0} oder weniger verlangen',
  'Each flat is {0} wide; even flats keep the twist even.':
    'Jede Fläche ist {0} breit; gleiche Flächen halten die Torsion gleichmäßig.',
  'outline and distal taper only; the bevels are ground: their layers show as lines':
    'nur Umriss und Verjüngung; die Fasen werden geschliffen: ihre Lagen zeigen sich als Linien',
  'bevels forged too: the layers follow the faces and no lines show on the bevel':
    'auch die Fasen geschmiedet: die Lagen folgen den Flächen, auf der Fase zeigen sich keine Linien',
  'How far the shape is forged': 'Wie weit die Form geschmiedet wird',
  "Left on every face, to be ground off; left out, the shop's":
    'Auf jeder Fläche belassen, zum Abschleifen; ohne Angabe der Wert der Werkstatt',
  'Heats taken; left out, six (common practice for a knife), or more where the reduction needs more':
    'Zahl der Hitzen; ohne Angabe sechs (allgemein üblich bei einem Messer), oder mehr, wo die Abnahme mehr braucht',
  'Forge the bar to the outline and tapers of the piece, point, shoulders and tang, with stock left on every face to grind off.':
    'Den Stab auf Umriss und Verjüngungen des Stücks schmieden, Ort, Schultern und Angel, mit Zugabe auf jeder Fläche zum Abschleifen.',
  'to forge': 'zum Schmieden',
  'forging to shape': 'das Schmieden in Form',
  'It takes {0} of the bar as it lies hot{1}.': 'Es braucht {0} des Stabs, wie er heiß liegt{1}.',
  '; {0} is cut off and kept': '; {0} werden abgeschnitten und aufgehoben',
  'Forged it measures {0} × {1} × {2}: {3} more than the piece on every face.':
    'Geschmiedet misst es {0} × {1} × {2}: auf jeder Fläche {3} mehr als das Stück.',
  'the bar is {0} too short: it runs out before the piece does':
    'der Stab ist {0} zu kurz: er endet, bevor das Stück es tut',
  'the forged shape takes {0} of a bar {1} × {2}':
    'die geschmiedete Form braucht {0} eines Stabs von {1} × {2}',
  'start from a longer bar, or leave its length free':
    'mit einem längeren Stab anfangen oder seine Länge offen lassen',
  'leave less stock': 'weniger Zugabe lassen',
  'forge the bevels too': 'auch die Fasen schmieden',
  'the bar is too thin in section: {0} where the forged shape has {1} on average':
    'der Stab hat zu wenig Querschnitt: {0}, wo die geschmiedete Form im Mittel {1} hat',
  'a shape is drawn out of a bar, never gathered into it':
    'eine Form wird aus einem Stab ausgeschmiedet, nie in ihm gesammelt',
  'keep the bar above {0} × {1}': 'den Stab über {0} × {1} halten',
  'the forged shape is {0} in {1}; {2} is wanted':
    'die geschmiedete Form hat in der {1} {0}; gewünscht sind {2}',
  'the next steps take more off its faces than is left on them':
    'die nächsten Schritte nehmen mehr von den Flächen, als auf ihnen stehen blieb',
  'leave {0} on every face': '{0} auf jeder Fläche lassen',
  'Pieces across and up the new section: 2 for four-way, 3 for nine, 4 for sixteen':
    'Stücke nebeneinander und übereinander im neuen Querschnitt: 2 für vier, 3 für neun, 4 für sechzehn',
  'every piece the mirror image of its neighbours, by turning it end for end or over':
    'jedes Stück das Spiegelbild seiner Nachbarn, durch Umdrehen der Enden oder Wälzen',
  'each piece a quarter turn on from the last, round the middle':
    'jedes Stück eine Vierteldrehung weiter als das letzte, um die Mitte herum',
  'every piece the same way up': 'jedes Stück gleich herum',
  'sawn lengthwise on both diagonals: four triangles with their layers running to the middle; the other four are put by':
    'längs auf beiden Diagonalen gesägt: vier Dreiecke, deren Lagen zur Mitte laufen; die anderen vier kommen weg',
  'sawn lengthwise on both diagonals: four triangles with their layers running round the middle; the other four are put by':
    'längs auf beiden Diagonalen gesägt: vier Dreiecke, deren Lagen um die Mitte laufen; die anderen vier kommen weg',
  'How the pieces are turned before they are laid together':
    'Wie die Stücke gedreht werden, bevor man sie zusammenlegt',
  'Cut the bar into pieces and lay them together two, three or four across and up.':
    'Den Stab in Stücke schneiden und zu zweien, dreien oder vieren neben- und übereinanderlegen.',
  'sawing it up': 'das Zersägen',
  'Mark one end of every piece before it leaves the saw.':
    'Ein Ende jedes Stücks zeichnen, bevor es die Säge verlässt.',
  'Sort the triangles: two of every four have their layers along the outside, two across it.':
    'Die Dreiecke sortieren: bei zweien von vieren liegen die Lagen entlang der Außenseite, bei zweien quer dazu.',
  'The very middle is smeared over two or three layers when it is welded.':
    'Die innerste Mitte verschmiert beim Schweißen über zwei oder drei Lagen.',
  'triangles are cut from a square bar and laid as four':
    'Dreiecke werden aus einem Vierkantstab geschnitten und zu vieren gelegt',
  'this bar is not square-edged': 'dieser Stab ist nicht scharfkantig vierkant',
  'cut on the diagonals there are four, not more':
    'auf den Diagonalen geschnitten sind es vier, nicht mehr',
  'state 2 across': '2 nebeneinander angeben',
  'lay the pieces bookmatched': 'die Stücke gespiegelt legen',
  'pieces {0} × {1} do not fit together when some are turned':
    'Stücke von {0} × {1} passen nicht zusammen, wenn einige gedreht sind',
  'a quarter turn changes width for height': 'eine Vierteldrehung vertauscht Breite und Höhe',
  'lay the pieces bookmatched or plain': 'die Stücke gespiegelt oder schlicht legen',
  'a bar {0} long gives no {1} pieces': 'ein {0} langer Stab gibt keine {1} Stücke',
  'crops of {0} at each end and {1} of {2} take it all':
    '{0} an jedem Ende und {1} von {2} brauchen alles auf',
  'fewer pieces across': 'weniger Stücke nebeneinander',
  'nothing is left of triangles cut from a bar {0} across':
    'von Dreiecken aus einem {0} starken Stab bleibt nichts',
  'the cut takes {0} and each face is ground by {1}':
    'der Schnitt nimmt {0}, und jede Fläche wird um {1} geschliffen',
  'cut a thicker bar': 'einen dickeren Stab zerschneiden',
  'grinding {0} off each face leaves nothing of pieces {1} × {2}':
    '{0} von jeder Fläche zu schleifen lässt von Stücken mit {1} × {2} nichts übrig',
  'a piece between two others is ground clean on both faces':
    'ein Stück zwischen zwei anderen wird auf beiden Flächen blank geschliffen',
  'grind less than {0} a face': 'weniger als {0} je Fläche schleifen',
  'use thicker pieces': 'dickere Stücke nehmen',
  'cut on the diagonals, this bar gives four triangles alike':
    'auf den Diagonalen geschnitten gibt dieser Stab vier gleiche Dreiecke',
  'only flat layers along the bar run to the middle or round it':
    'nur flache Lagen längs des Stabs laufen zur Mitte oder um sie herum',
  'cut a bar of flat layers': 'einen Stab mit flachen Lagen zerschneiden',
  'lay it bookmatched': 'gespiegelt legen',
  "Left on every face for hardening scale and polish; left out, the shop's polish stock":
    'Auf jeder Fläche für Härtezunder und Politur belassen; ohne Angabe die Polierzugabe der Werkstatt',
  "Ground off every face of a straight bar at the least, so that the forging skin goes; left out, the shop's grinding stock":
    'Von jeder Fläche eines geraden Stabs mindestens abgeschliffen, damit die Schmiedehaut weggeht; ohne Angabe die Schleifzugabe der Werkstatt',
  'Grind the piece out of the bar: outline, bevels and tapers, leaving a little on every face for hardening and polish.':
    'Das Stück aus dem Stab schleifen: Umriss, Fasen und Verjüngungen, mit etwas Zugabe auf jeder Fläche für Härten und Politur.',
  'to grind to': 'zum Schleifen',
  '{0} is left on every face; stop there.': '{0} bleiben auf jeder Fläche; dort aufhören.',
  'Grinding takes {0} % of the bar.': 'Das Schleifen nimmt {0} % des Stabs.',
  'turn the bar first: lying another way it holds the piece':
    'den Stab erst wenden: anders gelegt enthält er das Stück',
  'the bar is {0} too small in {1} for the piece':
    'der Stab ist für das Stück in der {1} {0} zu klein',
  'ground out of a slice, not bent': 'aus einer Scheibe geschliffen, nicht gebogen',
  'start from a longer stack, or leave its length free':
    'mit einem längeren Paket anfangen oder dessen Länge offen lassen',
  'leave less stock on the faces': 'weniger Zugabe auf den Flächen lassen',
  '{0} is left on every face; the next steps take {1}':
    '{0} bleiben auf jeder Fläche; die nächsten Schritte nehmen {1}',
  'the piece would come out too small in {0}': 'das Stück käme in der {0} zu klein heraus',
  'the stack is only {0}; it would fall apart on the grinder':
    'das Paket ist nur {0}; beim Schleifen fiele es auseinander',
  'the pieces are not one metal until they are welded':
    'die Stücke sind erst ein Metall, wenn sie geschweißt sind',
  'weld the stack first': 'das Paket erst schweißen',
  'the bar has been ground to shape already': 'der Stab ist schon in Form geschliffen',
  'a piece is ground to shape once; what is left comes off in polishing':
    'in Form geschliffen wird einmal; der Rest geht beim Polieren ab',
  'the bar holds {0}; the piece with its stock needs {1}':
    'der Stab enthält {0}; das Stück mit Zugabe braucht {1}',
  'there is less metal than the piece': 'es ist weniger Metall da als im Stück',
  'both flat faces, top and bottom': 'beide flachen Seiten, oben und unten',
  'the top only': 'nur oben',
  'the bottom only': 'nur unten',
  'the two sides': 'die beiden Seiten',
  'faces and sides, not the ends': 'Flächen und Seiten, nicht die Enden',
  'the two ends': 'die beiden Enden',
  'faces, sides and ends': 'Flächen, Seiten und Enden',
  'Which faces are ground': 'Welche Flächen geschliffen werden',
  "Taken off each of them; left out, the shop's clean-up":
    'Von jeder abgenommen; ohne Angabe, was die Werkstatt beim Putzen nimmt',
  'Thickness to grind to, evenly from the faces named, instead of a thickness to take off':
    'Dicke, auf die gleichmäßig von den genannten Flächen geschliffen wird, statt einer abzunehmenden Dicke',
  'The relief of a grooved, dimpled or pressed bar is ground right away: it is a plain bar again':
    'Das Relief eines genuteten, gemuldeten oder gepressten Stabs wird ganz weggeschliffen: er ist wieder ein schlichter Stab',
  'Grind named faces clean, level or to a thickness.':
    'Die genannten Flächen blank, eben oder auf eine Dicke schleifen.',
  'how much to take off and what to grind to are both given':
    'was abzunehmen und worauf zu schleifen ist, sind beide angegeben',
  'one follows from the other': 'eines folgt aus dem anderen',
  'leave one of them out': 'eines davon weglassen',
  '"to" is a thickness; the {0} are ground': '„wohin“ ist eine Dicke; geschliffen werden: {0}',
  'grinding sides or ends does not alter the thickness':
    'Seiten oder Enden zu schleifen ändert die Dicke nicht',
  'give `off`': '„ab“ angeben',
  'grind the flat faces': 'die flachen Seiten schleifen',
  'the bar is {0} thick; it cannot be ground to {1}':
    'der Stab ist {0} dick; er lässt sich nicht auf {1} schleifen',
  'grinding only takes metal off': 'Schleifen nimmt nur Metall weg',
  'grind to less than {0}': 'auf weniger als {0} schleifen',
  'draw out less before': 'vorher weniger ausschmieden',
  'Ground parallel to flat layers a face shows one layer and no pattern.':
    'Parallel zu flachen Lagen geschliffen zeigt eine Fläche eine einzige Lage und kein Muster.',
  'grinding {0} off each face leaves nothing of a bar {1} × {2} × {3}':
    '{0} von jeder Fläche zu schleifen lässt von einem Stab mit {1} × {2} × {3} nichts übrig',
  'both faces of a pair are ground': 'von einem Paar werden beide Flächen geschliffen',
  'grind one face only': 'nur eine Fläche schleifen',
  'a plain bar {0} thick holds more metal than is there':
    'ein schlichter, {0} dicker Stab enthält mehr Metall, als da ist',
  'the relief reaches deeper: level, the metal stands {0} thick on average, and its lowest places lie below that':
    'das Relief reicht tiefer: eingeebnet stünde das Metall im Mittel {0} dick, und seine tiefsten Stellen liegen darunter',
  'grind deeper': 'tiefer schleifen',
  'leave the relief': 'das Relief lassen',
  'forge it flat instead': 'stattdessen flach schmieden',
  'every groove and fuller of the piece': 'jede Nut und Hohlkehle des Stücks',
  'its grooves': 'seine Nuten',
  'its fullers': 'seine Hohlkehlen',
  'Which of them are cut now': 'Welche davon jetzt geschnitten werden',
  "Cut the piece's grooves and fullers.": 'Die Nuten und Hohlkehlen des Stücks schneiden.',
  'to cut grooves in': 'zum Nuten',
  '{0} in the {1}: {2} mm wide, {3} mm deep, a {4} of {5} mm diameter fits.':
    '{0} {1}: {2} mm breit, {3} mm tief; {4} mit {5} mm Durchmesser passt.',
  'front and back': 'vorn und hinten',
  '{0} long': '{0} lang',
  '{0} wide': '{0} breit',
  '{0} thick': '{0} dick',
  'it is {0}; the piece with its stock is {1} ({2})':
    'er ist {0}; das Stück mit Zugabe ist {1} ({2})',
  'leave the bar {0} in the step before': 'den Stab im Schritt davor {0} lassen',
  'ball-ended cutter in a mill': 'Kugelfräser in der Fräsmaschine',
  'small contact wheel on the grinder': 'kleine Kontaktscheibe am Bandschleifer',
  'fullering scraper and files': 'Ziehschaber und Feilen',
  'What cuts them': 'Womit sie geschnitten werden',
}
