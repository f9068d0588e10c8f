/** Drill and cut schedule: what is made, where, how deep, with which drill, in which order. */
export type { FromLine } from './from-edges.ts'
export { ORDER_OF_WORK, type ScheduleRow, scheduleOf, WORKS, type Work } from './schedule.ts'
export {
  DRILL_SETS,
  type DrillChoice,
  type DrillSeries,
  type DrillSet,
  drillsOf,
  type StockDrill,
  stockDrill,
} from './stock-drills.ts'
export { measuredFrom, type ScheduleWords, scheduleWords } from './words.ts'
