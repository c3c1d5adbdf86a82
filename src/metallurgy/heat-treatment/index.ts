/** Quench and temper of each steel in a billet, all models together. */
export { type HardeningOrder, type TreatedSteel, treatSteel } from './treat-steel.ts'
