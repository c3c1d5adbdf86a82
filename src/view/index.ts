/** Where a picture looks: faces and sections of bars, pieces and closed surfaces, and what lies under each pixel. */
export { type FaceView, type Frame, type Surface, type Vector, coarsen, crop } from './view.ts'
export { type FaceOptions, type Plane, type Side, SIDES } from './face.ts'
export { type Faceted, faceOfBar, faceOfMesh, faceOfSolid, faceted } from './face.ts'
export { sectionOfBar, sectionOfMesh, sectionOfSolid } from './face.ts'
export { type BandSurface, type PartFacets, facetsOfParts, rasterise } from './raster.ts'
export { RUBBED, pressedCorners } from './press.ts'
export { smoothNormals } from './smooth-normals.ts'
