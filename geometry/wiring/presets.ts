/**
 * The trade's usual circuits, to begin with and then to change. Grounds meet at the case of the volume pot, from where one
 * wire leads to the jack; lugs are counted with the shaft towards you, lugs down. Common practice, no source.
 */
import type { Design, Thing } from '../design/schema.ts'
import type { Component, Wire } from '../design/sections/wiring.ts'
import { terminalsOf } from './terminals.ts'

export const CIRCUITS = [
  'coil straight to the jack',
  'coil and volume',
  'coil, volume and tone',
  'two coils, switch, volume and tone',
  'piezo straight to the jack',
  'piezo and volume',
] as const
export type CircuitName = (typeof CIRCUITS)[number]

type Wiring = Design['wiring']

interface Sketch {
  readonly coils: number
  readonly piezo: boolean
  readonly volume: boolean
  readonly tone: boolean
}

const SKETCHES: Readonly<Record<CircuitName, Sketch>> = {
  'coil straight to the jack': { coils: 1, piezo: false, volume: false, tone: false },
  'coil and volume': { coils: 1, piezo: false, volume: true, tone: false },
  'coil, volume and tone': { coils: 1, piezo: false, volume: true, tone: true },
  'two coils, switch, volume and tone': { coils: 2, piezo: false, volume: true, tone: true },
  'piezo straight to the jack': { coils: 0, piezo: true, volume: false, tone: false },
  'piezo and volume': { coils: 0, piezo: true, volume: true, tone: false },
}

/** What a component has where nothing else is said. */
const PLAIN: Omit<Component, 'id' | 'part'> = {
  name: '',
  thing: '',
  kilohms: 500,
  nanofarads: 22,
  ways: 'two ways',
  bare: true,
}

/**
 * A usual circuit as the `wiring` of a design, its components set at the things that are there already: pickups, pots,
 * switch and jack in the order of the file. Slack and amplifier stay as they are.
 * Example: `presetWiring('coil and volume', design)` has a coil, a pot, a jack and the strings.
 */
export function presetWiring(
  name: CircuitName,
  { things, wiring }: Pick<Design, 'things' | 'wiring'>,
): Wiring {
  const { coils, piezo, volume, tone } = SKETCHES[name]
  const components: Component[] = []
  const free = [...things]
  const add = (id: string, part: Component['part'], more: Partial<Component> = {}) => {
    const thing = takeFor(free, part)
    components.push({ ...PLAIN, id, part, thing: thing?.id ?? '', ...more })
  }
  const ids = coils === 2 ? ['neck-coil', 'saddle-coil'] : coils === 1 ? ['coil'] : []
  for (const id of ids)
    add(id, 'coil pickup', {
      kilohms: 8,
      bare: false,
      name: id === 'coil' ? 'Pickup' : `${id === 'neck-coil' ? 'Neck' : 'Saddle'} pickup`,
    })
  if (piezo) add('piezo', 'piezo pickup', { nanofarads: 16, name: 'Piezo' })
  if (coils === 2) add('switch', 'switch', { ways: 'two ways and both', name: 'Switch' })
  if (volume) add('volume', 'pot', { kilohms: piezo ? 1000 : 250, name: 'Volume' })
  if (tone) {
    add('tone', 'pot', { kilohms: 250, name: 'Tone' })
    add('cap', 'capacitor', { nanofarads: 47, name: 'Tone capacitor' })
  }
  add('jack', 'jack', { name: 'Jack' })
  add('strings', 'metal part', { name: 'Strings' })
  const pickups = piezo ? ['piezo'] : ids
  const star = volume ? 'volume.case' : 'jack.sleeve'
  const into = coils === 2 ? 'switch.common' : `${pickups[0]}.hot`
  const wires: Wire[] = []
  const join = (from: string, to: string, colour: string) => wires.push({ from, to, colour })
  if (coils === 2) {
    join('neck-coil.hot', 'switch.a', 'white')
    join('saddle-coil.hot', 'switch.b', 'yellow')
    join('switch.frame', star, 'black')
  }
  join(into, volume ? 'volume.3' : 'jack.tip', 'white')
  if (volume) {
    join('volume.2', 'jack.tip', 'red')
    join('volume.1', 'volume.case', 'bare')
  }
  if (tone) {
    join('volume.3', 'tone.2', 'white')
    join('tone.1', 'cap.a', 'bare')
    join('cap.b', 'tone.case', 'bare')
    join('tone.case', star, 'black')
  }
  for (const id of pickups) join(`${id}.ground`, star, 'black')
  join('strings.metal', star, 'green')
  if (volume) join('volume.case', 'jack.sleeve', 'black')
  return { ...wiring, components, wires }
}

/** The first thing left that could be such a component, taken out of the list. */
function takeFor(free: Thing[], part: Component['part']): Thing | undefined {
  const kinds: readonly string[] = {
    'coil pickup': ['pickup'],
    'piezo pickup': ['piezo', 'pickup-disc', 'disc', 'pickup-rod', 'pickup'],
    pot: ['pot'],
    switch: ['switch'],
    jack: ['jack'],
    capacitor: [],
    resistor: [],
    'metal part': ['tailpiece-plate'],
  }[part]
  for (const kind of kinds) {
    const index = free.findIndex((one) => one.kind === kind)
    if (index >= 0) return free.splice(index, 1)[0]
  }
  return undefined
}

/** A component by the name its builder gave it, else by its sort and id. */
export const componentName = ({ name, part, id }: Pick<Component, 'name' | 'part' | 'id'>): string =>
  name || `${part} ${id}`

/** The wiring without one component and without the wires that led to it. */
export const withoutComponent = (wiring: Wiring, id: string): Wiring => ({
  ...wiring,
  components: wiring.components.filter((one) => one.id !== id),
  wires: wiring.wires.filter(({ from, to }) => ![from, to].some((end) => end.startsWith(`${id}.`))),
})

/** Wires that lead to a terminal which is no longer there, as after a change of sort, left out. */
export function withoutLooseWires(wiring: Wiring): Wiring {
  const there = new Set(
    wiring.components.flatMap((one) => terminalsOf(one).map((terminal) => `${one.id}.${terminal}`)),
  )
  return {
    ...wiring,
    wires: wiring.wires.filter(({ from, to }) => there.has(from) && there.has(to) && from !== to),
  }
}
