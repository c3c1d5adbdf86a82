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
/** Time a turn to a named view takes, ms; at once for those who want no motion. */
const TURN_TIME = 400

/** The first look: nearly the face, turned enough that the edges show. */
const FIRST: Pose = turnAbout(turnAbout(VIEWS.face, [1, 0, 0], 0.22), [0, 1, 0], 0.16)

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
  private fitted = false
  private turning = 0
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

  setBox({ low, high }: Box): void {
    // Not all that comes with it: a surface spelt out to be compared takes a second.
    const box = { low, high }
    const first = this.box.high[0] === 1
    const same = JSON.stringify(box) === JSON.stringify(this.box)
    this.box = box
    if (first || (this.fitted && !same)) this.fit()
    if (!same) this.moved()
  }

  /** The whole metal in the picture. */
  fit(): void {
    const [wide, tall] = extentOf(this.box, this.pose)
    this.middle = middleOf(this.box)
    this.pixel = Math.max(
      wide / Math.max(this.width - 2 * RIM, 1),
      tall / Math.max(this.height - 2 * RIM, 1),
    )
    this.fitted = true
    this.moved()
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
    if (dot(out, this.pose.out) > 0.45) return
    const across = [out[1], -out[0], 0] as const
    const pose = Math.hypot(...across) < 0.5 ? FIRST : turnAbout(VIEWS.face, across, -0.95)
    this.turnTo(turnAbout(pose, VIEWS.face.right, 0.2), still)
  }

  private turnTo(pose: Pose, still: boolean, view?: ViewName): void {
    this.stop()
    const [from, since] = [this.pose, performance.now()]
    const step = (now: number) => {
      const t = still ? 1 : Math.min(1, (now - since) / TURN_TIME)
      const eased = t < 0.5 ? 2 * t * t : 1 - 2 * (1 - t) ** 2
      this.pose = t >= 1 ? pose : between(from, pose, eased)
      this.fit()
      if (t < 1) this.turning = requestAnimationFrame(step)
    }
    this.view = view
    step(since)
  }

  stop(): void {
    cancelAnimationFrame(this.turning)
  }
}
