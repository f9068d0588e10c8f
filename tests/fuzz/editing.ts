/** Random sequences of what somebody does in the editor, against the plain model. */
import fc from 'fast-check'
import { carryOutAll, counted } from '../laws/editor.ts'
import { type Step, step } from '../laws/editor-steps.ts'
import { AWAY, designs } from '../laws/random-changes.ts'
import { drawn, type Trial } from './trial.ts'

interface Work {
  readonly from: string
  readonly steps: readonly Step[]
}

const work: fc.Arbitrary<Work> = fc.record({
  from: fc.constantFrom(...Object.keys(designs)),
  steps: fc.array(step, { minLength: 1, maxLength: 24 }),
})

const AWAY_IN_TEXT = { away: true }

export const editingTrial: Trial<Work> = {
  name: 'editing',
  draw: (seed) => drawn(work, seed),
  laws: [
    {
      name: 'the editor does what the plain model does',
      wrong({ from, steps }) {
        carryOutAll(designs[from]!, steps)
        return []
      },
    },
  ],
  reached: ({ steps }) => [
    ...new Set(steps.map((one) => one.do as string)),
    ...['undone', 'redone', 'refused', 'entries', 'cancelled'].filter((what) => counted[what]),
  ],
  mustReach: [
    ...[
      'commit',
      'gesture',
      'undo',
      'redo',
      'travel',
      'row',
      'rename',
      'add',
      'open',
      'lock',
      'group',
      'part',
    ],
    ...['undone', 'redone', 'refused', 'entries', 'cancelled'],
  ],
  text: (one) => JSON.stringify(one, (_, value) => (value === AWAY ? AWAY_IN_TEXT : value)),
  read: (text) =>
    JSON.parse(text, (_, value) =>
      value !== null && typeof value === 'object' && 'away' in value ? AWAY : value,
    ),
}
