/** What the heats leave. */
export const heats: Readonly<Record<string, string>> = {
  '{0} keeps about {1} % austenite: {2}.': '{0} behält etwa {1} % Austenit: {2}.',
  'temper twice': 'zweimal anlassen',
  'harden cooler, or cool it well below freezing before the temper':
    'kühler härten oder vor dem Anlassen weit unter den Gefrierpunkt kühlen',
  '{0} is no steel and stays soft; makers lay it as a barrier to carbon, and what it takes up is not known here.':
    '{0} ist kein Stahl und bleibt weich; man legt ihn als Sperre für den Kohlenstoff, und was er aufnimmt, ist hier nicht bekannt.',
  '{0} ends with {1} % carbon: too little to harden for an edge.':
    '{0} endet mit {1} % Kohlenstoff: zu wenig, um für eine Schneide zu härten.',
  "{0} has too much chromium for the rules of plain steels: its window and hardness are not worked out. Go by its maker's sheet.":
    '{0} hat zu viel Chrom für die Regeln schlichter Stähle: Härtefenster und Härte sind nicht errechnet. Es gilt das Blatt des Herstellers.',
  'Step {0}, {1}: {2}': 'Schritt {0}, {1}: {2}',
  '{0}: {1} wt% {2} is outside the published range of the activity of carbon.':
    '{0}: {1} Masse-% {2} liegt außerhalb des veröffentlichten Bereichs der Kohlenstoffaktivität.',
  'It is described to {0} wt%: how much carbon this metal takes up is a guess.':
    'Beschrieben ist sie bis {0} Masse-%: wie viel Kohlenstoff dieses Metall aufnimmt, ist geschätzt.',
  'Read the carbon beside it as a rough guide only.':
    'Den Kohlenstoff daneben nur als groben Anhalt lesen.',
  '{0} to {1} °C': '{0} bis {1} °C',
  '"{0}" rearranges layers in a way that is not followed: each steel goes on with its mean carbon.':
    '„{0}“ ordnet Lagen auf eine Weise um, die nicht verfolgt wird: jeder Stahl geht mit seinem mittleren Kohlenstoff weiter.',
  '{0} melts at {1}': '{0} schmilzt bei {1}',
  '{0} burns at {1}': '{0} verbrennt bei {1}',
  'with {0} % carbon it begins to melt at {1} (OC-TDB)':
    'mit {0} % Kohlenstoff beginnt er bei {1} zu schmelzen (OC-TDB)',
  'with {0} % carbon it burns from about {1}, and its grain boundaries may be lost for good (from memory)':
    'mit {0} % Kohlenstoff verbrennt er ab etwa {1}, und seine Korngrenzen können für immer verloren sein (aus dem Gedächtnis)',
  "stay under {0}; {1} is the table's highest forging heat":
    'unter {0} bleiben; {1} ist die höchste Schmiedehitze der Tafel',
  'choose a steel with less carbon': 'einen Stahl mit weniger Kohlenstoff wählen',
  'a {0} fire is asked for {1}': 'vom Feuer ({0}) werden {1} verlangt',
  'such fires reach about {0}, and the bar stays under its fire (common practice)':
    'solche Feuer erreichen etwa {0}, und der Stab bleibt unter seinem Feuer (allgemein üblich)',
  'ask for a lower heat': 'weniger Hitze verlangen',
  'use a hotter fire': 'ein heißeres Feuer nehmen',
  '{0}: over the solidus, the steel melts.': '{0}: über der Soliduslinie, der Stahl schmilzt.',
  '{0}: in the burning range at the carbon it has by now.':
    '{0}: beim Kohlenstoff, den er dann hat, im Bereich des Verbrennens.',
  'no one heat suits every steel of this piece': 'keine Hitze passt für jeden Stahl dieses Stücks',
  '{0} wants at least {1}, {2} at most {3} (common practice over Ac1 and Ac3)':
    '{0} will mindestens {1}, {2} höchstens {3} (allgemein üblich über Ac1 und Ac3)',
  'harden at {0} with a short soak': 'bei {0} härten, kurz durchgewärmt',
  'choose steels whose hardening heats lie closer':
    'Stähle wählen, deren Härtehitzen näher beieinanderliegen',
  '{0} is under the hardening window of {1}': '{0} liegt unter dem Härtefenster von {1}',
  'at the carbon they have by then the steels share {0} to {1}: colder, it comes out with soft patches (common practice over Ac1 and Ac3)':
    'beim Kohlenstoff, den sie dann haben, teilen die Stähle {0} bis {1}: kälter kommt es mit weichen Flecken heraus (allgemein üblich über Ac1 und Ac3)',
  'harden at {0}': 'bei {0} härten',
  'soak longer, and try it with a file': 'länger durchwärmen und mit der Feile prüfen',
  '{0} is over the hardening window of {1}': '{0} liegt über dem Härtefenster von {1}',
  'the steels share {0} to {1}: hotter, grain grows and austenite is kept (common practice over Ac1 and Ac3)':
    'die Stähle teilen {0} bis {1}: heißer wächst das Korn, und Austenit bleibt übrig (allgemein üblich über Ac1 und Ac3)',
  'keep the soak short and the grain fine before':
    'kurz durchwärmen und das Korn vorher fein halten',
  'its limit lies near {0} mm, {1} to {2} mm': 'die Grenze liegt bei {0} mm, {1} bis {2} mm',
  '{0} hardens through': '{0} härtet durch',
  '{0} hardens near its faces only ({1})': '{0} härtet nur nahe der Oberfläche ({1})',
  '{0} should harden through ({1})': '{0} sollte durchhärten ({1})',
  '{0} may fall short at the middle ({1})': '{0} kann in der Mitte zurückbleiben ({1})',
  ', at the risk of cracks': ', auf die Gefahr von Rissen',
  'Grain is coarse: forge on at falling heat and normalise before hardening.':
    'Das Korn ist grob: bei fallender Hitze weiterschmieden und vor dem Härten normalisieren.',
  'Below Ac1: this steel does not harden at that heat.':
    'Unter Ac1: bei dieser Hitze härtet dieser Stahl nicht.',
  'Under its hardening window: expect soft patches.':
    'Unter seinem Härtefenster: weiche Flecken sind zu erwarten.',
  'Over its hardening window: grain grows and austenite is kept.':
    'Über seinem Härtefenster: das Korn wächst, und Austenit bleibt übrig.',
  'Does not harden through in {0} at this size.':
    'Härtet in dieser Größe nicht durch (Abschreckmittel: {0}).',
  'May not harden through in {0} at this size.':
    'Härtet in dieser Größe vielleicht nicht durch (Abschreckmittel: {0}).',
  'Too little carbon to harden for an edge.':
    'Zu wenig Kohlenstoff, um für eine Schneide zu härten.',
  'Much austenite is kept: temper twice, or cool below freezing first.':
    'Viel Austenit bleibt übrig: zweimal anlassen oder vorher unter den Gefrierpunkt kühlen.',
  'Water may crack this steel, most of all at grooves and stamps.':
    'Wasser kann diesen Stahl reißen lassen, am ehesten an Nuten und Stempeln.',
  'Not tempered: glass hard and liable to crack.': 'Nicht angelassen: glashart und rissgefährdet.',
  'Above the table’s highest forging heat for this carbon: keep it short.':
    'Über der höchsten Schmiedehitze der Tafel für diesen Kohlenstoff: kurz halten.',
  'In the burning range for this carbon: grain boundaries may be lost for good.':
    'Im Bereich des Verbrennens für diesen Kohlenstoff: Korngrenzen können für immer verloren sein.',
  'Above the solidus: the steel is melting.': 'Über der Soliduslinie: der Stahl schmilzt.',
  'In plates (plates are reckoned as still air), {0} mm thick: {1}.':
    'Platten (gerechnet wie ruhige Luft), {0} mm dick: {1}.',
  'In {0}, {1} mm thick: {2}.': '{0}, {1} mm dick: {2}.',
  '{0} is the mildest that would do.': 'Das mildeste, das genügte: {0}.',
  'No quench hardens all of it through: edges and faces are hard, the middle stays softer.':
    'Kein Abschrecken härtet alles durch: Kanten und Flächen werden hart, die Mitte bleibt weicher.',
  '{0} would harden all of it{1}; thin edges harden either way.':
    'Alles härten würde: {0}{1}; dünne Schneiden härten so oder so.',
}
