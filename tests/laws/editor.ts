/** The editor and the plain model side by side: each step is done to both, and then they must show the same. */
import assert from 'node:assert/strict'
import { growBy, turnBy } from '../../app/actions/nudge.ts'
import {
  alignThings,
  duplicateAll,
  type Edge,
  groupThings,
  makeRow,
  partThings,
  reorder,
  spaceEvenly,
  toggleLocked,
  ungroupThings,
} from '../../app/state/arrange.ts'
import {
  addThing,
  adopt,
  beginGesture,
  commit,
  committed,
  duplicateThing,
  mirrorThing,
  openDesign,
  redo,
  removeThing,
  removeThings,
  select,
  setField,
  travel,
  undo,
  useBench,
} from '../../app/state/index.ts'
import { checkDesign, type Design, FACES, kindOf } from '../../geometry/index.ts'
import { copyOf, expected, Model } from './editor-model.ts'
import type { OnThing, Step, Together } from './editor-steps.ts'
import { changeOf, designs } from './random-changes.ts'

const bench = () => useBench.getState()

/** How often what was met, since the beginning: whoever tries at random must know whether it was tried at all. */
export const counted: Record<string, number> = {
  ...{ entries: 0, refused: 0, 'no entry': 0, undone: 0, redone: 0, cancelled: 0 },
}

const count = (what: string) => {
  counted[what] = (counted[what] ?? 0) + 1
}

/** Does all steps, beginning with a design. Throws, saying after which step, where editor and model part. */
export function carryOutAll(design: Design, steps: readonly Step[]): void {
  adopt(design)
  const model = new Model(design)
  for (const [index, step] of steps.entries()) {
    try {
      carryOut(model, step)
      inOrder(model)
      count(step.do)
    } catch (error) {
      throw new Error(`step ${index + 1}, ${step.do}: ${(error as Error).message}`, { cause: error })
    }
  }
}

function carryOut(model: Model, step: Step): void {
  const before = bench()
  switch (step.do) {
    case 'commit': {
      const change = changeOf(before.design, step.picks)
      const wanted = expected(before.design, change)
      assert.equal(commit('Change', change).ok, wanted !== null)
      settleUp(model, before.design, wanted)
      return
    }
    case 'gesture': {
      const gesture = beginGesture('Drag')
      let shown: Design = before.design
      for (const frame of step.frames) {
        const change = changeOf(gesture.start, frame)
        gesture.preview(change)
        shown = expected(gesture.start, change) ?? shown
        alike(bench().design, shown)
        assert.equal(committed(), gesture.start)
      }
      if (step.end === 'finish') {
        gesture.finish()
        settleUp(model, before.design, shown)
        return
      }
      if (step.end === 'cancel') gesture.cancel()
      else assert.equal(undo(), true)
      assert.equal(bench().design, before.design)
      count('cancelled')
      return
    }
    case 'undo':
      goBack(model, step.times)
      return
    case 'redo':
      goForth(model, step.times)
      return
    case 'travel': {
      let taken = 0
      for (; taken < Math.abs(step.by); taken++) if (!(step.by < 0 ? model.undo() : model.redo())) break
      assert.equal(travel(step.by), taken > 0)
      return
    }
    case 'back and forth':
      goBack(model, step.times)
      goForth(model, step.again)
      return
    case 'same again':
      assert.equal(setField(['box', 'length'], before.design.box.length, 'Length').ok, true)
      assert.equal(
        commit('Everything again', { edits: [{ path: [], after: copyOf(before.design) }] }).ok,
        true,
      )
      settleUp(model, before.design, before.design)
      return
    case 'open':
      openDesign(designs[step.name]!, 'Open')
      model.selection = before.design === bench().design ? null : model.selection
      settleUp(model, before.design, designs[step.name]!)
      return
    case 'add': {
      const wanted = FACES[step.face] ?? 'lid'
      const faces = kindOf(step.kind).faces
      assert.equal(addThing(step.kind, wanted) !== null, faces.includes(wanted))
      break
    }
    case 'row':
      makeRow(idOf(before.design, step.which), {
        ...step,
        shape: (['row along', 'row across', 'ring'] as const)[step.which % 3] ?? 'ring',
        first: step.which % 2 ? 'on the ring' : 'in the middle',
        turning: step.which % 5 > 2,
      })
      break
    case 'rename': {
      const index = step.which % Math.max(1, before.design.things.length)
      if (before.design.things[index]) setField(['things', index, 'id'], step.to, 'Name')
      // What was selected goes by its new name, in the model as on the bench.
      break
    }
    default:
      if (typeof step.which === 'number')
        withThing(model, step.do as OnThing, idOf(before.design, step.which))
      else
        together(
          step.do as Together,
          step.which.map((one) => idOf(before.design, one)),
        )
  }
  settleUp(model, before.design, bench().design)
}

const idOf = (design: Design, which: number): string =>
  design.things[which % Math.max(1, design.things.length)]?.id ?? 'saddle'

function goBack(model: Model, times: number): void {
  for (let time = 0; time < times; time++) {
    const could = model.undo()
    assert.equal(undo(), could)
    if (could) count('undone')
    inOrder(model)
  }
}

function goForth(model: Model, times: number): void {
  for (let time = 0; time < times; time++) {
    const could = model.redo()
    assert.equal(redo(), could)
    if (could) count('redone')
    inOrder(model)
  }
}

function withThing(model: Model, what: OnThing, id: string): void {
  if (what === 'remove') removeThing(id)
  else if (what === 'duplicate') duplicateThing(id)
  else if (what === 'mirror') mirrorThing(id)
  else if (what === 'earlier' || what === 'later') reorder(id, what === 'later' ? 1 : -1)
  else {
    select(id)
    model.selection = id
    if (what === 'turn') turnBy(15)
    if (what === 'grow') growBy('along', 3)
  }
}

function together(what: Together, ids: readonly string[]): void {
  const each = [...new Set(ids)]
  if (what === 'lock') toggleLocked(each)
  else if (what === 'group') groupThings(each)
  else if (what === 'ungroup') ungroupThings(each)
  else if (what === 'part') partThings(each)
  else if (what === 'duplicate all') duplicateAll(each)
  else if (what === 'remove all') removeThings(each)
  else if (what === 'space along' || what === 'space across')
    spaceEvenly(what === 'space along' ? 'x' : 'y', each)
  else alignThings(what as Edge, each)
}

/** The bench must show what was wanted; an entry was made if, and only if, that is something else than before. */
function settleUp(model: Model, before: Design, wanted: Design | null): void {
  if (wanted === null) count('refused')
  const now = bench()
  alike(now.design, wanted ?? before)
  if (JSON.stringify(now.design) === JSON.stringify(before)) count('no entry')
  if (now.design === before) return
  assert.notDeepEqual(now.design, before)
  model.done(now.design, now.selection)
  count('entries')
}

function inOrder(model: Model): void {
  const { design, selection, canUndo, canRedo, undoLabel, redoLabel } = bench()
  alike(design, model.design)
  assert.equal(selection, model.selection)
  assert.deepEqual({ canUndo, canRedo }, { canUndo: model.canUndo, canRedo: model.canRedo })
  assert.deepEqual([undoLabel !== null, redoLabel !== null], [canUndo, canRedo])
  const reading = checkDesign(design)
  assert.ok(reading.ok, 'the design on the bench is not valid')
  alike(reading.design, design)
}

function alike(one: Design, other: Design): void {
  assert.deepEqual(one, other)
}
