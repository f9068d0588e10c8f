/** What follows from the wiring of a design: what is grounded, shorted and heard, corners, and lengths of wire. */

import type { Design } from '../design/schema.ts'
import type { Component } from '../design/sections/wiring.ts'
import { loadsOf } from '../loads/loads.ts'
import { remembered } from '../loads/remembered.ts'
import { notes } from '../quantity/notes.ts'
import type { Layout } from '../solve/layout.ts'
import {
  type Circuit,
  circuitOf,
  GROUND,
  heardAt,
  isGrounded,
  isPickup,
  positionsOf,
  type Setting,
  settingsOf,
} from './circuit.ts'
import { cornerHertz, inParallel } from './formulas.ts'
import { type Run, runsOf } from './runs.ts'

/** What the pickup gives, at the jack. */
export interface PickupAtJack {
  readonly component: Component
  /** Its hot and its ground joined by wires. */
  readonly shorted: boolean
  /** The most of it that is heard at any setting, 0 to 1, at the lowest open string. */
  readonly most: number
  readonly setting: Setting
  /** Where a piezo's bass gives way, knobs set for most: half the power is left. `null` for a coil. */
  readonly bassCorner: number | null
}

/** A capacitor that a pot lets more or less of the treble through. */
export interface ToneControl {
  readonly pot: Component
  readonly capacitor: Component
  /** `1 / (2 π R C)` of pot and capacitor alone. */
  readonly own: number
  /** The same with what the pickups and other pots are worth in place of the pot: turned fully down, treble above this goes. */
  readonly down: number | null
}

/** A position of the switches in which nothing is heard. */
export interface Silence {
  readonly switchId: string
  readonly position: string
}

export interface WiringFacts {
  readonly circuit: Circuit
  /** Components whose metal does not reach the sleeve. */
  readonly ungrounded: readonly Component[]
  /** The tip joined to the sleeve by wires. */
  readonly jackShorted: boolean
  readonly pickups: readonly PickupAtJack[]
  /** Knobs that change nothing wherever they stand. */
  readonly idleKnobs: readonly Component[]
  readonly tones: readonly ToneControl[]
  readonly silences: readonly Silence[]
  readonly runs: readonly Run[]
}

/** The note that levels are taken at where no tuning is stated: E2 of a guitar, 82.4 Hz. */
const USUAL_LOWEST = 82.4069

/** High enough that a tone control tells. Hertz. */
const TREBLE = 5000

/** Two levels nearer than this sound alike: a twentieth. */
const ALIKE = 0.05

/** Facts of a layout's wiring; `null` where nothing is wired. Reckoned when asked for, remembered. */
export const wiringOf = remembered((layout: Layout): WiringFacts | null => {
  const { wiring } = layout.design
  if (wiring.components.length === 0) return null
  const circuit = circuitOf(wiring)
  const lowest = lowestOf(layout)
  const electric = factsOf(circuit, lowest)
  return { ...electric, runs: runsOf(layout) }
})

function lowestOf(layout: Layout): number {
  const pitches = loadsOf(layout).strings.flatMap((one) => (one.atPitch ? [one.atPitch.pitch.hertz] : []))
  return pitches.length > 0 ? Math.min(...pitches) : USUAL_LOWEST
}

const found = notes<Design['wiring'], { lowest: number; facts: Omit<WiringFacts, 'runs'> }>()

/** What hangs on the net alone: while a hole is dragged about, none of it changes. */
function factsOf(circuit: Circuit, lowest: number): Omit<WiringFacts, 'runs'> {
  const before = found.get(circuit.wiring)
  if (before && before.lowest === lowest) return before.facts
  const { components } = circuit.wiring
  const settings = settingsOf(circuit)
  const pickups = components.filter(isPickup)
  const facts = {
    circuit,
    ungrounded: components.filter((one) => isGrounded(circuit, one) === false),
    jackShorted: circuit.jack !== null && circuit.nodeOf(circuit.jack, 'tip') === GROUND,
    pickups: pickups.map((one) => atJack(circuit, one, settings, lowest)),
    idleKnobs: components.filter(
      (one) => one.part === 'pot' && isIdle(circuit, one, pickups, settings, lowest),
    ),
    tones: tonesOf(circuit),
    silences: silencesOf(circuit, pickups, settings, lowest),
  }
  found.set(circuit.wiring, { lowest, facts })
  return facts
}

function atJack(
  circuit: Circuit,
  component: Component,
  settings: readonly Setting[],
  lowest: number,
): PickupAtJack {
  let most = 0
  let best: Setting = settings[0] ?? { pots: new Map(), switches: new Map() }
  for (const setting of settings) {
    const level = heardAt(circuit, component, setting, lowest)
    if (level > most * (1 + 1e-9)) [most, best] = [level, setting]
  }
  return {
    component,
    shorted: circuit.nodeOf(component, 'hot') === circuit.nodeOf(component, 'ground'),
    most,
    setting: best,
    bassCorner: component.part === 'piezo pickup' && most > 0 ? bassCornerOf(circuit, component, best) : null,
  }
}

/** Where a piezo is down to 0.707 of what it gives to the treble, by halving; the level rises with frequency. */
function bassCornerOf(circuit: Circuit, component: Component, setting: Setting): number {
  const full = heardAt(circuit, component, setting, 20_000)
  let [low, high] = [0.01, 20_000]
  for (let step = 0; step < 60; step++) {
    const middle = Math.sqrt(low * high)
    if (heardAt(circuit, component, setting, middle) < full * Math.SQRT1_2) low = middle
    else high = middle
  }
  return Math.sqrt(low * high)
}

function isIdle(
  circuit: Circuit,
  pot: Component,
  pickups: readonly Component[],
  settings: readonly Setting[],
  lowest: number,
): boolean {
  return pickups.every((pickup) =>
    settings
      .filter((setting) => setting.pots.get(pot.id) === 1)
      .every((up) => {
        const down = { ...up, pots: new Map([...up.pots, [pot.id, 0]]) }
        return [lowest, TREBLE].every(
          (hertz) =>
            Math.abs(heardAt(circuit, pickup, up, hertz) - heardAt(circuit, pickup, down, hertz)) < ALIKE,
        )
      }),
  )
}

function tonesOf(circuit: Circuit): ToneControl[] {
  const { components } = circuit.wiring
  return components.flatMap((capacitor) => {
    if (capacitor.part !== 'capacitor') return []
    const ends = [circuit.nodeOf(capacitor, 'a'), circuit.nodeOf(capacitor, 'b')].filter(
      (node) => node !== GROUND,
    )
    const pot = components.find(
      (one) => one.part === 'pot' && ['1', '2', '3'].some((lug) => ends.includes(circuit.nodeOf(one, lug))),
    )
    if (!pot) return []
    const farads = capacitor.nanofarads * 1e-9
    const coils = components.filter((one) => one.part === 'coil pickup')
    const others = components.filter((one) => one.part === 'pot' && one !== pot)
    const sources = [...coils, ...others].map((one) => one.kilohms * 1e3)
    return [
      {
        pot,
        capacitor,
        own: cornerHertz(pot.kilohms * 1e3, farads),
        down:
          coils.length > 0
            ? cornerHertz(inParallel(...sources, circuit.wiring.inputKilohms * 1e3), farads)
            : null,
      },
    ]
  })
}

/** Under this nothing is heard: a hundredth, 40 dB down. */
export const SILENT = 0.01

function silencesOf(
  circuit: Circuit,
  pickups: readonly Component[],
  settings: readonly Setting[],
  lowest: number,
): Silence[] {
  return circuit.wiring.components.flatMap((one) => {
    if (one.part !== 'switch') return []
    return positionsOf(one).flatMap((position, index) => {
      const here = settings.filter((setting) => setting.switches.get(one.id) === index)
      const heard = here.some((setting) =>
        pickups.some((pickup) => heardAt(circuit, pickup, setting, lowest) > SILENT),
      )
      return heard || here.length === 0 ? [] : [{ switchId: one.id, position }]
    })
  })
}
