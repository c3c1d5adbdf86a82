/** Flow stress, spread, friction, hammers and presses. */
export const formingAndMachines = {
  'PYR-MIS':
    'Misaka & Yoshimoto, J. JSTP 8(79) (1967), mean resistance to deformation; read in the PyRolL plug-in documents and code (secondary).',
  'PYR-LEE':
    'Shida, J. JSTP 9(85) (1968) and 10(103) (1969), after Lee et al., J. Mater. Process. Technol. 130–131 (2002) 181; read in the PyRolL plug-in (secondary).',
  ROLLJS:
    'Misaka and Shida flow stress in a public rolling-formula file; an independent second copy (secondary).',
  'PYR-FRB':
    'Spittel & Spittel, Landolt–Börnstein VIII/2C1 (Springer 2009), flow-stress constants; read in the PyRolL plug-in (secondary).',
  MEDCODE:
    'Medina & Hernandez, Acta Mater. 44 (1996) 137–148, peak stress; Q and A read in a public code file (secondary).',
  GRO: 'Groover, Fundamentals of Modern Manufacturing, eqs 18.14–18.18, Example 18.2, Tables 17.1 and 18.1.',
  'GRO-SOL': 'Groover, solutions manual to the 4th edition (2010), problem 19.19.',
  KALP: 'Kalpakjian & Schmid, Manufacturing Engineering and Technology, Example 14.1; read in the FOSSEE textbook companion (secondary).',
  HC: 'Hosford & Caddell, Metal Forming, 3rd edition, section 9.11: slab result for sticking friction; extract.',
  SLAB: 'Lecture text, eqs 7.21–7.22: plane-strain slab with Coulomb friction.',
  BHAD: 'Bhaduri, Mechanical Properties and Working of Metals and Alloys (Springer 2018), ch. 11; abstract only.',
  YIN: 'Yin F. et al., Materials & Design 43 (2013) 393–401: GCr15 at 950–1150 °C; abstract.',
  'PYR-HILL': 'Hill 1955, spread in flat rolling; read in the PyRolL plug-in (secondary).',
  'PYR-WUS': 'Wusatowski 1969, spread in flat rolling; read in the PyRolL plug-in (secondary).',
  'PYR-SPA':
    'Sparling, Proc. IMechE 175 (1961) 604–640, spread; read in the PyRolL plug-in (secondary).',
  'PYR-ROUX': 'Roux, Rev. Métall. 36 (1939) 257, spread; read in the PyRolL plug-in (secondary).',
  'PYR-MAR':
    'Marini, La Metallurgia Italiana (1941) 292, spread; read in the PyRolL plug-in (secondary).',
  'PYR-FRI':
    'Wanheim & Bay, Wear 28 (1974), friction at high pressure; read in the PyRolL documents (secondary).',
  'PYR-MG':
    'Mauk & Gottschling, 14th Int. Forgemasters Meeting (2000), flow stress; read in the PyRolL plug-in (secondary).',
  'GCR-HOT':
    'Dynamic recrystallisation of GCr15, Appl. Mech. Mater. 584–586 (2014) 1011; abstract.',
  HUO: 'Huo et al., high-chromium bearing roller steel, Materials for Mechanical Engineering 37(10) (2013) 64–68; abstract.',
  RING: 'Devenpeck & Rigo, ASTM STP 36196S (1983), and J. Eng. Mater. Technol. 114(1) 13: ring compression and lubricants; abstracts.',
  VLAB: 'Dayalbagh Educational Institute, Metal Forming Virtual Simulation Lab: hammer forging.',
  LINE: 'A Text-Book of Mechanical Engineering (Lineham, from memory), page scans 129 and 302: steam hammers.',
  HAMB: 'Balendra & Langenderfer, Applied Ergonomics 60 (2017) 231; Côté et al. 2005; Petric et al., Front. Comput. Neurosci. 11 (2017) 45: hand hammering; abstracts, no speed in them.',
  HAM1: 'iforgeiron.com topic 5966: five blows on 1 in square, one smith.',
  HAM2: 'A reference page on power hammers: rating is the weight of the moving parts acting on the work.',
  HAM3: 'Spencer, pages on a tallships host: high-speed pictures of a hand hammer, about 175 ms down stroke.',
  BOR: 'When borax runs: iforgeiron.com topic 66230 and a welding glossary (760 °C); a glass page (878 °C). Exposure limits: CDC card 1229, anhydrous sodium tetraborate.',
} as const
