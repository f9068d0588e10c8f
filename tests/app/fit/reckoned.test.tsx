/** The fit table is reckoned in stretches, and dropped as soon as it would be about another design. */
import { act } from 'react'
import { createRoot, type Root } from 'react-dom/client'
import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { dragging } from '../../../app/canvas/dragging.ts'
import { type Reckoned, useReckoned } from '../../../app/fit/reckoned.ts'
import { adopt, beginGesture, commit } from '../../../app/state/index.ts'
import { change, type Fitting, startingDesign } from '../../../geometry/index.ts'

/** Every fitting that was begun. */
const begun = vi.hoisted(() => [] as Fitting[])
vi.mock('../../../geometry/index.ts', async (importActual) => {
  const actual = await importActual<typeof import('../../../geometry/index.ts')>()
  return {
    ...actual,
    fittingOf: (...asked: Parameters<typeof actual.fittingOf>) => {
      const fitting = actual.fittingOf(...asked)
      begun.push(fitting)
      return fitting
    },
  }
})

let root: Root
let now: Reckoned
const design = startingDesign({ length: 240, width: 180, depth: 60, strings: 3, hand: 'right' })
const long = { ...design, neck: { ...design.neck, length: 1500 } }

function Shown() {
  now = useReckoned()
  return null
}

beforeEach(() => {
  begun.length = 0
  adopt(structuredClone(long))
  root = createRoot(document.createElement('div'))
  act(() => root.render(<Shown />))
})
afterEach(() => {
  dragging.release()
  act(() => root.unmount())
})

/** What a stretch may take is measured by the clock, so the clock runs on. */
const wait = (ms: number) => act(() => new Promise<void>((done) => setTimeout(done, ms)))

async function until(holds: () => boolean): Promise<void> {
  for (let turns = 0; turns < 4000 && !holds(); turns++) await wait(2)
  expect(holds()).toBe(true)
}

/** A first stretch is done, and no more than a few. */
const aStretch = () => until(() => (begun[0]?.done ?? 0) > 0)
const toTheEnd = () => until(() => now.total > 0 && now.rows.length === now.total)

test('a stretch does a few rows and no more; rows are told when all are there', async () => {
  await aStretch()
  const [first] = begun
  expect(first?.done).toBeGreaterThan(0)
  expect(first?.done).toBeLessThan(first?.total ?? 0)
  expect(now.rows).toEqual([])
  await toTheEnd()
  expect(now.rows).toHaveLength(first?.total ?? 0)
  expect(begun).toHaveLength(1)
})

test('a change to the design ends the running one where it is, and begins anew for the new design', async () => {
  await aStretch()
  const [first] = begun
  const done = first?.done ?? 0
  act(() => commit('Box, long', change(long, [['box', 'length'], 300])))
  // Nothing of the old design is left to be tried on the new one.
  expect(now).toMatchObject({ rows: [], total: 0 })
  await toTheEnd()
  expect(begun).toHaveLength(2)
  expect(begun[0]?.done).toBe(done)
  expect(done).toBeLessThan(begun[0]?.total ?? 0)
  expect(new Set(now.rows.map((row) => row.design.box.length))).toEqual(new Set([300]))
})

test('what is only tried begins nothing anew, and while something is dragged nothing is reckoned', async () => {
  await toTheEnd()
  const rows = now.rows
  const gesture = beginGesture('Try', 'cancel')
  act(() => gesture.preview(change(long, [['box', 'length'], 310])))
  await wait(1000)
  expect(begun).toHaveLength(1)
  expect(now.rows).toBe(rows)
  act(() => gesture.cancel())
  act(() => dragging.begin(() => {}))
  act(() => commit('Box, long', change(long, [['box', 'length'], 300])))
  await wait(1000)
  expect(begun).toHaveLength(1)
  act(() => dragging.release())
  await until(() => begun.length === 2)
  await toTheEnd()
  expect(begun).toHaveLength(2)
  expect(now.rows[0]?.design.box.length).toBe(300)
})
