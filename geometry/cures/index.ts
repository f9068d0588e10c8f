/** What would mend a finding, and everything at once: each cure solved and checked again before it is told. */
export { type CureAll, cureAll, curingAll, type Demand } from './all.ts'
export type { Worsened } from './compare.ts'
export { type Cure, curesOf, curing, knownCures } from './cure.ts'
