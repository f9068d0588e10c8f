import {
  areaD,
  differenceD,
  EndType,
  FillRule,
  inflatePathsD,
  JoinType,
  type PathsD,
  unionD,
} from 'clipper2-ts'
import { describe, expect, test } from 'vitest'
import {
  area,
  bounds,
  type Chain,
  type Contour,
  circle,
  type Feature,
  featuresOf,
  flatten,
  narrowestWeb,
  type Operation,
  type Part,
  rectangle,
  stadium,
  type Tool,
  turn,
  widestFor,
} from '../../../geometry/index.ts'

const LASER: Tool = { process: 'laser', width: 0.2, relief: 'none', cutsSlots: false }
const router = (width: number, relief: Tool['relief'] = 'none'): Tool => ({
  process: 'router',
  width,
  relief,
  cutsSlots: false,
})
const cut = (contour: Contour, of = 'Opening'): Operation => ({ kind: 'cut', side: 'inside', contour, of })

function plate(...operations: Operation[]): Part {
  return {
    id: 'lid',
    title: 'Lid',
    seen: 'from outside',
    mirrored: false,
    headEnd: 'left',
    hand: 'right',
    thickness: 4,
    outline: rectangle(0, 0, 100, 50),
    operations,
  }
}

const only = (part: Part, tool: Tool, kind: Feature['kind']): Feature => {
  const [feature] = featuresOf(part, tool).filter((one) => one.kind === kind)
  if (feature === undefined) throw new Error(`no ${kind}`)
  return feature
}
const sizeOf = (contour: Contour | null): readonly [number, number] => {
  if (contour === null) throw new Error('there is no path')
  const { minX, minY, maxX, maxY } = bounds(contour)
  return [maxX - minX, maxY - minY]
}

/** Worked figures of common practice (outsides grow, holes shrink, each by half the kerf), from memory. */
describe('where the middle of the tool runs', () => {
  test('a plate of 100 by 50 with a kerf of 0.2 is followed 100.2 by 50.2', () => {
    const [length, width] = sizeOf(only(plate(), LASER, 'outline').path)
    expect([length, width].map((one) => one.toFixed(6))).toEqual(['100.200000', '50.200000'])
  })

  test.each([
    [10, 0.2, 9.8],
    [30, 6.35, 23.65],
  ])('a hole of %d with a kerf of %d: %d', (diameter, width, followed) => {
    const part = plate(cut(circle({ x: 50, y: 25 }, diameter / 2)))
    const [across] = sizeOf(only(part, { ...LASER, width }, 'opening').path)
    expect(across).toBeCloseTo(followed, 9)
  })

  test('a slot of radius 5 with a kerf of 0.15 has a path of radius 4.925', () => {
    const part = plate(cut(stadium({ x: 50, y: 25 }, 50, 10)))
    const [length, width] = sizeOf(only(part, { ...LASER, width: 0.15 }, 'opening').path)
    expect([length, width / 2]).toEqual([expect.closeTo(49.85, 9), expect.closeTo(4.925, 9)])
  })

  test('a drilled hole is cut by a laser and left to the drill on a router', () => {
    const part = plate({ kind: 'drill', centre: { x: 50, y: 25 }, diameter: 6, depth: 'through', of: 'Post' })
    expect(sizeOf(only(part, LASER, 'hole').path)[0]).toBeCloseTo(5.8, 9)
    expect(featuresOf(part, router(3)).map(({ kind }) => kind)).toEqual(['outline'])
  })

  test('a cut that opens at an edge becomes a notch of the outline, followed once', () => {
    const features = featuresOf(plate(cut(rectangle(40, 30, 60, 51))), router(6))
    expect(features.map(({ kind }) => kind)).toEqual(['outline'])
    expect(area(features[0]?.contour as Contour)).toBeCloseTo(5000 - 400, 9)
    // Grown by 3: outer corners round; the notch is narrower by 6 at its sides and less deep by 3.
    const grown = 106 * 56 - (4 - Math.PI) * 9 - (20 - 6) * 20 - 2 * (9 - (Math.PI * 9) / 4) - 0
    expect(area(features[0]?.path as Contour)).toBeCloseTo(grown, 6)
  })

  test('openings that run into one another are one', () => {
    const part = plate(cut(circle({ x: 45, y: 25 }, 8), 'One'), cut(circle({ x: 55, y: 25 }, 8), 'Other'))
    const [opening, ...more] = featuresOf(part, LASER).filter(({ kind }) => kind === 'opening')
    expect(more).toEqual([])
    expect(opening?.of).toBe('One with Other')
    // Two circles less the lens they share: 2 r² acos(d / 2r) - (d / 2) sqrt(4 r² - d²).
    const lens = 2 * 64 * Math.acos(10 / 16) - 5 * Math.sqrt(256 - 100)
    expect(area(opening?.contour as Contour)).toBeCloseTo(2 * Math.PI * 64 - lens, 6)
  })

  test('a recess that opens at an edge is followed on beyond it', () => {
    const part = plate({ kind: 'recess', contour: rectangle(40, 30, 60, 51), depth: 2, of: 'Rebate' })
    const path = only(part, router(6), 'recess').path as Contour
    expect(bounds(path)).toMatchObject({ minX: 43, maxX: 57, minY: 33 })
    // The middle of the cutter comes at least to the edge itself.
    expect(bounds(path).maxY).toBeGreaterThanOrEqual(50)
  })
})

describe('what cannot be followed', () => {
  test('a kerf wider than a hole', () => {
    const hole = only(plate(cut(circle({ x: 50, y: 25 }, 0.1))), LASER, 'opening')
    expect(hole).toMatchObject({ follow: 'gone', path: null })
    expect(widestFor(hole, 0.2)).toBeCloseTo(0.2, 3)
  })

  test('a neck of an opening, a bay with a narrow mouth, a notch narrower than the cutter', () => {
    const waist = plate(
      cut(rectangle(10, 10, 30, 40)),
      cut(rectangle(29, 23, 61, 27)),
      cut(rectangle(60, 10, 80, 40)),
    )
    expect(only(waist, router(6), 'opening')).toMatchObject({ follow: 'apart', path: null })
    expect(widestFor(only(waist, router(6), 'opening'), 6)).toBeCloseTo(4, 2)
    const bay = plate(cut(rectangle(48, 39, 52, 51)), cut(circle({ x: 50, y: 30 }, 10)))
    expect(only(bay, router(3), 'outline').follow).toBe('whole')
    const notch = plate(cut(rectangle(48, 30, 52, 51)))
    expect(only(notch, router(6), 'outline')).toMatchObject({ follow: 'closed', path: null })
    expect(widestFor(only(notch, router(6), 'outline'), 6)).toBeCloseTo(4, 2)
  })

  test('a cut right across', () => {
    expect(only(plate(cut(rectangle(40, -1, 60, 51))), LASER, 'outline')).toMatchObject({
      follow: 'apart',
      path: null,
    })
  })
})

/** Everything that a cutter reaches whose middle runs along a closed path, and all within the path. */
function swept(path: Contour, radius: number): PathsD {
  const line: PathsD = [flatten(path, 0.0005).map(({ x, y }) => ({ x, y }))]
  const band = inflatePathsD(line, radius, JoinType.Round, EndType.Joined, 2, 6, 0.0002)
  return unionD(band, line, FillRule.NonZero, 6)
}
const all = (paths: PathsD): number => paths.reduce((sum, one) => sum + areaD(one), 0)
const pathsOf = (contour: Contour): PathsD => [flatten(contour, 0.0005).map(({ x, y }) => ({ x, y }))]

describe.each([0, 0.3, 1.2])('relief in an opening turned by %d', (angle) => {
  const opening = turn(rectangle(35, 15, 65, 35), angle, { x: 50, y: 25 })
  const missing = (relief: Tool['relief'], radius: number) => {
    const { path } = only(plate(cut(opening)), router(2 * radius, relief), 'opening')
    return all(differenceD(pathsOf(opening), swept(path as Contour, radius), FillRule.NonZero, 6))
  }

  test('none leaves each corner round', () => {
    // r² (1 - pi / 4) in each of four corners.
    expect(missing('none', 3)).toBeCloseTo(4 * 9 * (1 - Math.PI / 4), 2)
  })

  test.each(['dog-bone', 'T'] as const)('%s lets the square corners of a mating part in', (relief) => {
    for (const radius of [1.5, 3, 3.175]) expect(missing(relief, radius)).toBeLessThan(0.01)
  })

  test('takes no more than it must: r - r sin(45°) beyond each side for a dog-bone', () => {
    const radius = 3
    const { path } = only(plate(cut(opening)), router(2 * radius, 'dog-bone'), 'opening')
    const allowed = 0.8787 + 0.05
    const roomy = inflatePathsD(pathsOf(opening), allowed, JoinType.Miter, EndType.Polygon, 4, 6)
    expect(all(differenceD(swept(path as Contour, radius), roomy, FillRule.NonZero, 6))).toBeLessThan(0.01)
  })
})

test('the corners of a notch get relief, and outer corners none', () => {
  const { path, contour } = only(plate(cut(rectangle(40, 30, 60, 51))), router(6, 'dog-bone'), 'outline')
  const wood = [rectangle(40, 30, 44, 34), rectangle(56, 30, 60, 34)]
    .map((corner) => all(differenceD(pathsOf(corner), outside(path as Contour, 3), FillRule.NonZero, 6)))
    .reduce((sum, one) => sum + one, 0)
  expect(wood).toBeLessThan(0.01)
  expect((path as Chain).vertices.length - 4).toBe(
    (only(plate(cut(rectangle(40, 30, 60, 51))), router(6), 'outline').path as Chain).vertices.length,
  )
  expect(contour.shape).toBe('chain')

  function outside(line: Contour, radius: number): PathsD {
    return inflatePathsD(pathsOf(line), radius, JoinType.Round, EndType.Joined, 2, 6, 0.0002)
  }
})

test('the narrowest web is told with both sides of it', () => {
  const part = plate(cut(circle({ x: 20, y: 25 }, 10), 'One'), cut(circle({ x: 43, y: 25 }, 10), 'Other'))
  expect(narrowestWeb(part)).toMatchObject({ width: expect.closeTo(3, 9), of: ['One', 'Other'] })
  expect(narrowestWeb(plate(cut(circle({ x: 12, y: 25 }, 10), 'One')))).toMatchObject({
    width: expect.closeTo(2, 9),
    of: ['One'],
  })
  expect(narrowestWeb(plate())).toBeNull()
})
