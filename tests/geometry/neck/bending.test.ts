import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { bendNeck, type NeckBow, type NeckHold, type NeckLoad } from '../../../geometry/neck/bending.ts'
import { firstThatPasses, thinnest } from '../../../geometry/neck/cure.ts'
import { bar, type Part, plank, sectionOf } from '../../../geometry/neck/sections.ts'
import { type NeckPiece, pieceOf } from '../../../geometry/neck/span.ts'
import { BARS, standing, WOODS } from '../../../geometry/neck/woods.ts'
import { expectShare, expectWithin } from '../../support/near.ts'

const maple = standing(WOODS['maple, sugar'])
/** So far off that the strings keep their height in space, as a dead load does. */
const FAR = 1e12

function bend(pieces: readonly NeckPiece[], load: NeckLoad, hold: NeckHold, octave = 0): NeckBow {
  const reading = bendNeck(pieces, load, hold, octave)
  if (!reading.ok) throw new Error(reading.why)
  return reading
}

/** A bar held fast at `length`, under a push `over` its axis that keeps its direction. */
const column = (parts: readonly Part[], length: number, pull: number, over: number) =>
  bend(
    [pieceOf(0, length, parts)],
    { pull, nut: { x: 0, z: over }, saddle: { x: FAR, z: over }, anchor: null },
    { by: 'block', front: length },
  )

const bare = (width: number, height: number, stiffness: number) => [
  plank(width, -height / 2, height / 2, { stiffness, strength: 100 }),
]

describe('a neck held fast', () => {
  const neck = bare(40, 20, 12_600)

  // Roark's Formulas, cantilever with end couple: T e L² / 2 E I, with so little pull that the bow adds nothing.
  it('under a small pull bends as a cantilever with an end couple', () => {
    const { nutRise, bow, weakest } = column(neck, 400, 0.2, 12)
    expectShare(nutRise, 0.571429e-3, 6e-5)
    // A couple bends to a circle: under the chord at half way a quarter of the rise.
    expectShare(bow, 0.571429e-3 / 4, 6e-5)
    expectShare(weakest.stress, 1.15e-3, 6e-5)
  })

  // Gere and Goodno, Mechanics of Materials, ch. 11, fixed and free: e (sec(L √(P / E I)) − 1).
  it('under the strings bends a little more, since the bow lengthens the lever', () => {
    expectShare(column(neck, 400, 200, 12).nutRise, 0.595018, 2e-5)
  })

  // The same, sec. 11.5, exercise 1: 2 × 1 in of aluminium, 30 in between pins, 2800 lb at 0.5 in; printed 0.112 in.
  // Half of it is held fast in the middle. Inches, pounds and psi throughout.
  it('as half of an aluminium bar between pins', () => {
    const { nutRise, weakest } = column(bare(2, 1, 10e6), 15, 2800, 0.5)
    expectWithin(nutRise, 0.112, 0.0006)
    expectShare(nutRise, 0.112086, 2e-5)
    // Its greatest moment, 1713.8 lb·in, from the stress; the printed 11714 has a digit twice.
    expectShare((weakest.stress - 2800 / 2) / (6 / 2), 1713.8, 1e-3)
    // USDA Wood Handbook, FPL-GTR-282, Eq. 9-8: e / (1 − P / Pcr) − e = 0.0904565 in, 0.80703 of the above.
    const critical = (Math.PI ** 2 * 10e6 * (2 / 12)) / 30 ** 2
    expectShare(critical, 18277.05, 1e-5)
    const approximate = 0.5 / (1 - 2800 / critical) - 0.5
    expectShare(approximate, 0.0904565, 2e-5)
    expectShare(approximate / nutRise, 0.80703, 5e-5)
  })

  // As the load goes to nothing that ratio goes to 8 / π².
  it('against the handbook approximation at a small load', () => {
    const critical = (Math.PI ** 2 * 12_600 * 26_666.667) / (4 * 400 ** 2)
    expectShare(critical, 5181.54, 2e-5)
    const pull = 1e-3
    expectShare((12 * pull) / critical / column(neck, 400, pull, 12).nutRise, 0.810569469, 1e-5)
  })

  // The same, sec. 11.6, exercise 1: 2 in square steel, 36 in, 20 000 lb at 0.75 in: 17 263 psi by the secant formula.
  it('is stressed as the secant formula says', () => {
    expectShare(column(bare(2, 2, 29e6), 18, 20_000, 0.75).weakest.stress, 17_263, 1e-4)
  })

  // K. Gramoll, Mechanics eBook, sec. 9.3: tube of 6 in, 4.515 in² and 18.70 in⁴, 5 kip at 3 in, fixed and free over 360 in.
  it('as a steel tube far along to buckling', () => {
    const tube: Part = { ...plank(1, -3, 3, { stiffness: 29_000, strength: 36 }), area: 4.515, inertia: 18.7 }
    const { nutRise, weakest } = column([tube], 360, 5, 3)
    expectShare(nutRise / 3 + 1, 2.175, 6e-4)
    expectShare(weakest.stress, 1.107 * (1 + 2.173 * 2.175), 1.5e-3)
  })

  it('gives way past what it can bear, and says so', () => {
    expect(
      bendNeck(
        [pieceOf(0, 400, neck)],
        { pull: 6000, nut: { x: 0, z: 12 }, saddle: { x: FAR, z: 12 }, anchor: null },
        { by: 'block', front: 400 },
        0,
      ),
    ).toEqual({
      ok: false,
      why: 'gives way',
    })
  })

  it('bends less when the strings follow it than under a load that keeps its direction', () => {
    const follow = bend(
      [pieceOf(0, 400, neck)],
      { pull: 200, nut: { x: 0, z: 12 }, saddle: { x: 635, z: 12 }, anchor: null },
      { by: 'block', front: 400 },
    )
    expect(follow.nutRise).toBeLessThan(0.595018)
    expect(follow.nutRise).toBeGreaterThan(0.5)
  })
})

describe('a neck between two walls', () => {
  const neck = bare(38, 19, 12_600)
  const pieces = [pieceOf(-100, 700, neck)]
  const stiffness = sectionOf(neck)!.bend

  // Roark's Formulas, beam on two supports with a couple at one end: θ = M s / 3 E I; then the cantilever turns with it.
  it('turns at the front wall as a beam with an end moment', () => {
    const [pull, over] = [0.001, 13.5]
    const load: NeckLoad = { pull, nut: { x: 0, z: over }, saddle: { x: FAR, z: over }, anchor: null }
    const { turn, nutRise, curve } = bend(pieces, load, { by: 'two walls', front: 330, back: 570 })
    const moment = pull * over
    expectShare(turn, (moment * 240) / (3 * stiffness), 1e-6)
    expectShare(nutRise, turn * 330 + (moment * 330 ** 2) / (2 * stiffness), 1e-6)
    expectWithin(curve().at(-1)!.rise, 0, 1e-12)
    // Greatest sag inside: M s² / (9 √3 E I), at 0.423 of the span.
    const deepest = Math.min(
      ...curve()
        .filter(({ x }) => x > 330)
        .map(({ rise }) => rise),
    )
    expectShare(-deepest, (moment * 240 ** 2) / (9 * Math.sqrt(3) * stiffness), 0.02)
  })

  // The same with couples alike at both ends, as where strings are held as high on the tail: θ = M s / 2 E I.
  it('turns more where the tail is pulled as well', () => {
    const [pull, over] = [0.001, 13.5]
    const load: NeckLoad = {
      pull,
      nut: { x: 0, z: over },
      saddle: { x: 500, z: over },
      anchor: { x: 600, z: over },
    }
    const { turn } = bend(pieces, load, { by: 'two walls', front: 330, back: 570 })
    expectShare(turn, (pull * over * 240) / (2 * stiffness), 1e-6)
  })

  it('changes the action by what the nut rises less what the octave rises', () => {
    const load: NeckLoad = { pull: 250, nut: { x: 0, z: 13.5 }, saddle: { x: 635, z: 20 }, anchor: null }
    const bow = bend(pieces, load, { by: 'two walls', front: 330, back: 570 }, 317.5)
    expectWithin(bow.actionChange, bow.nutRise / 2 - bow.octaveRise, 1e-12)
    expect(bow.actionChange).toBeGreaterThan(0)
    const over = bend(pieces, load, { by: 'two walls', front: 250, back: 570 }, 317.5)
    expect(over.octaveRise).toBeLessThan(0)
  })

  it('is as hollow as builders reckon', () => {
    // Common practice, no source, worked out by a builder: bow of a plain 38 × 19 mm hardwood stick over 400 mm,
    // string 4 mm over it: 0.25, 0.4, 0.8 mm at 250, 400, 800 N; 15 mm thick 0.4, 0.7, 1.4. They leave out what the bow
    // adds to the lever, which is much for a thin stick under 800 N.
    for (const [height, pull, expected] of [
      [19, 250, 0.25],
      [19, 400, 0.4],
      [19, 800, 0.8],
      [15, 250, 0.4],
      [15, 400, 0.7],
      [15, 800, 1.4],
    ] as const) {
      const z = height / 2 + 4
      const load: NeckLoad = { pull, nut: { x: 0, z }, saddle: { x: 635, z }, anchor: null }
      const { bow } = bend([pieceOf(0, 640, bare(38, height, 12_600))], load, { by: 'block', front: 400 })
      expect(bow).toBeGreaterThan(expected - 0.05)
      expect(bow).toBeLessThan((expected + 0.05) * (1 + (pull / 800) * (15 / height) ** 3 * 0.25))
    }
  })
})

describe('the laws of bending', () => {
  const size = (min: number, max: number) => fc.double({ min, max, noNaN: true })
  const load = (pull: number, z: number): NeckLoad => ({
    pull,
    nut: { x: 0, z },
    saddle: { x: 635, z: z + 3 },
    anchor: { x: 600, z: z - 5 },
  })
  const hold: NeckHold = { by: 'two walls', front: 330, back: 570 }
  const neckOf = (width: number, height: number, stiffness: number, notch: number) => [
    pieceOf(-100, 330, [plank(width, -height, 0, { stiffness, strength: 50 })]),
    pieceOf(330, 570, [plank(width, -height, -notch, { stiffness, strength: 50 })]),
    pieceOf(570, 620, [plank(width, -height, 0, { stiffness, strength: 50 })]),
  ]

  it('twice as stiff a wood bows half as much', () => {
    fc.assert(
      fc.property(
        size(25, 60),
        size(12, 30),
        size(5000, 20_000),
        size(0, 6),
        size(0.001, 0.1),
        (width, height, stiffness, notch, pull) => {
          const one = bend(neckOf(width, height, stiffness, notch), load(pull, 6), hold)
          const two = bend(neckOf(width, height, 2 * stiffness, notch), load(pull, 6), hold)
          // The rounds stop at a ten-millionth of a millimetre.
          expectWithin(one.nutRise, 2 * two.nutRise, 3e-7 + 1e-3 * two.nutRise)
        },
      ),
    )
  })

  it('a stiffer neck never bows more, nor does a wider one', () => {
    fc.assert(
      fc.property(
        size(25, 60),
        size(12, 30),
        size(5000, 15_000),
        size(0, 6),
        size(20, 500),
        size(1.01, 2),
        (width, height, stiffness, notch, pull, times) => {
          const first = bendNeck(neckOf(width, height, stiffness, notch), load(pull, 6), hold, 317.5)
          if (!first.ok) return
          for (const other of [
            neckOf(width, height, times * stiffness, notch),
            neckOf(times * width, height, stiffness, notch),
          ]) {
            const second = bend(other, load(pull, 6), hold, 317.5)
            expect(second.bow).toBeLessThanOrEqual(first.bow + 1e-6)
            expect(second.nutRise).toBeLessThanOrEqual(first.nutRise + 1e-6)
            expect(second.weakest.share).toBeLessThanOrEqual(first.weakest.share + 1e-9)
          }
        },
      ),
    )
  })

  it('no pull, no bow; more pull, more bow', () => {
    const pieces = neckOf(38, 19, 12_600, 4)
    expect(bend(pieces, load(0, 6), hold).nutRise).toBe(0)
    let last = 0
    for (const pull of [50, 100, 200, 400]) {
      const { bow } = bend(pieces, load(pull, 6), hold)
      expect(bow).toBeGreaterThan(last)
      last = bow
    }
  })

  it('strings lower than the axis bow it the other way', () => {
    expect(bend(neckOf(38, 19, 12_600, 0), { ...load(200, -15), anchor: null }, hold).bow).toBeLessThan(0)
  })

  it('pieces cut in two bend as one', () => {
    const whole = neckOf(38, 19, 12_600, 4)
    const parts = [plank(38, -19, 0, { stiffness: 12_600, strength: 50 })]
    const cut = [pieceOf(-100, 111, parts), pieceOf(111, 330, parts), ...whole.slice(1)]
    expectShare(bend(cut, load(250, 6), hold).nutRise, bend(whole, load(250, 6), hold).nutRise, 1e-6)
  })

  it('a taper lies between its ends, and bends as many short pieces do', () => {
    const wood = { stiffness: 12_600, strength: 50 }
    const at = (x: number) => [plank(30 + (12 * x) / 330, -19, 0, wood)]
    const behind = neckOf(42, 19, 12_600, 0).slice(1)
    const tapered = bend([pieceOf(0, 330, at(0), at(330)), ...behind], load(250, 6), hold)
    const stepped = bend(
      [
        ...Array.from({ length: 66 }, (_, index) => pieceOf(5 * index, 5 * index + 5, at(5 * index + 2.5))),
        ...behind,
      ],
      load(250, 6),
      hold,
    )
    expectShare(tapered.nutRise, stepped.nutRise, 1e-4)
    expect(tapered.bow).toBeLessThan(bend([pieceOf(0, 330, at(0)), ...behind], load(250, 6), hold).bow)
    expect(tapered.bow).toBeGreaterThan(bend([pieceOf(0, 330, at(330)), ...behind], load(250, 6), hold).bow)
  })
})

describe('where it is weakest', () => {
  const hold: NeckHold = { by: 'two walls', front: 330, back: 570 }
  const load: NeckLoad = {
    pull: 250,
    nut: { x: 0, z: 7 },
    saddle: { x: 635, z: 12 },
    posts: { x: -80, z: 0 },
    anchor: { x: 590, z: 0 },
  }
  const body = (left: number) => [
    pieceOf(-20, 330, [plank(38, -19, 0, maple)]),
    pieceOf(330, 560, [plank(38, -19, -19 + left, maple)]),
    pieceOf(560, 610, [plank(38, -19, 0, maple)]),
  ]

  it('is the notch under the lid', () => {
    const { weakest } = bend([pieceOf(-150, -20, [plank(38, -19, -4, maple)]), ...body(8)], load, hold)
    expect(weakest.x).toBeGreaterThanOrEqual(330)
    expect(weakest.x).toBeLessThanOrEqual(560)
  })

  // Common practice, no source: a neck carved thin at its head wants material glued on there.
  it('is the root of a head carved thin, until something is glued on', () => {
    const high = { ...load, posts: { x: -80, z: -6 } }
    const thin = bend([pieceOf(-150, -20, [plank(38, -19, -14, maple)]), ...body(15)], high, hold)
    expect(thin.weakest.x).toBeLessThanOrEqual(-20)
    const backed = [plank(38, -19, -14, maple), plank(38, -25, -19, maple)]
    const cured = bend([pieceOf(-150, -20, backed), ...body(15)], high, hold)
    expect(cured.weakest.share).toBeLessThan(thin.weakest.share)
  })

  // Common practice, no source: four steel strings ask for a stiffer neck than three.
  it('asks for more wood under four strings than under three', () => {
    const needs = (strings: number) =>
      thinnest(
        (height) => {
          const pieces = [pieceOf(0, 700, [plank(38, -height, 0, maple)])]
          const reading = bendNeck(
            pieces,
            { ...load, pull: 75 * strings, anchor: null },
            { by: 'block', front: 400 },
            317.5,
          )
          return reading.ok && reading.bow <= 0.3
        },
        5,
        40,
        0.5,
      )!
    expect(needs(4)).toBeGreaterThan(needs(3))
    expect(needs(3)).toBeGreaterThan(10)
    expect(needs(4)).toBeLessThan(25)
  })

  it('is cured by the first bar that suffices', () => {
    const barred = (width: number) => [
      plank(38, -15, 0, maple),
      ...(width > 0 ? [bar(width, -13, -3, BARS.steel, maple)] : []),
    ]
    const bow = (width: number) =>
      bend(
        [pieceOf(0, 700, barred(width))],
        { ...load, pull: 400, anchor: null },
        { by: 'block', front: 400 },
      ).bow
    const chosen = firstThatPasses([0, 1, 2, 3, 4, 5, 6, 7, 8], (width) => bow(width) <= 0.7)!
    expect(chosen).toBeGreaterThan(0)
    expect(bow(chosen)).toBeLessThanOrEqual(0.7)
    expect(bow(chosen - 1)).toBeGreaterThan(0.7)
    expect(firstThatPasses([0], (width) => bow(width) <= 0.01)).toBeNull()
  })
})

describe('what cannot be bent', () => {
  const load: NeckLoad = { pull: 250, nut: { x: 0, z: 7 }, saddle: { x: 635, z: 12 }, anchor: null }
  const hold: NeckHold = { by: 'two walls', front: 330, back: 570 }

  it('is a neck thinner than its notch, and the answer says where', () => {
    const pieces = [
      pieceOf(-100, 330, [plank(38, -5, 0, maple)]),
      pieceOf(330, 600, [plank(38, -5, -5, maple)]),
    ]
    expect(bendNeck(pieces, load, hold, 317.5)).toEqual({ ok: false, why: 'no wood left', x0: 330, x1: 600 })
  })

  it('throws where pieces do not reach or run backwards', () => {
    expect(() => bendNeck([pieceOf(-100, 330, [plank(38, -19, 0, maple)])], load, hold, 317.5)).toThrow(
      'no piece at',
    )
    expect(() => bendNeck([], { ...load, pull: Number.NaN }, hold, 317.5)).toThrow('not NaN')
    expect(() => pieceOf(10, 10, [])).toThrow('not from 10 to 10')
    expect(() => pieceOf(0, 10, [plank(1, 0, 1, maple)], [])).toThrow('1 parts at one end and 0 at the other')
  })

  it('a box that begins at the nut leaves nothing to bow', () => {
    const { bow, nutRise } = bend([pieceOf(-100, 600, [plank(38, -19, 0, maple)])], load, {
      by: 'block',
      front: 0,
    })
    expect([bow, nutRise]).toEqual([0, 0])
  })
})
