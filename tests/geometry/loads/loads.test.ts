import { describe, expect, test } from 'vitest'
import {
  apply,
  braceThatSuffices,
  change,
  check,
  checkDesign,
  type Design,
  fretRoundingOf,
  intonationOf,
  lidStressOf,
  loadsOf,
  type Path,
  pureTuningOf,
  sentenceOf,
  solve,
} from '../../../geometry/index.ts'
import { designOf, type Stated } from '../../support/designs.ts'
import { strung, weighed } from '../checks/breaking/case.ts'

const loads = (...more: Stated[]) => loadsOf(solve(designOf(strung(...more))))
const neck = (...more: Stated[]) => {
  const found = loads(...more).neck
  if (!found) throw new Error('the neck has no loads')
  return found
}

describe('without pitches', () => {
  test('what hangs on them is not known, and it is said why', () => {
    const found = loadsOf(solve(designOf()))
    expect(found).toMatchObject({ missing: { why: 'no tuning' }, totalPull: null, neck: null, lid: null })
    expect(found.strings.map(({ atPitch }) => atPitch)).toEqual([null, null, null])
    expect(loads({ stringing: { tuning: ['G2'] } }).missing).toEqual({ why: 'tuning too short', stated: 1 })
  })

  test('heights and bends are known all the same', () => {
    const found = loadsOf(solve(designOf()))
    // 5 + 1.1 + 0.9 + 2 (2.2 - 0.9)
    expect(found.saddle.heightWanted).toBeCloseTo(9.6, 9)
    // 12 mm down to the holes 81.2 behind, and 5 up from the nut over 635.
    expect(found.strings[0]?.atSaddle?.total).toBeCloseTo(Math.atan(12 / 81.2) + Math.atan(5 / 635), 9)
    // Nut at 7, the head's face 5 below the neck's top, the string 4 over it, 45 behind.
    expect(found.strings[0]?.breakAtNut).toBeCloseTo(Math.atan(8 / 45), 9)
  })

  test('cents, chord and pull are left out, not guessed', () => {
    const layout = solve(designOf())
    expect(intonationOf(layout)).toEqual([null, null, null])
    expect(pureTuningOf(layout)).toBeNull()
  })
})

describe('a string that cannot be made', () => {
  test('stops the reckoning of all and is told in words', () => {
    const layout = solve(designOf(strung({ stringing: { makes: [{ construction: 'wound', core: 2 }] } })))
    expect(loadsOf(layout).missing).toEqual({ why: 'a string cannot be made' })
    const [first] = check(layout)
    expect(first).toMatchObject({ rule: 'string-can-be-made', grade: 'stop' })
    expect(first && sentenceOf(first, layout)).toMatch(/no room for a winding/)
  })
})

describe('strings', () => {
  test('whose mass is stated, or weighed, pull by it', () => {
    // 0.8 g over two metres is 0.4 g on one: T = mu (2 L f)².
    const pull = (make: Stated) =>
      loadsOf(
        solve(designOf(weighed(300, 0.4, { stringing: { makes: [{ construction: 'stated', ...make }] } }))),
      ).totalPull
    expect(pull({ unitMass: 0.4 })).toBeCloseTo(0.0004 * 381 ** 2, 9)
    expect(pull({ weighedLength: 2000, weighedMass: 0.8 })).toBeCloseTo(0.0004 * 381 ** 2, 9)
  })

  test('follow A4', () => {
    const low = loads({ stringing: { a4: 432 } }).totalPull ?? 0
    const usual = loads().totalPull ?? 1
    expect(low / usual).toBeCloseTo((432 / 440) ** 2, 9)
  })

  test('are sharp at the octave with the saddle at the bare scale, and true at their own setback', () => {
    const layout = solve(designOf(strung()))
    for (const cents of intonationOf(layout)) {
      expect(cents?.before[11] ?? 0).toBeGreaterThan(1)
      expect(Math.abs(cents?.after[11] ?? 9)).toBeLessThan(1e-5)
      expect(cents?.asStated).toHaveLength(18)
    }
  })

  test('want no setback where a slide is all that touches them', () => {
    expect(loads({ scale: { fretless: true } }).saddle.line).toBeNull()
  })
})

describe('the neck', () => {
  // Each halves or doubles what resists the bend; the laws of `bendNeck` are tested beside it.
  test.each<[string, Stated, Stated]>([
    ['stiffer wood', { neck: { wood: 'pine, white' } }, { neck: { wood: 'hickory, mockernut' } }],
    ['a thicker blank', {}, { neck: { thickness: 30 } }],
    ['no relief', { neck: { relief: 3 } }, {}],
    ['a board', { board: { fitted: false }, saddle: { height: 5 } }, { board: { thickness: 5 } }],
    ['a steel bar', {}, { neck: { bar: { kind: 'steel bar' } } }],
    ['a carbon rod', {}, { neck: { bar: { kind: 'carbon rod', width: 8 } } }],
  ])('%s makes it rise less', (_what, limber, stiff) => {
    expect(neck(stiff).nutRise).toBeLessThan(neck(limber).nutRise)
  })

  test('is of the builder’s own wood where he states one', () => {
    const woods = [{ name: 'sugar maple from the yard', density: 700, stiffness: 25_200, strength: 109 }]
    const twice = neck({
      woods,
      neck: { wood: 'sugar maple from the yard' },
      board: { wood: 'sugar maple from the yard' },
    })
    expect(twice.nutRise / neck().nutRise).toBeCloseTo(0.5, 1)
  })

  test('says why it has no numbers', () => {
    expect(loads({ scale: { length: 150 } }).neckTrouble).toBe('nut on the box')
    expect(loads({ box: { lid: { thickness: 26 } } }).neckTrouble).toBe('no wood left')
  })
})

describe('the lid', () => {
  test('that lies on the neck does not sag; relieved, it does', () => {
    expect(loads().lid).toMatchObject({ onNeck: true, sag: 0 })
    const free = loads({ neck: { relief: 3 } }).lid
    expect(free?.onNeck).toBe(false)
    expect(free?.sag ?? 0).toBeGreaterThan(0.05)
  })

  test('of half the thickness sags eight times as much', () => {
    const sag = (thickness: number) =>
      loads({ neck: { relief: 6, thickness: 40 }, box: { lid: { thickness } } }).lid?.sag ?? Number.NaN
    expect(sag(2) / sag(4)).toBeCloseTo(8, 6)
  })

  test('sags less with the grain across where it is wide, and less with a brace', () => {
    const sag = (more: Stated) => loads({ neck: { relief: 9, thickness: 40 } }, more).lid?.sag ?? Number.NaN
    const thin = { thickness: 3, stuff: 'spruce, sitka' }
    const wide = (grain: string) => ({ box: { length: 400, width: 180, lid: { ...thin, grain } } })
    expect(sag(wide('across'))).toBeLessThan(sag(wide('along')))
    const braced = { brace: { height: 6 } }
    expect(sag({ ...wide('along'), ...braced })).toBeLessThan(sag(wide('along')) / 2)
  })

  test('is strained where it sags, and not where the neck carries it', () => {
    const stress = (more: Stated) => {
      const layout = solve(designOf(strung(more)))
      const { lid } = loadsOf(layout)
      return lid && lidStressOf(layout, lid)
    }
    expect(stress({})).toBeNull()
    const free = stress({ neck: { relief: 3 } })
    expect(free?.along ?? 0).toBeGreaterThan(0.5)
    // Plywood bears 33.7 for minutes: Wood Handbook, Table 12-1.
    expect(free?.across ?? 99).toBeLessThan(33.7)
  })

  test('gets the brace that suffices, and holds with it', () => {
    const thin = { box: { lid: { thickness: 2.5 } }, neck: { relief: 14, thickness: 45 } }
    const layout = solve(designOf(strung(thin)))
    const brace = braceThatSuffices(layout)
    expect(brace).toMatchObject({ runs: 'across', offset: 0 })
    expect(loadsOf(layout).lid?.sag ?? 0).toBeGreaterThan(0.5)
    expect(loads(thin, { brace: { ...brace } }).lid?.sag ?? 9).toBeLessThanOrEqual(0.5)
  })
})

test('frets on a rule in whole millimetres are off by up to half of one, and what that costs is told', () => {
  const [first, ...others] = fretRoundingOf(solve(designOf()))
  // 635 (1 - 2^(-1/12)) = 35.640, cut at 36: 1200 log2(599.360 / 599) cents.
  expect(first?.cut).toBe(36)
  expect(first?.cents).toBeCloseTo(1200 * Math.log2((635 * 2 ** (-1 / 12)) / 599), 9)
  for (const { off } of others) expect(Math.abs(off)).toBeLessThanOrEqual(0.5)
})

describe('what was reckoned before', () => {
  const moved = (design: Design, path: Path, value: unknown) => apply(design, change(design, [path, value]))
  const hole = { kind: 'sound-hole', id: 'hole', along: 60, across: 60 }
  const pickup = { kind: 'pickup', id: 'pickup', along: { ofScale: 0.1 }, depth: 12 }
  const told = (design: Design) => {
    const all = loadsOf(solve(design))
    return { ...all, neck: { ...all.neck, curve: all.neck?.curve() } }
  }

  test('serves while a hole is dragged, and not when a pickup bites elsewhere into the neck', () => {
    const design = designOf({ ...strung(), things: [hole, pickup] })
    const before = loadsOf(solve(design))
    expect(loadsOf(solve(moved(design, ['things', 0, 'along'], 80)))).toBe(before)
    const bitten = moved(design, ['things', 1, 'depth'], 15)
    expect(loadsOf(solve(bitten)).neck?.nutRise).toBeGreaterThan(before.neck?.nutRise ?? 0)
    expect(told(bitten)).toEqual(told(structuredClone(bitten)))
  })
})

describe('a file', () => {
  const faults = (stated: Stated) => {
    const reading = checkDesign({ format: 'lidwright', version: 1, ...stated })
    return reading.ok ? [] : reading.faults
  }

  test.each<[string, Stated, string, RegExp]>([
    ['an unknown pitch', { stringing: { tuning: ['H3'] } }, 'stringing.tuning[0]', /notes are called A to G/],
    [
      'a note without octave',
      { stringing: { tuning: ['G2', 'D'] } },
      'stringing.tuning[1]',
      /octave is missing/,
    ],
    [
      'a pitch no string plays',
      { stringing: { tuning: ['9000 Hz'] } },
      'stringing.tuning[0]',
      /16 to 5000 Hz/,
    ],
    ['an endless pitch', { stringing: { tuning: ['G'.repeat(99)] } }, 'stringing.tuning[0]', /too long/],
    ['an unknown wood', { neck: { wood: 'balsa' } }, 'neck.wood', /no wood is called so.*own woods/],
    ['a sheet for a neck', { board: { wood: 'plywood' } }, 'board.wood', /no wood is called so/],
    ['an unknown lid', { box: { lid: { stuff: 'tin' } } }, 'box.lid.stuff', /"plywood"/],
    ['a wood of the table', { woods: [{ name: 'cherry' }] }, 'woods[0].name', /already a wood of that name/],
    ['a name of nothing', { woods: [{ name: '' }] }, 'woods[0].name', /too short/],
    [
      'a stock string without room',
      { stringing: { stock: [{ gauge: 0.3, construction: 'wound', core: 0.4 }] } },
      'stringing.stock[0].core',
      /as thick as the string/,
    ],
    [
      'a stock string without mass',
      { stringing: { stock: [{ gauge: 0.3, construction: 'stated' }] } },
      'stringing.stock[0].unitMass',
      /is no mass/,
    ],
  ])('with %s is refused in a sentence', (_what, stated, path, sentence) => {
    const [first, ...others] = faults(stated)
    expect(others).toEqual([])
    expect(first?.path).toBe(path)
    expect(first?.sentence).toMatch(sentence)
  })

  test('that says nothing of strings, woods or loads is read as before', () => {
    expect(faults({})).toEqual([])
  })
})
