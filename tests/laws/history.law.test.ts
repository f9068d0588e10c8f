import fc from 'fast-check'
import { beforeEach, describe, expect, test } from 'vitest'
import { adopt, commit, redo, undo, useBench } from '../../app/state/index.ts'
import { carryOutAll, counted } from './editor.ts'
import { copyOf } from './editor-model.ts'
import { step } from './editor-steps.ts'
import { changeOf, designs, picks } from './random-changes.ts'

const bench = () => useBench.getState()
const one = fc.array(picks, { minLength: 1, maxLength: 2 })

describe.each(Object.entries(designs))('history beginning with the %s design', (_name, design) => {
  beforeEach(() => adopt(design))

  test('any sequence of actions does what a plain list of designs does, and each leaves a valid design', () => {
    fc.assert(
      fc.property(fc.array(step, { maxLength: 14 }), (steps) => carryOutAll(design, steps)),
      { numRuns: 60 },
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
  for (const what of ['entries', 'refused', 'no entry', 'undone', 'redone', 'cancelled'])
    expect(counted[what], what).toBeGreaterThan(20)
})
