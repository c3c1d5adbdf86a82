/** Definitions of units and the standards grades and sizes are named after. */
export const unitsAndHandbooks = {
  'NIST-811':
    'NIST Special Publication 811 (2008), Guide for the Use of the SI, Appendix B: exact factors (inch 0.0254 m, pound 0.453 592 37 kg, kgf 9.806 65 N).',
  SI: 'BIPM, The International System of Units, 9th edition (2019): SI units, litre, tonne, bar, degree, minute, hour.',
  'EN1993-1-1':
    'EN 1993-1-1, clause 3.2.6 with EN 1991-1-1 Table A.4: structural steel, 7850 kg/m³ taken for design (from memory).',
} as const
