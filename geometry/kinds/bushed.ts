/**
 * What pots, switches and jacks share: a thread through the face, a nut on it, a bore where the wood is too thick and
 * a backing plate where it is too thin. The typical sizes are common practice without a published source.
 */
import { length, oneOf } from '../design/fields.ts'
import type { Contour } from '../plane/index.ts'
import type { Bushing, LocalOperation } from './kind.ts'
import { disc, through, widest } from './open.ts'

const bored = { bore: ['from inside', 'from outside'] }

export interface BushedFields {
  hole: number
  thread: number
  nut: number
  washer: number
  bore: 'none' | 'from inside' | 'from outside'
  boreDiameter: number
  boreDepth: number
  backing: number
}

interface Usual {
  readonly hole: number
  readonly thread: number
  readonly nut: number
  readonly washer: number
  readonly boreDiameter: number
}

/** The fields, with what is usual for one kind. */
export const bushedFields = (usual: Usual) => ({
  hole: length(usual.hole, 2, 40, {
    label: 'Hole',
    help: 'Diameter of the hole for the thread: the thread and a little.',
  }),
  thread: length(usual.thread, 1, 40, {
    label: 'Thread',
    help: 'Usable length of the threaded bushing, from where the body sits to its end. Measure yours.',
  }),
  nut: length(usual.nut, 0, 15, {
    label: 'Nut and washer',
    help: 'How much of the thread washer and nut take up together, or the least that lets the nut bite.',
  }),
  washer: length(usual.washer, 0, 60, {
    label: 'Washer, across',
    help: 'Diameter of the washer or nut that lies on the face.',
  }),
  bore: oneOf(['none', 'from inside', 'from outside'], 'none', {
    label: 'Bored thinner',
    help: 'A wider bore part of the way, where the wood is thicker than the thread: from inside the body goes in, from outside the nut.',
  }),
  boreDiameter: length(usual.boreDiameter, 2, 80, {
    label: 'Bore, across',
    help: 'Diameter of the wider bore: more than the body from inside, more than washer and socket from outside.',
    when: bored,
  }),
  boreDepth: length(3, 0.1, 40, { label: 'Bore, deep', help: 'Depth of the wider bore.', when: bored }),
  backing: length(0, 0, 20, {
    label: 'Backing plate',
    help: 'Thickness of a plate of wood or metal glued behind a thin face; 0 for none.',
  }),
})

const bores = (it: BushedFields) => it.bore !== 'none' && it.boreDiameter > it.hole

export function bushedOperations(it: BushedFields): LocalOperation[] {
  const hole = through(it.hole)
  if (!bores(it)) return [hole]
  const contour = disc(it.boreDiameter)
  return it.bore === 'from inside'
    ? [hole, { kind: 'recess', contour, depth: it.boreDepth, from: 'inside' }]
    : [hole, { kind: 'recess', contour, depth: it.boreDepth }]
}

/** All wood taken, from whichever side. */
export const bushedTaken = (it: BushedFields): Contour =>
  bores(it) ? widest(it.hole, it.boreDiameter) : disc(it.hole)

/** Where the body sits, behind the outer side of a face this thick. Never before the outer side. */
export const seat = (it: BushedFields, thickness: number): number =>
  Math.max(0, thickness + it.backing - (it.bore === 'from inside' && bores(it) ? it.boreDepth : 0))

export const bushingOf = (it: BushedFields, bodyAcross: number, shaft?: Bushing['shaft']): Bushing => ({
  thread: it.thread,
  nut: it.nut,
  bore: bores(it) ? it.bore : 'none',
  boreDiameter: it.boreDiameter,
  boreDepth: it.boreDepth,
  widthInside: bodyAcross,
  widthOutside: it.washer,
  backing: it.backing,
  ...(shaft ? { shaft } : {}),
})
