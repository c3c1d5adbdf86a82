/** Etching, exposure limits, eyes, fire, quench oil. */
export const etchingAndSafety = {
  ETCH1:
    'iforgeiron.com topic 63630: ferric chloride 1:3 in ten-minute sessions, 40–60 min in all; coffee.',
  ETCH2: 'polytechforum.com: ferric chloride 1:3, three etches of 15 min.',
  ETCH3:
    'bladeforums.com thread 1560217, a chemist: nickel passivates, manganese is attacked fast and goes black.',
  ETCH4: 'knifedogs.com thread 51595: neutralise, then rinse until no chloride is left.',
  'ETCH-J':
    'Zairyo-to-Kankyo 54(11) 526: rotating steel disc in ferric chloride at 70 °C; abstract.',
  'ETCH-R': 'Thesis on ferric chloride etching of stainless foil and AK steel (RISS); abstract.',
  'ETCH-C':
    'Markle, High temperature ferric chloride etching, an evaluation of the process; slide text.',
  'ETCH-N': 'Liao & Wu, doi 10.1007/BF00728908: nickel in ferric chloride; abstract.',
  MG415: 'Safety data sheet 415, ferric chloride, MG Chemicals UK, 19 April 2021, section 2.',
  NUMET: 'Numet Chemicals, data page for 40 % ferric chloride solution.',
  FEAN: 'Safety data sheet, anhydrous iron(III) chloride, 2016.',
  NI: 'NIOSH Pocket Guide, nickel metal and other compounds; OSHA Chemical Sampling Information CH_256200; CDC IDLH 7440020.',
  MN: 'CDC IDLH 7439965; OSHA Chemical Sampling Information CH_250190 and CH_250200: manganese.',
  FEO: 'CDC PEL-88 page 1309-37; NIOSH RTECS and New Jersey sheet: iron oxide fume.',
  FL: 'CDC IDLH, fluorides as F; National Academies laboratory chemical safety summary.',
  Z1: 'OSHA 29 CFR 1910.1000 Table Z-1; heading and footnotes only, limits from memory except carbon monoxide.',
  'CO-PEL': 'A page quoting the OSHA limit for carbon monoxide (50 ppm) and NIOSH 35 ppm; weak.',
  '133': '29 CFR 1910.133 (2002 text) and an eye-protection selection table: filters for hot work.',
  CIOP: 'Central Institute for Labour Protection, Poland, Table 1 after PN-EN 171: infrared filter numbers and source temperatures.',
  BGR192: 'DGUV BGR 192, use of eye and face protection, Table 3 and Annex 2.',
  PTB: 'PTB annual-report note, 31 December 2005, on EN 171 filters.',
  NFPA: 'NFPA 58 (2014), 51B (2009) and 54/ANSI Z223.1-2024: titles and contents.',
  NIOSH:
    'Brueck et al., Noise exposure and hearing loss among workers at a hammer forge company, Semin. Hear. 44(4) (2023) 485–502; abstract.',
  QO: 'Quench oil: ASTM D92 flash point notes (industrialheating.com), keep 50 °F below it, one gallon to a pound of load (thermalprocessing.com), cold and martempering oils (gearsolutions.com).',
} as const
