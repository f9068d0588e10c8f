import { describe, expect, test } from 'vitest'
import {
  FACES,
  measuredFrom,
  partsOf,
  type ScheduleRow,
  scheduleOf,
  scheduleWords,
  solve,
  WORKS,
} from '../../../geometry/index.ts'
import { designOf, type Stated } from '../../support/designs.ts'
import { samples } from '../../support/samples.ts'

const SAMPLES = samples()

const rows = (stated: Stated = {}) => scheduleOf(solve(designOf(stated)))
const on = (part: string, all: readonly ScheduleRow[]) => all.filter((row) => row.part === part)

const BOX = { box: { length: 240, width: 180, depth: 55 } }

describe('where a hole is measured from', () => {
  test('on the lid from its neck-end edge and the centreline', () => {
    const hole = { kind: 'sound-hole', id: 'a', along: 60, across: -45, shape: 'round', diameter: 25 }
    const [row] = on('lid', rows({ ...BOX, things: [hole] }))
    expect(row).toMatchObject({ work: 'bore', diameter: 25, through: true, depth: 4 })
    expect(row?.edge).toEqual({ from: 'neck-end edge', distance: 60, towards: '' })
    expect(row?.line).toEqual({ from: 'centreline', distance: 45, towards: 'bass' })
  })

  test('a left-handed build measures alike: bass stays bass', () => {
    const things = [{ kind: 'sound-hole', id: 'a', along: 60, across: -45, shape: 'round', diameter: 25 }]
    const strip = (list: readonly ScheduleRow[]) => list.map(({ seen, ...row }) => row)
    expect(strip(rows({ ...BOX, hand: 'left', things }))).toEqual(
      strip(rows({ ...BOX, hand: 'right', things })),
    )
  })

  test('on a side wall from its lid-side edge and its neck-end edge, on an end wall from its centreline', () => {
    const screw = (id: string, face: string) => ({ kind: 'screw', id, face, along: 30, across: 15, head: 0 })
    const all = rows({ ...BOX, things: [screw('a', 'treble-wall'), screw('b', 'tail-end-wall')] })
    const [side] = on('treble-wall', all)
    expect(side?.edge).toEqual({ from: 'lid-side edge', distance: 15, towards: '' })
    // 30 mm behind the middle of a wall 240 long.
    expect(side?.line).toEqual({ from: 'neck-end edge', distance: expect.closeTo(150, 6), towards: '' })
    const end = on('tail-end-wall', all).find((row) => row.of === 'Screw')
    expect(end?.edge.distance).toBeCloseTo(15, 6)
    expect(end?.line).toEqual({ from: 'centreline', distance: expect.closeTo(30, 6), towards: 'treble' })
  })

  test('on the neck from the nut, posts towards the head', () => {
    const neck = on(
      'neck-top',
      rows({ headstock: { firstPost: 45, postSpacing: 32, bassTuners: 2, trebleTuners: 1 } }),
    )
    const posts = neck.filter((row) => row.of === 'Tuner post')
    expect(posts.map((row) => [row.edge.distance, row.edge.towards])).toEqual([
      [77, 'head'],
      [45, 'head'],
      [45, 'head'],
    ])
  })

  test('every part says once where the tape is hooked', () => {
    for (const sample of SAMPLES) {
      const all = scheduleOf(solve(sample.design))
      for (const part of new Set(all.map((row) => row.part)))
        expect(new Set(on(part, all).map(measuredFrom)).size, `${sample.name} ${part}`).toBe(1)
    }
  })
})

describe('what is in the list', () => {
  test.each(SAMPLES)(
    '$name: as many rows as there are drills, cuts and recesses on its parts',
    ({ design }) => {
      const layout = solve(design)
      const worked = new Set<string>([
        ...FACES.flatMap((face) => [face, `${face}-inside`]),
        ...['neck-top', 'headstock', 'neck-block'].flatMap((id) => [id, `${id}-inside`]),
        ...['board', 'neck-side-inside', 'neck-block-end'],
      ])
      const counted = partsOf(layout)
        .filter((part) => worked.has(part.id))
        .flatMap((part) => part.operations)
        .filter(({ kind }) => kind === 'drill' || kind === 'cut' || kind === 'recess').length
      const all = scheduleOf(layout)
      expect(all.filter((row) => row.work !== 'saw slots')).toHaveLength(counted)
      expect(all.map((row) => row.order)).toEqual(all.map((_, index) => index + 1))
    },
  )

  test('string holes are in it once, though the drilling strip shows them again', () => {
    const holes = rows({ tailpiece: { holes: 5 } }).filter((row) => row.of === 'String hole')
    expect(holes).toHaveLength(5)
  })

  test('a rim comes before the hole in it, a countersink after its own', () => {
    const rim = { kind: 'sound-hole', id: 'a', along: 60, across: 40, shape: 'round', diameter: 25 }
    const all = on(
      'lid',
      rows({
        ...BOX,
        things: [
          { ...rim, rimDepth: 1.5, rimWidth: 5 },
          { kind: 'screw', id: 's', along: 5, across: 80 },
        ],
      }),
    )
    expect(all.map((row) => row.work)).toEqual(['recess', 'drill', 'countersink', 'bore'])
    expect(all[0]).toMatchObject({ diameter: 35, depth: 1.5, through: false })
    expect(all[0]?.choice?.drill).toMatchObject({ size: '35', tool: 'flat bit' })
    expect(all[2]?.choice).toBeNull()
  })

  test('on each part work goes in the one order, and the small holes of a row from the edge on', () => {
    for (const { design, name } of SAMPLES) {
      const all = scheduleOf(solve(design))
      for (const part of new Set(all.map((row) => row.part))) {
        const order = on(part, all).map((row) => WORKS.indexOf(row.work))
        expect(order, `${name} ${part}`).toEqual([...order].sort((a, b) => a - b))
      }
    }
  })

  test('a neck slot is open at the lid-side edge and as deep as it is cut', () => {
    const [slot] = on('neck-end-wall', rows({ ...BOX, neck: { thickness: 20, width: 38, slotPlay: 0.4 } }))
    expect(slot).toMatchObject({ work: 'saw out', open: true, at: 'near side' })
    expect(slot?.edge.distance).toBeCloseTo(0, 9)
    expect(slot?.size?.along).toBeCloseTo(38.4, 9)
  })

  test('two thousand holes are listed at once', () => {
    const things = Array.from({ length: 2000 }, (_, index) => ({
      kind: 'screw',
      id: `s${index}`,
      along: 5 + (index % 200),
      across: -80 + Math.floor(index / 200) * 12,
      head: 0,
    }))
    expect(on('lid', rows({ ...BOX, things }))).toHaveLength(2000)
  })
})

describe('in words', () => {
  const words = (stated: Stated) => {
    const design = designOf(stated)
    return scheduleOf(solve(design)).map((row) => scheduleWords(row, design.units))
  }

  test('an inch rule gives fractions, and the drill from its own set', () => {
    const units = { display: 'inches', fraction: 32 }
    const hole = { kind: 'sound-hole', id: 'a', along: 63.5, across: 50.8, shape: 'round', diameter: 25.4 }
    const said = words({ ...BOX, units, things: [hole] }).find((row) => row.part === 'Lid')
    expect(said).toMatchObject({ edge: '2 1/2', line: '2 treble', size: '⌀ 1', drill: '1 in flat bit' })
    const own = words({ ...BOX, units, drills: 'metric', things: [hole] }).find((row) => row.part === 'Lid')
    expect(own?.drill).toBe('26 mm flat bit, 0.024 over')
  })

  test('a drill that is smaller than wanted says so, and one that none is large enough for as well', () => {
    const units = { display: 'inches', fraction: 32 }
    const tail = words({ units, tailpiece: { diameter: 2.4 } }).find((row) => row.what === 'String hole')
    expect(tail?.drill).toBe('3/32 in, 0.001 UNDER')
    const wide = { kind: 'sound-hole', id: 'a', along: 120, across: 0, shape: 'round', diameter: 118 }
    const said = words({ box: { length: 400, width: 300 }, things: [wide] }).find((row) => row.part === 'Lid')
    expect(said?.drill).toBe('none so large: saw to the line')
  })
})
