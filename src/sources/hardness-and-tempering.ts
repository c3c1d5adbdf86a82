/** Hardness, hardenability, quenching, tempering. */
export const hardnessAndTempering = {
  RAIIPA:
    'Raiipa Technologies, Tempering data for carbon and low alloy steels, CC BY 4.0, version 3 (2024); compiled from Hollomon & Jaffe, Trans. AIME 162 (1945) 223, Grange & Baughman, Trans. ASM 48 (1956) 165, and Penha 2010.',
  GHP: 'Grange, Hribal, Porter, Metall. Trans. A 8A (1977) 1775; abstract only.',
  'MAYN-S':
    'Maynier equations for hardness after cooling, read as coded in a public file of 2014 (secondary).',
  'A255-HB':
    "ASTM A255-10(2014) hardenability formulas and the SAE 4118 modified example; read in the public metallurgical engineer's handbook pages of mxteen (secondary).",
  A255J:
    "ASTM A255-10(2014) Jominy dividing factors; read in the public metallurgical engineer's handbook pages of mxteen (secondary).",
  RKK: 'Roberts, Krauss, Kennedy, Tool Steels, 5th edition, Table 7-3, p. 127; excerpt.',
  TOTTEN:
    'Totten, Webster, Bates, Han, Kang, Limitations of the use of Grossmann quench severity factors: H = h/2k; excerpt.',
  HB: 'thermalprocessing.com, article on quench severity: H = h/2k with h at 705 °C.',
  'E140-KT':
    'HV–HRC–HB conversion table after ASTM E140, read in the public repository HardnessConverter (secondary).',
  'E140-TS': 'ASTM E140-12b conversion points, read in a public source file (secondary).',
  MEAD: 'Mead Metals, annealed spring steel page after ASTM A684: 1050, 1074/1075 and 1095, hardness after drawing.',
  'CN-T':
    'machinemfg.com, heat-treatment process table: Chinese carbon steels, Ms and tempered HRC; excerpt.',
  RYER: 'Ryerson tool-steel table for W2 at 1.00 % C, reproduced on a public document page.',
  'RYE-W2': 'Ryerson tool-steel text, W2 at 1.00 % C: hardness against tempering; extract.',
  'ASM-521': 'ASM International, One Minute Mentor, 12 June 2019: 52100.',
  ABS: 'American Bladesmith Society heat-treatment pages for L6 and 5160.',
  'ABS-L6': 'American Bladesmith Society heat-treatment page for L6.',
  'ABS-5160': 'American Bladesmith Society heat-treatment page for 5160.',
  CASHEN: 'cashenblades.com, heat treating of 52100.',
  STEELFORGE: 'steelforge.com, alloy 52100.',
  ROCKB: 'rockbladekilns.com, 1095; a dealer page.',
  KNIVESBY: 'knivesby.com, 5160, quoting the ASM manual (secondary).',
  'KB-5160': 'knivesby.com, 5160, quoting the ASM manual (secondary).',
  HOMEST: 'A forum post quoting a dealer on 5160; weak.',
  L6X: "A smiths' forum thread quoting a mill's method for a steel it does not name; figures match L6.",
  KSNF: 'knifesteelnerds.com, 23 September 2021: temperatures at which 1084 and 52100 lose their magnetism.',
} as const
