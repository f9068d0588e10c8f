import { describe, expect, test } from 'vitest'
import { centsBetween, solve, soundOf } from '../../../geometry/index.ts'
import { designOf, type Stated } from '../../support/designs.ts'

const hole = (fields: Stated = {}): Stated => ({
  kind: 'sound-hole',
  id: 'hole',
  along: 60,
  across: 60,
  diameter: 25,
  ...fields,
})
const soundIn = (stated: Stated) => soundOf(solve(designOf(stated)))

/** Inside 228 × 168 × 47; neck 38 wide, 19 thick, 4 of it cut away for the lid and 3 more from 10 mm inside each end. */
const EMPTY = 228 * 168 * 47

describe('the inside', () => {
  test('is what lies between walls, lid and base, less the neck that runs through it', () => {
    const { inside } = soundIn({ neck: { relief: 3, reliefStart: 10 } })
    const neck = 38 * (228 * 15 - 208 * 3)
    expect(inside.empty).toBe(EMPTY)
    expect(inside.taken).toHaveLength(1)
    expect(inside.taken[0]?.volume).toBeCloseTo(neck, 6)
    expect(inside.air).toBeCloseTo(EMPTY - neck, 6)
  })

  test('loses what a brace and a pickup take', () => {
    const { inside } = soundIn({
      brace: { height: 10, width: 8, runs: 'across' },
      things: [
        {
          kind: 'pickup',
          id: 'ears',
          along: 40,
          across: 60,
          sizeAlong: 20,
          sizeAcross: 30,
          cornerRadius: 0,
          depth: 14,
        },
      ],
    })
    const by = new Map(inside.taken.map((one) => [one.what, one.volume]))
    expect(by.get('brace')).toBeCloseTo(168 * 10 * 8, 6)
    expect(by.get('ears')).toBeCloseTo(20 * 30 * 10, 6)
  })

  test('of a neck on a block loses block and tongue alone', () => {
    const { inside } = soundIn({
      neck: { ends: 'at a block', tongue: 60, blockLength: 40, blockWidth: 50, relief: 0 },
    })
    const by = new Map(inside.taken.map((one) => [one.what, one.volume]))
    // From the neck's underside at -19 down to the base at -51.
    expect(by.get('neck block')).toBeCloseTo(40 * 50 * 32, 6)
    expect(by.get('neck')).toBeCloseTo(60 * 38 * 15, 6)
  })

  test('of a box out of square is that of the quadrilateral that was measured', () => {
    // Sides of 240 and 180, the diagonals those of a parallelogram leaning by 10: sqrt(250² + w²) and sqrt(230² + w²).
    const high = Math.sqrt(180 ** 2 - 10 ** 2)
    const survey = {
      bass: [240],
      treble: [240],
      neckEnd: [180],
      tailEnd: [180],
      diagonalFromBass: [Math.hypot(240 + 10, high)],
      diagonalFromTreble: [Math.hypot(240 - 10, high)],
    }
    const { inside } = soundIn({ box: { survey } })
    // Walls of 6 measured square to each side: the inner sides are as much shorter as the corners lean.
    const sine = high / 180
    const floor = ((240 * sine - 12) * (180 * sine - 12)) / sine
    expect(Math.abs(inside.empty / (floor * 47) - 1)).toBeLessThan(1e-4)
  })

  test('never holds less than nothing', () => {
    expect(soundIn({ box: { depth: 9 }, things: [hole()] }).inside.air).toBeGreaterThanOrEqual(0)
  })
})

describe('the note', () => {
  // A trade's rule of thumb, worked out with the same formula: 240 × 180 × 45 inside, 3 mm lid, 25 mm hole 176 Hz.
  test('of 240 × 180 × 45 mm with a 25 mm hole lies near 176 Hz where hardly any neck is inside', () => {
    const { note } = soundIn({
      box: { length: 252, width: 192, depth: 52, lid: { thickness: 3 } },
      neck: { ends: 'at a block', tongue: 5, blockLength: 10, blockWidth: 10 },
      things: [hole()],
    })
    expect(Math.abs((note?.hertz ?? 0) / 176 - 1)).toBeLessThan(0.02)
  })

  test('is none without an opening, and a hole over the wall is told', () => {
    expect(soundIn({}).note).toBeNull()
    const over = soundIn({ things: [hole({ along: 3 })] })
    expect([over.note, over.blind]).toEqual([null, ['hole']])
  })

  test('rises with every opening, whatever face it is on', () => {
    const one = soundIn({ things: [hole()] }).note?.hertz ?? 0
    for (const face of ['lid', 'base', 'bass-wall', 'neck-end-wall']) {
      const second = hole({
        id: 'more',
        face,
        along: face === 'neck-end-wall' ? 50 : 70,
        across: face.endsWith('wall') ? 25 : -60,
        diameter: 12,
      })
      expect(soundIn({ things: [hole(), second] }).note?.hertz).toBeGreaterThan(one)
    }
  })

  test('is named by its nearest key with what is over', () => {
    const { note } = soundIn({ things: [hole()] })
    if (!note) throw new Error('no note')
    expect(Math.abs(note.cents)).toBeLessThanOrEqual(50)
    expect(note.name).toMatch(/^[A-G]♯?\d$/)
  })

  test('a rosette speaks by each of its holes', () => {
    const rose = { kind: 'rosette', id: 'rose', along: 70, across: 55, diameter: 30, hole: 4, pitch: 8 }
    const { mouths, note } = soundIn({ things: [rose] })
    expect(mouths.length).toBeGreaterThan(5)
    for (const mouth of mouths) expect(mouth.area).toBeCloseTo(Math.PI * 4, 6)
    // As many holes of 4 mm as there are, side by side: Rayleigh's sum.
    const one = soundIn({ things: [hole({ diameter: 4, along: 70, across: 55 })] })
    expect((note?.hertz ?? 0) / (one.note?.hertz ?? 1)).toBeCloseTo(Math.sqrt(mouths.length), 6)
  })

  test('a screw or a pickup lets no air out', () => {
    expect(soundIn({ things: [{ kind: 'pickup', id: 'ears', along: 60, across: 60 }] }).note).toBeNull()
  })
})

describe('the next size', () => {
  test('moves the note as a design with that hole has it', () => {
    const now = soundIn({ things: [hole()] })
    for (const step of now.steps) {
      const then = soundIn({ things: [hole({ diameter: step.way === 'larger' ? 26 : 24 })] })
      expect(step.note.hertz).toBeCloseTo(then.note?.hertz ?? 0, 9)
      expect(step.cents).toBeCloseTo(centsBetween(now.note?.hertz ?? 1, then.note?.hertz ?? 1), 9)
    }
    expect(now.steps.map((one) => one.way)).toEqual(['smaller', 'larger'])
  })

  test('goes by eighths on an inch rule', () => {
    const { steps } = soundIn({
      units: { display: 'inches' },
      things: [hole({ diameter: 25.4, rimWidth: 4, rimDepth: 2 })],
    })
    expect(steps.map((one) => one.sizes[0])).toEqual([expect.closeTo(22.225, 9), expect.closeTo(28.575, 9)])
  })
})
