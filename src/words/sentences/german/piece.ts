/** Pieces: guards, ingots, plaques, rings, round bars, swords; their weight. */
export const piece: Readonly<Record<string, string>> = {
  'Length of the guard, along its slot.': 'Länge des Parierstücks, entlang seines Schlitzes.',
  'Width of the guard, across its slot.': 'Breite des Parierstücks, quer zu seinem Schlitz.',
  'Thickness at the slot, along the blade.': 'Dicke am Schlitz, in Richtung der Klinge.',
  'Radius of the corners seen along the blade; half the width makes round ends.':
    'Radius der Ecken, in Richtung der Klinge gesehen; die halbe Breite gibt runde Enden.',
  'Rounding of the edges round both faces.': 'Rundung der Kanten um beide Flächen.',
  'How much thinner the front face leaves the two ends than the middle.':
    'Wie viel dünner die Vorderseite die beiden Enden lässt als die Mitte.',
  'Length of the slot for the tang; 0 for none.':
    'Länge des Schlitzes für die Angel; 0 für keinen.',
  'Width of the slot.': 'Breite des Schlitzes.',
  'Radius of the slot’s corners; half its width makes round ends.':
    'Radius der Schlitzecken; die halbe Breite gibt runde Enden.',
  'Middle of the slot from the middle of the guard, along it.':
    'Mitte des Schlitzes von der Mitte des Parierstücks, in seiner Länge.',
  'A plate with a slot for the tang, its ends and edges rounded, its front flat or crowned.':
    'Eine Platte mit einem Schlitz für die Angel, Enden und Kanten gerundet, vorn flach oder gewölbt.',
  'two corners would meet': 'zwei Ecken träfen aufeinander',
  'the rounded edges of the two faces would meet':
    'die gerundeten Kanten der beiden Flächen träfen aufeinander',
  'nothing would be left at the ends': 'an den Enden bliebe nichts übrig',
  'the slot runs out of the guard': 'der Schlitz läuft aus dem Parierstück hinaus',
  'a longer guard': 'ein längeres Parierstück',
  'the slot is wider than the guard': 'der Schlitz ist breiter als das Parierstück',
  'a wider guard': 'ein breiteres Parierstück',
  'the slot’s corners would meet': 'die Ecken des Schlitzes träfen aufeinander',
  'a flat block of the finished size, before the slot':
    'ein flacher Block im Fertigmaß, vor dem Schlitz',
  'A single-edged blade with a narrow tang that the handle hides.':
    'Eine einschneidige Klinge mit schmaler Angel, die der Griff verbirgt.',
  'Length of the ingot.': 'Länge des Barrens.',
  'Width of the upper face.': 'Breite der oberen Fläche.',
  'Width of the lower face.': 'Breite der unteren Fläche.',
  'Height between the two faces.': 'Höhe zwischen den beiden Flächen.',
  'A block of trapezoid section, its upper and lower faces of different width.':
    'Ein Block mit trapezförmigem Querschnitt, oben und unten verschieden breit.',
  'a bar as wide as the wider face': 'ein Stab, so breit wie die breitere Fläche',
  '"{0}" is not a kind of piece': '„{0!}“ ist keine Art von Stück',
  'a kind says which sizes are asked for': 'die Art sagt, nach welchen Maßen gefragt wird',
  'a hole of {0} set {1} in breaks through the edge':
    'ein Loch von {0}, {1} vom Rand, bricht durch die Kante',
  'half the hole reaches past the outline': 'das halbe Loch reicht über den Umriss hinaus',
  'holeInset at least {0}, one diameter of metal left':
    'Lochabstand mindestens {0}: ein Durchmesser Metall bleibt stehen',
  'holeDiameter below {0}': 'Lochdurchmesser unter {0}',
  'a hole of {0} set {1} in breaks through the rounded corner':
    'ein Loch von {0}, {1} vom Rand, bricht durch die gerundete Ecke',
  'the corner of radius {0} leaves {1} from the middle of the hole':
    'die Ecke mit Radius {0} lässt {1} von der Lochmitte',
  'holeInset at least {0}': 'Lochabstand mindestens {0}',
  'a smaller cornerRadius': 'ein kleinerer Eckenradius',
  'the holes of two corners would run into each other': 'die Löcher zweier Ecken liefen ineinander',
  'the hole is wider than the plaque': 'das Loch ist breiter als das Schild',
  'it leaves less than half the thickness': 'es bleibt weniger als die halbe Dicke',
  'the two sides of the groove would meet in the middle':
    'die beiden Seiten der Nut träfen sich in der Mitte',
  'the rounded corners of the groove would overlap':
    'die gerundeten Ecken der Nut überschnitten sich',
  '{0} is sharper than the cutter can turn': '{0} ist enger, als der Fräser wenden kann',
  'the groove is {0} wide': 'die Nut ist {0} breit',
  'corner at least {0}': 'Ecke mindestens {0}',
  'nothing is left of the groove': 'von der Nut bleibt nichts',
  'the groove runs out of the side': 'die Nut läuft seitlich hinaus',
  '{0} lets the groove break out at the edge': '{0} lässt die Nut am Rand ausbrechen',
  'half its width is {0}': 'ihre halbe Breite ist {0}',
  '{0} at least {1}': '{0} mindestens {1}',
  'a smaller cutter': 'ein kleinerer Fräser',
  'the stamp reaches past the flat of the face':
    'der Stempel reicht über das Flache der Fläche hinaus',
  'it presses deeper than half the thickness': 'er drückt tiefer als die halbe Dicke',
  'A flat plate with its edges broken, screw holes, grooves in the back and a stamped relief.':
    'Eine flache Platte mit gebrochenen Kanten, Schraublöchern, Nuten in der Rückseite und einem geprägten Relief.',
  'the broken edges of the two faces would meet':
    'die gebrochenen Kanten der beiden Flächen träfen aufeinander',
  'a flat plate of the finished size; holes, grooves and relief come out of it':
    'eine flache Platte im Fertigmaß; Löcher, Nuten und Relief kommen aus ihr heraus',
  'Once round, an even distance in from the edge: the seat of a seal.':
    'Einmal rundum, in gleichem Abstand vom Rand: der Sitz einer Dichtung.',
  'Straight, along the length.': 'Gerade, der Länge nach.',
  'Straight, across the width.': 'Gerade, quer über die Breite.',
  'Where the groove runs.': 'Wo die Nut verläuft.',
  'Diameter of the ball-ended cutter.': 'Durchmesser des Kugelfräsers.',
  'Depth of the groove.': 'Tiefe der Nut.',
  'From the edge of the plaque to the middle of the groove (around), or to the middle of its ball ends (along, across).':
    'Vom Rand des Schilds bis zur Mitte der Nut (rundum) oder bis zur Mitte ihrer Kugelenden (längs, quer).',
  'Along, across: distance of the groove from the middle of the plaque.':
    'Längs, quer: Abstand der Nut von der Mitte des Schilds.',
  'Around: radius of the middle line at the corners; twice the cutter if left out.':
    'Rundum: Radius der Mittellinie in den Ecken; ohne Angabe das Doppelte des Fräsers.',
  'Length of the plaque.': 'Länge des Schilds.',
  'Width of the plaque.': 'Breite des Schilds.',
  'Thickness of the plaque.': 'Dicke des Schilds.',
  'Radius of the four corners, seen from the front.': 'Radius der vier Ecken, von vorn gesehen.',
  'How the edges round both faces are left.': 'Wie die Kanten um beide Flächen bleiben.',
  'Radius or chamfer of the edges.': 'Radius oder Fase der Kanten.',
  'No holes.': 'Keine Löcher.',
  'One screw hole in each corner.': 'Ein Schraubloch in jeder Ecke.',
  'One screw hole at each end.': 'Ein Schraubloch an jedem Ende.',
  'Screw holes, right through.': 'Schraublöcher, ganz durch.',
  'Diameter of the screw holes.': 'Durchmesser der Schraublöcher.',
  'From the edges of the plaque to the middle of a hole.':
    'Von den Rändern des Schilds bis zur Mitte eines Lochs.',
  'Ball-ended grooves cut in the back.': 'Mit dem Kugelfräser in die Rückseite geschnittene Nuten.',
  'Length of the box in which a relief is stamped; none if left out.':
    'Länge des Felds, in das ein Relief geprägt wird; ohne Angabe keines.',
  'Width of the stamped box; as its length if left out.':
    'Breite des geprägten Felds; ohne Angabe wie seine Länge.',
  'Depth of the relief at its deepest. Stamping moves metal aside; this is what is missing from the finished box.':
    'Tiefe des Reliefs an der tiefsten Stelle. Stempeln drückt Metall beiseite; dies ist, was im fertigen Feld fehlt.',
  'Share of the box pressed to full depth. The mean depth over the box is taken for volume. Common practice, no source.':
    'Anteil des Felds, der auf volle Tiefe gedrückt ist. Für das Volumen gilt die mittlere Tiefe über das Feld. Allgemein üblich, ohne Quelle.',
  'Middle of the stamped box along the plaque, from the plaque’s middle.':
    'Mitte des geprägten Felds längs des Schilds, von dessen Mitte.',
  'Middle of the stamped box across the plaque, from the plaque’s middle.':
    'Mitte des geprägten Felds quer zum Schild, von dessen Mitte.',
  'Bore of the ring at its narrowest.': 'Bohrung des Rings an der engsten Stelle.',
  'Outside diameter.': 'Außendurchmesser.',
  'Width of the band, along the bore.': 'Breite des Bands, in Richtung der Bohrung.',
  'Radius of the bore’s crown, so that it opens to both faces; a straight bore if left out.':
    'Radius der Innenrundung, sodass die Bohrung sich zu beiden Flächen öffnet; ohne Angabe eine gerade Bohrung.',
  'A ring, straight or crowned inside.': 'Ein Ring, innen gerade oder gerundet.',
  'a bore of {0} leaves no wall in {1}': 'eine Bohrung von {0} lässt in {1} keine Wand',
  'the wall is half the difference of the two diameters':
    'die Wand ist die halbe Differenz der beiden Durchmesser',
  'insideDiameter below {0}': 'Innendurchmesser unter {0}',
  'outsideDiameter above {0}': 'Außendurchmesser über {0}',
  'a crown of {0} opens past the wall of {1}':
    'eine Innenrundung von {0} öffnet über die Wand von {1} hinaus',
  'over {0} of width the bore must open by less than the wall':
    'auf {0} Breite darf die Bohrung sich um weniger als die Wand öffnen',
  'comfortRadius above {0}': 'Innenrundung über {0}',
  'leave comfortRadius out: a straight bore': 'die Innenrundung weglassen: eine gerade Bohrung',
  'the strip it is bent from, as long as its middle line; a slice needs a square of the outside diameter':
    'der Streifen, aus dem er gebogen wird, so lang wie seine Mittellinie; eine Scheibe braucht ein Quadrat vom Außendurchmesser',
  'Diameter of the bar.': 'Durchmesser des Stabs.',
  'A round bar of one diameter.': 'Ein Rundstab mit gleichem Durchmesser.',
  'square bar of the diameter; rounded up under the hammer it needs less: π/4 of this':
    'Vierkantstab vom Durchmesser; unter dem Hammer gerundet braucht er weniger: π/4 davon',
  'Depth of the curve: how far the middle of the spine stands off the straight line from shoulder to point.':
    'Tiefe der Krümmung: wie weit die Mitte des Rückens von der geraden Linie zwischen Schulter und Spitze absteht.',
  'A single-edged sword blade, straight or curved, with distal taper and fullers.':
    'Eine einschneidige Schwertklinge, gerade oder gekrümmt, zum Ort hin verjüngt, mit Hohlkehlen.',
  'a blade bent so far is no longer measured along its chord':
    'eine so stark gebogene Klinge wird nicht mehr entlang ihrer Sehne gemessen',
  '{0} at most {1}': '{0} höchstens {1}',
  '{0} is more than there is room for': '{0} ist mehr, als Platz ist',
  'leave {0} out': '{0} weglassen',
  'these sizes give {0}; {1} is asked for': 'diese Maße geben {0}; verlangt sind {1}',
  '{0} at {1} g/cm³ is {2}': '{0} bei {1} g/cm³ sind {2}',
  'ask for {0}, and keep the sizes': '{0} verlangen und die Maße behalten',
  'no thickness gives {0} with the other sizes ({1}): change length or width':
    'mit den übrigen Maßen gibt keine Dicke {0} ({1}): Länge oder Breite ändern',
  'make {0}: that weighs {1}': '{0} nehmen: dann wiegt es {1}',
  'the thickness would leave what the other sizes allow':
    'die Dicke verließe, was die übrigen Maße zulassen',
  '{0} cannot be had by thickness alone': '{0} ist durch die Dicke allein nicht zu haben',
  'change length or width': 'Länge oder Breite ändern',
  'ask for another weight': 'ein anderes Gewicht verlangen',
}
