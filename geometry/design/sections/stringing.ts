/** How the instrument is strung: pitches, what the strings are made of, and the drawer they are chosen from. */
import { z } from 'zod'
import { bodyOf, type StringMake } from '../../strings/body.ts'
import { MATERIALS, type MaterialName } from '../../strings/materials.ts'
import { readPitch } from '../../strings/pitch.ts'
import { length, measure, meta, oneOf } from '../fields.ts'

const named = (is: (name: MaterialName) => boolean) =>
  (Object.keys(MATERIALS) as MaterialName[]).filter(is) as [MaterialName, ...MaterialName[]]

/** What a plain string or a core can be of, and what can be wound on one. */
export const CORES = named((name) => MATERIALS[name].strength !== null)
export const WRAPS = named((name) => MATERIALS[name].strength === null)

/** Hertz. What lies outside is no pitch of a stringed instrument, whatever A4 is. */
const LOWEST = 16
const HIGHEST = 5000
const LONGEST_PITCH = 40

const pitch = z.string().check((context) => {
  const text = context.value
  const say = (message: string, whole = false): void => {
    context.issues.push({ code: 'custom', input: text, message, params: { whole } })
  }
  if (text.length > LONGEST_PITCH) return say('is too long for a pitch; write one such as G2')
  const reading = readPitch(text)
  if (!reading.ok) return say(reading.sentence, true)
  if (reading.hertz < LOWEST || reading.hertz > HIGHEST)
    say(`lies outside what a string plays; from ${LOWEST} to ${HIGHEST} Hz is taken`)
})

/** Grams per metre: more is a slip of the pen, or a chain. */
const HEAVIEST = 500

const makeFields = {
  construction: oneOf(['plain', 'wound', 'stated'], 'plain', {
    label: 'Made',
    help: 'A plain wire or line; a core with one winding; or a string whose mass you know or have weighed.',
  }),
  material: oneOf(CORES, 'music wire', {
    label: 'Material',
    help: 'Of a plain string, or of the core that bears the pull.',
  }),
  wrap: oneOf(WRAPS, 'nickel-plated steel', {
    label: 'Wound with',
    help: 'What the winding is made of.',
    when: { construction: ['wound'] },
  }),
  core: length(0, 0, 5, {
    label: 'Core',
    help: 'Diameter of the core, measured at the bared end; across the flats of a hexagonal one. 0, or less than 0.05, takes the usual share.',
    when: { construction: ['wound', 'stated'] },
  }),
  coreShape: oneOf(['round', 'hexagonal'], 'round', {
    label: 'Core is',
    help: 'Round, or drawn with six flats that grip the winding.',
    when: { construction: ['wound'] },
  }),
  unitMass: measure('g/m', 0, 0, HEAVIEST, {
    label: 'Mass of a metre',
    help: 'In grams, where the maker states it; 0 where a piece was weighed instead.',
    when: { construction: ['stated'] },
  }),
  weighedLength: length(0, 0, 5000, {
    label: 'Length weighed',
    help: 'A piece without ends and ball, laid straight.',
    when: { construction: ['stated'] },
  }),
  weighedMass: measure('g', 0, 0, 500, {
    label: 'Its mass',
    help: 'What that piece weighs, in grams. Coil up several metres where the scale is coarse.',
    when: { construction: ['stated'] },
  }),
}

const make = z.strictObject(makeFields)
export type Make = z.output<typeof make>

const stocked = z
  .strictObject({
    gauge: length(0.4, 0.1, 5, { label: 'Gauge', help: 'Diameter of the whole string.' }),
    ...makeFields,
  })
  .check((context) => {
    const { gauge, ...row } = context.value
    const made = makeOf(row, gauge)
    const say = (path: string, input: unknown, message: string): void => {
      context.issues.push({ code: 'custom', path: [path], input, message })
    }
    if (!made)
      say('unitMass', row.unitMass, 'is no mass; state that of a metre, or a length weighed and its mass')
    else if (!bodyOf(made).ok)
      say('core', row.core, 'is as thick as the string; a thinner core or a thicker gauge is wanted')
  })
export type Stocked = z.output<typeof stocked>

/** A core or a mass under these is a slip of the pen: no wire is drawn so fine, no string so light. */
const FINEST_CORE = 0.05
const LIGHTEST = 1e-3

/** Kilograms per millimetre in one gram per metre. */
const GRAM_PER_METRE = 1e-6

/**
 * A row of the file as a make of this gauge; `null` for one whose mass is to be stated and is not. Lengths in mm.
 * Example: `makeOf(row, 0.66).construction`.
 */
export function makeOf(row: Make, diameter: number): StringMake | null {
  const material = MATERIALS[row.material]
  const core = row.core >= FINEST_CORE ? { core: row.core } : {}
  switch (row.construction) {
    case 'plain':
      return { construction: 'plain', diameter, material }
    case 'wound':
      return {
        construction: 'wound',
        diameter,
        material,
        wrap: MATERIALS[row.wrap],
        coreShape: row.coreShape,
        ...core,
      }
    case 'stated': {
      const weighed = row.weighedLength > 0 ? (row.weighedMass * 1000) / row.weighedLength : 0
      const grams = row.unitMass > 0 ? row.unitMass : weighed
      if (!(grams >= LIGHTEST && grams <= HEAVIEST)) return null
      return { construction: 'stated', diameter, material, unitMass: grams * GRAM_PER_METRE, ...core }
    }
  }
}

export const stringing = z
  .strictObject({
    tuning: z
      .array(pitch)
      .max(12)
      .default([])
      .meta(
        meta('pitches, a list', {
          label: 'Tuning',
          help: 'Pitches from the bass string to the treble, as notes or hertz. Nothing is reckoned of pull, neck and lid until it is stated.',
        }),
      ),
    a4: measure('hertz', 440, 390, 470, { label: 'A4', help: 'Frequency that the notes are counted from.' }),
    makes: z
      .array(make)
      .max(12)
      .default([])
      .meta(
        meta('list of makes', {
          label: 'Strings made of',
          help: 'From the bass string to the treble; the last stands for any that are missing. Left empty: plain music wire up to 0.56 mm, above that music wire wound with nickel-plated steel (common practice).',
        }),
      ),
    wantedPull: measure('newtons', 70, 10, 300, {
      label: 'Pull wanted',
      help: 'For each string, when gauges are chosen: 60 to 80 N is common for steel, 35 to 60 N for nylon.',
    }),
    stock: z
      .array(stocked)
      .max(200)
      .default([])
      .meta(
        meta('list of strings', {
          label: 'Strings to choose from',
          help: 'Your own drawer. Left empty: the plain and wound steel strings that are usually sold singly.',
        }),
      ),
  })
  .prefault({})
