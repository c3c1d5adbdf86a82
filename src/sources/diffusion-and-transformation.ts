/** Carbon and metal diffusion, thermodynamics, transformation, grain, density. */
export const diffusionAndTransformation = {
  CPART:
    'Ågren 1986, carbon diffusivity in austenite D(T, x_C); read as coded in the public repository arthursn/cpartition (secondary).',
  'CPART-KM':
    'Andrews 1965 (Ms) and Koistinen–Marburger with 0.011 per K; read as quoted in public code beside arthursn/cpartition (secondary).',
  MATTER:
    'MATTER teaching pages (matter.org.uk), surface hardening: carbon in austenite, D0 0.15 cm²/s, Q 135 kJ/mol; excerpt.',
  YAGURU:
    'Callister problem data, D0 2.3e-5 m²/s, Q 148 kJ/mol; read as quoted on a question page (secondary).',
  'FOSSEE-CAL':
    'Callister & Rethwisch, Fundamentals of Materials Science and Engineering, Design Example 5.1; inputs read in the FOSSEE textbook companion, book 539 (secondary).',
  'FOSSEE-SOM':
    'Som S.K., Introduction to Heat Transfer, Example 4.10; read in the FOSSEE textbook companion, book 1910 (secondary).',
  'HARRIS-T':
    'Harris case depths by time and temperature, in inches; table on engineersedge.com, heat treating of steel.',
  FLAME:
    'Flame Metals technical page on the Harris depth (0.07 % C over the core; temperatures in Rankine).',
  'OC-TDB':
    'OpenCalphad example databases steel1.TDB (SGTE SSOL2 extract, C Cr Fe Mo Si V) and FECRMNC.TDB (C Cr Fe Mn).',
  CTHERM: 'CompuTherm page on Fe–C: invariant points.',
  'DARK-F':
    'Darken 1949, the silicon couple (3.8 % Si, 13 days, 1323 K); the set-up read as stated on a question page (secondary).',
  MILL: 'Million, Růžičková, Kučera, Z. Metallkde 84 (1993) 687: 59Fe tracer in Fe–Mn; abstract table.',
  'MS-PY':
    'Ingber & Kunert, steel research int. 93 (2022) 2100576, martensite start; read as code in EAH-Materials/MartensiteStart.',
  'TD-PY':
    'Transformation kinetics as coded in the public repository arthursn/transformation-diagrams.',
  LI98: 'Li, Niebuhr, Meekisho, Atteridge, Metall. Mater. Trans. B 29B (1998) 661–672, eqs 18–29.',
  GORNI:
    'Gorni A.A., Steel Forming and Heat Treating Handbook, versions of 18 March 2009 and 24 May 2012; excerpts.',
  GG: 'Grain-growth data set of 1039 austenite grain sizes, public repository GrainGrowthStell; with Du, Li, Zheng, JMEPEG 25 (2016) 2661 and Mochtar et al., JMEPEG 32 (2023) 3322.',
  'PYR-GG':
    'PyRolL recrystallisation plug-in documents: the Sellars root law of grain growth (secondary).',
  MOB: 'LibreCalphad mf-mobility database; cites Liu et al., Calphad 33 (2009) 614 (C, Mn, Fe), Zheng et al., J. Alloys Compd 632 (2015) 661 (Si), Khorasgani et al., Calphad 79 (2022) 102498 (Fe, Ni, Cr).',
  MOBK: 'Kawin test data FECRNI_DB, parameters of the MatCalc open steel database mc_fe 2.060 (secondary).',
  TDB: 'LibreCalphad mf-steel database; cites Lee, Calphad 16 (1992) 121; Jacob et al., Calphad 81 (2023) 102531; Xiong et al., Acta Mater. 59 (2011) 521; Oikawa & Ueshima, J. Phase Equilib. Diff. 43 (2022) 814.',
  DAM: 'Microstructural analysis of a welded Damascus knife blade billet; abstract, authors and year not shown there.',
  DCIR: 'Defect and diffusion data, scientific.net abstracts 28044 and 28149.',
  DENS: 'Density of austenite and ferrite against temperature and composition; one regression read in four independent public code files (secondary; attribution to Miettinen from memory).',
} as const
