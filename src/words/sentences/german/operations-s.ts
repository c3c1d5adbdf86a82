/** Operations, s, by their folders. */
export const operationsS: Readonly<Record<string, string>> = {
  'a bar is {0} too short for this step': 'ein Stab ist für diesen Schritt {0} zu kurz',
  'it was turned: a longer stack makes it wider or higher, not longer':
    'er wurde gewendet: ein längeres Paket macht ihn breiter oder höher, nicht länger',
  'make the stack larger in the direction that is its length now':
    'das Paket in der Richtung größer machen, die jetzt seine Länge ist',
  'draw it out first': 'erst ausschmieden',
  'the fire takes {0} more off each face than was left on it':
    'das Feuer nimmt {0} mehr von jeder Fläche, als auf ihr stehen blieb',
  'the piece comes out of the fire smaller than it is drawn':
    'das Stück kommt kleiner aus dem Feuer, als es gezeichnet ist',
  'leave more on each face when grinding to shape':
    'beim Schleifen in Form auf jeder Fläche mehr lassen',
  'coat the blade or run the fire richer, and enter less scale':
    'die Klinge überziehen oder das Feuer fetter fahren und weniger Zunder eintragen',
  'there is no piece {0}': 'es gibt kein Stück {0}',
  'its shape comes from the finished piece the job describes':
    'seine Form kommt vom fertigen Stück, das der Auftrag beschreibt',
  'describe the piece in the job': 'das Stück im Auftrag beschreiben',
  'every slice laid on the same face': 'jede Scheibe auf dieselbe Fläche gelegt',
  'every other slice laid on its other face, so that neighbours mirror each other':
    'jede zweite Scheibe auf die andere Fläche gelegt, sodass Nachbarn einander spiegeln',
  'On which face each slice is laid': 'Auf welche Fläche jede Scheibe gelegt wird',
  'Cut the bar across into slices and lay them on their side, edge to edge.':
    'Den Stab quer in Scheiben schneiden und diese flach, Kante an Kante, legen.',
  'sawing slices': 'das Sägen von Scheiben',
  'A weld runs across the face every {0}: the weak lines of this way of working.':
    'Alle {0} läuft eine Schweißung quer über die Fläche: die schwachen Linien dieser Arbeitsweise.',
  'Mark one face of every slice as it leaves the saw.':
    'Eine Fläche jeder Scheibe zeichnen, wenn sie die Säge verlässt.',
  'a row {0} long and {1} thick buckles when its joints are squeezed':
    'eine {0} lange und {1} dicke Reihe knickt aus, wenn man ihre Fugen zusammendrückt',
  'the joints are closed by pressing the row together end to end':
    'die Fugen werden geschlossen, indem man die Reihe vom Ende her zusammendrückt',
  'weld fewer slices at a time': 'weniger Scheiben auf einmal schweißen',
  'cut thicker slices': 'dickere Scheiben schneiden',
  'weld the row down on a plain sheet': 'die Reihe auf ein schlichtes Blech schweißen',
  'How many there are; left out, as many of the stated thickness as the bar gives':
    'Wie viele es sind; ohne Angabe so viele der angegebenen Dicke, wie der Stab gibt',
  'Length of bar in each: the thickness it has when it lies on its side; left out, the bar is shared out evenly':
    'Stablänge in jeder: die Dicke, die sie flach gelegt hat; ohne Angabe wird der Stab gleichmäßig aufgeteilt',
  'neither how many nor how thick is stated': 'weder wie viele noch wie dick ist angegeben',
  'one of them follows from the other and the length of the bar':
    'eines folgt aus dem anderen und der Länge des Stabs',
  'state "count"': '„Anzahl“ angeben',
  'state "thickness"': '„Dicke“ angeben',
  'a bar {0} long does not give {1}': 'ein {0} langer Stab reicht nicht für {1}',
  'each takes {0} with its cut, and the ends are cropped':
    'jede braucht {0} mit ihrem Schnitt, und die Enden werden abgeschnitten',
  'fewer or thinner slices': 'weniger oder dünnere Scheiben',
  'these slices do not make a bar {0} in {1}':
    'diese Scheiben geben keinen Stab mit {0} in der {1}',
  'their number and thickness are stated, and their other sides are those of the bar':
    'ihre Zahl und Dicke sind angegeben, und die übrigen Seiten sind die des Stabs',
  'leave "count" or "thickness" out': '„Anzahl“ oder „Dicke“ weglassen',
  'cut a larger bar': 'einen größeren Stab zerschneiden',
  'Side of the new square, across the old corners; left out, the square of the same area':
    'Seite des neuen Vierkants, über die alten Ecken; ohne Angabe der Vierkant mit gleicher Fläche',
  'Heats taken; left out, as many as bringing the diagonal down to the new side needs':
    'Zahl der Hitzen; ohne Angabe so viele, wie die Diagonale bis zur neuen Seite braucht',
  'Stand the bar on its corner and forge the corners flat: the layers then run from corner to corner, bent to a C.':
    'Den Stab auf die Ecke stellen und die Ecken flach schmieden: die Lagen laufen dann von Ecke zu Ecke, zu einem C gebogen.',
  'forging on the corner': 'das Schmieden über Eck',
  'a {0} section of {1} × {2} has no square diagonal':
    'ein Querschnitt ({0}) von {1} × {2} hat keine rechtwinkligen Diagonalen',
  'the corners of a square are pressed flat; a section flatter than 3 to 2 lies over on its side':
    'die Ecken eines Vierkants werden flach gedrückt; ein Querschnitt flacher als 3 zu 2 kippt auf die Seite',
  'square up first': 'erst vierkant schmieden',
  'this section makes a square of {0} at most, not {1}':
    'dieser Querschnitt gibt höchstens einen Vierkant von {0}, nicht {1}',
  'forging moves metal along the bar, never back into it':
    'Schmieden schiebt Metall den Stab entlang, nie in ihn zurück',
  'Strike the corners hot and little by little: a corner struck cold folds over and makes a lap.':
    'Die Ecken heiß und nach und nach schlagen: eine kalt geschlagene Ecke legt sich um und gibt eine Falte.',
  'Mark the end of the bar: the old diagonal of {0} now lies square to the face.':
    'Das Stabende zeichnen: die alte Diagonale von {0} steht jetzt senkrecht zur Fläche.',
  'the bar is {0} % off square before it is turned on its corner':
    'der Stab weicht {0} % vom Vierkant ab, bevor er auf die Ecke gestellt wird',
  'its layers will not run from corner to corner but beside it, and the two diagonals differ':
    'seine Lagen laufen dann nicht von Ecke zu Ecke, sondern daneben, und die beiden Diagonalen sind verschieden',
  'Side of the square the section is brought to; left out, the square of the same area':
    'Seite des Vierkants, auf die der Querschnitt gebracht wird; ohne Angabe der Vierkant mit gleicher Fläche',
  'Forge the section to a true square, quarter turn by quarter turn, so that later cuts and turns match.':
    'Den Querschnitt zum genauen Vierkant schmieden, Vierteldrehung um Vierteldrehung, damit spätere Schnitte und Wendungen passen.',
  'squaring up': 'das Vierkantschmieden',
  'squaring up moves metal along the bar, never back into it':
    'Vierkantschmieden schiebt Metall den Stab entlang, nie in ihn zurück',
  'square it to {0} or less': 'auf {0} oder weniger vierkant schmieden',
  'leave the side out: the square of the same area':
    'die Seite weglassen: der Vierkant mit gleicher Fläche',
  'The sheets from the bottom up; the list is repeated as often as `repeat` says':
    'Die Bleche von unten nach oben; die Liste wird so oft wiederholt, wie „Wiederholung“ sagt',
  'Grade of the sheet': 'Sorte des Blechs',
  'Thickness of the sheet': 'Dicke des Blechs',
  'How many of this sheet lie together': 'Wie viele von diesem Blech zusammenliegen',
  'How many times the list is laid': 'Wie oft die Liste gelegt wird',
  'One more sheet on top, of the thickness this steel has in the list, so that both outsides are alike':
    'Noch ein Blech obenauf, in der Dicke, die dieser Stahl in der Liste hat, damit beide Außenseiten gleich sind',
  'Thickness of the two outside sheets, where they are thicker than in the list: they feed the scale and the grinder':
    'Dicke der beiden Außenbleche, wo sie dicker sind als in der Liste: von ihnen zehren Zunder und Schleifscheibe',
  'Width of the sheets': 'Breite der Bleche',
  'Length the sheets are cut to': 'Länge, auf die die Bleche geschnitten werden',
  'Cut sheets off the rack, clean them bright and lay them one on another.':
    'Bleche aus dem Regal schneiden, blank putzen und aufeinanderlegen.',
  'no sheet of {0} is in the list': 'kein Blech aus {0} steht in der Liste',
  'the closing sheet takes its thickness from the list':
    'das Schlussblech nimmt seine Dicke aus der Liste',
  'close with {0}': 'mit {0} schließen',
  'add the closing sheet to the list itself': 'das Schlussblech selbst in die Liste setzen',
  'sheets of one steel weld into one layer: no line will show there':
    'Bleche aus einem Stahl schweißen zu einer Lage: dort wird sich keine Linie zeigen',
  'alternate the steels': 'die Stähle abwechseln',
  'keep it, if thick layers are wanted': 'so lassen, wenn dicke Lagen gewünscht sind',
  'the emblem covers {0} of its box; the piece says {1}':
    'das Emblem bedeckt {0} seines Felds; das Stück sagt {1}',
  'the piece is weighed by the share that is pressed in':
    'das Stück wird nach dem eingedrückten Anteil gewogen',
  'write "stampShare": "{0}" in the piece': '"stampShare": "{0}" in das Stück schreiben',
  'draw the emblem larger or smaller': 'das Emblem größer oder kleiner zeichnen',
  '{0} at {1}': '{0} bei {1}',
  'enough, {0} is wanted': 'genug, gewünscht sind {0}',
  'too little, {0} is wanted': 'zu wenig, gewünscht sind {0}',
  'Its raised face is {0}, its edge {1} long{2}.':
    'Seine erhabene Fläche ist {0}, ihr Rand {1} lang{2}.',
  ' (guessed from its box: give the step the outline as `emblem`)':
    ' (aus seinem Feld geschätzt: dem Schritt den Umriss als „emblem“ geben)',
  'With a 4 lb hand hammer (common practice): {0}; by a press: {1}.':
    'Mit einem Handhammer von 4 lb (allgemein üblich): {0}; mit einer Presse: {1}.',
  'Pressed {0}, {1} stays when {2} has come off the face: {3}.':
    'Eingedrückt {0}; es bleiben {1}, wenn {2} von der Fläche abgegangen sind: {3}.',
  'Strokes under {0} do not last; a crack from the foot of the mark: {1}.':
    'Striche unter {0} halten nicht; Riss am Fuß des Zeichens: {1}.',
  'some risk': 'ein gewisses Risiko',
  '{0} risk': '{0} Risiko',
  'Layers under it sink with it; a tenth of that is left {0} below the face.':
    'Die Lagen darunter sinken mit; ein Zehntel davon ist {0} unter der Fläche noch da.',
  "Heat it is stamped at; left out, the shop's forging heat":
    'Hitze, bei der gestempelt wird; ohne Angabe die Schmiedehitze der Werkstatt',
  'what the stamp pushes up stays, and goes when the face is ground or polished':
    'was der Stempel aufwirft, bleibt und geht beim Schleifen oder Polieren der Fläche weg',
  'what the stamp pushes up is filed off at once':
    'was der Stempel aufwirft, wird gleich abgefeilt',
  'What is done with the metal pushed up round the stamp':
    'Was mit dem um den Stempel aufgeworfenen Metall geschieht',
  'How deep it is pressed; left out, the depth of the relief and what is still to come off the face':
    'Wie tief er eingedrückt wird; ohne Angabe die Tiefe des Reliefs und was von der Fläche noch abgeht',
  'Outline of the raised face: the path data of an SVG drawing (d="…"), made as large as the box of the piece holds it':
    'Umriss der erhabenen Fläche: die Pfaddaten einer SVG-Zeichnung (d="…"), so groß gemacht, wie das Feld des Stücks sie fasst',
  'Raised area of the stamp, where there is no outline':
    'Erhabene Fläche des Stempels, wo es keinen Umriss gibt',
  'Length of all edges of the raised area, where there is no outline':
    'Länge aller Ränder der erhabenen Fläche, wo es keinen Umriss gibt',
  'Width of its thinnest strokes, where there is no outline':
    'Breite der dünnsten Striche, wo es keinen Umriss gibt',
  "Radius the stamp's edges are stoned to; left out, 0.1 mm (common practice)":
    'Radius, auf den die Kanten des Stempels abgezogen sind; ohne Angabe 0.1 mm (allgemein üblich)',
  'Press the mark or the relief in at one heat, on a flat, finished face and before hardening.':
    'Das Zeichen oder Relief in einer Hitze eindrücken, in eine flache, fertige Fläche und vor dem Härten.',
  'to stamp': 'zum Stempeln',
  'the piece has no stamp': 'das Stück hat keinen Stempel',
  'where it goes, how large and how deep comes from the piece':
    'wohin er kommt, wie groß und wie tief, kommt vom Stück',
  'describe the stamp in the piece': 'den Stempel im Stück beschreiben',
  'The stamp covers {0} × {1}, {2} of it to full depth; its middle is {3} from {4}.':
    'Der Stempel bedeckt {0} × {1}, davon {2} auf voller Tiefe; seine Mitte liegt {3} vom {4}.',
  'One blow or one squeeze: a second one rarely falls in the same place. Break every corner of the stamp: a sharp one starts a crack in the quench.':
    'Ein Schlag oder ein Druck: ein zweiter trifft selten dieselbe Stelle. Jede Ecke des Stempels brechen: an einer scharfen beginnt beim Abschrecken ein Riss.',
  '{0} of it will come off with the face': '{0} davon gehen mit der Fläche ab',
  '{0} to stay and {1} that will be ground off':
    '{0}, die bleiben, und {1}, die abgeschliffen werden',
  'Press it {0} deep{1}.': '{0} tief eindrücken{1}.',
  ': {0} to stay': ': {0}, die bleiben',
  'the stamp goes {0} % into the thickness': 'der Stempel geht {0} % in die Dicke',
  'over about a third of the thickness the back bulges and the layers under it crack (common practice)':
    'über etwa einem Drittel der Dicke beult die Rückseite, und die Lagen darunter reißen (allgemein üblich)',
  'a shallower stamp': 'ein flacherer Stempel',
  'stamp it when less is left to grind off': 'stempeln, wenn weniger abzuschleifen bleibt',
  'stamping hot takes the hardness out again': 'heiß zu stempeln nimmt die Härte wieder heraus',
  'the mark goes in before hardening': 'das Zeichen kommt vor dem Härten hinein',
  'put this step before hardening': 'diesen Schritt vor das Härten setzen',
  'at a dull red, before hardening': 'bei dunkler Rotglut, vor dem Härten',
  'in the seconds after the quench, before it is hard':
    'in den Sekunden nach dem Abschrecken, bevor es hart ist',
  'clamped against its bend at tempering heat, or little by little when cold':
    'bei Anlasshitze gegen die Krümmung eingespannt, oder kalt nach und nach',
  'When it is straightened': 'Wann gerichtet wird',
  'Heat it is straightened at, where it is straightened hot':
    'Hitze, bei der gerichtet wird, wo warm gerichtet wird',
  'Take the warp out, hot, from the quench or after tempering.':
    'Den Verzug herausnehmen: warm, gleich nach dem Abschrecken oder nach dem Anlassen.',
  'Look along it both ways, mark the high place, and move it a little past straight.':
    'In beiden Richtungen daran entlangsehen, die hohe Stelle zeichnen und ein wenig über gerade hinaus biegen.',
  'it is hard and not yet tempered': 'es ist hart und noch nicht angelassen',
  'a hard blade breaks when it is bent cold, and the pieces fly':
    'eine harte Klinge bricht, wenn man sie kalt biegt, und die Stücke fliegen',
  'temper it first': 'erst anlassen',
  'straighten it from the quench': 'gleich nach dem Abschrecken richten',
  'it does not come from the quench here': 'hier kommt es nicht aus dem Abschrecken',
  'the seconds in which a quenched blade can be moved come right after hardening':
    'die Sekunden, in denen eine abgeschreckte Klinge sich bewegen lässt, liegen gleich nach dem Härten',
  'put this step right after hardening': 'diesen Schritt gleich hinter das Härten setzen',
  'straighten it hot': 'warm richten',
  'straightening at red heat takes the hardness out again':
    'bei Rotglut zu richten nimmt die Härte wieder heraus',
  'above tempering heat hardened steel goes soft':
    'über der Anlasshitze wird gehärteter Stahl weich',
  'straighten it after tempering, clamped, at tempering heat':
    'nach dem Anlassen richten, eingespannt, bei Anlasshitze',
  'harden and temper it again': 'noch einmal härten und anlassen',
  '1 joint lies like on like': '1 Fuge liegt gleich auf gleich',
  '{0} joints lie like on like': '{0} Fugen liegen gleich auf gleich',
}
