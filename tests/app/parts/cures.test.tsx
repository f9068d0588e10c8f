/** Cures in Prove: looked for when the hand rests, done by one press, taken back by one undo. */
import { act } from 'react'
import { createRoot, type Root } from 'react-dom/client'
import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { dragging } from '../../../app/canvas/dragging.ts'
import { CureAll } from '../../../app/parts/CureAll.tsx'
import { CureButtons } from '../../../app/parts/CureButtons.tsx'
import { useLayout } from '../../../app/parts/calm.ts'
import { useCures } from '../../../app/parts/cures.ts'
import { adopt, historyNow, undo, useBench } from '../../../app/state/index.ts'
import { blocks, check, solve } from '../../../geometry/index.ts'
import { designOf } from '../../support/designs.ts'

let root: Root
let page: HTMLElement

function Shown() {
  const layout = useLayout()
  const cures = useCures()
  return (
    <>
      <CureAll layout={layout} />
      {check(layout)
        .filter(blocks)
        .map((one) => (
          <CureButtons key={one.key} cures={cures(layout, one) ?? []} layout={layout} all={false} />
        ))}
    </>
  )
}

const muddle = designOf({
  neck: { length: 880 },
  things: [{ kind: 'sound-hole', id: 'hole', name: 'Hole', along: 60, across: 25, diameter: 25 }],
})

beforeEach(() => {
  vi.useFakeTimers()
  page = document.body.appendChild(document.createElement('div'))
  root = createRoot(page)
  adopt(muddle)
  act(() => root.render(<Shown />))
})
afterEach(() => {
  dragging.release()
  act(() => root.unmount())
  page.remove()
  vi.useRealTimers()
})

const wait = (ms: number) => act(() => vi.advanceTimersByTime(ms))
const buttons = () => [...page.querySelectorAll('button')].map((one) => one.textContent)
const press = (name: string) =>
  act(() => [...page.querySelectorAll('button')].find((one) => one.textContent === name)?.click())
const stops = () => check(solve(useBench.getState().design)).filter(blocks).length

test('nothing is looked for while the hand moves; once it rests every stop has its button', () => {
  act(() => dragging.begin(() => {}))
  wait(3000)
  expect(buttons()).toEqual(['Cure all…'])
  act(() => dragging.release())
  wait(10_000)
  expect(buttons()).toEqual([
    'Cure all…',
    'Headstock, long: 136.5 mm instead of 150.0 mm',
    'Move “Hole” 12.5 mm towards the treble side',
  ])
})

test('one press does it, under its own words, and one undo takes it back', () => {
  wait(10_000)
  press('Move “Hole” 12.5 mm towards the treble side')
  expect(useBench.getState().design.things[0]?.across).toBe(37.5)
  expect(historyNow().done).toEqual(['Move “Hole” 12.5 mm towards the treble side'])
  act(() => void undo())
  expect(useBench.getState().design.things[0]?.across).toBe(25)
})

test('cure all lists what it would do, does it in one step, and leaves no stop', () => {
  press('Cure all…')
  wait(10_000)
  expect([...page.querySelectorAll('ol li')].map((one) => one.textContent)).toHaveLength(2)
  expect(stops()).toBe(2)
  press('Do all 2')
  expect(stops()).toBe(0)
  expect(historyNow().done).toEqual(['Cure all, 2 changes'])
})
