/** Of the job file and what stands in it. */
export const job: Readonly<Record<string, string>> = {
  'the face shows {0}; {1} were wished for': 'die Fläche zeigt {0}; gewünscht waren {1}',
  'layers that cross the face divided by the length they span':
    'Lagen, die die Fläche kreuzen, geteilt durch die Länge, die sie überspannen',
  'restack into fewer pieces, or lay fewer sheets':
    'in weniger Stücke schneiden und neu legen, oder weniger Bleche legen',
  'restack into more pieces, or lay more sheets':
    'in mehr Stücke schneiden und neu legen, oder mehr Bleche legen',
  'it is {0} million characters long': 'sie ist {0} Millionen Zeichen lang',
  'a job file has fewer than {0} million': 'eine Auftragsdatei hat weniger als {0} Millionen',
  'is this the right file?': 'ist das die richtige Datei?',
  'pictures and logs do not belong in a job file':
    'Bilder und Protokolle gehören nicht in eine Auftragsdatei',
  'it is nested {0} deep': 'sie ist {0}-fach verschachtelt',
  'a job file is nested at most {0} deep':
    'eine Auftragsdatei ist höchstens {0}-fach verschachtelt',
  'check for brackets that do not close': 'nach Klammern suchen, die nicht schließen',
  'it holds no job': 'sie enthält keinen Auftrag',
  'a job file is one group of named values in braces':
    'eine Auftragsdatei ist eine Gruppe benannter Werte in geschweiften Klammern',
  'start from "billetwright new plaque"': 'mit „billetwright new plaque“ anfangen',
  '{0} is not a number one can forge to': '{0!} ist keine Zahl, auf die man schmieden kann',
  'JSON knows no NaN and no Infinity, and no bar has such a size':
    'JSON kennt kein NaN und kein Infinity, und kein Stab ist so groß',
  'write the size with its unit, in quotes: "12 mm"':
    'das Maß mit seiner Einheit schreiben, in Anführungszeichen: "12 mm"',
  'the file cannot be read from here on': 'ab hier ist die Datei nicht zu lesen',
  'it is not JSON: a comma, a quote or a bracket is missing there, or one is too many':
    'sie ist kein JSON: dort fehlt ein Komma, ein Anführungszeichen oder eine Klammer, oder es ist eines zu viel',
  'it is not JSON: it breaks off before it is complete':
    'sie ist kein JSON: sie bricht ab, bevor sie fertig ist',
  'look for a comma or a quote missing just before this place':
    'kurz vor dieser Stelle nach einem fehlenden Komma oder Anführungszeichen suchen',
  'quantities stand in quotes: "12 mm"': 'Größen stehen in Anführungszeichen: "12 mm"',
  'line {0}, column {1}': 'Zeile {0}, Spalte {1}',
  'the file does not say which format it is': 'die Datei sagt nicht, welches Format sie hat',
  'every job file carries its format number': 'jede Auftragsdatei trägt ihre Formatnummer',
  'write "billetwright": {0} at the top': 'oben "billetwright": {0} hineinschreiben',
  'the file is of format {0}; this program knows up to {1}':
    'die Datei hat Format {0}; dieses Programm kennt Formate bis {1}',
  'it was written by a newer program and may hold what this one would drop':
    'ein neueres Programm hat sie geschrieben; sie kann enthalten, was dieses fallen ließe',
  'use the newer program': 'das neuere Programm benutzen',
  'ask for the job in the older format': 'um den Auftrag im älteren Format bitten',
  'there is no route {0}': 'es gibt keinen Weg {0}',
  'the set has {0}': 'zur Wahl stehen {0}',
  'take 1': '1 nehmen',
  '"{0}" is not a pattern that is kept as steps':
    '„{0!}“ ist kein Muster, das als Schritte aufbewahrt ist',
  'kept are: {0}': 'aufbewahrt sind: {0}',
  'another pattern is put into a job that makes a piece of one bar, from a stack':
    'ein anderes Muster passt nur in einen Auftrag mit einem einzigen Stab, der mit einem Paket beginnt',
  'where several bars are joined the pattern lies in each of them':
    'wo mehrere Stäbe zusammenkommen, liegt das Muster in jedem von ihnen',
  'choose the build-up of one bar only': 'nur den Aufbau des einen Stabs wählen',
  'write the steps of the pattern into the job':
    'die Schritte des Musters in den Auftrag schreiben',
  'What the finished piece should weigh': 'Was das fertige Stück wiegen soll',
  'How far the weight may be off': 'Um wie viel das Gewicht abweichen darf',
  'Lines wanted across the face': 'Gewünschte Linien quer über die Fläche',
  'The pattern by its trade name': 'Das Muster, wie es im Handwerk heißt',
  'Layers wanted in the bar that shows the pattern, merged':
    'Gewünschte Lagen im Stab, der das Muster zeigt, Verschmolzenes als eine gezählt',
  'The most sheets in a first stack': 'Höchstens so viele Bleche im ersten Paket',
  'The most heats the whole work may take': 'Höchstens so viele Hitzen für die ganze Arbeit',
  'The longest the whole work may take': 'Höchstens so lange darf die ganze Arbeit dauern',
  'The most steel that may come off the rack': 'Höchstens so viel Stahl darf aus dem Regal kommen',
  'The bar that was measured': 'Der Stab, der gemessen wurde',
  'After which of its steps, counted from 1': 'Nach welchem seiner Schritte, gezählt ab 1',
  'Length found': 'Gefundene Länge',
  'Width found': 'Gefundene Breite',
  'Thickness found': 'Gefundene Dicke',
  'Weight found': 'Gefundenes Gewicht',
  'format number of this file': 'Formatnummer dieser Datei',
  'anything worth remembering': 'was man sich merken will',
  'the finished piece: its kind and sizes': 'das fertige Stück: seine Art und seine Maße',
  'weight, lines and pattern wished for': 'gewünschtes Gewicht, Linien und Muster',
  'what the shop has and loses, where it differs from common practice':
    'was die Werkstatt hat und verliert, wo es vom Üblichen abweicht',
  'what hours, fire and steel cost, where it differs from common practice':
    'was Stunden, Feuer und Stahl kosten, wo es vom Üblichen abweicht',
  'how far things turn out from what was meant': 'wie weit die Dinge vom Gemeinten abweichen',
  'the bars and remnants there are': 'die vorhandenen Stäbe und Reststücke',
  'how bars are cut: ends lost, the least remnant kept, metric or inch sizes':
    'wie Stäbe zugeschnitten werden: verlorene Enden, kleinstes Reststück, metrische oder Zollmaße',
  "the smith's own grades": 'eigene Stahlsorten',
  'the bars by name, each a list of steps': 'die Stäbe mit Namen, jeder eine Liste von Schritten',
  'the bar that becomes the piece': 'der Stab, der das Stück wird',
  'what was measured at the anvil': 'was am Amboss gemessen wurde',
  'seed of everything random': 'Anfangszahl für alles Zufällige',
  'Unnamed job': 'Auftrag ohne Namen',
  'the seed is not a whole number': 'die Anfangszahl ist keine ganze Zahl',
  'the same seed gives the same unevenness': 'dieselbe Anfangszahl gibt dieselbe Unebenheit',
  'write a whole number, such as 1': 'eine ganze Zahl schreiben, etwa 1',
  'the name is not words': 'der Name besteht nicht aus Worten',
  'a job is called by a name of at most 200 characters':
    'ein Auftrag heißt mit höchstens 200 Zeichen',
  'write "name": "Builder\'s plate"': '"name": "Builder\'s plate" schreiben',
  'the own steels are not a list': 'die eigenen Stähle sind keine Liste',
  'each own grade is one entry of a list': 'jede eigene Sorte ist ein Eintrag einer Liste',
  'write "steels": [ … ]': '"steels": [ … ] schreiben',
  'the rack is not a list': 'das Regal ist keine Liste',
  'each bar on the rack is one entry of a list': 'jeder Stab im Regal ist ein Eintrag einer Liste',
  'write "rack": [ { "steel": "1095", "thickness": "3 mm", "width": "40 mm", "length": "1 m" } ]':
    '"rack": [ { "steel": "1095", "thickness": "3 mm", "width": "40 mm", "length": "1 m" } ] schreiben',
  'the piece has no kind': 'das Stück hat keine Art',
  'the kind says which sizes are asked for': 'die Art sagt, nach welchen Maßen gefragt wird',
  'write "piece": { "kind": "plaque", … }': '"piece": { "kind": "plaque", … } schreiben',
  'the job has no bars': 'der Auftrag hat keine Stäbe',
  'a piece is forged from at least one bar': 'ein Stück wird aus mindestens einem Stab geschmiedet',
  'write "bars": { "main": [ { "do": "stack", … } ] }':
    '"bars": { "main": [ { "do": "stack", … } ] } schreiben',
  'the steps of this bar are not a list': 'die Schritte dieses Stabs sind keine Liste',
  'a bar is a list of at most {0} steps': 'ein Stab ist eine Liste von höchstens {0} Schritten',
  'write [ { "do": "stack", … } ]': '[ { "do": "stack", … } ] schreiben',
  'this step does not say what to do': 'dieser Schritt sagt nicht, was zu tun ist',
  'each step names one operation': 'jeder Schritt nennt einen Arbeitsschritt',
  'write { "do": "draw out", … }': '{ "do": "draw out", … } schreiben',
  '"{0}" is not something the program knows how to do':
    '„{0!}“ ist nichts, was das Programm zu tun weiß',
  'no operation has this name': 'kein Arbeitsschritt heißt so',
  'it is not said which bar becomes the piece': 'es ist nicht gesagt, welcher Stab das Stück wird',
  'there are several: {0}': 'es gibt mehrere: {0!}',
  'write "finish": "{0}"': '"finish": "{0!}" schreiben',
  'there is no bar called "{0}"': 'es gibt keinen Stab „{0!}“',
  'the job has: {0}': 'der Auftrag hat: {0!}',
  'the measurements are not a list': 'die Messungen sind keine Liste',
  'each measurement is one entry of a list': 'jede Messung ist ein Eintrag einer Liste',
  'write "measured": [ { "bar": "main", "after": 3, "mass": "590 g" } ]':
    '"measured": [ { "bar": "main", "after": 3, "mass": "590 g" } ] schreiben',
  'there is no step {0} of a bar called "{1}"': 'es gibt keinen Schritt {0} eines Stabs „{1!}“',
  'a measurement belongs to a step': 'eine Messung gehört zu einem Schritt',
  '"{0}" has {1}': '„{0!}“ hat {1}',
  'bars: {0}': 'Stäbe: {0!}',
  '"{0}" is not part of a job': '„{0!}“ gehört nicht zu einem Auftrag',
  'no part of a job file has this name': 'kein Teil einer Auftragsdatei heißt so',
  'parts: {0}': 'Teile: {0!}',
  'what the job is called': 'wie der Auftrag heißt',
  'there is no such place in the job': 'diese Stelle gibt es im Auftrag nicht',
  'a place is named as problems name it: steps counted from 0':
    'eine Stelle heißt, wie Fehler sie nennen: Schritte gezählt ab 0',
  'the piece': 'das Stück',
  'the route': 'der Arbeitsgang',
  'the force': 'die Kraft',
  'the heats': 'die Hitzen',
  'the route as it is': 'der Arbeitsgang, wie er ist',
  'the best of them in full': 'die besten davon ganz',
  'every way of building up': 'jeder Weg des Aufbaus',
}
