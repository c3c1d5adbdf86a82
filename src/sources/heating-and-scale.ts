/** Heating, heat transfer, oxidation, scale, decarburisation. */
export const heatingAndScale = {
  'EN-CPP':
    'EN 1993-1-2 properties of hot steel as coded in the public repository Brandtools-Cpp (secondary; one misprint known).',
  'EN-FSE': 'EN 1993-1-2 heat transfer as coded in the public repository fsetools (secondary).',
  OXYL: 'Iron oxide layer growth, digitised points in a public teaching repository; the original is not named there.',
  HAGEL: 'Hagel, Pound, Mehl 1956, calorimetric study of iron oxidation; abstract.',
  ABUL: 'Abuluwefa H., M.Eng. thesis, McGill University, 1992; abstract.',
  ABU92: 'Abuluwefa H., thesis, McGill University, 1992: excess air and scale; abstract.',
  ABU97: 'Abuluwefa H. et al., Metall. Mater. Trans. A 28 (1997) 1643–1651; abstract.',
  STAN: 'Stanley, von Hoene, Huntoon, Oxidation of pure iron, Trans. ASM (1950/51); read as abstracted by the US Bureau of Mines (secondary).',
  RAHM: 'Influence of water vapour and carbon dioxide on the oxidation of iron in oxygen; abstract of a German paper (Rahmel & Tobolski 1965 from memory).',
  LGY: 'Lee, Gleeson, Young, Scaling of carbon steel in simulated reheat furnace atmospheres, Oxid. Met. 63 (2005) 15; abstract.',
  FRISA:
    'Morales-Franco et al., X NACE Mexican Section congress: AISI 4140 reheated to 1280 °C for ring forging; abstract.',
  FILO: 'Forging losses, an answer on a question page; weak.',
  YABU: 'Tetsu-to-Hagané 40(6) (1954) 592: scaling loss of rolled carbon steel; abstract.',
  KIM: 'Kim, Choi, Lee, Met. Mater. Int. 11 (2005) 131; abstract.',
  GCR: 'Decarburisation mechanism and law of GCr15 bearing steel during heat treatment; abstract.',
  SICR: 'Decarburisation of silicon spring steels: Shanghai Metals 2013(2) 27; W55SiCrC 2024; 55SiCr in moist air; Liu et al., Arch. Metall. Mater. 2016; abstracts.',
} as const
