// @vitest-environment jsdom
/** One animation frame for all drawings. */
import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { inNextFrame, notInNextFrame } from '../../../app/canvas/next-frame.ts'

let frames: (() => void)[] = []
const frame = () => {
  const due = frames
  frames = []
  for (const one of due) one()
}

beforeEach(() => {
  vi.stubGlobal('requestAnimationFrame', (work: () => void) => frames.push(work))
})
afterEach(() => vi.unstubAllGlobals())

test('two drawings, one of them asked for twice, take one frame and are each done once', () => {
  const [one, other] = [vi.fn(), vi.fn()]
  inNextFrame(one)
  inNextFrame(other)
  inNextFrame(one)
  expect(frames).toHaveLength(1)
  frame()
  expect([one.mock.calls.length, other.mock.calls.length]).toEqual([1, 1])
  expect(frames).toHaveLength(0)
})

test('what another drawing changes is shown in the same frame; what asks for itself waits for the next', () => {
  const follows = vi.fn()
  let rounds = 0
  const leads = () => {
    rounds += 1
    inNextFrame(follows)
    if (rounds < 2) inNextFrame(leads)
  }
  inNextFrame(leads)
  frame()
  expect([rounds, follows.mock.calls.length]).toEqual([1, 1])
  frame()
  expect([rounds, follows.mock.calls.length]).toEqual([2, 2])
  expect(frames).toHaveLength(0)
})

test('what is called off is not done, and one that fails keeps no other from being drawn', () => {
  const told = vi.fn()
  vi.stubGlobal('reportError', told)
  const [off, drawn] = [vi.fn(), vi.fn()]
  const fault = new Error('a torn drawing')
  inNextFrame(() => {
    throw fault
  })
  inNextFrame(off)
  inNextFrame(drawn)
  notInNextFrame(off)
  frame()
  expect([off.mock.calls.length, drawn.mock.calls.length]).toEqual([0, 1])
  expect(told).toHaveBeenCalledWith(fault)
})
