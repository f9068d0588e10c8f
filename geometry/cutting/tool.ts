/** The tool that cuts a part. */
import type { Design } from '../design/schema.ts'

export interface Tool {
  readonly process: 'laser' | 'router'
  /** Width of wood taken away: the kerf of a laser, the diameter of a cutter; mm. */
  readonly width: number
  readonly relief: Design['cutting']['relief']
  /** Whether slots to saw are cut by the machine. */
  readonly cutsSlots: boolean
}

/**
 * The tool for a part of a design, by the part's id; `null` where parts are cut by hand.
 *
 * @example toolFor(design, 'lid')?.width // 0.2
 */
export function toolFor({ cutting }: Design, part: string): Tool | null {
  const { process, relief, slots } = cutting
  if (process === 'by hand') return null
  const cutsSlots = slots === 'cut by the machine'
  if (process === 'router') return { process, width: cutting.cutter, relief, cutsSlots }
  return { process, width: kerfFor(cutting, part), relief: 'none', cutsSlots }
}

function kerfFor(cutting: Design['cutting'], part: string): number {
  if (cutting.kerfs === 'one for all') return cutting.kerf
  if (part === 'lid') return cutting.kerfLid
  if (part === 'base') return cutting.kerfBase
  if (part === 'board') return cutting.kerfBoard
  if (part.endsWith('-wall')) return cutting.kerfWalls
  return part.startsWith('neck-') ? cutting.kerfNeck : cutting.kerf
}
