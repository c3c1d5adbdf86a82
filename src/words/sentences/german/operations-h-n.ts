/** Operations, h to n, by their folders. */
export const operationsHN: Readonly<Record<string, string>> = {
  'Heat it is quenched from; it must suit both steels (from memory: 790 to 815 °C for plain carbon and nickel blade steels)':
    'Hitze, von der abgeschreckt wird; sie muss für beide Stähle passen (aus dem Gedächtnis: 790 bis 815 °C für schlichte Kohlenstoff- und Nickelstähle)',
  'fast quenching oil, for 1084, 1095, 15N20 and their like':
    'schnelles Härteöl, für 1084, 1095, 15N20 und ihresgleichen',
  'medium oil, for O1, 5160, 52100 and their like':
    'mittleres Öl, für O1, 5160, 52100 und ihresgleichen',
  'water: shallow-hardening steels only, and it cracks layered ones':
    'Wasser: nur für flach härtende Stähle, und geschichtete reißen darin',
  'brine, faster than water': 'Salzwasser, schneller als Wasser',
  'between cold plates, for air-hardening steels': 'zwischen kalten Platten, für Lufthärter',
  'still air, for air-hardening steels': 'ruhige Luft, für Lufthärter',
  'What it is quenched in': 'Worin abgeschreckt wird',
  'Taken out of the quench at this heat and straightened while it is not yet hard; left out, it cools in the quench':
    'Bei dieser Hitze aus dem Bad genommen und gerichtet, solange es noch nicht hart ist; ohne Angabe kühlt es im Bad ab',
  'Heat evenly above the critical point of both steels and quench; temper it the same hour.':
    'Gleichmäßig über den Haltepunkt beider Stähle wärmen und abschrecken; noch in derselben Stunde anlassen.',
  'Look along it as it comes out: it can be straightened for a few seconds, before it is hard.':
    'Beim Herausnehmen daran entlangsehen: einige Sekunden lang lässt es sich richten, bevor es hart ist.',
  'Take it out at {0}, straighten it, and let it cool in air between plates.':
    'Bei {0} herausnehmen, richten und an Luft zwischen Platten abkühlen lassen.',
  'Try an edge or a corner with a file, then temper it the same hour.':
    'Eine Kante oder Ecke mit der Feile prüfen, dann in derselben Stunde anlassen.',
  'nothing hardens from {0}': 'von {0} härtet nichts',
  'below about 727 °C no steel of iron and carbon turns to austenite':
    'unter etwa 727 °C wird kein Stahl aus Eisen und Kohlenstoff zu Austenit',
  'quench from 790 to 815 °C': 'von 790 bis 815 °C abschrecken',
  'go by the magnet: it lets go near 770 °C': 'nach dem Magneten gehen: nahe 770 °C lässt er los',
  'it is hardened as it was forged': 'es wird gehärtet, wie es geschmiedet ist',
  'welding heats leave the grain coarse and the steel under stress: it warps more and breaks sooner (common practice)':
    'Schweißhitzen lassen das Korn grob und den Stahl unter Spannung: er verzieht sich mehr und bricht eher (allgemein üblich)',
  'normalise it first': 'erst normalisieren',
  'layered steel quenched in {0}': 'Lagenstahl abgeschreckt (Mittel: {0})',
  'the two steels harden at different moments and the weld between them is strained; cracks start at groove floors and stamps (common practice)':
    'die beiden Stähle härten zu verschiedenen Zeiten, und die Schweißung dazwischen wird gespannt; Risse beginnen am Grund von Nuten und Stempeln (allgemein üblich)',
  'leave the edge thicker and break every corner before the quench':
    'die Schneide dicker lassen und vor dem Abschrecken jede Ecke brechen',
  'the pieces are from {0} to {1} in {2}; all are ground to {3}':
    'die Stücke haben in der {2} {0} bis {1}; alle werden auf {3} geschliffen',
  'faces that do not lie flush do not weld': 'Flächen, die nicht bündig liegen, schweißen nicht',
  'draw all of them to one {0} before they are joined':
    'alle auf eine {0} ausschmieden, bevor sie zusammenkommen',
  'grinding {0} off each face leaves nothing of a piece {1} thick':
    '{0} von jeder Fläche zu schleifen lässt von einem {1} dicken Stück nichts übrig',
  'an opening of {0} between the dies': 'eine Öffnung von {0} zwischen den Gesenken',
  'a lower stack, restacked once more': 'ein niedrigeres Paket, einmal mehr neu gelegt',
  'about {0}': 'etwa {0}',
  'the {0} cannot do this in {1}': 'mit {0} geht das nicht in {1}',
  'with the {0} this takes {1}, not {2}': 'mit {0} braucht es {1}, nicht {2}',
  'for the {0} this is near the end of what it can do': 'für {0} ist das nahe an der Grenze',
  'a stronger tool': 'ein stärkeres Werkzeug',
  '{0} kN ({1} to {2})': '{0} kN ({1} bis {2})',
  '{0} ({1} to {2})': '{0} ({1} bis {2})',
  'let it spread: leave the width out, and grind it':
    'breiten lassen: die Breite weglassen und schleifen',
  'a narrower stack or bar': 'ein schmaleres Paket oder ein schmalerer Stab',
  'narrower dies, which lengthen more and spread less':
    'schmalere Gesenke, die mehr längen und weniger breiten',
  'light blows on edge, straightened between them': 'leichte Schläge hochkant, dazwischen richten',
  'How deep each groove is cut (common practice: a third of the thickness, a quarter to be safe)':
    'Wie tief jede Nut geschnitten wird (allgemein üblich: ein Drittel der Dicke, sicherer ein Viertel)',
  'Width of the groove at the face': 'Breite der Nut an der Fläche',
  'From one groove to the next on the same side': 'Von einer Nut zur nächsten auf derselben Seite',
  'both faces, the grooves of one between those of the other':
    'beide Flächen, die Nuten der einen zwischen denen der anderen',
  'both faces, groove over groove': 'beide Flächen, Nut über Nut',
  'Which faces are cut': 'Welche Flächen geschnitten werden',
  'Left uncut at each end': 'An jedem Ende ungeschnitten',
  'Cut grooves across the bar, through many layers; forging it flat brings the cut layers up as rungs.':
    'Nuten quer über den Stab schneiden, durch viele Lagen; flach geschmiedet kommen die angeschnittenen Lagen als Sprossen herauf.',
  'cutting grooves': 'das Schneiden von Nuten',
  '{0} on the top, {1} % of the metal.': '{0} oben, {1} % des Metalls.',
  '{0} a side, {1} % of the metal.': '{0} je Seite, {1} % des Metalls.',
  'The thinnest web is {0}: forged flat to that or less every groove closes; level, the metal stands {1} thick.':
    'Der dünnste Steg ist {0}: darauf oder darunter flach geschmiedet schließt sich jede Nut; eingeebnet ist das Metall {1} dick.',
  'Each flank crosses about {0}.': 'Jede Flanke kreuzt etwa {0}.',
  'Round the rims and leave no saw marks in the floors: a mark there becomes a cold shut.':
    'Die Ränder runden und am Grund keine Sägespuren lassen: eine Spur dort wird zur Kaltschweißstelle.',
  'the bar is {0}: it has no two flat faces to cut':
    'der Stab ist {0}: er hat keine zwei flachen Seiten zum Schneiden',
  'a ladder is cut across a flat bar': 'eine Leiter wird quer über einen Flachstab geschnitten',
  'grooves {0} wide run into one another at a pitch of {1}':
    '{0} breite Nuten laufen bei einer Teilung von {1} ineinander',
  'nothing of the face would be left between them': 'zwischen ihnen bliebe nichts von der Fläche',
  'a pitch of {0} or more': 'eine Teilung von {0} oder mehr',
  'narrower grooves': 'schmalere Nuten',
  'leaving {0} at each end leaves nothing of {1} to cut':
    '{0} an jedem Ende stehen zu lassen lässt von {1} nichts zum Schneiden',
  'the grooves lie between the two ends': 'die Nuten liegen zwischen den beiden Enden',
  'leave less': 'weniger stehen lassen',
  'start from a longer bar': 'mit einem längeren Stab anfangen',
  'grooves {0} deep cut a bar {1} thick through':
    '{0} tiefe Nuten schneiden einen {1} dicken Stab durch',
  'the grooves of the two faces meet': 'die Nuten der beiden Flächen treffen sich',
  'cut {0} deep: a third of the thickness': '{0} tief schneiden: ein Drittel der Dicke',
  'offset the grooves of the two faces': 'die Nuten der beiden Flächen gegeneinander versetzen',
  'a wider pitch': 'eine weitere Teilung',
  'the grooves are deeper ({0}) than wide ({1})': 'die Nuten sind tiefer ({0}) als breit ({1})',
  'a narrow groove closes at its mouth first and its floor becomes a cold shut (common practice)':
    'eine schmale Nut schließt sich zuerst am Mund, und ihr Grund wird zur Kaltschweißstelle (allgemein üblich)',
  '{0} deep or less': '{0} tief oder weniger',
  'wider grooves': 'breitere Nuten',
  'the grooves take {0} % of the thickness': 'die Nuten nehmen {0} % der Dicke',
  'a third is the rule and a quarter is safer: the blade can come out thinner than the grooves are deep (common practice)':
    'ein Drittel ist die Regel, ein Viertel ist sicherer: die Klinge kann dünner herauskommen, als die Nuten tief sind (allgemein üblich)',
  'Name of a bar of the job, or "this" for the bar in hand':
    'Name eines Stabs des Auftrags, oder „this“ für den Stab in der Hand',
  'The bars from one side to the other; a bar named twice is cut in two. The bar in hand comes first unless "this" says where':
    'Die Stäbe von einer Seite zur anderen; ein zweimal genannter Stab wird in zwei geteilt. Der Stab in der Hand kommt zuerst, wenn nicht „this“ sagt, wohin',
  'Lay bars beside one another, cut to one length, the faces that meet ground flat and bright.':
    'Stäbe nebeneinanderlegen, auf eine Länge geschnitten, die Stoßflächen eben und blank geschliffen.',
  'Lay mark to mark: one bar turned the wrong way makes another pattern.':
    'Zeichen an Zeichen legen: ein falsch herum gelegter Stab macht ein anderes Muster.',
  'the row is {0} in {1}; {2} is wanted': 'die Reihe hat in der {1} {0}; gewünscht sind {2}',
  'the {0} is that of the bars laid together': 'die {0} ist die der zusammengelegten Stäbe',
  'lay more or wider bars': 'mehr oder breitere Stäbe legen',
  'one bar alone makes no row': 'ein Stab allein ist keine Reihe',
  'at least two pieces lie side by side': 'mindestens zwei Stücke liegen nebeneinander',
  'name the same bar twice: it is cut in two':
    'denselben Stab zweimal nennen: er wird in zwei geteilt',
  'a bar is too short to be cut up as often as it is named':
    'ein Stab ist zu kurz, um ihn so oft zu teilen, wie er genannt ist',
  '{0} pieces lie in the row and each cut takes {1}':
    '{0} Stücke liegen in der Reihe, und jeder Schnitt nimmt {1}',
  'name it less often': 'ihn seltener nennen',
  'make the bar longer': 'den Stab länger machen',
  '{0} of the row is gaps between rounded corners':
    '{0} der Reihe sind Lücken zwischen gerundeten Ecken',
  'gaps must be closed at welding heat or ground out; one eighth of a bundle was lost to them (common practice)':
    'Lücken müssen bei Schweißhitze geschlossen oder herausgeschliffen werden; ein Achtel eines Bündels ging an sie verloren (allgemein üblich)',
  'square the bars up first': 'die Stäbe erst vierkant schmieden',
  'grind deeper flats where they meet': 'breitere Flächen anschleifen, wo sie sich treffen',
  'the piece leaves this step {0} too small in {1}':
    'das Stück kommt aus diesem Schritt in der {1} {0} zu klein heraus',
  'more comes off its faces than was left on them when it was ground to shape':
    'von seinen Flächen geht mehr ab, als beim Schleifen in Form stehen blieb',
  'leave {0} more on each face when grinding to shape':
    'beim Schleifen in Form auf jeder Fläche {0} mehr lassen',
  'burn less: a shorter soak, a coated blade':
    'weniger verbrennen: kürzer durchwärmen, die Klinge überziehen',
  'no length of bar brings this step to the size wanted':
    'keine Stablänge bringt diesen Schritt auf das gewünschte Maß',
  'the size after the step does not grow with the bar':
    'das Maß nach dem Schritt wächst nicht mit dem Stab',
  'state the size this step should leave': 'das Maß angeben, das dieser Schritt lassen soll',
  'the bar leaves this step {0} in {1}; {2} is wanted':
    'der Stab kommt aus diesem Schritt mit {0} in der {1}; gewünscht sind {2}',
  'a longer bar does not help: the {0} is set by this step or by the stack':
    'ein längerer Stab hilft nicht: die {0} bestimmt dieser Schritt oder das Paket',
  'leave at least {0} here': 'hier mindestens {0} lassen',
  'make the stack larger in the direction that becomes the {0}':
    'das Paket in der Richtung größer machen, aus der die {0} wird',
  'there is no bar in hand here': 'hier ist kein Stab in der Hand',
  '"{0}" is the bar in hand, and this step begins a bar':
    '„{0!}“ ist der Stab in der Hand, und dieser Schritt beginnt einen Stab',
  'name the bar that is meant': 'den gemeinten Stab nennen',
  'make it the step of a bar that is under way':
    'einen Schritt eines Stabs daraus machen, der schon unter der Hand ist',
  'How often it is heated and cooled in still air (common practice: three)':
    'Wie oft gewärmt und in ruhiger Luft abgekühlt wird (allgemein üblich: dreimal)',
  'Heat of the first cycle (from memory, for plain carbon blade steels)':
    'Hitze des ersten Durchgangs (aus dem Gedächtnis, für schlichte Kohlenstoffstähle)',
  'Heat of the last cycle; those between step evenly':
    'Hitze des letzten Durchgangs; die dazwischen in gleichen Stufen',
  'Heat through and cool in still air, each time a little cooler, so that the grain grown at welding heat is fine again.':
    'Durchwärmen und in ruhiger Luft abkühlen, jedes Mal etwas kühler, damit das bei Schweißhitze gewachsene Korn wieder fein wird.',
  'Hang it straight in still air; let it go black before the next heat.':
    'Gerade in ruhige Luft hängen; vor der nächsten Hitze schwarz werden lassen.',
  'no cycle is hotter than {0}': 'kein Durchgang ist heißer als {0}',
  'below about 727 °C the old grain stays as it is':
    'unter etwa 727 °C bleibt das alte Korn, wie es ist',
  'make the first cycle 870 °C': 'den ersten Durchgang auf 870 °C bringen',
  'call it an anneal, if softness is all that is wanted':
    'als Weichglühen führen, wenn nur Weichheit gewünscht ist',
  'the heat burns {0} off every face': 'die Hitze verbrennt {0} von jeder Fläche',
  '{0} heats burn {1} off every face': '{0} Hitzen verbrennen {1} von jeder Fläche',
  'power hammer of {0}': 'Krafthammer von {0}',
  'hand hammer of {0}': 'Handhammer von {0}',
  '4 lb hand hammer': 'Handhammer von 4 lb',
  'press of {0}': 'Presse mit {0}',
  'it takes {0} and {1}, at a flow stress of {2}':
    'es braucht {0} und {1}, bei einer Fließspannung von {2}',
  'it takes {0}, at a flow stress of {1}': 'es braucht {0}, bei einer Fließspannung von {1}',
  'round bottom: crowds the lines at the rim': 'runder Grund: drängt die Linien am Rand zusammen',
  'V: spaces the lines evenly': 'V: verteilt die Linien gleichmäßig',
  'flat bottom, straight walls: crowds the lines at the rim; the corners are apt to fold':
    'flacher Grund, gerade Wände: drängt die Linien am Rand zusammen; die Ecken falten sich leicht',
  'Shape of the groove': 'Form der Nut',
}
