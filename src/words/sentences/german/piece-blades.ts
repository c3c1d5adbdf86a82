/** Pieces: bars, blades, tangs. */
export const pieceBlades: Readonly<Record<string, string>> = {
  // Ends that are measured from: both stand after „vom“.
  'the butt': 'Griffende',
  'the left end': 'linken Ende',
  'Length of the bar.': 'Länge des Stabs.',
  'Width of the bar.': 'Breite des Stabs.',
  'Thickness of the bar.': 'Dicke des Stabs.',
  'Sharp.': 'Scharf.',
  'Rounded.': 'Gerundet.',
  'Square or flat bar.': 'Vierkant- oder Flachstab.',
  'Corners forged in, all eight faces alike on a square bar.':
    'Ecken eingeschmiedet, bei einem Vierkant alle acht Flächen gleich.',
  'Shape of the section.': 'Form des Querschnitts.',
  'Bevelled at 45°.': 'Unter 45° gefast.',
  'How the four long edges of a rectangular bar are left.':
    'Wie die vier Längskanten eines Rechteckstabs bleiben.',
  'Radius or chamfer of the long edges.': 'Radius oder Fase der Längskanten.',
  'A square, flat or octagonal bar of one section from end to end.':
    'Ein Vierkant-, Flach- oder Achtkantstab mit gleichem Querschnitt von Ende zu Ende.',
  'the edges of two faces would meet': 'die Kanten zweier Flächen träfen aufeinander',
  'the bar itself, its edges still sharp': 'der Stab selbst, mit noch scharfen Kanten',
  'the ricasso would take up the blade': 'die Fehlschärfe nähme die ganze Klinge ein',
  'a longer blade': 'eine längere Klinge',
  'the point would be longer than the blade in front of the ricasso':
    'der Ort wäre länger als die Klinge vor der Fehlschärfe',
  'the clip would be longer than the blade in front of the ricasso':
    'die Absenkung wäre länger als die Klinge vor der Fehlschärfe',
  'the ricasso would stand out past the blade': 'die Fehlschärfe stünde über die Klinge hinaus',
  'a wider blade': 'eine breitere Klinge',
  'the point would lie below the edge': 'die Spitze läge unter der Schneide',
  'the edge would be thicker than the spine': 'die Schneide wäre dicker als der Rücken',
  'a thicker spine': 'ein dickerer Rücken',
  'the edge would be thicker than the point': 'die Schneide wäre dicker als der Ort',
  'spineThicknessPoint at least {0}': 'Rückendicke am Ort mindestens {0}',
  'the grind line would lie above the spine': 'die Schlifflinie läge über dem Rücken',
  'edge and spine cross before the point': 'Schneide und Rücken kreuzen sich vor der Spitze',
  'the spine falls faster than the edge leaves room':
    'der Rücken fällt schneller, als die Schneide Platz lässt',
  'a smaller tipDrop': 'eine kleinere Absenkung der Spitze',
  'a clipLength nearer to pointLength': 'eine Absenkungslänge näher an der Länge des Orts',
  'bevels at this angle would be {0} high': 'Fasen mit diesem Winkel wären {0} hoch',
  'the blade is {0} wide': 'die Klinge ist {0} breit',
  'a larger grindAngle': 'ein größerer Schliffwinkel',
  'a thinner spine': 'ein dünnerer Rücken',
  'grind "full-flat"': 'ganz flach schleifen („full-flat“)',
  'the side would stand out past the spine': 'die Seite stünde über den Rücken hinaus',
  'a wheel of {0} digs to less than half the edge’s thickness behind it':
    'eine Scheibe von {0} gräbt hinter der Schneide auf weniger als deren halbe Dicke',
  'over a bevel of {0} it leaves the edge behind':
    'über einer Fase von {0} lässt sie die Schneide stehen',
  'wheelDiameter at least {0}': 'Scheibendurchmesser mindestens {0}',
  'a smaller grindHeight': 'eine kleinere Schliffhöhe',
  'a round trough cannot be deeper than half its width':
    'eine runde Kehle kann nicht tiefer sein als ihre halbe Breite',
  'a wider fuller': 'eine breitere Hohlkehle',
  'the two run-outs would overlap': 'die beiden Ausläufe überschnitten sich',
  'the fuller would run out past the point': 'die Hohlkehle liefe über die Spitze hinaus',
  'a smaller start': 'ein kleinerer Anfang',
  'the fuller runs out of the side {0} from the shoulder':
    'die Hohlkehle läuft {0} von der Schulter seitlich hinaus',
  'half its width reaches past spine or edge there':
    'ihre halbe Breite reicht dort über Rücken oder Schneide',
  'end it earlier: a smaller length': 'früher enden: eine kleinere Länge',
  'another offset': 'ein anderer Versatz',
  'a narrower fuller': 'eine schmalere Hohlkehle',
  '{0} is deeper than the metal there is': '{0} ist tiefer, als Metall da ist',
  'two fullers back to back, each half the thickness deep, meet':
    'zwei Hohlkehlen Rücken an Rücken, jede halb so tief wie die Dicke, treffen sich',
  'the fuller comes through the other face': 'die Hohlkehle kommt auf der anderen Fläche heraus',
  'depth below {0}': 'Tiefe unter {0}',
  'a thicker blade': 'eine dickere Klinge',
  'a fuller nearer the thickest line': 'eine Hohlkehle näher an der dicksten Linie',
  'the tang would be wider than the shoulder': 'die Angel wäre breiter als die Schulter',
  'a wider ricasso': 'eine breitere Fehlschärfe',
  'the tang would be thicker than the blade at the shoulder':
    'die Angel wäre dicker als die Klinge an der Schulter',
  'the hole would break through the end of the tang': 'das Loch bräche am Ende der Angel aus',
  'a longer tang': 'eine längere Angel',
  'the hole is wider than the tang there': 'das Loch ist breiter als die Angel dort',
  'a wider tang': 'eine breitere Angel',
  'From shoulder to point, in a straight line.': 'Von der Schulter zur Spitze, in gerader Linie.',
  'Width of the blade at its heel, from edge to spine.':
    'Breite der Klinge hinten, von der Schneide zum Rücken.',
  'Width where the point begins; as at the heel if left out.':
    'Breite, wo der Ort beginnt; ohne Angabe wie hinten.',
  'Flat, unground length in front of the shoulder.':
    'Flache, ungeschliffene Länge vor der Schulter.',
  'Width of the ricasso, measured down from the spine; as the blade if left out.':
    'Breite der Fehlschärfe, vom Rücken nach unten gemessen; ohne Angabe wie die Klinge.',
  'Thickest place of the blade at the shoulder.': 'Dickste Stelle der Klinge an der Schulter.',
  'The same half way to the point; an even taper if left out.':
    'Dasselbe auf halbem Weg zum Ort; ohne Angabe gleichmäßig verjüngt.',
  'The same at the point.': 'Dasselbe am Ort.',
  'Thickness left at the edge, before sharpening.':
    'An der Schneide belassene Dicke, vor dem Schärfen.',
  'The spine runs straight to the point; the edge curves up to it.':
    'Der Rücken läuft gerade zur Spitze; die Schneide biegt zu ihr hinauf.',
  'The spine curves down to the point.': 'Der Rücken biegt zur Spitze hinunter.',
  'The spine is cut off straight down to the point.':
    'Der Rücken ist gerade zur Spitze hinunter abgeschnitten.',
  'The spine is cut off in a hollow curve down to the point.':
    'Der Rücken ist in hohlem Bogen zur Spitze hinunter abgeschnitten.',
  'Edge and spine meet half way.': 'Schneide und Rücken treffen sich auf halber Höhe.',
  'The edge runs straight; the spine rounds down to it.':
    'Die Schneide läuft gerade; der Rücken rundet sich zu ihr hinunter.',
  'The edge runs straight; the spine is cut off straight down to it.':
    'Die Schneide läuft gerade; der Rücken ist gerade zu ihr hinunter abgeschnitten.',
  'The spine sweeps up to the point.': 'Der Rücken schwingt zur Spitze hinauf.',
  'Form of the point.': 'Form des Orts.',
  'From where the edge begins to curve to the point.':
    'Vom Beginn der Schneidenbiegung bis zur Spitze.',
  'From where the spine leaves its line to the point: the length of clip, drop or sweep; as pointLength if left out.':
    'Von der Stelle, wo der Rücken seine Linie verlässt, bis zur Spitze: die Länge der Absenkung oder des Schwungs; ohne Angabe wie die Länge des Orts.',
  'How far the point lies below the line of the spine (trailing: above it); by the form of the point if left out.':
    'Wie weit die Spitze unter der Rückenlinie liegt (aufsteigend: darüber); ohne Angabe nach der Form des Orts.',
  'Flat from spine to edge.': 'Flach vom Rücken bis zur Schneide.',
  'Flat from edge to grind line (sabre grind).':
    'Flach von der Schneide bis zur Schlifflinie (Säbelschliff).',
  'Hollow from edge to grind line, by the wheel.':
    'Hohl von der Schneide bis zur Schlifflinie, nach der Scheibe.',
  'Bellied from edge to grind line.': 'Ballig von der Schneide bis zur Schlifflinie.',
  'One narrow flat bevel to the edge, at an angle.':
    'Eine schmale flache Fase an der Schneide, in einem Winkel.',
  'One side flat, the other ground flat to the grind line.':
    'Eine Seite flach, die andere flach bis zur Schlifflinie geschliffen.',
  'Flat from edge to a ridge, then flat to a thinner back.':
    'Flach von der Schneide bis zu einem Grat, dann flach zu einem dünneren Rücken.',
  'How the bevels are ground.': 'Wie die Fasen geschliffen sind.',
  'From edge to grind line or ridge; the whole width (ridged: two thirds) if left out.':
    'Von der Schneide bis zur Schlifflinie oder zum Grat; ohne Angabe die ganze Breite (mit Grat: zwei Drittel).',
  'Scandi: angle between the two bevels.': 'Skandi: Winkel zwischen den beiden Fasen.',
  'Hollow: diameter of the grinding wheel.': 'Hohl: Durchmesser der Schleifscheibe.',
  'Convex: how far each side stands out past the flat.':
    'Ballig: wie weit jede Seite über die Ebene hinaussteht.',
  'Ridged: thickness of the back as a share of that at the ridge.':
    'Mit Grat: Dicke des Rückens als Anteil der Dicke am Grat.',
  'Length over which the bevels run out at the ricasso.':
    'Länge, auf der die Fasen an der Fehlschärfe auslaufen.',
  'Width at its widest.': 'Breite an der breitesten Stelle.',
  'Depth below the face.': 'Tiefe unter der Fläche.',
  'Single-edged: middle of the fuller below the spine, a third of the width if left out. Double-edged: from the middle line, none if left out.':
    'Einschneidig: Mitte der Hohlkehle unter dem Rücken, ohne Angabe ein Drittel der Breite. Zweischneidig: Abstand von der Mittellinie, ohne Angabe keiner.',
  'From the shoulder to where it begins.': 'Von der Schulter bis zu ihrem Beginn.',
  'Length with both run-outs.': 'Länge mit beiden Ausläufen.',
  'Length at either end over which it shallows to nothing; 0 for a square end.':
    'Länge an jedem Ende, auf der sie flach ausläuft; 0 für ein stumpfes Ende.',
  'In both faces.': 'In beiden Flächen.',
  'In the front only.': 'Nur in der Vorderseite.',
  'In the back only.': 'Nur in der Rückseite.',
  'Which faces it is cut in.': 'In welche Flächen sie geschnitten ist.',
  'Fullers, each along the blade.': 'Hohlkehlen, jede entlang der Klinge.',
  'From shoulder to the end of the tang.': 'Von der Schulter bis zum Ende der Angel.',
  'Width of the tang at the shoulder.': 'Breite der Angel an der Schulter.',
  'Width at its end.': 'Breite an ihrem Ende.',
  'Thickness at the shoulder; as the blade if left out.':
    'Dicke an der Schulter; ohne Angabe wie die Klinge.',
  'Thickness at its end.': 'Dicke an ihrem Ende.',
  'Cut off square.': 'Gerade abgeschnitten.',
  'Rounded in plan.': 'In der Draufsicht gerundet.',
  'Form of the end.': 'Form des Endes.',
  'Diameter of the pin hole; 0 for none.': 'Durchmesser des Stiftlochs; 0 für keines.',
  'From shoulder to the middle of the pin hole.': 'Von der Schulter bis zur Mitte des Stiftlochs.',
  'a straight bar as wide as the blade without its curve; tang and point forged or cut from it':
    'ein gerader Stab, so breit wie die Klinge ohne ihre Krümmung; Angel und Ort daraus geschmiedet oder geschnitten',
  'a straight bar as wide and thick as the piece at its widest and thickest; tang and point forged or cut from it':
    'ein gerader Stab, so breit und dick wie das Stück an der breitesten und dicksten Stelle; Angel und Ort daraus geschmiedet oder geschnitten',
  'the edges would be thicker than the middle': 'die Schneiden wären dicker als die Mitte',
  'a thicker middle': 'eine dickere Mitte',
  'half the width is too wide a hollow for so little rise from edge to ridge':
    'die halbe Breite ist für so wenig Anstieg von der Schneide zum Grat zu weit für einen Hohlschliff',
  'a narrower blade': 'eine schmalere Klinge',
  'A double-edged blade of diamond, lens, hollow or six-sided section, with fullers and a hidden tang.':
    'Eine zweischneidige Klinge mit rautenförmigem, linsenförmigem, hohlem oder sechskantigem Querschnitt, mit Hohlkehlen und Steckangel.',
  'Width at the shoulder, edge to edge.': 'Breite an der Schulter, von Schneide zu Schneide.',
  'Width where the point begins; as at the shoulder if left out.':
    'Breite, wo der Ort beginnt; ohne Angabe wie an der Schulter.',
  'Four flats.': 'Vier Ebenen.',
  'A lens: rounded from edge to edge.': 'Eine Linse: von Schneide zu Schneide gerundet.',
  'Four hollows, by the wheel.': 'Vier Hohlungen, nach der Scheibe.',
  'A flat along the middle, a bevel to each edge.':
    'Eine Ebene entlang der Mitte, eine Fase zu jeder Schneide.',
  'Thickness along the middle line at the shoulder.':
    'Dicke entlang der Mittellinie an der Schulter.',
  'Hexagonal: width of the middle flat as a share of the blade’s.':
    'Sechskantig: Breite der mittleren Ebene als Anteil der Klingenbreite.',
  'Hollow diamond: diameter of the grinding wheel.': 'Hohle Raute: Durchmesser der Schleifscheibe.',
  'Straight edges meeting in a point.': 'Gerade Schneiden, die sich in einer Spitze treffen.',
  'Edges curving in to the point.': 'Schneiden, die zur Spitze einbiegen.',
  'Length over which the edges run in to the point.':
    'Länge, auf der die Schneiden zur Spitze zusammenlaufen.',
  'Diameter of the hole.': 'Durchmesser des Lochs.',
  'From the shoulder to its middle.': 'Von der Schulter bis zu seiner Mitte.',
  'From the middle line of the handle, towards the spine.':
    'Von der Mittellinie des Griffs, zum Rücken hin.',
  'From shoulder to butt.': 'Von der Schulter bis zum Knauf.',
  'Width of the tang at the shoulder; as the ricasso if left out.':
    'Breite der Angel an der Schulter; ohne Angabe wie die Fehlschärfe.',
  'Width half way.': 'Breite auf halbem Weg.',
  'Width at the butt.': 'Breite am Knauf.',
  'Radius of the two corners of the butt.': 'Radius der beiden Knaufecken.',
  'Thickness at the butt of a tapered tang; as the spine if left out.':
    'Dicke einer verjüngten Angel am Knauf; ohne Angabe wie der Rücken.',
  'Pin holes in the tang.': 'Stiftlöcher in der Angel.',
  'Holes drilled to make the tang lighter.': 'Löcher, gebohrt, damit die Angel leichter wird.',
  'a hole of {0}, {1} from the shoulder, breaks out of the tang':
    'ein Loch von {0}, {1} von der Schulter, bricht aus der Angel aus',
  'the hole reaches past the outline of the handle':
    'das Loch reicht über den Umriss des Griffs hinaus',
  'fromShoulder between {0} and {1}': 'Abstand von der Schulter zwischen {0} und {1}',
  'offset nearer to 0': 'Versatz näher an 0',
  'a smaller diameter': 'ein kleinerer Durchmesser',
  'A single-edged blade whose tang has the outline of the handle, drilled for pins.':
    'Eine einschneidige Klinge, deren Angel den Umriss des Griffs hat, für Stifte gebohrt.',
  'the two corners of the butt would meet': 'die beiden Knaufecken träfen aufeinander',
  'the butt would be thicker than the blade': 'der Knauf wäre dicker als die Klinge',
  'the handle closes to nothing': 'der Griff läuft auf nichts zusammen',
  'the curve through its three widths passes below zero':
    'die Kurve durch seine drei Breiten geht unter null',
  'three widths nearer to each other': 'drei Breiten, die näher beieinanderliegen',
}
