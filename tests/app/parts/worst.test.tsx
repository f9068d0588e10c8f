/** Worst cases are reckoned when the hand rests: never on a frame of a drag, and only where they are shown. */
import { act } from 'react'
import { createRoot, type Root } from 'react-dom/client'
import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { dragging } from '../../../app/canvas/dragging.ts'
import { useLayout } from '../../../app/parts/calm.ts'
import { useWorstCases } from '../../../app/parts/worst.ts'
import { adopt, beginGesture, setField, useBench } from '../../../app/state/index.ts'
import { change, reckoningOf, solve } from '../../../geometry/index.ts'
import { designOf } from '../../support/designs.ts'

let root: Root
let page: HTMLElement

function Shown() {
  return <p>{useWorstCases(useLayout()).size}</p>
}

beforeEach(() => {
  vi.useFakeTimers()
  page = document.body.appendChild(document.createElement('div'))
  root = createRoot(page)
  adopt(designOf())
  act(() => root.render(<Shown />))
})
afterEach(() => {
  dragging.release()
  act(() => root.unmount())
  page.remove()
  vi.useRealTimers()
})

const now = () => reckoningOf(solve(useBench.getState().design))
const shown = () => Number(page.textContent)
const wait = (ms: number) => act(() => vi.advanceTimersByTime(ms))

test('nothing is reckoned while the hand moves, and everything once it rests', () => {
  wait(100)
  expect([shown(), now().solved]).toEqual([0, 0])
  wait(5000)
  expect(shown()).toBeGreaterThan(20)
  expect(now().solved).toBe(2 * now().total)
})

test('what is shown belongs to the design on the bench: after a change nothing, then the new', () => {
  wait(5000)
  act(() => void setField(['box', 'depth'], 60, 'Depth'))
  expect([shown(), now().solved]).toEqual([0, 0])
  wait(5000)
  expect(shown()).toBeGreaterThan(20)
})

test('a drag never waits for it, however long it stays', () => {
  wait(5000)
  dragging.begin(() => {})
  const gesture = beginGesture('Move')
  for (let step = 1; step <= 5; step++) {
    act(() => gesture.preview(change(gesture.start, [['box', 'depth'], 55 + step])))
    wait(1000)
    expect(now().solved).toBe(0)
  }
  act(() => {
    gesture.finish()
    dragging.release()
  })
  wait(5000)
  expect(now().solved).toBe(2 * now().total)
})

test('nobody looks, nothing is reckoned', () => {
  act(() => root.unmount())
  root = createRoot(page)
  act(() => void setField(['box', 'depth'], 61, 'Depth'))
  wait(5000)
  expect(now().solved).toBe(0)
})
