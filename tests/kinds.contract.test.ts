/** What every kind of thing must keep, so that nothing else has to know which kinds there are. */
import { readdirSync, readFileSync } from 'node:fs'
import { resolve } from 'node:path'
import fc, { type Arbitrary } from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  area,
  bounds,
  type Contour,
  check,
  checkDesign,
  type Design,
  FACES,
  faults,
  fieldsOfKind,
  gap,
  KINDS,
  type Kind,
  kindOf,
  mirrorX,
  move,
  type Placed,
  partsOf,
  readDesign,
  sentenceOf,
  solve,
  type Thing,
  turn,
} from '../geometry/index.ts'
import { arbitraryField } from './support/arbitraries.ts'
import { inRing, ringArea, stepsAlong, troublesOf } from './support/contours.ts'
import { designOf, type Stated } from './support/designs.ts'

const samplesFolder = resolve(import.meta.dirname, '../sample-boxes')
const samples = readdirSync(samplesFolder)
  .filter((name) => name.endsWith('.lidwright.json'))
  .map((name) => ({ name, reading: readDesign(readFileSync(resolve(samplesFolder, name), 'utf8')) }))

/** A box large enough for the largest of every kind. */
const ROOMY = { length: 1500, width: 1000, depth: 500 }

/** The only thing in a roomy box, turned and placed. */
function placedIn(kind: string, fields: Stated): { readonly design: Design; readonly placed: Placed } {
  const design = designOf({ box: ROOMY, things: [{ kind, id: 'it', along: 300, across: 200, ...fields }] })
  const [placed] = solve(design).placed
  if (!placed) throw new Error(`nothing was placed for ${kind}`)
  return { design, placed }
}

/** Fields of a kind without name, face and place: what is its own. */
const ownFields = (kind: string) =>
  fieldsOfKind(kind).filter(
    ({ name }) => !['id', 'name', 'face', 'along', 'across', 'turnDegrees', 'locked', 'group'].includes(name),
  )

const randomFields = (kind: string): Arbitrary<Stated> =>
  fc.record(
    Object.fromEntries(
      ownFields(kind).map((field) => [field.name, arbitraryField(field, ['gone'], 'wild')]),
    ) as Record<string, Arbitrary<unknown>>,
    { requiredKeys: [] },
  )

const cases = Object.entries(KINDS).flatMap(([name, kind]) =>
  Object.entries(kind.specimens).map(([specimen, fields]) => ({
    name,
    specimen,
    kind: kindOf(name),
    fields: fields as Stated,
  })),
)

const sound = (contour: Contour): string[] => [...troublesOf(contour), ...faults(contour)]

/** Corners and arcs of both, stepped along; nothing of the inner one lies outside the outer by more than a hair. */
function liesWithin(inner: Contour, outer: Contour): boolean {
  if (JSON.stringify(inner) === JSON.stringify(outer)) return true
  if (inner.shape === 'circle' && outer.shape === 'circle')
    return (
      Math.hypot(inner.centre.x - outer.centre.x, inner.centre.y - outer.centre.y) + inner.radius <=
      outer.radius + 1e-9
    )
  const grown = stepsAlong(outer).map(({ x, y }) => ({ x: x * (1 + 1e-3), y: y * (1 + 1e-3) }))
  return stepsAlong(inner).every((point) => inRing(point, grown))
}

/** Enough of many alike to judge them all by. */
const some = (list: readonly Contour[]): readonly Contour[] =>
  list.length <= 40 ? list : [...list.slice(0, 20), ...list.slice(-20)]

/** Every corner and every place half way along an arc turns the same way. */
function isConvex(contour: Contour): boolean {
  const points = stepsAlong(contour)
  return points.every((at, index) => {
    const [b, c] = [points[(index + 1) % points.length] ?? at, points[(index + 2) % points.length] ?? at]
    return (b.x - at.x) * (c.y - b.y) - (b.y - at.y) * (c.x - b.x) > -1e-6
  })
}

/** All laws of one thing's own shape, around its own centre; what it says is wrong with it. */
function wrongWith(kind: Kind, thing: Thing): string[] {
  const openings = kind.openings(thing)
  const footprint = kind.footprint(thing)
  const operations = kind.operations(thing)
  const size = kind.size(thing)
  const outer = bounds(footprint)
  const holes = operations.flatMap((one): Contour[] =>
    one.kind === 'cut'
      ? [one.contour]
      : one.kind === 'drill' && one.depth === 'through'
        ? [{ shape: 'circle', centre: one.at ?? { x: 0, y: 0 }, radius: one.diameter / 2 }]
        : [],
  )
  const taken = operations.flatMap((one) => (one.kind === 'recess' ? [one.contour] : []))
  const cover = kind.cover?.(thing) ?? null
  const all = kind.taken === undefined ? footprint : kind.taken(thing)
  const bodies = kind.bodies?.(thing, 6) ?? []
  const says = (bad: boolean, what: string) => (bad ? [what] : [])
  return [
    ...[...some(openings), footprint, ...some(holes), ...taken, ...bodies.map((one) => one.contour)].flatMap(
      sound,
    ),
    ...[cover, all].flatMap((one) => (one ? sound(one) : [])),
    ...some(openings).flatMap((one) =>
      says(!liesWithin(one, footprint), 'an opening reaches out of the footprint'),
    ),
    ...taken.flatMap((one) => says(!liesWithin(one, footprint), 'a recess reaches out of the footprint')),
    ...says(JSON.stringify(holes) !== JSON.stringify(openings), 'what is cut through is not what is open'),
    ...says(
      kind.strewn !== true &&
        ![...openings, ...taken, ...(cover ? [cover] : [])].some(
          (one) => JSON.stringify(bounds(one)) === JSON.stringify(outer),
        ),
      'nothing that is cut or lies on the face fills the footprint',
    ),
    ...says(
      !(outer.minX < 0 && outer.maxX > 0 && outer.minY < 0 && outer.maxY > 0),
      'its centre is not in it',
    ),
    ...says(
      Math.abs(outer.minX + outer.maxX) > 1e-9 || Math.abs(outer.minY + outer.maxY) > 1e-9,
      'it is not centred',
    ),
    ...says(cover !== null && !liesWithin(cover, footprint), 'its cover reaches out of the footprint'),
    ...says(all !== null && !liesWithin(all, footprint), 'the wood taken reaches out of the footprint'),
    ...says(
      all === null && openings.length + taken.length > 0 && kind.cover === undefined,
      'wood is taken that nobody tells',
    ),
    ...says(
      kind.taken === undefined && cover !== null && !taken.length && !openings.length,
      'a cover is said to be cut',
    ),
    ...bodies.flatMap((one) => [
      ...says(!isConvex(one.contour), `its ${one.part} is hollow`),
      ...says(one.to < one.from, `its ${one.part} ends before it begins`),
      ...says(one.to > kind.reach(thing, 6) + 1e-9, `its ${one.part} reaches deeper than it says`),
    ]),
    ...says(kind.fault?.(thing) != null, 'it has a fault'),
    ...says(!(size.along > 0 && size.across > 0), 'it has no size'),
    ...says(size.along > outer.maxX - outer.minX + 1e-9, 'it is longer than what it takes up'),
    ...says(size.across > outer.maxY - outer.minY + 1e-9, 'it is wider than what it takes up'),
    ...says(!(kind.reach(thing, 6) >= 0), 'it reaches in front of its face'),
    ...says(kind.describe(thing).trim() === '', 'it is not described'),
    ...operations.flatMap((one) => says(one.kind === 'recess' && !(one.depth > 0), 'a recess has no depth')),
    ...says((kind.activeWidth?.(thing) ?? 1) <= 0, 'it hears nothing'),
    ...says(kind.rim?.(thing) != null && taken.length === 0, 'it has a rim that nobody cuts'),
  ]
}

describe.each(Object.entries(KINDS))('%s', (name, its) => {
  const kind = kindOf(name)

  test('is stored under its name in the list', () => {
    expect(its.kind).toBe(name)
    expect(kind).toBe(its)
    expect(name).toMatch(/^[a-z][a-z-]*$/)
  })

  test('says what it is, and on which faces it goes', () => {
    expect(kind.title).toMatch(/^\p{Lu}[^.]*$/u)
    expect(kind.faces.length).toBeGreaterThan(0)
    expect(new Set(kind.faces).size).toBe(kind.faces.length)
    for (const face of kind.faces) expect(FACES).toContain(face)
  })

  test('gives every field a label, a help, a unit and a default', () => {
    expect(ownFields(name).map((field) => field.name)).toEqual(Object.keys(kind.fields))
    for (const field of ownFields(name)) {
      expect(field.label).toMatch(/^\p{Lu}/u)
      expect(field.help).toMatch(/\.$/)
      expect(field.standard).toBeDefined()
      expect(field.unit).not.toBe('text')
      if (field.unit === 'mm') expect([field.min, field.max].every(Number.isFinite)).toBe(true)
    }
  })

  test('shows a field only for what its neighbour can hold', () => {
    const fields = new Map(ownFields(name).map((field) => [field.name, field]))
    for (const { when } of fields.values()) {
      for (const [neighbour, values] of Object.entries(when ?? {})) {
        const options: readonly unknown[] = fields.get(neighbour)?.options ?? [true, false]
        for (const value of values) expect(options).toContain(value)
      }
    }
  })

  test('is legal with nothing but a name, on the first of its faces', () => {
    const [thing] = designOf({ things: [{ kind: name, id: 'it' }] }).things
    expect(thing).toMatchObject({ kind: name, id: 'it', face: kind.faces[0], turnDegrees: 0 })
  })

  test('goes on each of its faces and on no other', () => {
    for (const face of FACES) {
      const reading = checkDesign({
        format: 'lidwright',
        version: 1,
        things: [{ kind: name, id: 'it', face }],
      })
      expect([face, reading.ok]).toEqual([face, kind.faces.includes(face)])
      if (!reading.ok) expect(reading.faults).toMatchObject([{ path: 'things.it.face' }])
    }
  })

  test('has presets that its fields allow', () => {
    for (const { title, fields } of kind.presets ?? []) {
      expect(title).toMatch(/^\p{Lu}/u)
      const { placed } = placedIn(name, fields as Stated)
      expect(placed.thing).toMatchObject(fields)
      expect(wrongWith(kind, placed.thing)).toEqual([])
    }
  })

  test('has specimens: the usual one and some that are odd', () => {
    expect(kind.specimens.usual).toEqual({})
    expect(Object.keys(kind.specimens).length).toBeGreaterThan(2)
  })

  test('stands in at least one sample box', () => {
    const using = samples.filter(
      ({ reading }) => reading.ok && reading.design.things.some((one) => one.kind === name),
    )
    expect(using.length).toBeGreaterThan(0)
  })

  test('keeps its laws for fields drawn by chance', { timeout: 60_000 }, () => {
    fc.assert(
      fc.property(randomFields(name), (fields) => {
        const { placed } = placedIn(name, fields)
        const wrong = wrongWith(kind, placed.thing)
        if (wrong.length > 0) throw new Error(wrong.join('\n'))
      }),
      { seed: 12, numRuns: 400 },
    )
  })
})

describe.each(cases)('$name, $specimen', ({ name, kind, fields }) => {
  const { design, placed } = placedIn(name, fields)
  const { thing } = placed

  test('keeps the laws of its own shape', () => {
    expect(wrongWith(kind, thing)).toEqual([])
  })

  test('keeps its fields as they were stated', () => {
    expect(thing).toMatchObject(fields)
  })

  test('is the same after a trip through a file', () => {
    const [read] = designOf(JSON.parse(JSON.stringify(design))).things
    expect(read).toEqual(thing)
  })

  test('gives the same answer twice', () => {
    const ask = () => [
      kind.openings(thing),
      kind.footprint(thing),
      kind.operations(thing),
      kind.size(thing),
      kind.reach(thing, 6),
      kind.bodies?.(thing, 6),
    ]
    expect(ask()).toEqual(ask())
    expect(kind.describe(thing)).toBe(kind.describe(thing))
  })

  test('is carried along when it is shifted, turned and mirrored', () => {
    const own = [kind.footprint(thing), ...kind.openings(thing)]
    const outlines = (one: Placed) => [one.footprint, ...one.openings]
    const as = (stated: Stated) => outlines(placedIn(name, { ...fields, ...stated }).placed)

    // On a wall what is measured down has a negative y.
    const side = thing.face === 'lid' || thing.face === 'base' ? 1 : -1
    const shifted = own.map((one) => move(one, 300, side * 200))
    expect(gaps(as({}), shifted)).toBeLessThan(1e-9)
    const turned = own.map((one) => move(turn(one, Math.PI / 6), 310, side * -70))
    expect(gaps(as({ along: 310, across: -70, turnDegrees: 30 }), turned)).toBeLessThan(1e-9)
    // A partner follows a place and turns the other way; so a shape must be alike on both sides of its own x axis.
    // One that is not says so, and turning it over makes the partner.
    const mirrored = own.map((one) => mirrorX(move(turn(one, Math.PI / 6), 310, side * 70)))
    const over = kind.handed ? { flipped: !(thing as { flipped?: boolean }).flipped } : {}
    expect(gaps(as({ along: 310, across: -70, turnDegrees: -30, ...over }), mirrored)).toBeLessThan(1e-6)
    expect(placed.at).toEqual({ x: 300, y: side * 200 })
  })

  test('has an area that stepping along its outline finds as well', () => {
    for (const contour of [placed.footprint, ...some(placed.openings)]) {
      const stepped = ringArea(stepsAlong(contour))
      // Sixteen chords to a half circle miss 0.7 % of it at most.
      expect(stepped).toBeGreaterThan(area(contour) * 0.99)
      expect(stepped).toBeLessThanOrEqual(area(contour) * (1 + 1e-9))
    }
  })

  test('is cut on the part of its face where it stands, and on no other', () => {
    const of = (one: Design) =>
      partsOf(solve(one)).map((part) => [
        part.id,
        part.operations.filter((each) => each.of === kind.title).length,
      ])
    const inside = kind
      .operations(thing)
      .filter((one) => one.kind === 'recess' && one.from === 'inside').length
    const outside = kind.operations(thing).length - inside
    expect(of(design).filter(([, count]) => count !== 0)).toEqual([
      ...(outside > 0 ? [[thing.face, outside]] : []),
      ...(inside > 0 ? [[`${thing.face}-inside`, inside]] : []),
    ])
  })

  test('is checked without a word that means nothing', () => {
    const layout = solve(design)
    const about = check(layout).filter((one) => one.about.includes('it'))
    expect(about.length).toBeGreaterThan(0)
    for (const finding of about) expect(sentenceOf(finding, layout)).not.toMatch(/NaN|undefined|null/)
  })
})

/** The farthest that two lists of outlines lie from each other, by area, box and overlap. */
function gaps(ours: readonly Contour[], theirs: readonly Contour[]): number {
  expect(ours).toHaveLength(theirs.length)
  // A mirror image may name its holes in another order.
  const inOrder = (list: readonly Contour[]) =>
    list
      .map((one) => ({ one, at: bounds(one) }))
      .sort((a, b) => Math.round((a.at.minX - b.at.minX) * 1e6) || a.at.minY - b.at.minY)
      .map(({ one }) => one)
  const others = inOrder(theirs)
  return Math.max(
    ...inOrder(ours).map((one, index) => {
      const other = others[index] ?? one
      const [a, b] = [bounds(one), bounds(other)]
      return Math.max(
        Math.abs(area(one) - area(other)),
        Math.abs(a.minX - b.minX),
        Math.abs(a.maxX - b.maxX),
        Math.abs(a.minY - b.minY),
        Math.abs(a.maxY - b.maxY),
        gap(one, other) < 0 ? 0 : 1,
      )
    }),
  )
}

describe('the sample boxes', () => {
  test('are there, and each can be read', () => {
    expect(samples.length).toBeGreaterThan(3)
    for (const { name, reading } of samples) expect(reading, name).toMatchObject({ ok: true })
  })
})

test('a kind that nobody knows is refused by name', () => {
  expect(() => kindOf('kazoo')).toThrow('"kazoo"')
  expect(() => kindOf('toString')).toThrow('"toString"')
  expect(() => kindOf('__proto__')).toThrow('"__proto__"')
})
