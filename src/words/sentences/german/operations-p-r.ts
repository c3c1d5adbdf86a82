/** Operations, p to r, by their folders. */
export const operationsPR: Readonly<Record<string, string>> = {
  'Grit it is taken to before the etch (common practice: 400 to 800 for working knives, 2000 for show)':
    'Körnung, bis zu der vor dem Ätzen geschliffen wird (allgemein üblich: 400 bis 800 bei Gebrauchsmessern, 2000 zum Zeigen)',
  "Taken off every face of a bar that is no piece; left out, the shop's polish stock. A piece is polished to its drawn size":
    'Von jeder Fläche eines Stabs genommen, der kein Stück ist; ohne Angabe die Polierzugabe der Werkstatt. Ein Stück wird auf sein gezeichnetes Maß poliert',
  'Take the last stock off every face, grit by grit, to the finished size.':
    'Die letzte Zugabe von jeder Fläche nehmen, Körnung für Körnung, bis zum Fertigmaß.',
  'To {0} grit, the last strokes all along the piece: the acid shouts every scratch across.':
    'Bis Körnung {0}, die letzten Striche alle längs des Stücks: die Säure ruft jeden Kratzer quer dazu aus.',
  'there is nothing left to polish off': 'es ist nichts mehr zum Abpolieren da',
  'leave more on every face when grinding to shape':
    'beim Schleifen in Form auf jeder Fläche mehr lassen',
  'draw the piece a little smaller': 'das Stück etwas kleiner zeichnen',
  'the piece is polished and still without its {0}':
    'das Stück ist poliert und noch ohne seine {0}',
  'the drawing has them and no step of this route makes them':
    'die Zeichnung hat sie, und kein Schritt dieses Arbeitsgangs macht sie',
  'add the step that makes them (drill, groove, stamp)':
    'den Schritt anfügen, der sie macht (bohren, Nuten, stempeln)',
  'leave them out of the piece': 'sie im Stück weglassen',
  'polishing {0} off every face leaves nothing':
    '{0} von jeder Fläche zu polieren lässt nichts übrig',
  'both faces of a pair are polished': 'von einem Paar werden beide Flächen poliert',
  'How deep the die goes in on each face it presses (from memory: 1.5 to 4 mm in stock of 6 to 12 mm)':
    'Wie tief das Gesenk in jede gepresste Fläche geht (aus dem Gedächtnis: 1.5 bis 4 mm bei 6 bis 12 mm Dicke)',
  'Mean depth of the die over its face, as a share of its deepest: 50 % for ridges as wide as the gaps':
    'Mittlere Tiefe des Gesenks über seine Fläche, als Anteil der größten: 50 % bei Rippen so breit wie die Lücken',
  'Size of one figure of the die: from ridge to ridge, or the width of a letter':
    'Größe einer Figur des Gesenks: von Rippe zu Rippe, oder die Breite eines Buchstabens',
  'ridges of one die into the gaps of the other: the layers bend right through':
    'die Rippen des einen in die Lücken des anderen: die Lagen biegen sich ganz hindurch',
  'a die on each face, not interlocking: the pattern stays near the faces':
    'ein Gesenk auf jeder Fläche, nicht ineinandergreifend: das Muster bleibt nahe den Flächen',
  'one die on the top, a flat die below: the pattern stays near the top':
    'ein Gesenk oben, ein flaches unten: das Muster bleibt nahe der Oberseite',
  'How the dies lie': 'Wie die Gesenke liegen',
  'Press a patterned die into the hot bar so that the layers bend under it; grinding it level shows the bends, forging it flat turns them inside out.':
    'Ein gemustertes Gesenk in den heißen Stab pressen, sodass die Lagen sich darunter biegen; eben geschliffen zeigen sich die Biegungen, flach geschmiedet kehren sie sich um.',
  'pressing a die in': 'das Einpressen eines Gesenks',
  'a die {0} deep goes through a bar {1} thick':
    'ein {0} tiefes Gesenk geht durch einen {1} dicken Stab hindurch',
  'hardly any metal would be left under it': 'darunter bliebe kaum Metall',
  'To clear the relief grind to {0} from the {1}, and no deeper than you must.':
    'Um das Relief wegzunehmen, von {1} auf {0} schleifen, und nicht tiefer als nötig.',
  'The die crosses about {0}.': 'Das Gesenk kreuzt etwa {0}.',
  'of the bend {0} % is left where grinding will reach, {1} down':
    'von der Biegung sind dort, wohin der Schliff reicht, {1} tief, noch {0} % übrig',
  'a figure {0} wide fades with depth; under a single die it is gone about half its own width down':
    'eine {0} breite Figur verliert sich mit der Tiefe; unter einem einzelnen Gesenk ist sie nach etwa ihrer halben Breite weg',
  'a larger figure': 'eine größere Figur',
  'interlocking dies': 'ineinandergreifende Gesenke',
  'How many pieces the bar is cut into': 'In wie viele Stücke der Stab geschnitten wird',
  'every other piece rolled over about its length': 'jedes zweite Stück um seine Länge gewälzt',
  'every other piece turned end for end': 'jedes zweite Stück mit vertauschten Enden',
  'as if folded: every other piece turned over its end':
    'wie gefaltet: jedes zweite Stück über sein Ende gewendet',
  'Which way up the pieces are laid': 'Wie herum die Stücke gelegt werden',
  'An extra sheet of this steel between the pieces':
    'Ein zusätzliches Blech aus diesem Stahl zwischen den Stücken',
  'Thickness of the extra sheet': 'Dicke des zusätzlichen Blechs',
  'Cut the bar into equal pieces, grind the faces that will meet, and lay them one on another.':
    'Den Stab in gleiche Stücke schneiden, die Stoßflächen schleifen und aufeinanderlegen.',
  'Outer layer {0} before grinding, {1} after: grind no more than that.':
    'Äußere Lage {0} vor dem Schleifen, {1} danach: nicht mehr schleifen als das.',
  'cut fewer pieces': 'weniger Stücke schneiden',
  'Diameter of what it is rolled round; left out, twice the thickness of the strip, the tightest that does not crease':
    'Durchmesser dessen, worum gerollt wird; ohne Angabe die doppelte Dicke des Streifens, das Engste, das nicht knickt',
  'A round rod of this steel stays inside; left out, the eye is hollow and closes when the roll is squared':
    'Ein Rundstab aus diesem Stahl bleibt darin; ohne Angabe ist das Auge hohl und schließt sich beim Vierkantschmieden',
  'Heats it is rolled up in': 'Hitzen, in denen gerollt wird',
  'Roll the strip up hot, tight, about its width; the end grain becomes a spiral.':
    'Den Streifen heiß und eng um seine Breite aufrollen; die Stirnseite wird zur Spirale.',
  'rolling it up': 'das Aufrollen',
  '{0} turns. Scarf the outer end thin, so that it leaves no step.':
    '{0} Windungen. Das äußere Ende dünn schäften, damit es keine Stufe lässt.',
  'The eye closes when the roll is squared at welding heat.':
    'Das Auge schließt sich, wenn die Rolle bei Schweißhitze vierkant geschmiedet wird.',
  'only a flat strip rolls up': 'nur ein flacher Streifen rollt sich auf',
  'turn must lie on turn along a face': 'Windung muss auf Windung mit einer Fläche liegen',
  'draw the bar out flat first': 'den Stab erst flach ausschmieden',
  'a strip {0} long does not go once round a core {1} across':
    'ein {0} langer Streifen geht nicht einmal um einen {1} starken Kern',
  'a roll has at least one whole turn': 'eine Rolle hat mindestens eine ganze Windung',
  'roll it round a thinner core': 'um einen dünneren Kern rollen',
  'draw the strip longer first': 'den Streifen erst länger ausschmieden',
  'rolled to a radius of {0}, a strip {1} thick creases inside':
    'auf einen Radius von {0} gerollt knickt ein {1} dicker Streifen innen ein',
  'the inside of the first turn folds when its radius is less than the thickness (common practice)':
    'die Innenseite der ersten Windung faltet sich, wenn ihr Radius kleiner ist als die Dicke (allgemein üblich)',
  'roll it round a core of {0} or more': 'um einen Kern von {0} oder mehr rollen',
  'draw the strip thinner first': 'den Streifen erst dünner ausschmieden',
  'the strip must be {0} in {1} for the roll that is wanted':
    'für die gewünschte Rolle muss der Streifen in der {1} {0} haben',
  'a larger stack does not make this strip larger in {0}':
    'ein größeres Paket macht diesen Streifen in der {0} nicht größer',
  'draw the strip so that it is {0} in {1}':
    'den Streifen so ausschmieden, dass er in der {1} {0} hat',
  'roll it round a core of stated size': 'um einen Kern von angegebener Größe rollen',
  'half a turn about its length: the top becomes the bottom, the far side the near side':
    'eine halbe Drehung um seine Länge: oben wird unten, die ferne Seite die nahe',
  'half a turn flat on the anvil: the ends change places, the top stays the top':
    'eine halbe Drehung flach auf dem Amboss: die Enden tauschen, oben bleibt oben',
  'half a turn over its end: the ends change places and the top becomes the bottom':
    'eine halbe Drehung über sein Ende: die Enden tauschen, und oben wird unten',
  'How the bar is rolled': 'Wie der Stab gewälzt wird',
  'Roll the bar over or turn it end for end: its sizes stay, but which layer or bar lies where changes.':
    'Den Stab wälzen oder umdrehen: seine Maße bleiben, aber welche Lage oder welcher Stab wo liegt, ändert sich.',
  'Metal can be turned, never mirrored: a twisted bar keeps its hand whichever way it is rolled.':
    'Metall lässt sich drehen, nie spiegeln: ein tordierter Stab behält seinen Drehsinn, wie man ihn auch wälzt.',
  'its faces stand {0} inside the drawn ones, and it holds less metal than the drawing':
    'seine Flächen stehen {0} innerhalb der gezeichneten, und es enthält weniger Metall als die Zeichnung',
  'its faces stand {0} outside the drawn ones, and it holds less metal than the drawing':
    'seine Flächen stehen {0} außerhalb der gezeichneten, und es enthält weniger Metall als die Zeichnung',
}
