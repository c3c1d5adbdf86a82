/** Carbon lost from a face, and the light line it leaves in a weld. */
export { type Decarburisation, decarburise, fadeWeldLine } from './decarburisation.ts'
