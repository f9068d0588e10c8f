import type { Layout, WallSlot } from '../../solve/layout.ts'
import { gradeLeast, type Measurement, type Rule } from '../finding.ts'

const faceName = (face: unknown) =>
  String(face).replaceAll('-', ' ').replace('neck end', 'neck-end').replace('tail end', 'tail-end')

function eachSlot(layout: Layout): { slot: WallSlot; height: number; half: number }[] {
  return layout.neck.slots.map((slot) => ({
    slot,
    height: slot.depth + slot.wallLeftBelow,
    half: slot.width / 2,
  }))
}

export const wallUnderSlot: Rule = {
  name: 'wall-under-slot',
  title: 'Wall left under the neck slot',
  unit: 'mm',
  wants: 'least',
  limits: ['wallUnderSlot'],
  mendedBy: ['neck.rise', 'neck.thickness'],
  measure(layout, limit) {
    const found: Measurement[] = []
    const wanted = limit('wallUnderSlot')
    for (const { slot, height } of eachSlot(layout)) {
      found.push({
        about: [slot.face],
        measured: slot.wallLeftBelow,
        limit: wanted,
        grade: gradeLeast(slot.wallLeftBelow, wanted, 0),
        where: { view: slot.face, from: { x: 0, y: -slot.depth }, to: { x: 0, y: -height } },
        data: { face: slot.face, depth: slot.depth },
      })
    }
    return found
  },
  words({ measured, limit, grade, data }, say) {
    const wall = faceName(data?.face)
    const depth = say.length(Number(data?.depth))
    if (grade === 'stop')
      return `The neck slot is ${depth} deep, ${say.length(-(measured ?? 0))} deeper than the ${wall} is tall. Use a thinner neck, raise it, or find a deeper box.`
    const left = `Under the neck slot, ${depth} deep, ${say.length(measured ?? 0)} of the ${wall} are left`
    return grade === 'clear' ? `${left}.` : `${left}; less than ${say.length(limit ?? 0)} breaks out.`
  },
}

export const wallBesideSlot: Rule = {
  name: 'wall-beside-slot',
  title: 'Wall left beside the neck slot',
  unit: 'mm',
  wants: 'least',
  limits: ['wallBesideSlot'],
  mendedBy: ['neck.width'],
  measure(layout, limit) {
    const found: Measurement[] = []
    const wanted = limit('wallBesideSlot')
    for (const { slot, half } of eachSlot(layout)) {
      found.push({
        about: [slot.face],
        measured: slot.wallLeftBeside,
        limit: wanted,
        grade: gradeLeast(slot.wallLeftBeside, wanted, 0),
        where: {
          view: slot.face,
          from: { x: half, y: -slot.depth / 2 },
          to: { x: half + Math.max(0, slot.wallLeftBeside), y: -slot.depth / 2 },
        },
        data: { face: slot.face },
      })
    }
    return found
  },
  words({ measured, limit, grade, data }, say) {
    const wall = faceName(data?.face)
    if (grade === 'stop')
      return `At the ${wall} the neck slot runs ${say.length(-(measured ?? 0))} into a side wall. Use a narrower neck.`
    const left = `Beside the neck slot ${say.length(measured ?? 0)} of the ${wall} are left to the corner`
    return grade === 'clear' ? `${left}.` : `${left}; under ${say.length(limit ?? 0)} the joint may open.`
  },
}
