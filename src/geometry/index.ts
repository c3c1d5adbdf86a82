/** Vectors, boxes, outlines, quadrature, meshes. Holds the one tolerance. */
export { CONSERVED, SAME_LENGTH, sameLength } from './tolerance.ts'
export { type Axis, type Size, axisLength, boxVolume, shrink } from './size.ts'
export { type Outline, type Point, circleOutline, outlineArea } from './outline.ts'
export { type Mesh, meshVolume, openSides } from './mesh.ts'
