import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { reportOf } from '../../exporters/report.ts'
import { REPORT_KEYS } from '../../exporters/report-keys.ts'
import { startingDesign } from '../../geometry/index.ts'
import { arbitraryDesign } from '../support/arbitraries.ts'
import { designOf } from '../support/designs.ts'

/** Every path that ends in a value, list entries as `[]`; a null is the path of whatever it stands for. */
function pathsIn(value: unknown, path = ''): string[] {
  if (Array.isArray(value)) return value.flatMap((one) => pathsIn(one, `${path}[]`))
  if (value === null || typeof value !== 'object') return [path]
  return Object.entries(value).flatMap(([key, inner]) => pathsIn(inner, path ? `${path}.${key}` : key))
}

function numbersIn(value: unknown): number[] {
  if (typeof value === 'number') return [value]
  return value === null || typeof value !== 'object' ? [] : Object.values(value).flatMap(numbersIn)
}

/** A pickup by a switch, a tone control and a knob that does nothing; one position of the switch is silent. */
const SOLDERED = {
  components: [
    { id: 'coil', part: 'coil pickup' },
    { id: 'disc', part: 'piezo pickup' },
    { id: 'tone', part: 'pot' },
    { id: 'cap', part: 'capacitor' },
    { id: 'idle', part: 'pot' },
    { id: 'selector', part: 'switch' },
    { id: 'socket', part: 'jack' },
  ],
  wires: [
    { from: 'coil.hot', to: 'selector.a' },
    { from: 'coil.ground', to: 'socket.sleeve' },
    { from: 'disc.ground', to: 'socket.sleeve' },
    { from: 'selector.common', to: 'socket.tip', colour: 'red' },
    { from: 'tone.3', to: 'socket.tip' },
    { from: 'tone.2', to: 'cap.a' },
    { from: 'cap.b', to: 'socket.sleeve' },
  ],
}

/** Designs that between them fill every key. */
const VARIED = [
  startingDesign({ hand: 'left', strings: 4 }),
  designOf({
    ...startingDesign({ strings: 3 }),
    things: [{ kind: 'pickup', id: 'ears', along: { ofScale: 0.1 }, across: 0 }],
  }),
  designOf({
    scale: { start: 'zero fret', fretless: true },
    neck: { ends: 'at a block' },
    balance: { held: 'by a strap' },
    box: { lid: { kind: 'hinged', hingeEdge: 'neck end' } },
    board: { fitted: false },
    tailpiece: { at: 'the lid', holes: 2 },
    headstock: { bassTuners: 1, trebleTuners: 1 },
    things: [
      { kind: 'pickup', id: 'ears', along: { ofScale: 0.1 } },
      { kind: 'screw', id: 'strap', face: 'tail-end-wall', along: 10, across: 12 },
      {
        kind: 'sound-hole',
        id: 'vent',
        face: 'bass-wall',
        along: -20,
        across: 20,
        turnDegrees: 90,
        shape: 'slot',
      },
      { kind: 'sound-hole', id: 'lost', across: { mirror: 'gone' } },
      { kind: 'sound-hole', id: 'shut', along: 2 },
    ],
    overruled: { 'tail-to-hold tailpiece neck': 'held by the lid' },
  }),
  designOf({
    box: { lid: { kind: 'sliding' }, inside: [{ id: 'corner' }] },
    artwork: [{ id: 'swallow' }],
    headstock: { form: 'scarfed', screws: 1 },
    wiring: SOLDERED,
  }),
  designOf({
    box: {
      survey: {
        bass: [240, 240.5],
        treble: [241],
        heightNeckBass: [47],
        heightNeckTreble: [47],
        heightTailBass: [47],
        heightTailTreble: [48],
      },
    },
  }),
].map((design) => reportOf(design, { tolerances: true }))

describe('the keys of a report', () => {
  const found = new Set(VARIED.flatMap((report) => pathsIn(report)))
  const known = REPORT_KEYS.map(({ key }) => key)

  test('every key that a report holds is explained', () => {
    // Where a whole group may be missing, null stands under the group's own name.
    const groups = [
      ...['board', 'neck.block', 'neck.weakest', 'strings[].tail', 'strings[].post', 'strings[].pitch'],
      ...['schedule[].size', 'schedule[].drill', 'headstock.scarf', 'wiring'],
      ...['pickups[].relief', 'pickups[].relief.bow', 'pickups[].relief.nutRise'],
      ...['pull.spread', 'chord', 'air.note', 'weight.held', 'opening', 'survey', 'findings[].measureAgain'],
    ]
    expect([...found].filter((path) => !known.includes(path) && !groups.includes(path))).toEqual([])
  })

  test('every key that is explained is in a report, and explained once', () => {
    expect(known.filter((key) => !found.has(key))).toEqual([])
    expect(new Set(known).size).toBe(known.length)
  })

  test('every explanation is a sentence', () => {
    for (const { key, meaning } of REPORT_KEYS) expect(meaning, key).toMatch(/^.{4,}[.?]$/)
  })
})

describe('scale and frets', () => {
  test('on a 24 inch scale the octave fret is 12 inches from the nut and the saddle line starts at 24 inches', () => {
    const { frets, scale, saddle } = reportOf(designOf({ scale: { length: 24 * 25.4 } }))
    expect(frets[11]).toMatchObject({ number: 12, fromNut: 304.8, cents: 1200 })
    expect([scale.saddleLine, saddle.fromNut]).toEqual([609.6, 609.6])
  })

  // G. Byers, "Intonation" (American Lutherie 47, 1996), Fret Placement: X_n = X_0 2^(-n/12) from the saddle.
  test.each([
    [1, 613.5183],
    [5, 486.9498],
    [12, 325],
  ])('at 650 mm fret %i lies %f mm from the saddle', (number, fromSaddle) => {
    const { frets } = reportOf(designOf({ scale: { length: 650 } }))
    expect(650 - (frets[number - 1]?.fromNut ?? 0)).toBeCloseTo(fromSaddle, 3)
  })

  // H. von Helmholtz, "On the Sensations of Tone", transl. A. J. Ellis: a ratio stops the string at 1 - 1/ratio.
  test('frets by ratio stop simple shares of the string', () => {
    const list = ['9/8', '5/4', '4/3', '3/2', '5/3', '16/9', '2']
    const { frets, scale } = reportOf(designOf({ scale: { length: 1000, frets: { by: 'ratios', list } } }))
    const shares = [0.111111, 0.2, 0.25, 0.333333, 0.4, 0.4375, 0.5]
    expect(scale.by).toBe('ratios')
    frets.forEach((fret, index) => {
      expect(Math.abs(fret.fromNut / 1000 - (shares[index] ?? 0))).toBeLessThan(6e-7)
    })
    expect(frets).toHaveLength(shares.length)
  })

  test('says what a rule in 32nds shows of a fret, and how far that is off', () => {
    const { frets } = reportOf(
      designOf({ scale: { length: 25 * 25.4 }, units: { display: 'inches', fraction: 32 } }),
    )
    // The seventh fret of 25 in: 25 (1 - 2^(-7/12)) = 8.31450 in by the law above; 8 5/16 = 8.3125 is nearest.
    expect(frets[6]?.onRule.text).toBe('8 5/16 in')
    expect(frets[6]?.onRule.error).toBeCloseTo((8.3125 - 25 * (1 - 2 ** (-7 / 12))) * 25.4, 5)
  })

  test('the steps add up to the place of the last fret', () => {
    const { frets } = reportOf(designOf())
    const sum = frets.reduce((total, fret) => total + fret.step, 0)
    expect(sum).toBeCloseTo(frets.at(-1)?.fromNut ?? 0, 4)
  })
})

describe('wiring', () => {
  test('a wire between two things on the lid runs square along it: 60 along, 60 across, and 40 of slack', () => {
    const { wiring } = reportOf(
      designOf({
        things: [
          { kind: 'pot', id: 'volume', along: 100, across: 40 },
          { kind: 'pot', id: 'tone', along: 160, across: -20 },
        ],
        wiring: {
          slack: 40,
          components: [
            { id: 'a', part: 'pot', thing: 'volume', kilohms: 250 },
            { id: 'b', part: 'pot', thing: 'tone' },
            { id: 'loose', part: 'jack' },
          ],
          wires: [
            { from: 'a.1', to: 'b.1', colour: 'white' },
            { from: 'a.2', to: 'loose.tip' },
          ],
        },
      }),
    )
    expect(wiring?.wires).toMatchObject([
      { number: 1, from: 'a.1', to: 'b.1', colour: 'white', length: 160, lost: [] },
      { length: null, lost: ['loose'] },
    ])
    expect(wiring?.components[0]).toMatchObject({
      thing: 'volume',
      kilohms: 250,
      nanofarads: null,
      grounded: false,
    })
    expect(wiring?.findings).toContainEqual({ key: 'wiring-grounded volume component a', grade: 'stop' })
  })

  test('is nothing where nothing is wired', () => {
    expect(reportOf(designOf()).wiring).toBeNull()
  })
})

test('the head: tuners along its face, and which string winds on which', () => {
  const { headstock } = reportOf(designOf({ headstock: { form: 'scarfed', tiltDegrees: 30 } }))
  expect(headstock.tuners.map(({ along }) => along)).toEqual([45, 77, 45])
  // The outer strings take the nearest post of their own side.
  expect(headstock.paths.map(({ string, tuner }) => [string, tuner])).toEqual([
    [3, 1],
    [2, 2],
    [1, 3],
  ])
  // 19 / sin 30
  expect(headstock.scarf?.glued).toBe(38)
})

describe('strings and their holes', () => {
  test('four strings 11/16 in apart from centre to centre span 2 1/16 in', () => {
    const span = 2.0625 * 25.4
    const { strings } = reportOf(designOf({ strings: { count: 4, spanAtNut: span, spanAtSaddle: span } }))
    const steps = strings.slice(1).map((string, index) => string.yAtNut - (strings[index]?.yAtNut ?? 0))
    for (const step of steps) expect(step).toBeCloseTo(17.4625, 6)
    expect(steps).toHaveLength(3)
  })

  // Common practice, no source: one drilled row of five serves several counts of strings.
  test.each([
    [5, [1, 2, 3, 4, 5]],
    [4, [1, 2, 4, 5]],
    [3, [1, 3, 5]],
    [2, [1, 5]],
    [1, [3]],
  ])('a row of five holes serves %i strings by these holes', (count, holes) => {
    const design = designOf({
      strings: { count },
      tailpiece: { holes: 5, span: 40 },
      headstock: { bassTuners: 3, trebleTuners: 2 },
    })
    const { strings, tailHoles } = reportOf(design)
    expect(strings.map((string) => string.tail?.hole)).toEqual(holes)
    expect(tailHoles.filter((hole) => hole.string !== null).map((hole) => hole.number)).toEqual(holes)
  })

  test('the treble string is number 1 and comes last', () => {
    expect(reportOf(designOf()).strings.map(({ number }) => number)).toEqual([3, 2, 1])
  })
})

describe('loads', () => {
  const stated = (tuning: string[]) =>
    reportOf(
      designOf({
        strings: { count: 1, gauges: [0.254] },
        stringing: { tuning, makes: [{ construction: 'stated', unitMass: 0.4 }] },
      }),
    )

  test('a string of 0.4 g/m at 300 Hz over 635 mm pulls 58.0644 N', () => {
    // T = mu (2 L f)^2 = 0.0004 (2 · 0.635 · 300)^2. M. Mersenne, "Harmonicorum Libri" (1636).
    const { strings, pull, lid } = stated(['300 Hz'])
    expect(strings[0]).toMatchObject({ tension: 58.0644, unitMass: 0.4, feel: 'comfortable' })
    expect(strings[0]?.centsAtFret).toHaveLength(18)
    expect([pull.total, pull.missing]).toEqual([58.0644, null])
    expect(lid.downForce).toBe(strings[0]?.downForce)
  })

  test('are null until a tuning is stated', () => {
    const { strings, pull, lid, neck, chord } = stated([])
    expect(strings[0]).toMatchObject({ tension: null, shareOfBreaking: null, setback: null, pitch: null })
    expect([pull.total, pull.missing, lid.sag, neck.bow, neck.weakest, chord]).toEqual([
      null,
      'no tuning',
      null,
      null,
      null,
      null,
    ])
  })
})

describe('places', () => {
  const { things, saddle, box, panels } = reportOf(
    designOf({
      box: { length: 240, width: 180, depth: 55, walls: { neckEnd: 6, tailEnd: 6, bass: 6, treble: 6 } },
      scale: { length: 600 },
      saddle: { place: 170 },
      things: [
        { kind: 'sound-hole', id: 'on-lid', along: 60, across: 50 },
        { kind: 'sound-hole', id: 'on-side', face: 'treble-wall', along: 30, across: 20 },
        { kind: 'screw', id: 'on-end', face: 'tail-end-wall', along: -40, across: 10 },
      ],
    }),
  )
  const thing = (id: string) => things.find((one) => one.id === id)

  // By hand: the box begins 600 - 170 = 430 mm behind the nut and ends at 670.
  test('on the lid: from the nut, from the edge, from the centreline', () => {
    expect(box).toMatchObject({ x0: 430, x1: 670 })
    expect(thing('on-lid')).toMatchObject({
      fromNut: 490,
      fromEdge: 60,
      fromCentreline: 50,
      fromLidEdge: null,
    })
  })

  test('on a side wall: also down from the lid-side edge', () => {
    expect(thing('on-side')).toMatchObject({
      fromNut: 580,
      fromEdge: 150,
      fromCentreline: 30,
      fromLidEdge: 20,
    })
  })

  test('on an end wall: from its bass edge, and that wall from the nut', () => {
    expect(thing('on-end')).toMatchObject({
      fromNut: 670,
      fromEdge: 50,
      fromCentreline: -40,
      fromLidEdge: 10,
    })
  })

  test('the saddle: from both edges of the lid and from the wall behind it', () => {
    expect(saddle).toMatchObject({ fromNut: 600, fromEdge: 170, fromTailEdge: 70, fromTailWall: 64 })
  })

  test('every face says how large it is', () => {
    expect(panels.find(({ face }) => face === 'lid')).toMatchObject({ fromNut: 430, long: 240, across: 180 })
  })
})

describe('the report as a whole', () => {
  test('counts the work on each part', () => {
    const lid = reportOf(startingDesign({ hand: 'right' })).parts.find(({ id }) => id === 'lid')
    expect(lid?.operations).toMatchObject({ cut: 2, recess: 0, slot: 0 })
  })

  test('carries findings with sentences, gravest first, overruled ones with their reason', () => {
    const { findings } = reportOf(
      designOf({ hand: 'not stated', overruled: { 'hand-stated hand': 'it hangs on a wall' } }),
    )
    expect(findings[0]).toMatchObject({
      rule: 'hand-stated',
      grade: 'stop',
      blocks: false,
      overruled: 'it hangs on a wall',
    })
    expect(findings.every(({ sentence }) => sentence.length > 10)).toBe(true)
  })

  test('is plain JSON with finite numbers to a millionth, the same every time, whatever the design', () => {
    fc.assert(
      fc.property(arbitraryDesign, (design) => {
        const report = reportOf(design)
        const text = JSON.stringify(report)
        expect(JSON.parse(text)).toEqual(report)
        for (const value of numbersIn(report)) {
          expect(Object.is(value, -0)).toBe(false)
          expect(value).toBe(Number(value.toFixed(6)))
        }
        expect(JSON.stringify(reportOf(structuredClone(design)))).toBe(text)
      }),
      { seed: 7, numRuns: 60 },
    )
  }, 60_000)
})
