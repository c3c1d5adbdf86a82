/** Vectors, boxes, outlines, quadrature, meshes. Holds the one tolerance. */
export { CONSERVED, SAME_LENGTH, sameLength } from './tolerance.ts'
export { type Axis, type Size, axisLength, boxVolume, shrink } from './size.ts'
export { type Outline, type Point } from './outline.ts'
export { type Mesh, meshArea, meshVolume, openSides } from './mesh.ts'
export { type HeightField } from './height-field.ts'
export { type SplineSurface, splineAt } from './spline-surface.ts'
export { meshOf } from './height-field-mesh.ts'
export { findZero, integrateAdaptively, integratePieces, nodesOf } from './quadrature.ts'
