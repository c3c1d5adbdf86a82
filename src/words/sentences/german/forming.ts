/** Of force, spread, stamps and welds. */
export const forming: Readonly<Record<string, string>> = {
  'The emblem’s outline encloses nothing.': 'Der Umriss des Emblems umschließt nichts.',
  'Its filled area is zero: a line has no face to press with.':
    'Seine gefüllte Fläche ist null: eine Linie hat keine Fläche, mit der sie drückt.',
  'Draw the strokes as outlines, not as lines.':
    'Die Striche als Umrisse zeichnen, nicht als Linien.',
  'Try the other fill rule.': 'Die andere Füllregel versuchen.',
  '“{0}” at character {1} is no path command': '„{0!}“ an Stelle {1} ist kein Pfadbefehl',
  '“{0}” wants {1} numbers; number {2} is missing at character {3}':
    '„{0!}“ verlangt {1} Zahlen; Zahl {2} fehlt an Stelle {3}',
  'The emblem’s outline does not read as SVG path data.':
    'Der Umriss des Emblems lässt sich nicht als SVG-Pfad lesen.',
  'Copy the text of the d="…" of one <path>.': 'Den Text von d="…" eines <path> kopieren.',
  'Give area, perimeter and stroke width instead.':
    'Stattdessen Fläche, Umfang und Strichbreite angeben.',
  'there is nothing in it': 'es steht nichts darin',
  'it does not begin with M': 'es beginnt nicht mit M',
  'Blows of {0} J (now {1} J): {2}.': 'Schläge mit {0} J (jetzt {1} J): {2}.',
  'A press, whose slow squeeze meets about half the stress of a blow.':
    'Eine Presse: ihr langsamer Druck trifft auf etwa die halbe Spannung eines Schlags.',
  '{0} heats instead of {1}.': '{0} Hitzen statt {1}.',
  'Hotter metal: 50 °C more takes off {0} %, if the steel stands it.':
    'Heißeres Metall: 50 °C mehr nehmen {0} % weg, wenn der Stahl es verträgt.',
  'a striker with a sledge, or a power hammer of {0} kg':
    'ein Zuschläger mit Vorschlaghammer oder ein Krafthammer mit {0} kg',
  'a {0} kg head at the same speed': 'ein Hammerkopf von {0} kg mit derselben Geschwindigkeit',
  'An opening of {0} mm between the dies.': 'Eine Öffnung von {0} mm zwischen den Gesenken.',
  'More passes, each within the stroke.': 'Mehr Durchgänge, jeder innerhalb des Hubs.',
  'Narrower dies: a bite of about {0} mm.': 'Schmalere Gesenke: ein Biss von etwa {0} mm.',
  'A press of {0} kN.': 'Eine Presse mit {0} kN.',
  'Press it in steps along its length instead of all at once.':
    'Der Länge nach in Schritten pressen statt alles auf einmal.',
  '{0} heats instead of {1}, or wider dies.': '{0} Hitzen statt {1}, oder breitere Gesenke.',
  'The bar is already smaller than the section asked for on one side.':
    'Der Stab ist auf einer Seite schon kleiner als der verlangte Querschnitt.',
  'Drawing out makes a section smaller; spread alone does not fill it.':
    'Ausschmieden macht einen Querschnitt kleiner; Breiten allein füllt ihn nicht.',
  'Start from a bigger bar or upset it first.':
    'Mit einem größeren Stab anfangen oder ihn erst stauchen.',
  'Widen with a peen held along the bar.': 'Mit längs gehaltener Finne breiten.',
  '{0} to {1} in one pass may fold a lap at the die edge.':
    'Von {0} auf {1} in einem Durchgang kann an der Gesenkkante eine Schmiedefalte legen.',
  'Height over height after is {0}; laps begin above {1} (from memory).':
    'Höhe durch Höhe danach ist {0}; Falten beginnen über {1} (aus dem Gedächtnis).',
  'Stop at {0} and go over the bar again.':
    'Bei {0} aufhören und den Stab noch einmal überarbeiten.',
  'Round the die edges.': 'Die Gesenkkanten runden.',
  'Height over width is {0}; keep under {1}, never over {2} (common practice).':
    'Höhe durch Breite ist {0}; unter {1} bleiben, nie über {2} (allgemein üblich).',
  'Turn sooner, before the bar gets so wide.': 'Früher wenden, bevor der Stab so breit wird.',
  'Take light blows and straighten between them.': 'Leicht schlagen und zwischendurch richten.',
  'A bite of {0} works only the skin of {1}.':
    'Ein Biss von {0} arbeitet bei {1} nur die Haut durch.',
  'Below a third of the height the middle is pulled, not pressed: welds there open (from memory).':
    'Unter einem Drittel der Höhe wird die Mitte gezogen, nicht gedrückt: dort öffnen sich Schweißungen (aus dem Gedächtnis).',
  'Take a bite of {0} or more.': 'Einen Biss von {0} oder mehr nehmen.',
  'Use wider dies or a heavier hammer.': 'Breitere Gesenke oder einen schwereren Hammer nehmen.',
  'The mark is ground off.': 'Das Zeichen wird weggeschliffen.',
  'Only {0} of the mark is left after polishing.':
    'Nach dem Polieren bleiben nur {0} des Zeichens.',
  'Pressed {0}, {1} comes off the face; {2} is wanted.':
    'Eingedrückt {0}, von der Fläche gehen {1} ab; gewünscht sind {2}.',
  'Press {0} deep.': '{0} tief eindrücken.',
  'Stamp after rough grinding, so that less comes off.':
    'Nach dem Vorschleifen stempeln, damit weniger abgeht.',
  'Strokes of {0} are too thin for {1} deep.': 'Striche von {0} sind für {1} Tiefe zu dünn.',
  'At this depth and finish a stroke needs {0} to survive (common practice).':
    'Bei dieser Tiefe und Oberfläche braucht ein Strich {0}, um zu bleiben (allgemein üblich).',
  'Thicken the thinnest strokes to {0}.': 'Die dünnsten Striche auf {0} verstärken.',
  'Press less deep, or make the emblem bigger.':
    'Weniger tief eindrücken oder das Emblem größer machen.',
  'A crack may start from the foot of the mark in the quench.':
    'Am Fuß des Zeichens kann beim Abschrecken ein Riss beginnen.',
  'The foot raises stress {0} times{1}.': 'Der Fuß erhöht die Spannung auf das {0}-Fache{1}.',
  ', and the sharpest corner is {0}°': ', und die schärfste Ecke hat {0}°',
  "Round the die's edges to {0} or more.": 'Die Kanten des Stempels auf {0} oder mehr runden.',
  'Round the sharp corners of the drawing.': 'Die scharfen Ecken der Zeichnung runden.',
  'Leave the piece soft, or quench slower.': 'Das Stück weich lassen oder langsamer abschrecken.',
  'A mark {0} deep shows on the back of {1}.':
    'Ein {0} tiefes Zeichen drückt bei {1} auf die Rückseite durch.',
  'Past a third of the thickness the metal is pushed through rather than aside (common practice).':
    'Über einem Drittel der Dicke wird das Metall durchgedrückt statt beiseite (allgemein üblich).',
  'Back the piece with a flat die.': 'Das Stück auf ein flaches Gesenk legen.',
  'Press less deep or stamp before thinning.':
    'Weniger tief eindrücken oder stempeln, bevor es dünner wird.',
  'A press of {0} to {1} kN.': 'Eine Presse mit {0} bis {1} kN.',
  'An emblem of {0} % of the size, or only its outline raised.':
    'Ein Emblem von {0} % der Größe, oder nur sein Umriss erhaben.',
  'Hotter metal, if it stands it.': 'Heißeres Metall, wenn es das verträgt.',
  'A press of {0} to {1} kN does it in one squeeze.':
    'Eine Presse mit {0} bis {1} kN schafft es mit einem Druck.',
  'A head of {0} kg at the same speed does it in {1}.':
    'Ein Hammerkopf von {0} kg braucht dafür bei derselben Geschwindigkeit {1}.',
  'This hammer reaches {0} in {1}.': 'Dieser Hammer erreicht {0} durch {1}.',
  'A guide or a struck die that finds its place again, for more blows.':
    'Eine Führung oder ein Schlaggesenk, das seine Stelle wiederfindet, für mehr Schläge.',
  '{0} is cold for a weld.': '{0} ist kalt für eine Schweißung.',
  'Smiths weld such stacks at {0} to {1} (common practice).':
    'Solche Pakete werden bei {0} bis {1} geschweißt (allgemein üblich).',
  'Bring it to {0}, even to the core.': 'Auf {0} bringen, gleichmäßig bis zum Kern.',
  'Or weld it dry in a sealed can, with more pressure.':
    'Oder trocken in einem dichten Kanister schweißen, mit mehr Druck.',
  '{0} may burn the highest-carbon layer.': '{0} kann die kohlenstoffreichste Lage verbrennen.',
  'Its solidus is near {0} °C (from memory); stay {1} K under it.':
    'Ihre Soliduslinie liegt bei {0} °C (aus dem Gedächtnis); {1} K darunter bleiben.',
  'Hold it to {0}.': 'Bei {0} halten.',
  '{0} of soak may leave the core cold.': '{0} Durchwärmen kann den Kern kalt lassen.',
  'Five minutes for each 25 mm once the colour is even, ten at least on a first weld: {0} (common practice).':
    'Fünf Minuten je 25 mm, sobald die Farbe gleichmäßig ist, mindestens zehn bei der ersten Schweißung: {0} (allgemein üblich).',
  'Soak {0} after the colour is even.': '{0} durchwärmen, sobald die Farbe gleichmäßig ist.',
  'Taking off {0} % may not close every joint.':
    '{0} % Abnahme schließen vielleicht nicht jede Fuge.',
  'The joints need {0} % at least: waves in the sheets take the first 1 to 3 % (common practice).':
    'Die Fugen brauchen mindestens {0} %: Wellen in den Blechen nehmen die ersten 1 bis 3 % (allgemein üblich).',
  'Take off {0} to {1} %.': '{0} bis {1} % abnehmen.',
  'Taking off {0} % in the first weld may shear the joints.':
    '{0} % Abnahme bei der ersten Schweißung können die Fugen abscheren.',
  'A joint not yet made slides: first welds take {0} % at most (common practice).':
    'Eine noch nicht geschlossene Fuge gleitet: erste Schweißungen vertragen höchstens {0} % (allgemein üblich).',
  'Set the weld lightly, reheat, then reduce.':
    'Die Schweißung leicht setzen, neu wärmen, dann abnehmen.',
  'forging on edge presses along the joints and slides the layers':
    'hochkant schmieden drückt entlang der Fugen und verschiebt die Lagen',
  'a twist shears every joint, most at the corners':
    'Tordieren schert jede Fuge, am meisten an den Ecken',
  'a wedge pulls the joints open across': 'ein Keil zieht die Fugen quer auseinander',
  'the joints take the shear of the bend': 'die Fugen nehmen die Scherung der Biegung auf',
  'upsetting along the layers buckles them apart':
    'Stauchen entlang der Lagen knickt sie auseinander',
  'a drift bursts joints round the hole': 'ein Dorn sprengt Fugen rund um das Loch',
  'The weld is not yet made fit for this step.':
    'Die Schweißung ist für diesen Schritt noch nicht reif.',
  'The weld is still young for this step.': 'Die Schweißung ist für diesen Schritt noch jung.',
  '{0} % has been taken off since the weld; {1}. Smiths want {2} to {3} % first (common practice).':
    '{0} % wurden seit der Schweißung abgenommen; {1}. Üblich sind vorher {2} bis {3} % (allgemein üblich).',
  "Reduce flat at welding heat to {0} % of the stack's height first.":
    'Erst bei Schweißhitze flach auf {0} % der Pakethöhe abnehmen.',
  'Take another welding heat and look for a dark line as it cools.':
    'Noch eine Schweißhitze nehmen und beim Abkühlen auf eine dunkle Linie achten.',
  'Standing {0} high on {1} the bar will buckle or double over.':
    '{0} hoch auf {1} gestellt knickt der Stab aus oder legt sich um.',
  'Standing {0} high on {1} the bar may buckle or double over.':
    '{0} hoch auf {1} gestellt kann der Stab ausknicken oder sich umlegen.',
}
