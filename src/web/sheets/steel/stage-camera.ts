import {
  type Box,
  type Camera,
  type Pose,
  type Vector,
  VIEWS,
  type ViewName,
  between,
  dot,
  extentOf,
  middleOf,
  plus,
  turnAbout,
} from '#scene'

/** Clear rim round the metal, css px. */
const RIM = 22
/** Finest pixel, m: a layer of a few µm still fills the picture. */
const FINEST = 5e-8
/** A cut moved by hand is looked at anew once it has rested so long, ms. */
const RESTED = 250
/** Time a turn to a named view takes, ms; at once for those who want no motion. */
const TURN_TIME = 400

/** The first look: nearly the face, turned enough that the edges show. */
const FIRST: Pose = turnAbout(turnAbout(VIEWS.face, [1, 0, 0], 0.22), [0, 1, 0], 0.16)

/** Metal is cut away beyond `at` along one of its axes, `out`. */
export interface Cut {
  readonly out: Vector
  readonly at: number
}

/** Where the eye stands, moved by hand, keys and named views; tells when it has moved. */
export class StageCamera {
  pose: Pose = FIRST
  middle: Vector = [0, 0, 0]
  pixel = 1e-4
  /** The named view it stands in, if it does. */
  view: ViewName | undefined
  private width = 1
  private height = 1
  private box: Box = { low: [0, 0, 0], high: [1, 1, 1] }
  private cut: Cut | undefined
  private fitted = false
  private turning = 0
  private resting: ReturnType<typeof setTimeout> | undefined
  /** How it was looked at before a cut was shown, and how since: turned by hand, it stays as it is. */
  private turned: { readonly before: Pose; readonly view?: ViewName; to: Pose } | undefined
  private readonly moved: () => void

  constructor(moved: () => void) {
    this.moved = moved
  }

  get camera(): Camera {
    return { ...this.pose, middle: this.middle, pixel: this.pixel }
  }

  /** The picture's size in css px. A picture that showed the whole goes on doing so. */
  resize(width: number, height: number): void {
    if (width === this.width && height === this.height) return
    this.width = Math.max(1, width)
    this.height = Math.max(1, height)
    if (this.fitted) this.fit()
    this.moved()
  }

  /** Sets the metal's box; whether it is another. A picture that showed the whole goes on doing so. */
  setBox({ low, high }: Box): boolean {
    // Not all that comes with it: a surface spelt out to be compared takes a second.
    const box = { low, high }
    const first = this.box.high[0] === 1
    const same = JSON.stringify(box) === JSON.stringify(this.box)
    this.box = box
    if (first || (this.fitted && !same)) this.fit()
    else if (!same) this.moved()
    return !same
  }

  /** Sets where the metal is cut. A picture that showed the whole shows all that is left, once the cut rests. */
  setCut(cut: Cut | undefined, still: boolean): void {
    if (JSON.stringify(cut) === JSON.stringify(this.cut)) return
    const moved = cut !== undefined && this.cut !== undefined
    this.cut = cut
    clearTimeout(this.resting)
    const again = () => {
      if (this.fitted) this.turnTo(this.goal, still, this.view)
    }
    if (moved) this.resting = setTimeout(again, RESTED)
    else again()
  }

  /** All metal that is not cut away in the picture. */
  fit(): void {
    Object.assign(this, this.fitting())
    this.fitted = true
    this.moved()
  }

  private fitting(): Pick<Camera, 'middle' | 'pixel'> {
    const left = leftOf(this.box, this.cut)
    const [wide, tall] = extentOf(left, this.pose)
    return {
      middle: middleOf(left),
      pixel: Math.max(
        wide / Math.max(this.width - 2 * RIM, 1),
        tall / Math.max(this.height - 2 * RIM, 1),
      ),
    }
  }

  /** Turns by css px of a hand that drags. */
  turn(dx: number, dy: number): void {
    this.stop()
    const by = Math.PI / Math.max(400, Math.min(this.width, this.height))
    this.pose = turnAbout(turnAbout(this.pose, this.pose.up, dx * by), this.pose.right, dy * by)
    this.view = undefined
    this.moved()
  }

  shift(dx: number, dy: number): void {
    this.stop()
    this.middle = plus(
      plus(this.middle, this.pose.right, -dx * this.pixel),
      this.pose.up,
      dy * this.pixel,
    )
    this.fitted = false
    this.moved()
  }

  /** Nearer (`by` above 1) about a place in the picture, css px from its middle, up positive. */
  zoom(by: number, x = 0, y = 0): void {
    this.stop()
    const coarsest =
      (4 * Math.max(...extentOf(this.box, VIEWS.face))) / Math.min(this.width, this.height)
    const next = Math.min(Math.max(this.pixel / by, FINEST), coarsest)
    const off = this.pixel - next
    this.middle = plus(plus(this.middle, this.pose.right, x * off), this.pose.up, y * off)
    this.pixel = next
    this.fitted = false
    this.moved()
  }

  /** Turns to a named view, the whole metal in it. */
  goTo(view: ViewName, still: boolean): void {
    this.turnTo(VIEWS[view], still, view)
  }

  /** Turns so that a cut with this outward direction shows, unless it does. */
  showCut(out: Vector, still: boolean): void {
    const { goal, view, turned } = this
    if (dot(out, goal.out) > 0.45) return
    const across = [out[1], -out[0], 0] as const
    const pose = Math.hypot(...across) < 0.5 ? FIRST : turnAbout(VIEWS.face, across, -0.95)
    const to = turnAbout(pose, VIEWS.face.right, 0.2)
    this.turned = turned?.to === goal ? { ...turned, to } : { before: goal, view, to }
    this.turnTo(to, still)
  }

  /** Turns back to how it was looked at before the cut was shown, unless it was turned since. */
  hideCut(still: boolean): void {
    const { turned, goal } = this
    this.turned = undefined
    if (turned?.to === goal) this.turnTo(turned.before, still, turned.view)
  }

  /** Where it turns to, or stands. */
  private get goal(): Pose {
    return this.turningTo ?? this.pose
  }
  private turningTo: Pose | undefined

  /** Turns, and draws near or far until all is in the picture. */
  private turnTo(pose: Pose, still: boolean, view?: ViewName): void {
    this.stop()
    const { pose: before, middle, pixel } = this
    const since = performance.now()
    const step = (now: number) => {
      const t = still ? 1 : Math.min(1, Math.max(0, (now - since) / TURN_TIME))
      const eased = t < 0.5 ? 2 * t * t : 1 - 2 * (1 - t) ** 2
      this.pose = t >= 1 ? pose : between(before, pose, eased)
      const all = this.fitting()
      this.middle = plus(middle, plus(all.middle, middle, -1), eased)
      this.pixel = pixel + (all.pixel - pixel) * eased
      this.fitted = true
      this.moved()
      if (t < 1) this.turning = requestAnimationFrame(step)
      else this.turningTo = undefined
    }
    this.turningTo = pose
    this.view = view
    step(since)
  }

  stop(): void {
    cancelAnimationFrame(this.turning)
    this.turningTo = undefined
  }
}

/** What of a box is not cut away. */
function leftOf({ low, high }: Box, cut: Cut | undefined): Box {
  if (!cut) return { low, high }
  const end = (of: Vector, keeps: (v: number, at: number) => number, way: number) =>
    of.map((v, k) => (way * cut.out[k]! > 0.5 ? keeps(v, way * cut.at) : v)) as unknown as Vector
  return { low: end(low, Math.max, -1), high: end(high, Math.min, 1) }
}
