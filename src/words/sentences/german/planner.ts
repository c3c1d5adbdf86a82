/** Of the planner: routes, other ways, patterns. */
export const planner: Readonly<Record<string, string>> = {
  'the bar as it was measured is {0} short of what the rest of the route takes':
    'dem Stab, wie er gemessen wurde, fehlen {0} zu dem, was der übrige Arbeitsgang braucht',
  'at the section found it must be {0} in {1}; it is {2}':
    'beim gefundenen Querschnitt muss er in der {1} {0} haben; er hat {2}',
  'lose less from here on: fewer heats, smaller crops, less left to grind':
    'von hier an weniger verlieren: weniger Hitzen, kürzere Enden, weniger Zugabe zum Schleifen',
  'make the piece smaller': 'das Stück kleiner machen',
  'weld on more, or begin again with a longer stack':
    'mehr anschweißen oder mit einem längeren Paket neu anfangen',
  'the numbers left free do not settle': 'die offenen Zahlen kommen nicht zur Ruhe',
  'each round of working back and forward asks for another size':
    'jede Runde vor und zurück verlangt ein anderes Maß',
  'state the number of heats in each drawing step':
    'bei jedem Schritt des Ausschmiedens die Zahl der Hitzen angeben',
  'state one of the sizes left free': 'eines der offenen Maße angeben',
  'the bar is {0} too short for the piece': 'der Stab ist für das Stück {0} zu kurz',
  'worked back from the piece it must be {0} long; it is {1}':
    'vom Stück zurückgerechnet muss er {0} lang sein; er ist {1} lang',
  'cut it {0} long': 'auf {0} Länge schneiden',
  'write "?" and have the length worked out': '„?“ schreiben und die Länge errechnen lassen',
  'this number is left free, and there is no piece to work back from':
    'diese Zahl ist offen, und es gibt kein Stück, von dem zurückzurechnen wäre',
  'begin with a larger stack: the piece asks for this size':
    'mit einem größeren Paket beginnen: das Stück verlangt dieses Maß',
  'the planner works back from the finished piece': 'der Planer rechnet vom fertigen Stück zurück',
  'describe the piece': 'das Stück beschreiben',
  'state the number': 'die Zahl angeben',
  'contour lines where the hammer was uneven': 'Höhenlinien, wo der Hammer ungleich traf',
  'straight lines along the piece': 'gerade Linien entlang des Stücks',
  'straight lines across the piece': 'gerade Linien quer über das Stück',
  'rungs across the piece': 'Sprossen quer über das Stück',
  'rings like drops on water': 'Ringe wie Tropfen auf Wasser',
  'slanting stripes, stars where it is ground to its middle':
    'schräge Streifen, Sterne, wo bis zur Mitte geschliffen ist',
  'barbs swept back from a quill': 'Federäste, von einem Kiel zurückgestrichen',
  '"{0}" has no bar to work on': '„{0}“ hat keinen Stab, an dem zu arbeiten wäre',
  'the first step of a bar lays a stack, takes a bar off the rack or joins other bars':
    'der erste Schritt eines Stabs legt ein Paket, nimmt einen Stab vom Regal oder fügt andere Stäbe zusammen',
  'begin this bar with "stack"': 'diesen Stab mit „Paket legen“ beginnen',
  'begin it with "take bar"': 'mit „Stab vom Regal“ beginnen',
  '"{0}" starts a bar, and this one is under way':
    '„{0}“ beginnt einen Stab, und dieser ist schon unter der Hand',
  'what was in hand would be dropped': 'was in der Hand ist, fiele weg',
  'give it a bar of its own': 'einen eigenen Stab dafür anlegen',
  'leave the step out': 'den Schritt weglassen',
  '"{0}" takes it, and the job has: {1}': '„{0}“ nimmt ihn auf, und der Auftrag hat: {1!}',
  'add a bar called "{0}"': 'einen Stab „{0!}“ anfügen',
  'the bar "{0}" is used up already': 'der Stab „{0!}“ ist schon verbraucht',
  '{0} took it': '{0!} hat ihn genommen',
  'make a second bar with the same steps': 'einen zweiten Stab mit denselben Schritten machen',
  'name it twice in one step: it is then cut in two':
    'ihn in einem Schritt zweimal nennen: dann wird er in zwei geteilt',
  'the bar "{0}" has no steps': 'der Stab „{0!}“ hat keine Schritte',
  'a bar is what its steps make of it': 'ein Stab ist, was seine Schritte aus ihm machen',
  'add a "stack" or "take bar" step': 'einen Schritt „Paket legen“ oder „Stab vom Regal“ anfügen',
  'leave the bar out': 'den Stab weglassen',
  'these bars wait for one another': 'diese Stäbe warten aufeinander',
  'start one of them from a stack of its own': 'einen von ihnen mit einem eigenen Paket beginnen',
  'nothing is made of the bar "{0}"': 'aus dem Stab „{0!}“ wird nichts',
  'the bar that takes it is itself not used':
    'der Stab, der ihn aufnimmt, wird selbst nicht gebraucht',
  'no step takes it, and the piece is made of "{0}"':
    'kein Schritt nimmt ihn auf, und das Stück wird aus „{0!}“',
  'join it in a later step': 'ihn in einem späteren Schritt dazulegen',
  'finish with "{0}"': 'mit „{0!}“ abschließen',
  'leave it out': 'ihn weglassen',
  '{0} first': '{0} zuerst',
  '{0} on the face': '{0} auf der Fläche',
  'accept {0}': '{0} annehmen',
  'at most {0}': 'höchstens {0}',
  'lay {0}': '{0} legen',
  'at most {0} of work': 'höchstens {0} Arbeit',
  'allow {0}': '{0} zulassen',
  'at most {0} of steel': 'höchstens {0} Stahl',
  'take {0} off the rack': '{0} aus dem Regal nehmen',
  'dies that open {0} and a fire that heats {1}':
    'Gesenke, die {0} öffnen, und ein Feuer, das {1} wärmt',
  'work at a press with a greater opening, or a longer fire':
    'an einer Presse mit größerer Öffnung arbeiten oder ein längeres Feuer nehmen',
  '{0}, and look at the other wishes': '{0}, und die anderen Wünsche ansehen',
  '{0} cannot be had': '{0}: das ist nicht zu haben',
  '{0} and {1} cannot be had together': '{0} und {1}: das ist zusammen nicht zu haben',
  'no way of building the bar up gives it, whatever else is given up':
    'kein Aufbau des Stabs gibt es her, was man auch sonst aufgibt',
  'give up any one of them and there is a way; with all of them there is none':
    'gibt man eines davon auf, findet sich ein Weg; mit allen zusammen gibt es keinen',
  'no way of building this bar up was found': 'es fand sich kein Weg, diesen Stab aufzubauen',
  'even with every wish given up': 'auch nicht, wenn man jeden Wunsch aufgibt',
  'draw to a smaller section after the last weld':
    'nach der letzten Schweißung auf einen kleineren Querschnitt ausschmieden',
  'the bar "{0}" is not built up from a stack of sheets':
    'der Stab „{0!}“ ist nicht aus einem Paket von Blechen aufgebaut',
  'take one of: {0}': 'einen davon nehmen: {0!}',
  'no bar here is built up from a stack of sheets':
    'kein Stab ist hier aus einem Paket von Blechen aufgebaut',
  'other ways of building up are looked for where a bar starts with "stack"':
    'andere Wege des Aufbaus werden gesucht, wo ein Stab mit „Paket legen“ beginnt',
  'begin the patterned bar with "stack"': 'den gemusterten Stab mit „Paket legen“ beginnen',
  'name a bar that starts so': 'einen Stab nennen, der so beginnt',
  'this build-up is not a plain one, so no other is put in its place':
    'dieser Aufbau ist kein schlichter, deshalb tritt kein anderer an seine Stelle',
  'ways are looked for where two steels are laid by turns and restacked without extra sheets':
    'Wege werden gesucht, wo zwei Stähle im Wechsel gelegt und ohne Zwischenbleche neu gelegt sind',
  'lay two steels by turns': 'zwei Stähle im Wechsel legen',
  'name another bar': 'einen anderen Stab nennen',
  'no way of building this bar up was found that the rest of the route can use':
    'es fand sich kein Aufbau dieses Stabs, mit dem der übrige Arbeitsgang etwas anfangen kann',
  'every stack tried was too small in section, too tall for the dies or too long for the fire':
    'jedes versuchte Paket war im Querschnitt zu klein, für die Gesenke zu hoch oder für das Feuer zu lang',
  'enter the shop as it is': 'die Werkstatt eintragen, wie sie ist',
  'one fewer heat': 'eine Hitze weniger',
  '{0} fewer heats': '{0} Hitzen weniger',
  'one more heat': 'eine Hitze mehr',
  '{0} more heats': '{0} Hitzen mehr',
  '{0} less metal': '{0} weniger Metall',
  '{0} more metal': '{0} mehr Metall',
  '{0} less work': '{0} weniger Arbeit',
  '{0} more work': '{0} mehr Arbeit',
  '{0} nearer to the layers wished': 'um {0} näher an den gewünschten Lagen',
  '{0} farther from the layers wished': 'um {0} weiter von den gewünschten Lagen',
  '{0} nearer to the lines wished': 'um {0} näher an den gewünschten Linien',
  '{0} farther from the lines wished': 'um {0} weiter von den gewünschten Linien',
  '{0} less of the carbon difference kept': '{0} weniger vom Unterschied im Kohlenstoff bleiben',
  '{0} more of the carbon difference kept': '{0} mehr vom Unterschied im Kohlenstoff bleiben',
  '{0} less chance that a weld fails': 'um {0} seltener misslingt eine Schweißung',
  '{0} more chance that a weld fails': 'um {0} öfter misslingt eine Schweißung',
  'one outer layer saved': 'eine Außenlage gerettet',
  '{0} outer layers saved': '{0} Außenlagen gerettet',
  'one outer layer burnt or ground away': 'eine Außenlage verbrannt oder weggeschliffen',
  '{0} outer layers burnt or ground away': '{0} Außenlagen verbrannt oder weggeschliffen',
  '{0} layers, not {1}': '{0} Lagen, nicht {1}',
}
