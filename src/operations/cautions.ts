/** A danger, the usual care, and the public standard or safety data it rests on. */
export interface Caution {
  readonly danger: string
  readonly care: string
  readonly restsOn: string
}

/** Printed wherever cautions are: nothing here outranks the law of the place or a licensed trade. */
export const CAUTIONS_DEFER =
  'Local codes, safety data sheets and licensed practice come first; these lines are the usual care, not a substitute.'

const named = {
  heat: {
    danger: 'Hot steel burns, and glows less than it burns: black heat is still 400 °C.',
    care: 'Tongs that fit, cotton or leather, nothing synthetic, a clear floor; say "hot" when you carry.',
    restsOn: 'common practice; fire: NFPA 51B (hot work)',
  },
  glare: {
    danger: 'A fire at welding heat harms eyes by infrared over the years.',
    care: 'Filter spectacles for infrared (EN 171 scale 4) beside impact protection.',
    restsOn: '29 CFR 1910.133 asks for a suitable filter; EN 171 infrared scale',
  },
  gas: {
    danger: 'Fuel gas leaks, and every forge makes carbon monoxide.',
    care: 'Open air or a hood, a CO alarm, a leak test at each fitting, the bottle outside or chained.',
    restsOn: 'NFPA 58 and 54 for the gas; CO limit 50 ppm, 29 CFR 1910.1000 Table Z-1',
  },
  flux: {
    danger: 'Molten borax splashes and sticks; fluoride fluxes give off hydrogen fluoride.',
    care: 'First blows light, from one end, nobody in line with the edge; face cover; no fluorspar without extraction.',
    restsOn: 'safety data of the flux; borates: REACH candidate list, reproductive toxicity',
  },
  strike: {
    danger: 'Hammer and press throw scale and broken pieces, pinch, and are loud enough to deafen.',
    care: 'Eye and ear protection, hands out of the line of the dies, work held so that it cannot turn.',
    restsOn: 'noise above 100 dBA was measured in a forge shop (NIOSH); 29 CFR 1910.95',
  },
  dust: {
    danger: 'Grinding dust of nickel and chromium steels harms lungs and skin; sparks set fires.',
    care: 'Wet or extracted grinding, a P100 or FFP3 respirator, no wood or magnesium dust in the same collector.',
    restsOn: 'nickel 1 mg/m³ (OSHA), 0.015 mg/m³ (NIOSH); chromium(VI) 5 µg/m³, 29 CFR 1910.1026',
  },
  saw: {
    danger: 'A saw or a cut-off wheel catches the work and throws it; cut ends are razors.',
    care: 'Clamp the work, guard on, no gloves near the blade, deburr before handling.',
    restsOn: 'common practice; 29 CFR 1910.215 (abrasive wheels)',
  },
  arc: {
    danger: 'Arc welding burns eyes and skin and fumes; plated or oily sheets fume worse.',
    care: 'Welding helmet, bare clean steel, fresh air; never weld galvanised sheet into a stack.',
    restsOn: '29 CFR 1910.133 shade table; AWS/ANSI Z49.1',
  },
  sealed: {
    danger: 'A sealed can or a sealed edge with air, oil or water inside can burst in the fire.',
    care: 'Leave a vent, dry everything, stand aside on the first heat.',
    restsOn: 'common practice, no source',
  },
  quench: {
    danger:
      'Quench oil flares when a hot blade goes in slowly or the oil is warm; water in it erupts.',
    care: 'A metal tank with a lid, oil 28 °C or more below its flash point, the whole blade under at once, an extinguisher for oil at hand.',
    restsOn: 'oil supplier data; NFPA 86 and 51B',
  },
  acid: {
    danger:
      'Ferric chloride and other etchants burn eyes, stain and corrode; acid into water is safe, water into acid is not.',
    care: 'Goggles, gloves, fresh air, soda at hand to neutralise; spent acid holds iron, nickel and copper: hazardous waste.',
    restsOn: 'safety data sheet of ferric chloride: H290, H302, H315, H318',
  },
  spring: {
    danger: 'A hardened blade can break when straightened, and the pieces fly.',
    care: 'Straighten while it is still above hardening, or after tempering, behind a guard.',
    restsOn: 'common practice, no source',
  },
  drill: {
    danger: 'A drill that breaks through grabs the work and spins it.',
    care: 'Clamp it, slow and with coolant, hair and sleeves tied back.',
    restsOn: 'common practice, no source',
  },
} as const satisfies Record<string, Caution>

export type CautionName = keyof typeof named

export const cautions: Readonly<Record<CautionName, Caution>> = named
