import { describe, expect, it } from 'vitest'
import type { Chain, Contour, Vertex } from '../../../geometry/plane/index.ts'
import {
  circle,
  faults,
  line,
  oval,
  rectangle,
  reversed,
  roundedRectangle,
  stadium,
} from '../../../geometry/plane/index.ts'

const origin = { x: 0, y: 0 }

function closed(...vertices: (readonly [x: number, y: number, bulge?: number])[]): Chain {
  return { shape: 'chain', closed: true, vertices: vertices.map(([x, y, bulge = 0]) => ({ x, y, bulge })) }
}

function open(...vertices: (readonly [x: number, y: number, bulge?: number])[]): Chain {
  return { ...closed(...vertices), closed: false }
}

/** A closed wheel of n teeth: a simple chain however many corners. */
function wheel(n: number): Vertex[] {
  return Array.from({ length: n }, (_, i) => {
    const reach = i % 2 === 0 ? 100 : 98
    const angle = (2 * Math.PI * i) / n
    return { x: reach * Math.cos(angle), y: reach * Math.sin(angle), bulge: 0.05 }
  })
}

describe('sound contours have no faults', () => {
  const sound: [string, Contour][] = [
    ['a circle', circle(origin, 5)],
    ['a small circle', circle(origin, 0.5)],
    ['a line', line(origin, { x: 1, y: 0 })],
    ['a rectangle', rectangle(0, 0, 10, 5)],
    ['a rounded rectangle', roundedRectangle({ x: 600, y: -400 }, 100, 50, 5)],
    ['a large rounded rectangle', roundedRectangle({ x: 600, y: -400 }, 3000, 2500, 1000)],
    ['a slot', stadium(origin, 30, 4)],
    ['a slot hardly longer than wide', stadium(origin, 10.00001, 10)],
    ['an oval', oval(origin, 80, 50)],
    ['an oval hardly longer than wide', oval(origin, 80, 79.999)],
    ['a disc of two half circles', closed([-5, 0, 1], [5, 0, 1])],
    ['a half disc', closed([-5, 0, 1], [5, 0])],
    ['a crescent', closed([-5, 0, 1], [5, 0, -0.5])],
    [
      'a cusp of two arcs that touch in their common vertex only',
      closed([0, 0, 1], [10, 0, -0.6], [4, 0, -0.6]),
    ],
    ['a needle', closed([0, 0], [100, 0], [100, 0.001])],
    ['a wheel of 60 corners', { shape: 'chain', closed: true, vertices: wheel(60) }],
    ['a wheel of 1000 corners', { shape: 'chain', closed: true, vertices: wheel(1000) }],
  ]
  it.each(sound)('%s', (_, contour) => {
    expect(faults(contour)).toEqual([])
  })
})

describe('segments that are tangent where they meet', () => {
  it('are no crossing, however flat the arc, although rounding sets their meeting beside the vertex', () => {
    for (let i = 0; i < 3000; i++) {
      const angle = i * 0.37
      const bulge = 10 ** (-7.5 + (i % 60) / 10)
      const joint = { x: 300 + 70 * Math.cos(angle), y: 200 + 70 * Math.sin(angle), bulge }
      // The chord of a tangent arc leaves at half its sweep from the line before it.
      const on = angle + 2 * Math.atan(bulge)
      const end = { x: joint.x + 90 * Math.cos(on), y: joint.y + 90 * Math.sin(on), bulge: 0 }
      const chain: Chain = {
        shape: 'chain',
        closed: false,
        vertices: [{ x: 300, y: 200, bulge: 0 }, joint, end],
      }
      expect(faults(chain)).toEqual([])
    }
  })
})

describe('a segment that comes back to end on the one before it', () => {
  it.each([0.5, -0.7, 2, 1])(
    'with bulge %d touches it, whichever way the pair is turned and run',
    (bulge) => {
      for (let i = 0; i < 200; i++) {
        const at = (along: number, of: number): Vertex => ({
          x: 3 + along * Math.cos(i * 0.31),
          y: -7 + along * Math.sin(i * 0.31),
          bulge: of,
        })
        const there: Chain = { shape: 'chain', closed: false, vertices: [at(0, 0), at(10, bulge), at(5, 0)] }
        const back: Chain = { shape: 'chain', closed: false, vertices: [at(5, bulge), at(10, 0), at(0, 0)] }
        expect(faults(there)).toHaveLength(1)
        expect(faults(back)).toHaveLength(1)
      }
    },
  )
})

describe('each fault is told in a sentence that shows what was read', () => {
  const faulty: [string, Contour, string][] = [
    ['a circle without radius', { shape: 'circle', centre: origin, radius: 0 }, 'is 0 mm'],
    ['a circle of negative radius', { shape: 'circle', centre: origin, radius: -2 }, 'is -2 mm'],
    ['a circle that is nowhere', { shape: 'circle', centre: { x: Number.NaN, y: 0 }, radius: 1 }, '(NaN, 0)'],
    ['no vertices', closed(), 'this one has 0'],
    ['one vertex', open([1, 1]), 'this one has 1'],
    [
      'a coordinate that is not finite',
      closed([0, 0], [Number.POSITIVE_INFINITY, 0], [0, 1]),
      'Vertex 2 is (Infinity, 0)',
    ],
    ['a bulge that is not a number', closed([0, 0], [1, 0, Number.NaN], [0, 1]), 'bulge NaN'],
    [
      'two neighbours in one place',
      closed([0, 0], [5, 0], [5, 1e-9], [0, 5]),
      'Vertices 2 and 3 lie in one place',
    ],
    [
      'the first two in one place',
      closed([0, 0], [0, 1e-9], [5, 0], [0, 5]),
      'Vertices 1 and 2 lie in one place',
    ],
    [
      'an open chain that ends where it began',
      open([0, 0], [5, 0], [0, 5], [0, 0]),
      'Segments 1 and 3 cross or touch at (0, 0)',
    ],
    [
      'a first vertex repeated at the end',
      closed([0, 0], [5, 0], [0, 5], [0, 0]),
      'last vertex (4) repeats the first',
    ],
    ['a bow tie', closed([0, 0], [10, 10], [10, 0], [0, 10]), 'Segments 1 and 3 cross or touch at (5, 5)'],
    [
      'a corner that touches another side',
      closed([0, 0], [10, 0], [10, 10], [5, 0], [0, 10]),
      'Segments 1 and 3',
    ],
    ['a line that doubles back', open([0, 0], [10, 0], [4, 0]), 'Segments 1 and 2 run back along each other'],
    [
      'a long line after a short one, doubled back',
      open([0, 0], [4, 0], [-6, 0]),
      'run back along each other',
    ],
    [
      'an arc that doubles back',
      open([10, 0, Math.SQRT2 - 1], [0, 10, -Math.tan(Math.PI / 16)], [Math.SQRT1_2 * 10, Math.SQRT1_2 * 10]),
      'Segments 1 and 2 run back',
    ],
    [
      'an arc that comes back through its own side',
      closed([0, 0], [10, 0, -2.5], [9, 1], [0, 9]),
      'Segments 1 and 2 cross',
    ],
    [
      'an arc of one side through another',
      closed([0, 0], [20, 0], [20, 10, -3], [18, 10], [0, 10]),
      'cross or touch at',
    ],
    ['a clockwise chain', reversed(rectangle(0, 0, 4, 2)), 'runs clockwise'],
    ['two lines there and back', closed([0, 0], [5, 0]), 'run back along each other'],
    ['an arc there and back', closed([0, 0, 0.5], [5, 0, -0.5]), 'encloses no area'],
  ]
  it.each(faulty)('%s', (_, contour, words) => {
    expect(faults(contour).join(' ')).toContain(words)
  })

  it('all bad vertices are listed, not only the first', () => {
    expect(faults(closed([Number.NaN, 0], [1, 0], [0, Number.NaN]))).toHaveLength(2)
  })
})

describe('many corners', () => {
  it('one crossing among 1000 corners is found and named', () => {
    const vertices = wheel(1000)
    const a = vertices[400] as Vertex
    const b = vertices[402] as Vertex
    vertices[400] = b
    vertices[402] = a
    const [fault] = faults({ shape: 'chain', closed: true, vertices })
    expect(fault).toMatch(/^Segments 4\d\d and 4\d\d /)
  })
})
