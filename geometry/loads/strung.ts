/** From what the file says of the strings to bodies and pitches, string by string, bass first. */

import type { Design } from '../design/schema.ts'
import type { Make } from '../design/sections/stringing.ts'
import { makeOf } from '../design/sections/stringing.ts'
import { bodyOf, type StringBody } from '../strings/body.ts'
import { nameOf, nearestKey, readPitch } from '../strings/pitch.ts'

export interface StatedPitch {
  readonly hertz: number
  /** Semitone number with its fraction. */
  readonly midi: number
  /** The key nearest to it, and how far it lies above that in cents. */
  readonly name: string
  readonly cents: number
}

/** Why a string cannot be reckoned with. */
export type StringTrouble = 'no room for a winding' | 'no mass stated'

export type Strung =
  | { readonly make: Make; readonly body: StringBody; readonly trouble: null }
  | { readonly make: Make; readonly body: null; readonly trouble: StringTrouble }

/** Plain wire up to here, wound above: thicker plain ones are too stiff to be in tune. Common practice, from memory. */
const THICKEST_PLAIN = 0.56

const USUAL: Omit<Make, 'construction'> = {
  material: 'music wire',
  wrap: 'nickel-plated steel',
  core: 0,
  coreShape: 'round',
  unitMass: 0,
  weighedLength: 0,
  weighedMass: 0,
}

/** How a string is made where the file does not say: plain up to 0.56 mm, wound above. Gauge in mm. */
export const usualMake = (gauge: number): Make => ({
  construction: gauge > THICKEST_PLAIN ? 'wound' : 'plain',
  ...USUAL,
})

/** The string in force, bass string 0: of its own make, the last one stated, or the usual one for its gauge. */
export function strungFor({ makes }: Design['stringing'], index: number, gauge: number): Strung {
  const make = makes[index] ?? makes.at(-1)
  if (make) return strung(make, gauge)
  let usual = usuallyStrung.get(gauge)
  if (!usual) {
    usual = strung(usualMake(gauge), gauge)
    if (usuallyStrung.size >= MOST_REMEMBERED) usuallyStrung.clear()
    usuallyStrung.set(gauge, usual)
  }
  return usual
}

const usuallyStrung = new Map<number, Strung>()
/** More gauges or pitches than this are not remembered: a file may hold any. */
const MOST_REMEMBERED = 500

/** A make of this gauge as a string to reckon with, or why there is none. Gauge in mm. */
export function strung(make: Make, gauge: number): Strung {
  const made = makeOf(make, gauge)
  if (!made) return { make, body: null, trouble: 'no mass stated' }
  const reading = bodyOf(made)
  return reading.ok
    ? { make, body: reading.body, trouble: null }
    : { make, body: null, trouble: 'no room for a winding' }
}

/**
 * The pitches in force, one for each string; `null` where the tuning does not name one for every string.
 * Example: `pitchesOf(design)?.[0].name` is `G2`.
 */
export function pitchesOf({ stringing, strings }: Design): readonly StatedPitch[] | null {
  const { tuning, a4 } = stringing
  if (tuning.length < strings.count) return null
  const pitches: StatedPitch[] = []
  for (const text of tuning.slice(0, strings.count)) {
    const pitch = pitchOf(text, a4)
    if (!pitch) return null
    pitches.push(pitch)
  }
  return pitches
}

const read = new Map<string, StatedPitch | null>()

function pitchOf(text: string, a4: number): StatedPitch | null {
  const key = `${a4} ${text}`
  const before = read.get(key)
  if (before !== undefined) return before
  const reading = readPitch(text, a4)
  let pitch: StatedPitch | null = null
  if (reading.ok) {
    const { midi, cents } = nearestKey(reading.hertz, a4)
    pitch = { hertz: reading.hertz, midi: reading.midi, name: nameOf(midi), cents }
  }
  if (read.size >= MOST_REMEMBERED) read.clear()
  read.set(key, pitch)
  return pitch
}
