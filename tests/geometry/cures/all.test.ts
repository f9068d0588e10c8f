/** Cure all: no stop is left where one can be had, and what contradicts each other is held against going through everything. */
import { describe, expect, test } from 'vitest'
import { apply, blocks, check, cureAll, type Demand, type Design, solve } from '../../../geometry/index.ts'
import { designOf, type Stated } from '../../support/designs.ts'
import { PATIENCE } from '../../support/every-design.ts'

const hole = (fields: Stated = {}) => ({
  kind: 'sound-hole',
  id: 'hole',
  along: 60,
  across: 60,
  diameter: 25,
  ...fields,
})
const stops = (design: Design) =>
  check(solve(design))
    .filter(blocks)
    .map((one) => one.key)
const named = (contradiction: readonly Demand[]) =>
  contradiction.map((one) => (one.sort === 'locked' ? `locked ${one.id}` : one.finding.key)).sort()

/** Holes over the neck, over each other and over the edge, a blank too short and a relief too deep. */
const muddle = designOf({
  neck: { length: 880, relief: 6 },
  things: [hole({ across: 20 }), hole({ id: 'b', across: 24 }), hole({ id: 'c', along: 100, across: 88 })],
})

describe('where a design without a stop exists', () => {
  const answer = cureAll(solve(muddle))

  test('it is reached, and its steps make the change', () => {
    expect(stops(muddle).length).toBeGreaterThan(4)
    expect(answer.outcome).toBe('cured')
    expect(answer.left).toEqual([])
    expect(stops(apply(muddle, answer.change))).toEqual([])
    const stepwise = answer.steps.reduce((design, step) => apply(design, step.change), muddle)
    expect(stepwise).toEqual(apply(muddle, answer.change))
    expect(answer.contradiction).toEqual([])
  })

  test('the same again for the same design', () => {
    expect(cureAll(solve(structuredClone(muddle))).steps.map((one) => one.words)).toEqual(
      answer.steps.map((one) => one.words),
    )
  })

  test('what is risky goes too if that is wished, and nothing gets worse for it', () => {
    const design = designOf({ things: [hole({ across: 70 })] })
    expect(cureAll(solve(design)).outcome).toBe('nothing to do')
    const { steps, after, worse } = cureAll(solve(design), { cares: true })
    expect(steps.map((one) => one.words)).toEqual(['Move sound hole hole 4.5 mm towards the centreline'])
    expect(check(after).filter((one) => one.grade === 'care')).toEqual([])
    expect(worse).toEqual([])
  })

  test('a way that leads through another stop is found', () => {
    // Away from the neck stands another hole, locked; the way is past it.
    const design = designOf({
      things: [hole({ across: 22 }), hole({ id: 'wall', across: 45, locked: true })],
    })
    const { outcome, change } = cureAll(solve(design))
    expect(outcome).toBe('cured')
    expect(apply(design, change).things[1]).toEqual(design.things[1])
  })
})

describe('where none exists', () => {
  test('a locked thing over the neck is the demand that cannot be kept with the other', () => {
    const { outcome, contradiction } = cureAll(
      solve(designOf({ things: [hole({ across: 10, locked: true })] })),
    )
    expect(outcome).toBe('none found')
    expect(named(contradiction)).toEqual(['locked hole', 'opening-to-neck hole'])
  })

  test(
    'a box with no room between neck and wall, and the two demands that leave none',
    () => {
      // Neck to 19, wall from 24: 5 for a grommet of 16, which is bought and so made no smaller.
      const grommet = { kind: 'grommet', id: 'cord', face: 'lid', along: 60, hole: 16, flange: 20 }
      const narrow = (across: number) => designOf({ box: { width: 60 }, things: [{ ...grommet, across }] })
      const { outcome, contradiction } = cureAll(solve(narrow(22)))
      expect(outcome).toBe('none found')
      expect(named(contradiction)).toEqual(['opening-to-neck cord', 'opening-to-wall cord'])
      // Every place across at whole millimetres: never both, each alone.
      const met = { both: 0, neck: 0, wall: 0 }
      for (let across = -40; across <= 40; across += 1) {
        const open = new Set(stops(narrow(across)))
        const [neck, wall] = [!open.has('opening-to-neck cord'), !open.has('opening-to-wall cord')]
        if (neck && wall) met.both += 1
        else if (neck) met.neck += 1
        else if (wall) met.wall += 1
      }
      expect(met.both).toBe(0)
      expect(met.neck).toBeGreaterThan(0)
      expect(met.wall).toBeGreaterThan(0)
    },
    PATIENCE,
  )

  test('walls that leave nothing inside are beyond any place or size', () => {
    const { outcome, beyond } = cureAll(
      solve(designOf({ box: { length: 40, walls: { neckEnd: 30, tailEnd: 30 } } })),
    )
    expect(outcome).toBe('none found')
    expect(beyond.map((one) => one.key)).toEqual(['box-has-inside box'])
  })

  test('the hand is never taken for the builder', () => {
    const { outcome, left, change } = cureAll(solve(designOf({ hand: 'not stated' })))
    expect(outcome).toBe('nothing to do')
    expect(change.edits).toEqual([])
    expect(left.map((one) => one.key)).toEqual(['hand-stated hand'])
  })
})
