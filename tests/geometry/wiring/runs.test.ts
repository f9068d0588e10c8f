import { describe, expect, test } from 'vitest'
import { checkDesign, presetWiring, solve, wiringOf, withoutComponent } from '../../../geometry/index.ts'
import { designOf } from '../../support/designs.ts'

const things = [
  { kind: 'pickup', id: 'ears', along: 100, across: -20 },
  { kind: 'screw', id: 'socket', face: 'treble-wall', along: 50, across: 25 },
]

describe('lengths of wire', () => {
  const circuit = presetWiring('coil straight to the jack', designOf({ things }))
  const components = circuit.components.map((one) =>
    one.part === 'jack' ? { ...one, thing: 'socket' } : one,
  )
  const layout = solve(designOf({ things, wiring: { ...circuit, components, slack: 60 } }))
  const runs = wiringOf(layout)?.runs ?? []

  test('run square between the real places, and the slack is added', () => {
    // Pickup at 100 along the lid, 20 to the bass, under a lid of 4. Socket 50 behind the middle of a wall of 240: 170
    // along, at its inside, 90 - 6 to the treble; 25 below the lid-side edge, which lies 4 below the lid's face.
    const [hot] = runs
    expect(hot?.length).toBeCloseTo(70 + 104 + 25 + 60, 6)
  })

  test('strings without a thing are reached where they are held', () => {
    const ground = runs.at(-1)
    expect(ground?.lost).toEqual([])
    expect(ground?.length).toBeGreaterThan(60)
  })

  test('a component that stands nowhere is named, and its wire has no length', () => {
    const [hot] = wiringOf(solve(designOf({ things, wiring: circuit })))?.runs ?? []
    expect(hot).toEqual({ wire: 0, length: null, lost: ['jack'] })
  })

  test('small parts are soldered to what they are wired to', () => {
    const full = presetWiring('coil, volume and tone', designOf({ things }))
    const placed = full.components.map((one) => (one.part === 'pot' ? { ...one, thing: 'ears' } : one))
    const facts = wiringOf(solve(designOf({ things, wiring: { ...full, components: placed } })))
    const cap = full.wires.findIndex(({ from }) => from === 'tone.1')
    expect(facts?.runs[cap]?.length).toBe(full.slack)
  })
})

describe('bad input', () => {
  const read = (wiring: unknown) => {
    const reading = checkDesign({ format: 'lidwright', version: 1, wiring })
    return reading.ok ? [] : reading.faults.map(({ path, sentence }) => `${path}: ${sentence}`)
  }
  const jack = { id: 'jack', part: 'jack' }

  test.each([
    [[jack], [{ from: 'jack.tip', to: 'amp.in' }], 'no component is called so'],
    [[jack], [{ from: 'jack.tip', to: 'jack.ring' }], 'jack has tip, sleeve'],
    [[jack], [{ from: 'jack.tip', to: 'jack.tip' }], 'begins and ends at one terminal'],
    [[jack], [{ from: 'jack', to: 'jack.tip' }], 'is no terminal'],
    [[jack, jack], [], 'already that of another component'],
    [[{ id: 'x', part: 'valve' }], [], 'wanted is'],
    [[{ ...jack, kilohms: 0 }], [], 'at least 0.001'],
    [Array.from({ length: 41 }, (_, index) => ({ id: `m${index}`, part: 'metal part' })), [], 'at most 40'],
  ])('%j with %j is told', (components, wires, words) => {
    expect(read({ components, wires }).join('\n')).toContain(words)
  })

  test('a component taken out takes its wires along', () => {
    const full = presetWiring('coil, volume and tone', designOf())
    const less = withoutComponent(full, 'tone')
    expect(read(less)).toEqual([])
    expect(less.wires.some(({ from, to }) => from.startsWith('tone.') || to.startsWith('tone.'))).toBe(false)
  })
})
