// @vitest-environment jsdom
import { describe, expect, test } from 'vitest'
import { wireTable, wiringDiagram, wiringSvg } from '../../../exporters/index.ts'
import { lay } from '../../../exporters/wiring/lanes.ts'
import { bounds, CIRCUITS, presetWiring, solve, terminalsOf } from '../../../geometry/index.ts'
import { designOf } from '../../support/designs.ts'
import { readSvg } from '../../support/readSvg.ts'

const layoutOf = (name: (typeof CIRCUITS)[number]) =>
  solve(designOf({ wiring: presetWiring(name, designOf()) }))

const drawn = (name: (typeof CIRCUITS)[number]) => {
  const diagram = wiringDiagram(layoutOf(name))
  if (!diagram) throw new Error('nothing is drawn')
  return diagram
}

/** Straight pieces of a wire as drawn, upright or level. */
function pieces(vertices: readonly { x: number; y: number }[]) {
  return vertices.slice(1).map((to, index) => ({ from: vertices[index] ?? to, to }))
}

describe.each(CIRCUITS)('%s', (name) => {
  const { picture, wires } = drawn(name)

  test('draws every wire once, and everything within the paper of a page', () => {
    expect(wires).toHaveLength(layoutOf(name).design.wiring.wires.length)
    expect(picture.width).toBeLessThanOrEqual(176 + 1e-9)
    for (const shape of picture.shapes) {
      if (shape.kind !== 'line' && shape.kind !== 'area') continue
      const { minX, maxX, minY, maxY } = bounds(shape.contour)
      expect(Math.min(minX, minY)).toBeGreaterThanOrEqual(0)
      expect(maxX).toBeLessThanOrEqual(picture.width)
      expect(maxY).toBeLessThanOrEqual(picture.height)
    }
  })

  test('no two wires lie on each other: where they run alike there is paper between them', () => {
    const runs = wires.flatMap(({ path, index }) => pieces(path.vertices).map((one) => ({ ...one, index })))
    for (const a of runs)
      for (const b of runs) {
        if (a.index >= b.index) continue
        for (const [along, across] of [
          ['x', 'y'],
          ['y', 'x'],
        ] as const) {
          if (a.from[across] !== a.to[across] || b.from[across] !== b.to[across]) continue
          const overlap =
            Math.min(Math.max(a.from[along], a.to[along]), Math.max(b.from[along], b.to[along])) -
            Math.max(Math.min(a.from[along], a.to[along]), Math.min(b.from[along], b.to[along]))
          if (overlap > 1e-6) expect(Math.abs(a.from[across] - b.from[across])).toBeGreaterThan(0.5)
        }
      }
  })

  test('names every component, pin and colour', () => {
    const words = picture.shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []))
    const { components, wires: stated } = layoutOf(name).design.wiring
    for (const one of components) expect(words).toContain(one.name)
    const pins = components.reduce((sum, one) => sum + terminalsOf(one).length, 0)
    expect(words.length).toBeGreaterThanOrEqual(components.length + pins + stated.length)
    for (const { colour } of stated) expect(words).toContain(colour)
  })

  test('is an SVG that a reader takes, and the same one each time', () => {
    const text = wiringSvg(layoutOf(name)) ?? ''
    expect(readSvg(text).width).toBeCloseTo(picture.width, 2)
    expect(wiringSvg(layoutOf(name))).toBe(text)
  })
})

describe('wires and lanes', () => {
  test('two that do not meet share a lane, two that do have one each, ground lies below', () => {
    const wire = (from: number, to: number, ground = false) => ({ from, to, room: 2, ground })
    const laid = lay([wire(0, 10), wire(20, 30), wire(5, 25), wire(0, 4, true)])
    expect(laid.map(({ lane }) => lane)).toEqual([0, 0, 1, 2])
  })

  test('the table says which leads where and how long, a dash where an end stands nowhere', () => {
    const table = wireTable(layoutOf('coil straight to the jack'))
    expect(table.rows[0]).toEqual(['Pickup, hot', 'Jack, tip', 'white', null])
    expect(table.rows.at(-1)?.[0]).toBe('Strings, metal')
  })

  test('a colour or a name cannot become markup', () => {
    const plain = presetWiring('coil straight to the jack', designOf())
    const wires = plain.wires.map((one) => ({ ...one, colour: '<b>&"red' }))
    const text = wiringSvg(solve(designOf({ wiring: { ...plain, wires } }))) ?? ''
    expect(text).not.toContain('<b>')
    expect(text).toContain('&lt;b&gt;&amp;&quot;red')
  })

  test('nothing wired, nothing drawn', () => {
    expect(wiringDiagram(solve(designOf()))).toBeNull()
    expect(wiringSvg(solve(designOf()))).toBeNull()
  })

  test('forty components still make one picture', () => {
    const components = Array.from({ length: 40 }, (_, index) => ({ id: `p${index}`, part: 'pot' }))
    const diagram = wiringDiagram(solve(designOf({ wiring: { components } })))
    expect(diagram?.picture.width).toBeCloseTo(176, 6)
  })
})
