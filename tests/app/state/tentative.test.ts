/** A gesture that is only tried: nothing of it stays unless it is finished by its own hand. */
import { beforeEach, expect, test } from 'vitest'
import {
  adopt,
  beginGesture,
  commit,
  committed,
  standardDesign,
  undo,
  useBench,
} from '../../../app/state/index.ts'
import { change } from '../../../geometry/index.ts'

const longer = (length: number) => change(useBench.getState().design, [['scale', 'length'], length])

beforeEach(() => adopt(standardDesign()))

test('another change drops what was tried and starts from the design itself', () => {
  const gesture = beginGesture('Take a row', 'cancel')
  gesture.preview(longer(500))
  expect(useBench.getState().design.scale.length).toBe(500)
  expect(committed().scale.length).toBe(635)
  commit('Longer box', change(committed(), [['box', 'length'], 300]))
  const { design } = useBench.getState()
  expect([design.scale.length, design.box.length]).toEqual([635, 300])
  gesture.finish()
  expect(useBench.getState().design).toBe(design)
})

test('another gesture drops it too, undo cancels it, and finishing keeps it as one step', () => {
  beginGesture('Take a row', 'cancel').preview(longer(500))
  expect(beginGesture('Drag').start.scale.length).toBe(635)
  const again = beginGesture('Take a row', 'cancel')
  again.preview(longer(510))
  expect(undo()).toBe(true)
  expect(useBench.getState()).toMatchObject({ canUndo: false, design: { scale: { length: 635 } } })
  const kept = beginGesture('Take a row', 'cancel')
  kept.preview(longer(520))
  kept.finish()
  expect(useBench.getState()).toMatchObject({ undoLabel: 'Take a row', design: { scale: { length: 520 } } })
  expect(undo()).toBe(true)
  expect(useBench.getState().design.scale.length).toBe(635)
})
