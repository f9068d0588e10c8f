/** Wiring: what is soldered to what, what of it is heard, and how long each wire is. */
export { isGrounded, isPickup, positionsOf } from './circuit.ts'
export { cornerHertz, decibels, inParallel, loadedShare } from './formulas.ts'
export {
  CIRCUITS,
  type CircuitName,
  componentName,
  presetWiring,
  withoutComponent,
  withoutLooseWires,
} from './presets.ts'
export type { Run } from './runs.ts'
export { bareTerminal, PARTS, type PartSort, TERMINAL_NAMES, terminalsOf } from './terminals.ts'
export { type PickupAtJack, type ToneControl, type WiringFacts, wiringOf } from './wiring.ts'
