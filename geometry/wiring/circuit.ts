/** The wiring as a net: which terminals are one, what is grounded, what is heard at the jack. */

import type { Design } from '../design/schema.ts'
import type { Component } from '../design/sections/wiring.ts'
import { notes } from '../quantity/notes.ts'
import { type Passive, share } from './nodal.ts'
import { bareTerminal, terminalsOf } from './terminals.ts'

type Wiring = Design['wiring']

export interface Circuit {
  readonly wiring: Wiring
  /** The jack, or `null`; of several the first. */
  readonly jack: Component | null
  /** The number of the node a terminal belongs to; terminals joined by wires have one number. */
  nodeOf(component: Component, terminal: string): number
  readonly nodes: number
}

const known = notes<Wiring, Circuit>()

/** The circuit of a design's wiring. Remembered with it. Wires to nowhere are refused when a file is read. */
export function circuitOf(wiring: Wiring): Circuit {
  const before = known.get(wiring)
  if (before) return before
  const names = wiring.components.flatMap((one) =>
    terminalsOf(one).map((terminal) => `${one.id}.${terminal}`),
  )
  const parent = names.map((_, index) => index)
  const rootOf = (index: number): number => {
    let at = index
    while (parent[at] !== at) at = parent[at] ?? at
    return at
  }
  const place = new Map(names.map((name, index) => [name, index]))
  for (const { from, to } of wiring.wires) {
    const [a, b] = [place.get(from), place.get(to)]
    if (a !== undefined && b !== undefined) parent[rootOf(a)] = rootOf(b)
  }
  const jack = wiring.components.find((one) => one.part === 'jack') ?? null
  const numbers = new Map<number, number>()
  // The sleeve is node 0: everything is measured from it.
  const sleeve = jack ? place.get(`${jack.id}.sleeve`) : undefined
  if (sleeve !== undefined) numbers.set(rootOf(sleeve), 0)
  names.forEach((_, index) => {
    const root = rootOf(index)
    if (!numbers.has(root)) numbers.set(root, sleeve === undefined ? numbers.size + 1 : numbers.size)
  })
  const circuit: Circuit = {
    wiring,
    jack,
    nodeOf: (component, terminal) =>
      numbers.get(rootOf(place.get(`${component.id}.${terminal}`) ?? -1)) ?? -1,
    nodes: numbers.size + (sleeve === undefined ? 1 : 0),
  }
  known.set(wiring, circuit)
  return circuit
}

/** Node of the sleeve: what everything of metal must reach. */
export const GROUND = 0

/** Does the metal of a component reach the sleeve by wires alone? `null` for one that has none. */
export function isGrounded(circuit: Circuit, component: Component): boolean | null {
  const terminal = bareTerminal(component)
  return terminal === null ? null : circuit.nodeOf(component, terminal) === GROUND
}

export const isPickup = ({ part }: Component): boolean => part === 'coil pickup' || part === 'piezo pickup'

/** Where every knob and switch stands. */
export interface Setting {
  /** Of each pot by its id: 1 is turned fully clockwise, wiper at lug 3. */
  readonly pots: ReadonlyMap<string, number>
  /** Of each switch by its id: which of its positions. */
  readonly switches: ReadonlyMap<string, number>
}

/** Ohms of a wiper at the end of its track, and of a closed contact: small, and never nought. */
const CONTACT = 1

const POSITIONS = {
  'on and off': ['on', 'off'],
  'two ways': ['a', 'b'],
  'two ways and both': ['a', 'both', 'b'],
} as const

/** The positions of a switch by name. */
export const positionsOf = ({ ways }: Component): readonly string[] => POSITIONS[ways]

/**
 * How much of a pickup's voltage reaches the jack, 0 to 1, with the amplifier on it. Coils count by the resistance of
 * their wire alone: their inductance, which shapes the treble, is left out.
 */
export function heardAt(circuit: Circuit, pickup: Component, setting: Setting, hertz: number): number {
  const { jack, wiring, nodes } = circuit
  if (!jack) return 0
  const tip = circuit.nodeOf(jack, 'tip')
  const passives: Passive[] = [{ ohms: wiring.inputKilohms * 1e3, from: tip, to: GROUND }]
  for (const one of wiring.components) if (one !== pickup) passives.push(...passivesOf(circuit, one, setting))
  const [behind] = passivesOf(circuit, pickup, setting)
  return behind ? share(nodes, passives, { behind }, tip, hertz) : 0
}

function passivesOf(circuit: Circuit, one: Component, { pots, switches }: Setting): Passive[] {
  const at = (terminal: string) => circuit.nodeOf(one, terminal)
  const ohms = one.kilohms * 1e3
  const farads = one.nanofarads * 1e-9
  switch (one.part) {
    case 'coil pickup':
      return [{ ohms, from: at('hot'), to: at('ground') }]
    case 'piezo pickup':
      return [{ farads, from: at('hot'), to: at('ground') }]
    case 'resistor':
      return [{ ohms, from: at('a'), to: at('b') }]
    case 'capacitor':
      return [{ farads, from: at('a'), to: at('b') }]
    case 'pot': {
      const turned = pots.get(one.id) ?? 1
      return [
        { ohms: Math.max(CONTACT, ohms * turned), from: at('1'), to: at('2') },
        { ohms: Math.max(CONTACT, ohms * (1 - turned)), from: at('2'), to: at('3') },
      ]
    }
    case 'switch': {
      const position = positionsOf(one)[switches.get(one.id) ?? 0]
      const closed = (terminal: 'a' | 'b'): Passive => ({
        ohms: CONTACT,
        from: at('common'),
        to: at(terminal),
      })
      if (position === 'on' || position === 'a') return [closed('a')]
      if (position === 'both') return [closed('a'), closed('b')]
      return position === 'b' ? [closed('b')] : []
    }
    default:
      return []
  }
}

/** More settings than these are not walked through: beyond them knobs are only all up or all down. */
const MOST_SETTINGS = 512

/** Every setting in which each knob stands at one of its ends, all up first. */
export function settingsOf({ wiring }: Circuit): readonly Setting[] {
  const pots = wiring.components.filter((one) => one.part === 'pot').map(({ id }) => id)
  const switches = wiring.components.filter((one) => one.part === 'switch')
  const walk = 2 ** pots.length * switches.reduce((product, one) => product * positionsOf(one).length, 1)
  const turns: ReadonlyMap<string, number>[] =
    walk > MOST_SETTINGS
      ? [new Map(pots.map((id) => [id, 1])), new Map(pots.map((id) => [id, 0]))]
      : Array.from(
          { length: 2 ** pots.length },
          (_, bits) => new Map(pots.map((id, index) => [id, (bits >> index) & 1 ? 0 : 1])),
        )
  let places: ReadonlyMap<string, number>[] = [new Map()]
  for (const one of switches) {
    if (places.length * positionsOf(one).length > MOST_SETTINGS) break
    places = places.flatMap((before) =>
      positionsOf(one).map((_, position) => new Map([...before, [one.id, position]])),
    )
  }
  return places.flatMap((place) => turns.map((turn) => ({ pots: turn, switches: place })))
}
