/** What is read: quantities, parameters, grades. */
export const reading: Readonly<Record<string, string>> = {
  'lines per metre': 'Linien je Meter',
  'turns per metre': 'Umdrehungen je Meter',
  "the shop's own money": 'das Geld der Werkstatt',
  'a length': 'eine Länge',
  'a mass': 'eine Masse',
  'a temperature': 'eine Temperatur',
  'a time': 'eine Zeit',
  'an angle': 'ein Winkel',
  'a pressure': 'ein Druck',
  'a force': 'eine Kraft',
  'an energy': 'eine Energie',
  'a fineness of lines': 'eine Linienfeinheit',
  'a twist': 'eine Torsion',
  'a ratio': 'ein Verhältnis',
  'a speed': 'eine Geschwindigkeit',
  'an area': 'eine Fläche',
  'a volume': 'ein Volumen',
  'a sum of money': 'eine Geldsumme',
  'Nothing is written where {0} is wanted.': 'Es steht nichts da, wo {0} verlangt ist.',
  '"{0}…" is {1} characters long; {2} is not.':
    '„{0!}…“ ist {1} Zeichen lang; so lang ist {2} nicht.',
  'Nothing over {0} characters is read.': 'Mehr als {0} Zeichen werden nicht gelesen.',
  '{0} is written as a number and a unit.': '{0} wird als Zahl mit Einheit geschrieben.',
  '"{0}" can be read two ways.': '„{0!}“ lässt sich auf zwei Arten lesen.',
  '"{0}" in "{1}" is not a number.': '„{0!}“ in „{1!}“ ist keine Zahl.',
  'A comma may mark thousands or decimals.': 'Ein Komma kann Tausender oder Dezimalen trennen.',
  '"{0}" in "{1}" divides by nothing.': '„{0!}“ in „{1!}“ teilt durch nichts.',
  'A fraction needs a lower number above zero.': 'Ein Bruch braucht unten eine Zahl über null.',
  '"{0}" in "{1}" has a fraction of one or more.':
    '„{0!}“ in „{1!}“ hat einen Bruch von eins oder mehr.',
  'After a whole number the fraction must be less than one.':
    'Nach einer ganzen Zahl muss der Bruch kleiner als eins sein.',
  '"{0}" does not start with a number.': '„{0!}“ beginnt nicht mit einer Zahl.',
  '"{0}" in "{1}" does not start with a number.': '„{0!}“ in „{1!}“ beginnt nicht mit einer Zahl.',
  '"{0}" has no unit.': '„{0!}“ hat keine Einheit.',
  'Without a unit it could mean several things.': 'Ohne Einheit könnte es mehreres bedeuten.',
  '"{0}" is not understood: powers of ten are not read.':
    '„{0!}“ wird nicht verstanden: Zehnerpotenzen werden nicht gelesen.',
  'Write the number out, or take a larger or smaller unit.':
    'Die Zahl ausschreiben oder eine größere oder kleinere Einheit nehmen.',
  '"{0}" is a range; one value is wanted.':
    '„{0!}“ ist ein Bereich; verlangt ist ein einzelner Wert.',
  '1:3 may be one part in three, or one part to three others.':
    '1:3 kann ein Teil von dreien sein oder ein Teil auf drei andere.',
  '"{0}" does not say which degrees.': '„{0!}“ sagt nicht, welche Grade.',
  '°C and °F differ.': '°C und °F sind verschieden.',
  '"{0}" belongs to {1}, not to {2}.': '„{0!}“ gehört zu: {1}; verlangt ist: {2}.',
  '"{0}" in "{1}" is not a unit of {2}.':
    '„{0!}“ in „{1!}“ ist dafür keine Einheit (verlangt: {2}).',
  '"{0}" is not understood: {1} does not go after {2}.':
    '„{0!}“ wird nicht verstanden: {1!} folgt nicht auf {2!}.',
  'Parts are added only when each is of a smaller unit of the same system.':
    'Teile werden nur addiert, wenn jeder eine kleinere Einheit desselben Systems hat.',
  '"{0}" is no twist: a turn cannot fit in no length.':
    '„{0!}“ ist keine Torsion: auf keiner Länge ist Platz für eine Umdrehung.',
  'A pitch is the length to one full turn.': 'Eine Steigung ist die Länge einer ganzen Umdrehung.',
  '{0} stands where named values are wanted': '{0} steht, wo benannte Werte verlangt sind',
  'a group of values is written in braces': 'eine Gruppe von Werten steht in geschweiften Klammern',
  'write { {0} }': '{ {0!} } schreiben',
  '"{0}" is not asked for here': 'nach „{0!}“ wird hier nicht gefragt',
  'no parameter has this name': 'keine Angabe heißt so',
  'did you mean "{0}"?': '„{0!}“ gemeint?',
  'leave it out: nothing is asked for here': 'weglassen: hier wird nach nichts gefragt',
  'asked for here: {0}': 'hier wird gefragt nach: {0}',
  'a value is missing': 'ein Wert fehlt',
  '{0} is not a whole number from {1} to {2}': '{0} ist keine ganze Zahl von {1} bis {2}',
  '{0} is not one of the choices': '{0} steht nicht zur Wahl',
  'one of: {0}': 'eines von: {0}',
  '{0} is neither true nor false': '{0} ist weder wahr noch falsch',
  '{0} is not {1}': '{0} ist nicht {1}',
  'the name of a {0}': 'der Name ({0})',
  'this number cannot be left free': 'diese Zahl kann nicht offen bleiben',
  'the planner does not work this one out': 'der Planer errechnet sie nicht',
  '{0} has no unit': '{0} hat keine Einheit',
  'a {0} is written with its unit, in quotes':
    'der Wert ({0}) wird mit seiner Einheit geschrieben, in Anführungszeichen',
  '{0} is outside {1} to {2}': '{0} liegt außerhalb von {1} bis {2}',
  'at least {0}': 'mindestens {0}',
  'at most {0}': 'höchstens {0}',
  '{0} is not a list of {1} to {2}': '{0} ist keine Liste mit {1} bis {2} Einträgen',
  'write them in square brackets: [ … ]': 'in eckigen Klammern schreiben: [ … ]',
  'a list of {0}': 'eine Liste mit {0}',
  'a group of values': 'eine Gruppe von Werten',
  'write {0}': '{0} schreiben',
  'for example "{0}"': 'zum Beispiel „{0!}“',
  'for example {0}': 'zum Beispiel {0!}',
  'for example "1095"': 'zum Beispiel „1095“',
  'see the reference page of this step': 'siehe die Seite dieses Schritts im Nachschlagewerk',
  '"{0}" is not among the steels; {1} is near it.':
    '„{0!}“ ist nicht unter den Stählen; {1!} liegt nahe.',
  'Grades of two standards that are near have different limits.':
    'Nahe Sorten zweier Normen haben verschiedene Grenzwerte.',
  'No steel is named.': 'Es ist kein Stahl genannt.',
  '"{0}" is not among the steels.': '„{0!}“ ist nicht unter den Stählen.',
  'A steel is known by its grade; one of your own is added to the job in the same form.':
    'Ein Stahl ist an seiner Sorte zu erkennen; eigene kommen in derselben Form in den Auftrag.',
  '{0} is missing.': '{0} fehlt.',
  'The grade': 'Die Sorte',
  'A grade is read only with every figure it is reckoned with, and where each comes from.':
    'Eine Sorte wird nur gelesen mit jeder Zahl, mit der gerechnet wird, und mit deren Herkunft.',
  'a grade': 'einer Sorte',
  '"{0}" is not a field of {1}.': '„{0!}“ ist kein Feld: {1}.',
  'A field that is not known would be left out of the reckoning without a word.':
    'Ein unbekanntes Feld fiele wortlos aus der Rechnung.',
  '{0} per inch': '{0} je Zoll',
  '{0} per mm': '{0} je mm',
  '{0} mm pitch': '{0} mm je Umdrehung',
  '{0} turns': '{0} Umdrehungen',
  '{0} turn': '{0} Umdrehung',
  'a number from {0} to {1}': 'eine Zahl von {0} bis {1}',
  'words, at most {0} letters': 'Worte mit höchstens {0} Buchstaben',
  'a list': 'eine Liste',
  'a group of values: {0}': 'eine Gruppe von Werten: {0!}',
  '{0} is not right: {1} is not {2}.': '{0} stimmt nicht: {1} ist nicht {2}.',
  'Grades are read only in the form of the files that come with the program.':
    'Sorten werden nur in der Form der mitgelieferten Dateien gelesen.',
  'what is written': 'was da steht',
  'a key of the bibliography': 'ein Schlüssel des Quellenverzeichnisses',
  'The composition adds up to over 100 wt%: {0}.':
    'Die Zusammensetzung ergibt über 100 Masse-%: {0}.',
  'Each element is a share of the whole, and iron is the rest.':
    'Jedes Element ist ein Anteil am Ganzen, und Eisen ist der Rest.',
  'Look for a slip of the point in the largest.':
    'Im größten Wert nach einem verrutschten Punkt suchen.',
  '{0}: {1} {2} lies outside its range, {3} to {4}.':
    '{0!}: {1} {2} liegt außerhalb seines Bereichs, {3} bis {4}.',
  'What is reckoned with must be within the limits that are printed for it.':
    'Womit gerechnet wird, muss in den Grenzen liegen, die dafür gedruckt sind.',
  '{0} to {1}': '{0} bis {1}',
}
