import { describe, expect, test } from 'vitest'
import {
  bareTerminal,
  CIRCUITS,
  check,
  cornerHertz,
  decibels,
  inParallel,
  loadedShare,
  PARTS,
  presetWiring,
  solve,
  terminalsOf,
  wiringOf,
} from '../../../geometry/index.ts'
import { circuitOf, heardAt, settingsOf } from '../../../geometry/wiring/circuit.ts'
import { share } from '../../../geometry/wiring/nodal.ts'
import { designOf, type Stated } from '../../support/designs.ts'

const preset = (name: (typeof CIRCUITS)[number], more: Stated = {}) => {
  const bare = designOf()
  return designOf({ wiring: { ...presetWiring(name, bare), ...more } })
}

describe('formulas', () => {
  // T. R. Kuphaldt, "Lessons in Electric Circuits", vol. II, ch. 8: f = 1 / (2 π R C); the pairs are those of the trade.
  test.each([
    [250e3, 22e-9, 28.9373],
    [500e3, 22e-9, 14.4686],
    [500e3, 47e-9, 6.77255],
    [1e6, 470e-12, 338.628],
    [4700, 47e-9, 720.484],
  ])('%f Ω and %f F turn at %f Hz', (ohms, farads, hertz) => {
    expect(cornerHertz(ohms, farads) / hertz).toBeCloseTo(1, 4)
  })

  // The same, vol. I, ch. 6: a divider; 3.0103 dB is half the power.
  test('a divider, resistances side by side, decibels', () => {
    expect(loadedShare(8e3, 250e3)).toBeCloseTo(0.968992, 6)
    expect(inParallel(1000, 2000)).toBeCloseTo(666.6667, 3)
    expect(decibels(Math.SQRT1_2)).toBeCloseTo(-3.0103, 4)
  })

  test.each([0, -1, Number.NaN])('a resistance of %f is misuse', (ohms) => {
    expect(() => cornerHertz(ohms, 1e-9)).toThrow(String(ohms))
    expect(() => inParallel(ohms)).toThrow(String(ohms))
  })
})

describe('circuits solved node by node', () => {
  // "Potentiometer", theory of operation (encyclopaedia): 10 V, R1 = 1 kΩ, R2 = 2 kΩ, load 100 kΩ gives 6.623 V.
  test('a loaded divider gives the 6.623 V of the textbook', () => {
    const behind = { ohms: 1000, from: 1, to: 0 }
    const passives = [
      { ohms: 2000, from: 1, to: 0 },
      { ohms: 100_000, from: 1, to: 0 },
    ]
    expect(10 * share(2, passives, { behind }, 1, 1000)).toBeCloseTo(6.623, 3)
  })

  // A first-order low-pass, any text on circuits: at a tenth of the corner, at it, at ten times it.
  test.each([
    [0.1, -0.04321],
    [1, -3.0103],
    [10, -20.04321],
  ])('a low-pass at %f of its corner is down by %f dB', (ratio, down) => {
    const behind = { ohms: 4700, from: 1, to: 0 }
    const level = share(
      2,
      [{ farads: 47e-9, from: 1, to: 0 }],
      { behind },
      1,
      ratio * cornerHertz(4700, 47e-9),
    )
    expect(decibels(level)).toBeCloseTo(down, 4)
  })

  // Linear 500 kΩ pot into 1 MΩ at a quarter, a half and three quarters: the loaded divider of the same text.
  test.each([
    [0.25, 0.228571],
    [0.5, 0.444444],
    [0.75, 0.685714],
  ])('a volume pot turned to %f leaves %f', (turned, left) => {
    const design = preset('coil and volume')
    const wiring = {
      ...design.wiring,
      components: design.wiring.components.map((one) =>
        one.part === 'pot'
          ? { ...one, kilohms: 500 }
          : one.part === 'coil pickup'
            ? { ...one, kilohms: 0.001 }
            : one,
      ),
    }
    const circuit = circuitOf(wiring)
    const [coil] = wiring.components
    if (!coil) throw new Error('there is no coil')
    const setting = { pots: new Map([['volume', turned]]), switches: new Map() }
    expect(heardAt(circuit, coil, setting, 440)).toBeCloseTo(left, 4)
  })

  // A piezo of 20 nF into 1 MΩ turns at 7.958 Hz, the same RC.
  test('the bass corner of a piezo is that of its capacitance and what it feeds', () => {
    const bare = presetWiring('piezo straight to the jack', designOf())
    const components = bare.components.map((one) =>
      one.part === 'piezo pickup' ? { ...one, nanofarads: 20 } : one,
    )
    const facts = wiringOf(solve(designOf({ wiring: { ...bare, components, inputKilohms: 1000 } })))
    expect(facts?.pickups[0]?.bassCorner).toBeCloseTo(7.95775, 3)
  })

  test('a tone pot turned down takes half the power at the corner reckoned for it', () => {
    const facts = wiringOf(solve(preset('coil, volume and tone')))
    const [tone] = facts?.tones ?? []
    const [pickup] = facts?.pickups ?? []
    if (!facts || !tone?.down || !pickup) throw new Error('there is no tone control')
    const setting = {
      pots: new Map([
        ['volume', 1],
        ['tone', 0],
      ]),
      switches: new Map(),
    }
    const deep = heardAt(facts.circuit, pickup.component, setting, 0.01)
    const there = heardAt(facts.circuit, pickup.component, setting, tone.down)
    // Wiper and track end touch with an ohm, and the volume pot lies beside: the formula leaves the ohm out.
    expect(decibels(there / deep)).toBeCloseTo(-3.0103, 1)
    // Pot and capacitor alone, as the trade quotes it: 250 kΩ and 47 nF.
    expect(tone.own).toBeCloseTo(cornerHertz(250e3, 47e-9), 9)
  })
})

describe('the usual circuits', () => {
  test.each(CIRCUITS)('%s: every pickup heard, all metal grounded, nothing shorted, no knob idle', (name) => {
    const layout = solve(preset(name))
    const facts = wiringOf(layout)
    expect(facts?.ungrounded).toEqual([])
    expect(facts?.idleKnobs).toEqual([])
    expect(facts?.jackShorted).toBe(false)
    for (const pickup of facts?.pickups ?? []) expect(pickup.most).toBeGreaterThan(0.9)
    const wrong = check(layout).filter((one) => one.rule.startsWith('wiring-') && one.grade !== 'clear')
    expect(wrong).toEqual([])
  })

  test('turned down, the volume is silent; each way of the switch hears its own pickup', () => {
    const circuit = circuitOf(preset('two coils, switch, volume and tone').wiring)
    const [neck, saddle] = circuit.wiring.components
    if (!neck || !saddle) throw new Error('two coils are wanted')
    const at = (pots: number, position: number) => ({
      pots: new Map([
        ['volume', pots],
        ['tone', 1],
      ]),
      switches: new Map([['switch', position]]),
    })
    expect(heardAt(circuit, neck, at(0, 0), 440)).toBeLessThan(1e-4)
    expect(heardAt(circuit, neck, at(1, 0), 440)).toBeGreaterThan(0.9)
    expect(heardAt(circuit, saddle, at(1, 0), 440)).toBeLessThan(1e-4)
    expect(heardAt(circuit, saddle, at(1, 2), 440)).toBeGreaterThan(0.9)
    // Both coils, equal and side by side: each is loaded by the other and gives half.
    expect(heardAt(circuit, neck, at(1, 1), 440)).toBeCloseTo(0.5, 1)
  })

  test('components take the things that are there, each once', () => {
    const things = [
      { kind: 'pickup', id: 'ears', along: { ofScale: 0.1 }, across: 0 },
      { kind: 'pickup', id: 'more', along: { ofScale: 0.2 }, across: 0 },
    ]
    const { components } = presetWiring('two coils, switch, volume and tone', designOf({ things }))
    expect(components.filter(({ part }) => part === 'coil pickup').map(({ thing }) => thing)).toEqual([
      'ears',
      'more',
    ])
  })
})

describe('bounds', () => {
  test('every sort of component has terminals, and its bare one among them', () => {
    for (const part of PARTS)
      for (const bare of [true, false]) {
        const one = { part, bare, ways: 'two ways' } as const
        const terminals = terminalsOf(one)
        expect(new Set(terminals).size).toBe(terminals.length)
        const metal = bareTerminal(one)
        if (metal !== null) expect(terminals).toContain(metal)
      }
  })

  test('many pots and switches do not make the walk through their settings long', () => {
    const many = Array.from({ length: 20 }, (_, index) => ({ id: `p${index}`, part: 'pot' }))
    const switches = Array.from({ length: 19 }, (_, index) => ({ id: `s${index}`, part: 'switch' }))
    const design = designOf({ wiring: { components: [...many, ...switches, { id: 'jack', part: 'jack' }] } })
    expect(settingsOf(circuitOf(design.wiring)).length).toBeLessThan(1100)
  })
})
