import type { Operation } from './operation.ts'
import { accordion } from './accordion/index.ts'
import { anneal } from './anneal/index.ts'
import { bend } from './bend/index.ts'
import { bookmatch } from './bookmatch/index.ts'
import { can } from './can/index.ts'
import { clad } from './clad/index.ts'
import { crop } from './crop/index.ts'
import { cutOff } from './cut-off/index.ts'
import { dimple } from './dimple/index.ts'
import { drawOut } from './draw-out/index.ts'
import { drift } from './drift/index.ts'
import { drill } from './drill/index.ts'
import { edgeBar } from './edge-bar/index.ts'
import { etch } from './etch/index.ts'
import { forgeFlat } from './forge-flat/index.ts'
import { forgeToSection } from './forge-to-section/index.ts'
import { forgeToShape } from './forge-to-shape/index.ts'
import { fourWay } from './four-way/index.ts'
import { grindToShape } from './grind-to-shape/index.ts'
import { grind } from './grind/index.ts'
import { groove } from './groove/index.ts'
import { harden } from './harden/index.ts'
import { ladder } from './ladder/index.ts'
import { laySideBySide } from './lay-side-by-side/index.ts'
import { normalise } from './normalise/index.ts'
import { polish } from './polish/index.ts'
import { pressPattern } from './press-pattern/index.ts'
import { restack } from './restack/index.ts'
import { rollUp } from './roll-up/index.ts'
import { roll } from './roll/index.ts'
import { slices } from './slices/index.ts'
import { squareOnBias } from './square-on-the-bias/index.ts'
import { squareUp } from './square-up/index.ts'
import { stack } from './stack/index.ts'
import { stamp } from './stamp/index.ts'
import { straighten } from './straighten/index.ts'
import { tack } from './tack/index.ts'
import { takeBar } from './take-bar/index.ts'
import { takeRemnant } from './take-remnant/index.ts'
import { taper } from './taper/index.ts'
import { temper } from './temper/index.ts'
import { trim } from './trim/index.ts'
import { turn } from './turn/index.ts'
import { twist } from './twist/index.ts'
import { upset } from './upset/index.ts'
import { wedgeSplit } from './wedge-split/index.ts'
import { weld } from './weld/index.ts'

/** Everything that can be done to the metal, in the order a smith meets it. One line an operation. */
export const operations: readonly Operation[] = [
  stack,
  takeBar,
  takeRemnant,
  can,
  tack,
  weld,
  trim,
  crop,
  cutOff,
  drawOut,
  turn,
  restack,
  fourWay,
  slices,
  bookmatch,
  accordion,
  wedgeSplit,
  rollUp,
  laySideBySide,
  edgeBar,
  clad,
  squareUp,
  squareOnBias,
  forgeToSection,
  roll,
  twist,
  ladder,
  dimple,
  pressPattern,
  forgeFlat,
  taper,
  bend,
  upset,
  drift,
  forgeToShape,
  grind,
  grindToShape,
  groove,
  drill,
  stamp,
  normalise,
  anneal,
  harden,
  straighten,
  temper,
  polish,
  etch,
]
