/** Operations, a to c, by their folders. */
export const operationsAC: Readonly<Record<string, string>> = {
  'Left standing at the root of every cut (from memory: 4 to 6 mm; a 25 mm bar cut two thirds through has 8 mm)':
    'Am Grund jedes Schnitts stehen gelassen (aus dem Gedächtnis: 4 bis 6 mm; ein zu zwei Dritteln eingeschnittener Stab von 25 mm hat 8 mm)',
  'Radius at the root of the cut: half the diameter of a hole drilled there; left out, half the cut':
    'Radius am Grund des Schnitts: der halbe Durchmesser eines dort gebohrten Lochs; ohne Angabe der halbe Schnitt',
  'Heats to open it out and flatten it': 'Hitzen zum Aufklappen und Flachschmieden',
  'Cut the bar nearly through from above and below in turn, open it out and flatten it.':
    'Den Stab abwechselnd von oben und unten fast durchschneiden, aufklappen und flach schmieden.',
  'opening it out': 'das Aufklappen',
  'opening the cuts': 'das Öffnen der Schnitte',
  '{0} leaves of {1}: the section shows every {2}, each time the mirror of the last.':
    '{0} Blätter von {1}: der Querschnitt erscheint alle {2}, jedes Mal gespiegelt.',
  'Anneal before sawing; open every cut a little at each heat.':
    'Vor dem Sägen weichglühen; bei jeder Hitze jeden Schnitt ein wenig öffnen.',
  'only a square or flat bar opens out flat': 'nur ein Vierkant- oder Flachstab klappt flach auf',
  'leaves of a round bar would be lens-shaped': 'die Blätter eines Rundstabs wären linsenförmig',
  'square the bar up first': 'den Stab erst vierkant schmieden',
  'with {0} left standing the cuts do not pass one another in a bar {1} thick':
    'mit {0} stehen gelassen gehen die Schnitte in einem {1} dicken Stab nicht aneinander vorbei',
  'cuts from both sides must go past the middle, or it does not unfold':
    'Schnitte von beiden Seiten müssen über die Mitte gehen, sonst klappt es nicht auf',
  'leave less than {0}': 'weniger als {0} stehen lassen',
  'use a thicker bar': 'einen dickeren Stab nehmen',
  'the hinges stretch by {0} % as they open': 'die Scharniere dehnen sich beim Öffnen um {0} %',
  'the metal tears at the root of a narrow cut if it is forced (common practice; above about 70 %)':
    'am Grund eines engen Schnitts reißt das Metall, wenn man es zwingt (allgemein üblich; über etwa 70 %)',
  'drill the roots, and state their radius': 'am Grund Löcher bohren und ihren Radius angeben',
  'leave less standing': 'weniger stehen lassen',
  'open it a little at each heat': 'bei jeder Hitze ein wenig öffnen',
  'Heat it is cooled from (from memory: just over the critical point, or 650 to 700 °C held below it)':
    'Hitze, von der abgekühlt wird (aus dem Gedächtnis: knapp über dem Haltepunkt, oder darunter bei 650 bis 700 °C gehalten)',
  'Time at heat once the core is hot': 'Zeit auf Hitze, sobald der Kern heiß ist',
  'buried in vermiculite or ash': 'in Vermiculit oder Asche gebettet',
  'left in the fire or kiln as it cools': 'im Feuer oder Ofen gelassen, bis es abgekühlt ist',
  'How it cools slowly': 'Wie langsam abgekühlt wird',
  'Heat through and cool slowly, so that the steel is soft to saw, drill and file.':
    'Durchwärmen und langsam abkühlen, damit der Stahl sich weich sägen, bohren und feilen lässt.',
  'Put it in before the fire has cooled it: what goes in black stays hard.':
    'Einlegen, bevor er abgekühlt ist: was schwarz hineinkommt, bleibt hart.',
  'in the plane of its faces: the curve of a sabre':
    'in der Ebene seiner Flächen: die Krümmung eines Säbels',
  'over its face: a hook, or right round into a ring':
    'über seine Fläche: ein Haken, oder rundherum zum Ring',
  'Which way the bar is bent': 'In welche Richtung der Stab gebogen wird',
  'Radius of the middle line': 'Radius der Mittellinie',
  'Heats taken': 'Zahl der Hitzen',
  'Bend the bar to an even curve, edgewise or flatwise; the outside stretches, the inside is upset.':
    'Den Stab gleichmäßig biegen, hochkant oder flach; außen streckt er sich, innen wird er gestaucht.',
  'The middle line is {0} deep in its curve; it keeps its length of {1}.':
    'Die Mittellinie ist in ihrem Bogen {0} tief; sie behält ihre Länge von {1}.',
  'The outside stretches by {0} and the inside is upset by as much: lines of the pattern open and close with it.':
    'Außen streckt es sich um {0}, innen wird um ebenso viel gestaucht: die Linien des Musters öffnen und schließen sich mit.',
  'a bar {0} thick cannot be bent to a radius of {1}':
    'ein {0} dicker Stab lässt sich nicht auf einen Radius von {1} biegen',
  'its inside would have no length left': 'innen bliebe keine Länge übrig',
  'a radius of {0} or more': 'ein Radius von {0} oder mehr',
  'draw the bar thinner first': 'den Stab erst dünner ausschmieden',
  'a bar {0} long goes more than once round at {1}':
    'ein {0} langer Stab geht bei {1} mehr als einmal herum',
  'once round takes {0}': 'einmal herum braucht {0}',
  'cut it to {0}': 'auf {0} schneiden',
  'a larger radius': 'ein größerer Radius',
  'the outside stretches by {0}': 'außen streckt es sich um {0}',
  'a bend this sharp thins on the outside, swells on the inside and tries the welds (common practice)':
    'eine so enge Biegung wird außen dünner, schwillt innen und zehrt an den Schweißungen (allgemein üblich)',
  'bend in several heats, near welding heat': 'in mehreren Hitzen biegen, nahe der Schweißhitze',
  'a narrower bar': 'ein schmalerer Stab',
  'Saw the bar lengthwise through its thickness and lay the two leaves open side by side, cut faces up.':
    'Den Stab der Länge nach durch seine Dicke sägen und die beiden Blätter aufgeklappt nebeneinanderlegen, Schnittflächen nach oben.',
  'sawing it through': 'das Durchsägen',
  'The cut faces are the matched pair: grind them as little as they allow.':
    'Die Schnittflächen sind das Spiegelpaar: so wenig schleifen, wie es geht.',
  'only a square or flat bar opens into two leaves that lie flush':
    'nur ein Vierkant- oder Flachstab klappt in zwei bündig liegende Blätter auf',
  'halves of a round bar meet along a line':
    'die Hälften eines Rundstabs treffen sich in einer Linie',
  'a cut of {0} leaves nothing of a bar {1} thick':
    'ein Schnitt von {0} lässt von einem {1} dicken Stab nichts übrig',
  'the saw goes through the middle of its thickness': 'die Säge geht durch die Mitte seiner Dicke',
  'use a thinner blade': 'ein dünneres Sägeblatt nehmen',
  'start from a thicker bar': 'mit einem dickeren Stab anfangen',
  'Width and height inside the tube': 'Breite und Höhe im Rohr',
  'Length of the can over its caps': 'Länge des Kanisters über die Deckel',
  'Thickness of the tube (common practice: 1/16 to 1/8 in)':
    'Wanddicke des Rohrs (allgemein üblich: 1/16 bis 1/8 in)',
  'Thickness of the plate on each end': 'Dicke der Platte an jedem Ende',
  'Steel of the tube and its caps': 'Stahl des Rohrs und seiner Deckel',
  'Steel of the powder': 'Stahl des Pulvers',
  'Share of its own space that the powder fills once shaken down (from memory: 55 to 65 %)':
    'Anteil des eigenen Raums, den das Pulver eingerüttelt füllt (aus dem Gedächtnis: 55 bis 65 %)',
  'What stands in the powder: balls, chain, cable, rods, shapes':
    'Was im Pulver steht: Kugeln, Kette, Seil, Stangen, Formen',
  'What they are': 'Was es ist',
  'Mass of all of them together, weighed': 'Masse von allem zusammen, gewogen',
  'Fill a square steel tube with powder and solids, shake it down and weld on its caps.':
    'Ein Vierkantrohr aus Stahl mit Pulver und Einlagen füllen, einrütteln und die Deckel aufschweißen.',
  'Filled to {0} of its room: solid once its section is {1} across each way, or {2} of its height pressed one way only.':
    'Zu {0} des Raums gefüllt: dicht, sobald der Querschnitt in jeder Richtung auf {1} ist, oder auf {2} der Höhe, wenn nur in einer Richtung gepresst wird.',
  'Soak it 10 to 15 min at welding heat before the first squeeze (common practice).':
    'Vor dem ersten Druck 10 bis 15 min bei Schweißhitze durchwärmen (allgemein üblich).',
  'between bottom and top wall': 'zwischen Boden und oberer Wand',
  'between side walls': 'zwischen den Seitenwänden',
  'between caps': 'zwischen den Deckeln',
  'two caps of {0} leave no room in a can {1} long':
    'zwei Deckel von {0} lassen in einem {1} langen Kanister keinen Platz',
  'the length is stated over the caps': 'die Länge gilt über die Deckel',
  'make the can longer': 'den Kanister länger machen',
  'use thinner caps': 'dünnere Deckel nehmen',
  'the solids would take {0} of the room': 'die Einlagen nähmen {0} des Raums ein',
  'no shape packs as tightly as that: the can is too small or a mass is wrong':
    'so dicht liegt keine Form: der Kanister ist zu klein oder ein Gewicht ist falsch',
  'weigh them again': 'noch einmal wiegen',
  'use a wider or longer can': 'einen weiteren oder längeren Kanister nehmen',
  'put fewer in': 'weniger hineintun',
  'the solids take {0} of the room': 'die Einlagen nehmen {0} des Raums ein',
  'balls shaken down fill 64 %; more goes in only if they lie in order, and powder reaches the gaps badly':
    'eingerüttelte Kugeln füllen 64 %; mehr geht nur geordnet hinein, und das Pulver erreicht die Lücken schlecht',
  'lay rods and cable side by side': 'Stangen und Seil nebeneinanderlegen',
  'shake the powder in as the can is filled': 'das Pulver beim Füllen einrütteln',
  'san mai: a core between two jackets': 'San-mai: ein Kern zwischen zwei Mänteln',
  'go mai: another layer between the core and each jacket':
    'Go-mai: noch eine Lage zwischen dem Kern und jedem Mantel',
  'How many thick layers there are': 'Wie viele dicke Lagen es sind',
  'Name of the core, where this step begins a bar; left out, the bar in hand':
    'Name des Kerns, wo dieser Schritt einen Stab beginnt; ohne Angabe der Stab in der Hand',
  'Name of the bar that is cut in two for the outsides':
    'Name des Stabs, der für die Außenseiten in zwei geteilt wird',
  'Or a plain sheet of this steel outside': 'Oder außen ein schlichtes Blech aus diesem Stahl',
  'Thickness of each plain sheet outside': 'Dicke jedes schlichten Blechs außen',
  'Name of the bar that is cut in two and laid next to the core, of five layers':
    'Name des Stabs, der in zwei geteilt und an den Kern gelegt wird, bei fünf Lagen',
  'Or a plain sheet of this steel next to the core, of five layers':
    'Oder am Kern ein schlichtes Blech aus diesem Stahl, bei fünf Lagen',
  'Thickness of each plain sheet next to the core': 'Dicke jedes schlichten Blechs am Kern',
  'Lay jackets on both faces of the core, alike, so that the core comes out at the edge.':
    'Auf beide Flächen des Kerns gleiche Mäntel legen, sodass der Kern an der Schneide heraustritt.',
  'cutting it to length': 'das Ablängen',
  'Turn it over at every heat; dip an end in acid each time its thickness has halved: the core must stay in the middle.':
    'Bei jeder Hitze wenden; ein Ende in Säure tauchen, sooft sich die Dicke halbiert hat: der Kern muss in der Mitte bleiben.',
  'Core {0} of the thickness.': 'Der Kern ist {0} der Dicke.',
  'a bar and a plain steel are both stated':
    'ein Stab und ein schlichter Stahl sind beide angegeben',
  'neither a bar nor a plain steel is stated':
    'weder ein Stab noch ein schlichter Stahl ist angegeben',
  'the layer is one or the other': 'die Lage ist entweder das eine oder das andere',
  'a round or eight-sided bar has no face to lay a jacket on':
    'ein runder oder achtkantiger Stab hat keine Fläche, auf die ein Mantel passt',
  'core and jackets meet along flats': 'Kern und Mäntel treffen sich auf Flächen',
  'a jacket bar is too short to be cut in two':
    'ein Mantelstab ist zu kurz, um ihn in zwei zu teilen',
  'the cut alone takes {0}': 'allein der Schnitt nimmt {0}',
  'make the jacket bar longer': 'den Mantelstab länger machen',
  'core and jackets together do not make {0} in {1}':
    'Kern und Mäntel zusammen geben in der {1} keine {0}',
  'longer bars make it longer; the {0} is theirs':
    'längere Stäbe machen es länger; die {0} bringen sie selbst mit',
  'use thicker or wider bars': 'dickere oder breitere Stäbe nehmen',
  'draw out less after': 'danach weniger ausschmieden',
  "Cut off the start of the bar, where the tongs or the handle held it; left out, the shop's":
    'Vom Anfang des Stabs abgeschnitten, wo Zange oder Griff ihn hielt; ohne Angabe der Wert der Werkstatt',
  "Cut off the end of the bar; left out, the shop's":
    'Vom Ende des Stabs abgeschnitten; ohne Angabe der Wert der Werkstatt',
  'Cut off both ends, back to sound metal.': 'Beide Enden bis auf gesundes Metall abschneiden.',
  'Lost with the cropped ends: {0}.': 'Mit den Enden gehen ab: {0}.',
  'Etch or look closely at the cut ends: a dark line is a weld that did not take.':
    'Die Schnittenden ätzen oder genau ansehen: eine dunkle Linie ist eine Schweißung, die nicht gehalten hat.',
  'cropping {0} and {1} leaves nothing of a bar {2} long':
    '{0} und {1} abzuschneiden lässt von einem {2} langen Stab nichts übrig',
  'both ends are cut off': 'beide Enden werden abgeschnitten',
  'crop less': 'weniger abschneiden',
  'draw the bar longer first': 'den Stab erst länger ausschmieden',
  'start from a longer stack': 'mit einem längeren Paket anfangen',
  'Length kept in hand, from the start of the bar':
    'Länge, die in der Hand bleibt, vom Anfang des Stabs',
  'Length the remnant must have at least; left out, it is whatever is over':
    'Länge, die das Reststück mindestens haben muss; ohne Angabe, was übrig ist',
  'Cut the length wanted off the bar, go on with it, and put the rest by as a remnant.':
    'Die gewünschte Länge vom Stab schneiden, damit weitermachen und den Rest als Reststück weglegen.',
  'Mark the remnant, {0} long: pattern, layers, which face is which.':
    'Das Reststück, {0} lang, zeichnen: Muster, Lagen, welche Fläche welche ist.',
  '{0} cannot be cut off a bar {1} long':
    '{0} lassen sich von einem {1} langen Stab nicht abschneiden',
  'the bar is shorter than the length to keep':
    'der Stab ist kürzer als die Länge, die bleiben soll',
  'keep {0} or less': '{0} oder weniger behalten',
  'no remnant of {0} is over from a bar {1} long':
    'von einem {1} langen Stab bleibt kein Reststück von {0}',
  '{0} is kept and the cut takes {1}': '{0} bleiben, und der Schnitt nimmt {1}',
  'ask for a shorter remnant': 'ein kürzeres Reststück verlangen',
  'keep less': 'weniger behalten',
  '{0} is kept; the rest of the work needs {1}': '{0} bleiben; die übrige Arbeit braucht {1}',
  'a longer bar only makes a longer remnant': 'ein längerer Stab macht nur das Reststück länger',
  'keep {0}': '{0} behalten',
}
