/** The metal on a graphics card: its surface, its pattern in stages, its look, each drawn again only when it must be. */
export { type Facets, boxMesh, cutFacets } from './facets.ts'
export type { Metal } from './metal.ts'
export { MODES, type Mode } from './modes.ts'
export type { Shot } from './shot.ts'
export { SteelScene } from './steel-scene.ts'
export { type Box, type Camera, type Pose, type Vector, VIEWS, type ViewName } from './views.ts'
export { between, dot, extentOf, middleOf, plus, turnAbout } from './views.ts'
