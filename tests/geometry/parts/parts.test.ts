import { describe, expect, test } from 'vitest'
import { bounds, type Contour, type Operation, type Part, partsOf, solve } from '../../../geometry/index.ts'
import { RUN_OUT } from '../../../geometry/parts/operations.ts'
import { ringArea, stepsAlong } from '../../support/contours.ts'
import { designOf, type Stated } from '../../support/designs.ts'
import { forEveryDesign, PATIENCE } from '../../support/every-design.ts'

const partsFor = (stated: Stated = {}) => partsOf(solve(designOf(stated)))
function part(id: string, stated: Stated = {}): Part {
  const found = partsFor(stated).find((one) => one.id === id)
  if (!found) throw new Error(`there is no part ${id}`)
  return found
}
const of = <K extends Operation['kind']>({ operations }: Part, kind: K, name?: string) =>
  operations.filter(
    (one): one is Extract<Operation, { kind: K }> => one.kind === kind && (!name || one.of === name),
  )
const ids = (stated: Stated) => partsFor(stated).map((one) => one.id)
const box = (contour: Contour) => {
  const { minX, minY, maxX, maxY } = bounds(contour)
  return [minX, minY, maxX, maxY]
}
const near = (list: readonly number[]) => list.map((one) => expect.closeTo(one, 9))

const FACE_PARTS = ['lid', 'base', 'neck-end-wall', 'tail-end-wall', 'bass-wall', 'treble-wall']

describe('the parts', () => {
  test('are the faces, the neck twice, the board and the drilling strip', () => {
    expect(ids({})).toEqual([...FACE_PARTS, 'neck-top', 'neck-side', 'board', 'tail-strip'])
  })

  test('have no board where none is fitted, and a block where the neck ends on one', () => {
    expect(ids({ board: { fitted: false } })).not.toContain('board')
    expect(ids({ neck: { ends: 'at a block' } })).toContain('neck-block')
    // 55 - 4 - 19 of height; a neck down to the base leaves no room for one.
    expect(part('neck-block', { neck: { ends: 'at a block' } })).toMatchObject({ thickness: 32 })
    expect(ids({ neck: { ends: 'at a block', thickness: 60 } })).not.toContain('neck-block')
  })

  test('are the same list when asked again', () => {
    const layout = solve(designOf())
    expect(partsOf(layout)).toBe(partsOf(layout))
  })

  test('each say their title, face, hand and head', () => {
    for (const hand of ['left', 'right', 'not stated'] as const)
      for (const one of partsFor({ hand, neck: { ends: 'at a block' } })) {
        expect(one).toMatchObject({ hand, mirrored: false })
        for (const words of [one.title, one.seen, one.headEnd]) expect(words).not.toBe('')
        expect(one.id).toMatch(/^[a-z-]+$/)
      }
  })
})

describe('the lid', () => {
  const lid = part('lid', { saddle: { place: 170, length: 60 }, strings: { count: 3 } })

  test('has the saddle line where it was stated, as long as the saddle', () => {
    const [mark] = of(lid, 'mark', 'Saddle line')
    expect(mark && box(mark.contour)).toEqual([170, -30, 170, 30])
  })

  test('has the lines of walls, neck and centre to measure from', () => {
    expect(of(lid, 'datum', 'Inside of the walls').map((one) => box(one.line))).toEqual([[6, -84, 234, 84]])
    expect(of(lid, 'datum', 'Neck under the lid').map((one) => box(one.line))).toEqual([
      [0, -19, 240, -19],
      [0, 19, 240, 19],
    ])
    expect(of(lid, 'datum', 'Centreline').map((one) => box(one.line))).toEqual([[0, 0, 240, 0]])
  })

  test('has each string but the one on the centreline, up to the saddle', () => {
    const strings = lid.operations.filter((one) => one.of.startsWith('String '))
    expect(strings.map((one) => one.of)).toEqual(['String 3', 'String 1'])
    // From 465 of 635 mm, 12 + 465 / 635, to 13 at the saddle.
    const [bass] = strings
    expect(bass?.kind === 'datum' && box(bass.line)).toEqual(near([0, -13, 170, -12 - 465 / 635]))
  })

  test('has the string holes where the strings are held by it', () => {
    const holes = of(
      part('lid', { tailpiece: { at: 'the lid', fromEdge: 20, span: 26 } }),
      'drill',
      'String hole',
    )
    expect(holes.map(({ centre }) => [centre.x, centre.y])).toEqual(
      [
        [220, -13],
        [220, 0],
        [220, 13],
      ].map(near),
    )
    expect(holes.map((one) => [one.diameter, one.depth])).toEqual([
      [2.4, 'through'],
      [2.4, 'through'],
      [2.4, 'through'],
    ])
    expect(of(lid, 'drill')).toEqual([])
  })

  test('names what is cut by the name its builder gave it, else by its kind', () => {
    const things = [
      { kind: 'sound-hole', id: 'a', along: 60, across: 60, rimWidth: 4 },
      { kind: 'sound-hole', id: 'b', name: 'Port', along: 60, across: -60 },
    ]
    const cuts = part('lid', { things }).operations.filter(
      (one) => one.kind === 'cut' || one.kind === 'recess',
    )
    expect(cuts.map(({ kind, of: name }) => [kind, name])).toEqual([
      ['cut', 'Sound hole'],
      ['recess', 'Sound hole'],
      ['cut', 'Port'],
    ])
  })
})

describe('the end walls', () => {
  test('have the neck slot open at the lid side, run out beyond the edge', () => {
    for (const id of ['neck-end-wall', 'tail-end-wall']) {
      const [slot, ...more] = of(part(id), 'cut', 'Neck slot')
      expect(more).toEqual([])
      expect(slot && box(slot.contour)).toEqual(near([-19.2, -15, 19.2, RUN_OUT]))
    }
  })

  test('have none at the tail where the neck ends inside', () => {
    expect(of(part('tail-end-wall', { neck: { ends: 'at a block' } }), 'cut')).toEqual([])
  })

  test('are sawn right through by a neck deeper than they are', () => {
    const [slot] = of(part('neck-end-wall', { neck: { thickness: 60 } }), 'cut')
    expect(slot && box(slot.contour)).toEqual(near([-19.2, -47 - RUN_OUT, 19.2, RUN_OUT]))
  })

  test('have the string holes down from the lid-side edge where the tail-end wall holds the strings', () => {
    const holes = of(part('tail-end-wall', { tailpiece: { at: 'the tail-end wall', fromEdge: 20 } }), 'drill')
    expect(holes.map(({ centre }) => [centre.x, centre.y])).toEqual([
      [-13, -20],
      [0, -20],
      [13, -20],
    ])
    expect(of(part('neck-end-wall', { tailpiece: { at: 'the tail-end wall' } }), 'drill')).toEqual([])
  })
})

describe('the neck', () => {
  test('has its cuts into the top as recesses that run out beyond the sides, the deeper the farther', () => {
    const { box: at } = solve(designOf())
    const cuts = of(part('neck-top'), 'recess')
    expect(cuts.map(({ of: name, depth }) => [name, depth])).toEqual([
      ['Notch', 4],
      ['Relief', 7],
    ])
    const [notch, relief] = cuts.map((one) => box(one.contour))
    expect(notch).toEqual(near([at.x0, -20, at.x1, 20]))
    expect(relief).toEqual(near([at.x0 + 16, -20.5, at.x1 - 16, 20.5]))
  })

  test('leaves out a cut that lies in a deeper one, and makes one of two that are alike', () => {
    const pickup = (id: string) => ({ kind: 'pickup', id, along: 100, across: 0, depth: 9 })
    const names = (things: Stated[], neck: Stated = {}) =>
      of(part('neck-top', { things, neck }), 'recess').map((one) => one.of)
    expect(names([pickup('a'), pickup('b')])).toEqual(['Notch', 'Relief', 'Pickup relief'])
    expect(names([pickup('a')], { relief: 6 })).toEqual(['Notch', 'Relief'])
  })

  test('has the string holes in its tail, where they are drilled and where there is a tail', () => {
    const { box: at } = solve(designOf())
    const holes = of(part('neck-top'), 'drill', 'String hole')
    expect(holes.map(({ centre }) => [centre.x, centre.y])).toEqual(
      [-13, 0, 13].map((y) => near([at.x1 + 14, y])),
    )
    expect(of(part('neck-top', { tailpiece: { at: 'the lid' } }), 'drill', 'String hole')).toEqual([])
    expect(of(part('neck-top', { neck: { ends: 'at a block' } }), 'drill', 'String hole')).toEqual([])
  })

  test('is as wide as head, nut and blank', () => {
    const { outline } = part('neck-top', {
      neck: { width: 50, widthAtNut: 40 },
      headstock: { width: 60, length: 120 },
    })
    const at = solve(designOf()).box
    expect(box(outline)).toEqual(near([-120, -30, at.x1 + 38, 30]))
    expect(box(part('neck-top').outline)).toEqual(near([-150, -19, at.x1 + 38, 19]))
    // A straight neck with a head of its own width is a rectangle.
    expect(part('neck-top').outline).toMatchObject({ vertices: { length: 4 } })
  })

  test('has the frets itself where no board is fitted', () => {
    expect(of(part('neck-top'), 'slot')).toEqual([])
    const slots = of(part('neck-top', { board: { fitted: false } }), 'slot')
    expect(slots).toHaveLength(18)
    expect(slots[11]).toMatchObject({
      from: { x: 317.5, y: -19 },
      to: { x: 317.5, y: 19 },
      width: 0.6,
      depth: 2,
    })
  })

  test('from the side shows every step of its top', () => {
    const stretches = solve(designOf()).neck.stretches
    const { outline, thickness, seen } = part('neck-side')
    expect(thickness).toBe(38)
    expect(seen).toBe('from the bass side')
    expect(box(outline).slice(1, 2)).toEqual([-19])
    // A side view encloses what its stretches do; the slope of the head is half a step more.
    const flat = stretches.reduce((sum, one) => sum + (one.x1 - one.x0) * (one.top - one.bottom), 0)
    expect(ringArea(stepsAlong(outline))).toBeCloseTo(flat + (20 * 5) / 2, 6)
  })

  test('cut right through stays an outline that does not touch itself', () => {
    const { outline } = part('neck-side', { box: { lid: { thickness: 19 } } })
    const heights = outline.shape === 'chain' ? outline.vertices.map((one) => one.y) : []
    expect(heights.filter((one) => one > -19 && one < -18.9).length).toBeGreaterThan(0)
  })

  test('has lines where the box meets it, on top and at the side', () => {
    const faces = [
      'Box, neck-end face',
      'Inside of the neck-end wall',
      'Inside of the tail-end wall',
      'Box, tail-end face',
    ]
    for (const id of ['neck-top', 'neck-side']) {
      const names = of(part(id), 'datum').map((one) => one.of)
      expect(names.filter((name) => name !== 'Centreline')).toEqual(faces)
      const ending = of(part(id, { neck: { ends: 'at a block' } }), 'datum').map((one) => one.of)
      expect(ending.filter((name) => name !== 'Centreline')).toEqual(faces.slice(0, 2))
    }
  })
})

describe('the board', () => {
  test('has a saw line with its number for every fret on it', () => {
    const board = part('board', {
      scale: { frets: { by: 'equal', count: 24 } },
      board: { ends: 'at a length', length: 440 },
    })
    expect(of(board, 'slot').map((one) => one.of)).toEqual(
      Array.from({ length: 20 }, (_, n) => `Fret ${n + 1}`),
    )
    expect(of(board, 'note').map((one) => one.text)).toEqual(Array.from({ length: 20 }, (_, n) => `${n + 1}`))
    expect(box(board.outline)).toEqual([0, -19, 440, 19])
  })

  test('is marked and not sawn where it is fretless', () => {
    const board = part('board', { scale: { fretless: true } })
    expect(of(board, 'slot')).toEqual([])
    expect(of(board, 'mark')).toHaveLength(18)
  })

  test('follows the taper of the neck, and so do its frets', () => {
    const board = part('board', { neck: { width: 50, widthAtNut: 40 } })
    const { box: at } = solve(designOf())
    const half = (x: number) => 20 + (5 * x) / at.x0
    const octave = of(board, 'slot')[11]
    expect(octave?.to.y).toBeCloseTo(half(317.5), 9)
    expect(box(board.outline)).toEqual(
      near([
        0,
        -half(board.outline.shape === 'chain' ? bounds(board.outline).maxX : 0),
        635 * (1 - 2 ** -1.5) + 12,
        half(635 * (1 - 2 ** -1.5) + 12),
      ]),
    )
  })

  test('begins a little before a zero fret, which is sawn like the others', () => {
    const board = part('board', { scale: { start: 'zero fret' } })
    expect(of(board, 'slot')[0]).toMatchObject({ of: 'Zero fret', from: { x: 0 } })
    expect(bounds(board.outline).minX).toBeLessThan(0)
  })

  test('shorter than a hair is none', () => {
    expect(ids({ scale: { frets: { by: 'equal', count: 0 } }, board: { beyond: 0 } })).not.toContain('board')
    expect(ids({ scale: { frets: { by: 'equal', count: 0 } }, board: { beyond: 1e-7 } })).not.toContain(
      'board',
    )
  })
})

describe('the drilling strip', () => {
  test('names under each hole the counts of strings it serves', () => {
    const strip = part('tail-strip', { strings: { count: 4 }, tailpiece: { holes: 5, span: 40 } })
    const centres = of(strip, 'drill').map((one) => one.centre.x)
    expect(centres).toEqual([-20, -10, 0, 10, 20])
    const counts = centres.map((x) =>
      of(strip, 'note')
        .filter((one) => Math.abs(one.at.x - x) < 3)
        .map((one) => one.text)
        .sort(),
    )
    // Four leave out the middle hole, three take every second, two the outer ones.
    expect(counts).toEqual([['2', '3', '4'], ['4'], ['3'], ['4'], ['2', '3', '4']])
  })

  test('is as wide as the neck where it lies on its tail', () => {
    const { outline } = part('tail-strip', { neck: { width: 44 } })
    expect([bounds(outline).minX, bounds(outline).maxX, bounds(outline).maxY]).toEqual([-22, 22, 0])
  })
})

describe('for every design', { timeout: PATIENCE }, () => {
  test('no line of a cut lies along the outline, where a laser would burn it twice', () => {
    forEveryDesign((design) =>
      partsOf(solve(design)).flatMap((one) => {
        const edges = sidesOf(one.outline)
        const cuts = one.operations.flatMap((each) =>
          each.kind === 'cut' || each.kind === 'recess' ? [each] : [],
        )
        return cuts.flatMap((cut) =>
          // A hole that a builder sets square on the edge is his own doing, and a stop.
          cut.of === 'Neck slot' &&
          sidesOf(cut.contour).some((line) => edges.some((edge) => onOneLine(line, edge)))
            ? [`${one.id}: ${cut.of}`]
            : [],
        )
      }),
    )
  })

  test('every part has the same operations for both hands', () => {
    forEveryDesign((design) => {
      const [right, left] = (['right', 'left'] as const).map((hand) => partsOf(solve({ ...design, hand })))
      const names = (parts: readonly Part[] | undefined) =>
        parts?.map((one) => [one.id, ...one.operations.map((each) => `${each.kind} ${each.of}`)])
      return JSON.stringify(names(right)) === JSON.stringify(names(left)) ? [] : ['another list']
    })
  })
})

type Side = readonly [from: { x: number; y: number }, to: { x: number; y: number }]

function sidesOf(contour: Contour): Side[] {
  if (contour.shape === 'circle') return []
  return contour.vertices.flatMap((vertex, index): Side[] => {
    const next = contour.vertices[(index + 1) % contour.vertices.length]
    return next && vertex.bulge === 0 ? [[vertex, next]] : []
  })
}

/** Do two straight sides run along one line and share a stretch of it? */
function onOneLine([a, b]: Side, [c, d]: Side): boolean {
  const long = Math.hypot(b.x - a.x, b.y - a.y)
  const off = (p: Side[0]) => ((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x)) / long
  if (Math.abs(off(c)) > 1e-6 || Math.abs(off(d)) > 1e-6) return false
  const along = (p: Side[0]) => ((p.x - a.x) * (b.x - a.x) + (p.y - a.y) * (b.y - a.y)) / long
  return Math.min(long, Math.max(along(c), along(d))) - Math.max(0, Math.min(along(c), along(d))) > 1e-3
}
