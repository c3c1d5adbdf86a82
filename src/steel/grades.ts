import type { Grade } from './grade.ts'
import g1018 from './grades/1018.json' with { type: 'json' }
import g1045 from './grades/1045.json' with { type: 'json' }
import g1050 from './grades/1050.json' with { type: 'json' }
import g1060 from './grades/1060.json' with { type: 'json' }
import g1070 from './grades/1070.json' with { type: 'json' }
import g1075 from './grades/1075.json' with { type: 'json' }
import g1080 from './grades/1080.json' with { type: 'json' }
import g1084 from './grades/1084.json' with { type: 'json' }
import g1095 from './grades/1095.json' with { type: 'json' }
import w1 from './grades/w1.json' with { type: 'json' }
import w2 from './grades/w2.json' with { type: 'json' }
import o1 from './grades/o1.json' with { type: 'json' }
import l6 from './grades/l6.json' with { type: 'json' }
import c105u from './grades/c105u.json' with { type: 'json' }
import g5160 from './grades/5160.json' with { type: 'json' }
import g52100 from './grades/52100.json' with { type: 'json' }
import g8670 from './grades/8670.json' with { type: 'json' }
import g80crv2 from './grades/80crv2.json' with { type: 'json' }
import g15n20 from './grades/15n20.json' with { type: 'json' }
import nickel200 from './grades/nickel-200.json' with { type: 'json' }
import a203e from './grades/a203e.json' with { type: 'json' }
import a36 from './grades/a36.json' with { type: 'json' }
import s235jr from './grades/s235jr.json' with { type: 'json' }
import wroughtIron from './grades/wrought-iron.json' with { type: 'json' }
import g304 from './grades/304.json' with { type: 'json' }
import g316 from './grades/316.json' with { type: 'json' }
import aebL from './grades/aeb-l.json' with { type: 'json' }
import g14c28n from './grades/14c28n.json' with { type: 'json' }

/** Every grade that comes with the program, one file each; a test reads them all by the schema. */
export const grades = [
  g1018,
  g1045,
  g1050,
  g1060,
  g1070,
  g1075,
  g1080,
  g1084,
  g1095,
  w1,
  w2,
  o1,
  l6,
  c105u,
  g5160,
  g52100,
  g8670,
  g80crv2,
  g15n20,
  nickel200,
  a203e,
  a36,
  s235jr,
  wroughtIron,
  g304,
  g316,
  aebL,
  g14c28n,
] as readonly unknown[] as readonly Grade[]
