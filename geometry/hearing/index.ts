/** What pickups hear of the strings, and what letting them in takes from the neck. */
export { DEAF, HARMONICS, harmonicHeard, stoppedLength } from './harmonics.ts'
export { type PickupHearing, type PickupRelief, pickupsOf } from './pickups.ts'
