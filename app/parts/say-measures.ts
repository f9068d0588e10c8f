/** Measures in words. */
import type { Layout, Measure, MeasureEnd } from '../../geometry/index.ts'
import { nameOf } from './say.ts'

/** `centre of Treble hole`, `edge of Treble hole`, `saddle line`. */
export function sayEnd({ of, at }: MeasureEnd, layout: Layout): string {
  if (layout.placed.some((one) => one.thing.id === of))
    return at === 'centre' ? `centre of ${nameOf(of, layout)}` : `edge of ${nameOf(of, layout)}`
  return /^(saddle|board end)$/.test(of) ? `${of} line` : of
}

export const sayWay = ({ way }: Measure): string => (way === 'straight' ? '' : `, ${way} only`)
