import fc from 'fast-check'
import { beforeEach, describe, expect, test } from 'vitest'
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
  select,
  setField,
  undo,
  useBench,
} from '../../app/state/index.ts'
import { type Change, checkDesign, type Design } from '../../geometry/index.ts'
import { changeOf, designs, type Pick, picks } from './random-changes.ts'

const bench = () => useBench.getState()
/** Through text, so that no two places of the copy are one object. */
const copyOf = <Value>(value: Value): Value => JSON.parse(JSON.stringify(value))

/** The model: all designs there have been, in a plain list, and how far back one stands in it. */
class Model {
  private steps: { design: Design; selectionAfter: string | null; selectionBefore: string | null }[]
  private at = 0
  selection: string | null = null

  constructor(design: Design) {
    this.steps = [{ design: copyOf(design), selectionAfter: null, selectionBefore: null }]
  }

  get design(): Design {
    return this.steps[this.at]!.design
  }

  get canUndo(): boolean {
    return this.at > 0
  }

  get canRedo(): boolean {
    return this.at < this.steps.length - 1
  }

  done(design: Design, selection: string | null): void {
    this.steps.length = this.at + 1
    this.steps.push({ design: copyOf(design), selectionBefore: this.selection, selectionAfter: selection })
    this.at++
    this.selection = selection
  }

  undo(): boolean {
    if (!this.canUndo) return false
    this.selection = this.steps[this.at]!.selectionBefore
    this.at--
    return true
  }

  redo(): boolean {
    if (!this.canRedo) return false
    this.at++
    this.selection = this.steps[this.at]!.selectionAfter
    return true
  }
}

/** What the design would be by copying, setting and reading it like a file; `null` where that is no design. */
function expected(design: Design, change: Change): Design | null {
  const copy: { root: unknown } = { root: copyOf(design) }
  for (const { path, after } of change.edits) {
    let holder: Record<PropertyKey, unknown> = copy
    for (const [depth, key] of ['root', ...path].entries()) {
      if (depth === path.length) {
        if (after !== undefined) holder[key] = copyOf(after)
        else if (Array.isArray(holder)) holder.splice(Number(key), 1)
        else delete holder[key]
      } else holder = holder[key] as Record<PropertyKey, unknown>
    }
  }
  const reading = checkDesign(copy.root)
  return reading.ok ? reading.design : null
}

type Step =
  | { readonly do: 'commit'; readonly picks: readonly Pick[] }
  | {
      readonly do: 'gesture'
      readonly frames: readonly (readonly Pick[])[]
      readonly end: 'finish' | 'cancel' | 'undo'
    }
  | { readonly do: 'undo' | 'redo'; readonly times: number }
  | { readonly do: 'back and forth'; readonly times: number; readonly again: number }
  | { readonly do: 'same again' }
  | { readonly do: 'select' | 'remove' | 'duplicate' | 'mirror'; readonly which: number }
  | { readonly do: 'add'; readonly kind: string }
  | { readonly do: 'open'; readonly name: string }

const one = fc.array(picks, { minLength: 1, maxLength: 2 })
const step: fc.Arbitrary<Step> = fc.oneof(
  { arbitrary: fc.record({ do: fc.constant('commit' as const), picks: one }), weight: 6 },
  {
    arbitrary: fc.record({
      do: fc.constant('gesture' as const),
      frames: fc.array(one, { maxLength: 4 }),
      end: fc.constantFrom('finish' as const, 'cancel' as const, 'undo' as const),
    }),
    weight: 3,
  },
  {
    arbitrary: fc.record({
      do: fc.constantFrom('undo' as const, 'redo' as const),
      times: fc.integer({ min: 1, max: 4 }),
    }),
    weight: 2,
  },
  {
    arbitrary: fc.record({
      do: fc.constant('back and forth' as const),
      times: fc.integer({ min: 1, max: 4 }),
      again: fc.integer({ min: 1, max: 4 }),
    }),
    weight: 3,
  },
  { arbitrary: fc.record({ do: fc.constant('same again' as const) }), weight: 1 },
  {
    arbitrary: fc.record({
      do: fc.constantFrom('select' as const, 'remove' as const, 'duplicate' as const, 'mirror' as const),
      which: fc.nat(20),
    }),
    weight: 4,
  },
  {
    arbitrary: fc.record({
      do: fc.constant('add' as const),
      kind: fc.constantFrom('screw', 'sound-hole', 'pickup'),
    }),
    weight: 1,
  },
  {
    arbitrary: fc.record({
      do: fc.constant('open' as const),
      name: fc.constantFrom(...Object.keys(designs)),
    }),
    weight: 1,
  },
)

const counted = { entries: 0, refused: 0, 'no entry': 0, undone: 0, redone: 0, cancelled: 0 }

function carryOut(model: Model, step: Step): void {
  const before = bench()
  switch (step.do) {
    case 'commit': {
      const change = changeOf(before.design, step.picks)
      const wanted = expected(before.design, change)
      expect(commit('Change', change).ok).toBe(wanted !== null)
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
        expect(bench().design).toEqual(shown)
        expect(committed()).toBe(gesture.start)
      }
      if (step.end === 'finish') {
        gesture.finish()
        settleUp(model, before.design, shown)
        return
      }
      if (step.end === 'cancel') gesture.cancel()
      else expect(undo()).toBe(true)
      expect(bench().design).toBe(before.design)
      counted.cancelled++
      return
    }
    case 'undo':
      goBack(model, step.times)
      return
    case 'redo':
      goForth(model, step.times)
      return
    case 'back and forth':
      goBack(model, step.times)
      goForth(model, step.again)
      return
    case 'same again':
      expect(setField(['box', 'length'], before.design.box.length, 'Length').ok).toBe(true)
      expect(commit('Everything again', { edits: [{ path: [], after: copyOf(before.design) }] }).ok).toBe(
        true,
      )
      settleUp(model, before.design, before.design)
      return
    case 'open':
      openDesign(designs[step.name]!, 'Open')
      model.selection = before.design === bench().design ? null : model.selection
      settleUp(model, before.design, designs[step.name]!)
      return
    default:
      withThing(model, step, before.design)
      return
  }
}

function goBack(model: Model, times: number): void {
  for (let time = 0; time < times; time++) {
    const could = model.undo()
    expect(undo()).toBe(could)
    if (could) counted.undone++
    inOrder(model)
  }
}

function goForth(model: Model, times: number): void {
  for (let time = 0; time < times; time++) {
    const could = model.redo()
    expect(redo()).toBe(could)
    if (could) counted.redone++
    inOrder(model)
  }
}

function withThing(
  model: Model,
  step: Extract<Step, { which: number } | { kind: string }>,
  before: Design,
): void {
  if (step.do === 'add') {
    expect(addThing(step.kind)).not.toBeNull()
    settleUp(model, before, bench().design)
    return
  }
  const id = before.things[step.which % Math.max(1, before.things.length)]?.id ?? 'saddle'
  if (step.do === 'select') {
    select(id)
    model.selection = id
    return
  }
  if (step.do === 'remove') removeThing(id)
  if (step.do === 'duplicate') duplicateThing(id)
  if (step.do === 'mirror') mirrorThing(id)
  settleUp(model, before, bench().design)
}

/** The bench must show what was wanted; an entry was made if, and only if, that is something else than before. */
function settleUp(model: Model, before: Design, wanted: Design | null): void {
  if (wanted === null) counted.refused++
  const now = bench()
  expect(now.design).toEqual(wanted ?? before)
  if (JSON.stringify(copyOf(now.design)) === JSON.stringify(copyOf(before))) counted['no entry']++
  if (now.design === before) return
  expect(now.design).not.toEqual(before)
  model.done(now.design, now.selection)
  counted.entries++
}

function inOrder(model: Model): void {
  const { design, selection, canUndo, canRedo, undoLabel, redoLabel } = bench()
  expect(design).toEqual(model.design)
  expect(selection).toBe(model.selection)
  expect({ canUndo, canRedo }).toEqual({ canUndo: model.canUndo, canRedo: model.canRedo })
  expect([undoLabel !== null, redoLabel !== null]).toEqual([canUndo, canRedo])
  const reading = checkDesign(design)
  expect(reading.ok && reading.design, 'valid and complete').toEqual(design)
}

describe.each(Object.entries(designs))('history beginning with the %s design', (_name, design) => {
  beforeEach(() => adopt(design))

  test('any sequence of actions does what a plain list of designs does, and each leaves a valid design', () => {
    fc.assert(
      fc.property(fc.array(step, { maxLength: 14 }), (steps) => {
        adopt(design)
        const model = new Model(design)
        for (const one of steps) {
          carryOut(model, one)
          inOrder(model)
        }
      }),
      { numRuns: 6000 },
    )
  })

  test('undo all, redo all, any number of times, ends where it began', () => {
    fc.assert(
      fc.property(fc.array(one, { maxLength: 8 }), fc.integer({ min: 1, max: 3 }), (changes, times) => {
        adopt(design)
        for (const some of changes) commit('Change', changeOf(bench().design, some))
        const end = copyOf(bench().design)
        for (let time = 0; time < times; time++) {
          while (undo());
          expect(bench().design).toEqual(design)
          while (redo());
          expect(bench().design).toEqual(end)
        }
      }),
      { numRuns: 40 },
    )
  })
})

test('the sequences were not idle: every way through them was taken', () => {
  for (const [what, times] of Object.entries(counted)) expect(times, what).toBeGreaterThan(20)
})
