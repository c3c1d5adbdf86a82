/** Operations, d to e, by their folders. */
export const operationsDE: Readonly<Record<string, string>> = {
  'Depth of each dimple (common practice: a third of the thickness)':
    'Tiefe jeder Mulde (allgemein üblich: ein Drittel der Dicke)',
  'Diameter at the face (from memory: 6 to 12 mm)':
    'Durchmesser an der Fläche (aus dem Gedächtnis: 6 bis 12 mm)',
  'From one dimple to its neighbours on the same face, on average (from memory: 10 to 25 mm)':
    'Von einer Mulde zu ihren Nachbarn auf derselben Fläche, im Mittel (aus dem Gedächtnis: 10 bis 25 mm)',
  'both faces, never one over the other': 'beide Flächen, nie eine über der anderen',
  'the top face only': 'nur die obere Fläche',
  'Which faces are drilled': 'Welche Flächen gebohrt werden',
  'Drill or mill dimples through many layers; forging it flat brings them up as rings, like rain on water.':
    'Mulden durch viele Lagen bohren oder fräsen; flach geschmiedet kommen sie als Ringe herauf, wie Regen auf Wasser.',
  'drilling dimples': 'das Bohren von Mulden',
  'About {0} on the top, {1} % of the metal.': 'Etwa {0} oben, {1} % des Metalls.',
  'About {0} a side, {1} % of the metal.': 'Etwa {0} je Seite, {1} % des Metalls.',
  'Each dimple crosses {0}: so many rings, about {1} apart.':
    'Jede Mulde kreuzt {0}: so viele Ringe, etwa {1} auseinander.',
  'Forge flat to {0} or less: every dimple closes.':
    'Auf {0} oder weniger flach schmieden: jede Mulde schließt sich.',
  'the bar is {0}: it has no flat face to drill':
    'der Stab ist {0}: er hat keine flache Seite zum Bohren',
  'dimples are drilled into the faces of a flat bar':
    'Mulden werden in die Flächen eines Flachstabs gebohrt',
  'square up or draw out flat first': 'erst vierkant oder flach ausschmieden',
  'dimples {0} deep go through a bar {1} thick':
    '{0} tiefe Mulden gehen durch einen {1} dicken Stab hindurch',
  'a hole right through never closes to a ring':
    'ein durchgehendes Loch schließt sich nie zu einem Ring',
  'drill {0} deep: a third of the thickness': '{0} tief bohren: ein Drittel der Dicke',
  'a thicker bar': 'ein dickerer Stab',
  'dimples {0} across run into one another at {1}':
    'Mulden von {0} laufen bei {1} Teilung ineinander',
  'each needs its own rim to show a ring':
    'jede braucht ihren eigenen Rand, um einen Ring zu zeigen',
  'space them {0} apart or more': 'sie {0} oder weiter auseinandersetzen',
  'a smaller drill': 'ein kleinerer Bohrer',
  'the dimples take {0} % of the metal': 'die Mulden nehmen {0} % des Metalls',
  'hardly any land is left between them to forge the rings up against':
    'zwischen ihnen bleibt kaum Fläche, gegen die sich die Ringe heraufschmieden lassen',
  'space them further apart': 'sie weiter auseinandersetzen',
  'drill less deep': 'weniger tief bohren',
  'the dimples go {0} % into the thickness': 'die Mulden gehen {0} % in die Dicke',
  'about a third is the rule (common practice)':
    'etwa ein Drittel ist die Regel (allgemein üblich)',
  '{0} deep': '{0} tief',
  'flat-bottomed holes with straight walls': 'Löcher mit flachem Boden und geraden Wänden',
  'the dimples are deeper than wide': 'die Mulden sind tiefer als breit',
  'straight walls fold in and close as cold shuts (common practice)':
    'gerade Wände falten sich ein und schließen als Kaltschweißstelle (allgemein üblich)',
  'countersink them': 'sie ansenken',
  'use a ball-nosed cutter': 'einen Kugelfräser nehmen',
  '{0} rings {1} apart: a shimmer, not rings':
    '{0} Ringe, {1} auseinander: ein Schimmer, keine Ringe',
  'the eye parts lines 0.09 mm apart at 300 mm':
    'das Auge trennt auf 300 mm Linien von 0.09 mm Abstand',
  'fewer layers': 'weniger Lagen',
  'wider dimples of the same depth': 'weitere Mulden gleicher Tiefe',
  'shallower dimples': 'flachere Mulden',
  'Thickness the bar is drawn to': 'Dicke, auf die der Stab ausgeschmiedet wird',
  'Width the bar is kept to by turning it on edge between blows; left out, it spreads as the dies make it':
    'Breite, auf der der Stab gehalten wird, indem man ihn zwischen den Schlägen hochkant stellt; ohne Angabe breitet er sich, wie die Gesenke es geben',
  'Heats taken; left out, as many as the reduction needs':
    'Zahl der Hitzen; ohne Angabe so viele, wie die Abnahme braucht',
  "Forging heat; left out, the shop's": 'Schmiedehitze; ohne Angabe die der Werkstatt',
  'Draw the bar longer and thinner, evenly, and stop at the stop heat.':
    'Den Stab gleichmäßig länger und dünner ausschmieden und bei der Schlusshitze aufhören.',
  'a bar of {0} × {1} cannot be drawn to {2} × {3}':
    'ein Stab von {0} × {1} lässt sich nicht auf {2} × {3} ausschmieden',
  'drawing out makes the section smaller, never larger':
    'Ausschmieden macht den Querschnitt kleiner, nie größer',
  'draw to a smaller section': 'auf einen kleineren Querschnitt ausschmieden',
  'upset the bar first': 'den Stab erst stauchen',
  'start from a larger stack': 'mit einem größeren Paket anfangen',
  'the bar is {0} thick already; it cannot be drawn to {1}':
    'der Stab ist schon {0} dick; er lässt sich nicht auf {1} ausschmieden',
  'drawing out makes the bar thinner': 'Ausschmieden macht den Stab dünner',
  'draw to less than {0}': 'auf weniger als {0} ausschmieden',
  'turn the bar on edge first': 'den Stab erst hochkant stellen',
  'Diameter of the drift: of the hole when it is done':
    'Durchmesser des Dorns: der des fertigen Lochs',
  'slit with a chisel: no metal is lost': 'mit dem Meißel geschlitzt: kein Metall geht verloren',
  'punch a slug out first': 'erst einen Butzen auslochen',
  'How the hole is opened': 'Wie das Loch geöffnet wird',
  'Diameter of the punch, where a slug is punched out':
    'Durchmesser des Lochstempels, wo ein Butzen ausgelocht wird',
  'Slit or punch the bar and drive a drift through: the metal swells round the hole and its lines flow round it.':
    'Den Stab schlitzen oder lochen und einen Dorn durchtreiben: das Metall schwillt um das Loch, und seine Linien fließen darum herum.',
  'opening a hole': 'das Öffnen eines Lochs',
  'Slit about {0}: its two lips become the rim of the hole.':
    'Etwa {0} schlitzen: die beiden Lippen werden der Rand des Lochs.',
  'The bar swells to {0} at the hole; the wall beside it is {1}.':
    'Der Stab schwillt am Loch auf {0}; die Wand daneben ist {1}.',
  'a slug {0} across leaves nothing to drift to {1}':
    'ein Butzen von {0} lässt nichts, was auf {1} zu dornen wäre',
  'the drift opens the hole the punch makes': 'der Dorn öffnet das Loch, das der Lochstempel macht',
  'a smaller punch': 'ein kleinerer Lochstempel',
  'a larger drift': 'ein größerer Dorn',
  'the ends of the opening would tear out': 'die Enden der Öffnung rissen aus',
  'a smaller hole': 'ein kleineres Loch',
  'a longer bar': 'ein längerer Stab',
  'punch a slug first': 'erst einen Butzen auslochen',
  'the wall beside the hole is {0}, of a bar {1} thick':
    'die Wand neben dem Loch ist {0}, bei einem {1} dicken Stab',
  'a wall under half the thickness stretches and tears at the slit (common practice)':
    'eine Wand unter der halben Dicke streckt sich und reißt am Schlitz (allgemein üblich)',
  'start from a wider bar': 'mit einem breiteren Stab anfangen',
  'upset the place first': 'die Stelle erst stauchen',
  'every hole and slot of the piece': 'jedes Loch und jeder Schlitz des Stücks',
  'its round holes': 'seine runden Löcher',
  'its slots': 'seine Schlitze',
  'Which of the piece’s openings are made now': 'Welche Öffnungen des Stücks jetzt gemacht werden',
  "Drill the piece's holes and cut its slots, while the steel is soft.":
    'Die Löcher des Stücks bohren und seine Schlitze schneiden, solange der Stahl weich ist.',
  'to drill': 'zum Bohren',
  '{0}: {1} mm, {2} mm from {3}, {4}.': '{0}: {1} mm, {2} mm vom {3}, {4}.',
  'Break the rims: a sharp rim starts a crack in the quench.':
    'Die Ränder brechen: an einem scharfen Rand beginnt beim Abschrecken ein Riss.',
  'on the middle line': 'auf der Mittellinie',
  '{0} mm {1} the middle line': '{0} mm {1} der Mittellinie',
  'Name of the bar that becomes the edge': 'Name des Stabs, der die Schneide wird',
  'butted along both sides': 'an beiden Seiten angesetzt',
  'butted along one side, for a single edge': 'an einer Seite angesetzt, für eine einzige Schneide',
  'bent round the point and along both sides in one piece':
    'um den Ort und an beiden Seiten entlang in einem Stück gebogen',
  'How the edge goes on the core': 'Wie die Schneide an den Kern kommt',
  'half an ellipse': 'eine halbe Ellipse',
  'two straight lines': 'zwei gerade Linien',
  'Shape of the core under a wrapped edge': 'Form des Kerns unter einer umgebogenen Schneide',
  'Length over which the core narrows to its point; left out, half its width':
    'Länge, auf der der Kern zum Ort hin schmaler wird; ohne Angabe die halbe Breite',
  'Put a bar that will be the cutting edge along the core, or bend it right round the point.':
    'Einen Stab, der die Schneide wird, an den Kern setzen oder ganz um den Ort biegen.',
  'fitting the edge': 'das Anpassen der Schneide',
  'Bevelling and years of sharpening must both end inside the edge: leave it twice as wide as they take.':
    'Anfasen und Jahre des Schärfens müssen beide in der Schneide enden: doppelt so breit lassen, wie sie nehmen.',
  'Edge bar: {0}, the {1} round the core and 5 % over.':
    'Schneidstab: {0}, die {1} um den Kern und 5 % mehr.',
  'a round or eight-sided bar gives the edge no face to lie on':
    'ein runder oder achtkantiger Stab gibt der Schneide keine Fläche zum Anliegen',
  'core and edge meet along a flat': 'Kern und Schneide treffen sich auf einer Fläche',
  'the edge bar is {0} long; {1} is needed': 'der Schneidstab ist {0} lang; gebraucht werden {1}',
  'it goes along the core, and wrapped round the point it takes the whole outline and 5 % over':
    'er läuft am Kern entlang, und um den Ort gebogen braucht er den ganzen Umriss und 5 % mehr',
  'make the edge bar longer': 'den Schneidstab länger machen',
  'use a shorter core': 'einen kürzeren Kern nehmen',
  'butt it on one side only': 'nur auf einer Seite ansetzen',
  'grinding {0} off the faces that meet leaves nothing':
    '{0} von den Stoßflächen zu schleifen lässt nichts übrig',
  'core and edge are ground where they meet':
    'Kern und Schneide werden geschliffen, wo sie sich treffen',
  'grind less': 'weniger schleifen',
  'use a wider core or edge': 'einen breiteren Kern oder Schneidstab nehmen',
  'a point {0} long is more than a core {1} long has':
    'ein {0} langer Ort ist mehr, als ein {1} langer Kern hat',
  'the sides run straight before the point begins':
    'die Seiten laufen gerade, bevor der Ort beginnt',
  'state a shorter point': 'einen kürzeren Ort angeben',
  'use a longer core': 'einen längeren Kern nehmen',
  'the edge bar is too thick to follow the point':
    'der Schneidstab ist zu dick, um dem Ort zu folgen',
  'round a sharp corner the outside tears and the inside folds':
    'um eine scharfe Ecke reißt die Außenseite, und die Innenseite faltet sich',
  'half its thickness is more than a fifth of the radius at the tip (the limit of plain bending used here)':
    'seine halbe Dicke ist mehr als ein Fünftel des Radius an der Spitze (die hier genommene Grenze des einfachen Biegens)',
  'scarf or mitre it at the point': 'am Ort schäften oder auf Gehrung setzen',
  'thin the bar there': 'den Stab dort dünner machen',
  'round the point more': 'den Ort stärker runden',
  'core and edge together do not make {0} × {1}':
    'Kern und Schneide zusammen geben keine {0} × {1}',
  'longer bars make it longer, not wider or thicker':
    'längere Stäbe machen es länger, nicht breiter oder dicker',
  'use thicker bars': 'dickere Stäbe nehmen',
  'ferric chloride, 40 % stock, in water': 'Eisenchlorid, 40-prozentige Lösung, in Wasser',
  'hydrochloric (muriatic) acid in water, for stainless pairs':
    'Salzsäure in Wasser, für rostfreie Paarungen',
  'strong instant coffee, after a light etch: colour more than depth':
    'starker löslicher Kaffee, nach einer leichten Ätzung: mehr Farbe als Tiefe',
  'What it is etched in': 'Worin geätzt wird',
  'Parts of water to one of acid (practice read: 3)':
    'Teile Wasser auf einen Teil Säure (gelesene Praxis: 3)',
  'Time in the bath, each time (common practice: 5 to 15 min in all; practice read: up to three times 15 min)':
    'Zeit im Bad, jedes Mal (allgemein üblich: 5 bis 15 min insgesamt; gelesene Praxis: bis dreimal 15 min)',
  'How often it is dipped, the smut wiped off between':
    'Wie oft getaucht wird, dazwischen der Belag abgewischt',
  "How far the dark steel is etched below the bright; left out, the shop's":
    'Wie weit der dunkle Stahl unter den hellen geätzt wird; ohne Angabe der Wert der Werkstatt',
  'A steel the acid takes': 'Ein Stahl, den die Säure angreift',
  'Steels that etch dark: only they lose metal; left out, every steel is taken alike':
    'Stähle, die dunkel ätzen: nur sie verlieren Metall; ohne Angabe jeder Stahl gleich',
  'Etch the polished piece, wipe, repeat, neutralise and oil: the dark steel goes down and the pattern shows.':
    'Das polierte Stück ätzen, wischen, wiederholen, neutralisieren und ölen: der dunkle Stahl geht zurück, und das Muster zeigt sich.',
  'Rinse, neutralise in soda and water, rinse until no chloride is left, dry warm, oil.':
    'Spülen, in Soda und Wasser neutralisieren, spülen, bis kein Chlorid bleibt, warm trocknen, ölen.',
  '{0} in the bath for {1}': '{0} im Bad für {1}',
  'a still bath takes 0.5 to 4 µm a minute (from memory): {0} to {1} in that time':
    'ein ruhendes Bad nimmt 0.5 bis 4 µm in der Minute (aus dem Gedächtnis): {0} bis {1} in dieser Zeit',
  'more or longer dips': 'mehr oder längere Bäder',
  'fewer or shorter dips': 'weniger oder kürzere Bäder',
  'try a piece of the same bar first and measure it':
    'erst ein Stück desselben Stabs versuchen und messen',
  'it is etched {0}, not hardened': 'es wird im Zustand „{0}“ geätzt, nicht gehärtet',
  'hardened and tempered steel etches with more contrast (common practice)':
    'gehärteter und angelassener Stahl ätzt mit mehr Kontrast (allgemein üblich)',
  'harden and temper it first': 'erst härten und anlassen',
  'accept a paler face': 'eine blassere Fläche hinnehmen',
  'state "{0}" or "{1}", not both': '„{0}“ oder „{1}“ angeben, nicht beides',
  'state "{0}" or "{1}"': '„{0}“ oder „{1}“ angeben',
  'the punch takes {0} of a bar {1} wide': 'der Lochstempel nimmt {0} eines {1} breiten Stabs',
  'the slit takes {0} of a bar {1} long': 'der Schlitz nimmt {0} eines {1} langen Stabs',
  '1 outer layer is lost to {0}': '1 Außenlage geht verloren ({0})',
  '{0} outer layers are lost to {1}': '{0} Außenlagen gehen verloren ({1})',
  '{0} of {1} in coffee: wipe the smut off between.':
    '{0} von {1} in Kaffee: dazwischen den Belag abwischen.',
  '{0} of {1} in {2}, one part to {3} of water: wipe the smut off between.':
    '{0} von {1} in {2}, ein Teil auf {3} Teile Wasser: dazwischen den Belag abwischen.',
  'ball-nosed cutter: a bowl, or a round-bottomed hole where it is deeper than half its width':
    'Kugelfräser: eine Schale, oder ein Loch mit rundem Boden, wo sie tiefer ist als ihre halbe Breite',
  'the point of a drill or a countersink: a cone':
    'die Spitze eines Bohrers oder Senkers: ein Kegel',
  'flat-bottomed: its walls are apt to close as cold shuts':
    'mit flachem Boden: die Wände schließen gern als Kaltschweißstelle',
  'Shape of the dimple': 'Form der Mulde',
}
