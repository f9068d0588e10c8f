/** What would let a hinged lid open: the least bevel or gap, each alone, all else as it is. */
import { limitOf } from '../../checks/finding.ts'
import { apply, change } from '../../design/changes.ts'
import { remembered } from '../../loads/remembered.ts'
import type { Layout } from '../../solve/layout.ts'
import { solve } from '../../solve/solve.ts'
import { hingedWith, lidMotionOf } from './lid-motion.ts'
import type { Swing } from './swing.ts'

export type LidCureField = 'bevelAtHinge' | 'bevelOpposite' | 'gap' | 'play'

export interface LidCure {
  /** Field of the lid that is set. */
  readonly field: LidCureField
  /** What it must be at least, millimetres. */
  readonly value: number
}

/** More than this is no relief but another lid. */
const MOST = 12

/** Found to a tenth of a millimetre. */
const FINE = 0.1

/** Every relief that leaves the room wanted to all that the lid itself meets, least first. Empty where none alone does. */
export const lidCuresOf = remembered((layout: Layout): readonly LidCure[] => {
  if (lidMotionOf(layout)?.by !== 'hinge') return []
  const { lid } = layout.design.box
  const wanted = limitOf(layout.design)('lidClear')
  const clear = ({ encounters }: Swing) =>
    encounters.every((one) => one.moving !== 'lid' || one.room >= wanted - 1e-6)
  const bevels = { atHinge: lid.bevelAtHinge, opposite: lid.bevelOpposite }
  const resolved = (field: 'gap' | 'play') => (value: number) => {
    const other = solve(apply(layout.design, change(layout.design, [['box', 'lid', field], value])))
    return clear(hingedWith(other, bevels).swing)
  }
  const room = lid.fit === 'on the walls' ? 'gap' : 'play'
  const ways: readonly (readonly [LidCureField, number, (value: number) => boolean])[] = [
    ['bevelAtHinge', bevels.atHinge, (atHinge) => clear(hingedWith(layout, { ...bevels, atHinge }).swing)],
    [
      'bevelOpposite',
      bevels.opposite,
      (opposite) => clear(hingedWith(layout, { ...bevels, opposite }).swing),
    ],
    [room, lid[room], resolved(room)],
  ]
  return ways
    .flatMap(([field, now, suffices]) => {
      const most = field === 'gap' ? 10 : field === 'play' ? 5 : MOST
      if (suffices(now) || !suffices(most)) return []
      let [short, enough] = [Math.floor(now / FINE), Math.ceil(most / FINE)]
      while (enough - short > 1) {
        const middle = Math.floor((enough + short) / 2)
        if (suffices(middle * FINE)) enough = middle
        else short = middle
      }
      return [{ field, value: enough * FINE }]
    })
    .sort((a, b) => a.value - b.value)
})
