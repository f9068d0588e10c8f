/** Random designs: any the schema allows, and near ones: a sample or a design made to break a rule, with a few fields drawn anew. */
import { readdirSync, readFileSync } from 'node:fs'
import fc from 'fast-check'
import {
  check,
  checkDesign,
  type Design,
  fieldsOf,
  KINDS,
  RULES,
  sections,
  solve,
} from '../../geometry/index.ts'
import { CASES } from '../geometry/checks/breaking/cases.ts'
import { ENGINE_LAWS, numbersIn } from '../laws/engine-laws.ts'
import { EXPORT_LAWS, wrongByEzdxf } from '../laws/export-laws.ts'
import { MIRRORED, mirrorsTheOther, WHAT_A_MIRROR_DOES, WHAT_MUST_NOT_MATTER } from '../laws/symmetry-laws.ts'
import { arbitraryDesign, arbitraryField } from '../support/arbitraries.ts'
import { designOf } from '../support/designs.ts'
import { drawn, type Trial } from './trial.ts'

/** Designs that somebody thought of: every rule is broken by one of them. */
function known(): readonly Design[] {
  const folder = new URL('../../sample-boxes/', import.meta.url)
  const samples = readdirSync(folder).filter((name) => name.endsWith('.lidwright.json'))
  return [
    ...samples.map((name) => designOf(JSON.parse(readFileSync(new URL(name, folder), 'utf8')))),
    ...Object.values(CASES).flatMap((one) => one.breaks.map((broken) => designOf(broken.design))),
  ]
}

let remembered: readonly Design[] | undefined
export const knownDesigns = (): readonly Design[] => {
  remembered ??= known()
  return remembered
}

/** Fields that are drawn anew: all of plain sections whose values stand alone. */
const FIELDS = sections()
  .filter((section) => !['wiring', 'limits', 'tolerances', 'stringing', 'record'].includes(section))
  .flatMap((section) =>
    fieldsOf(section)
      .filter(({ unit }) =>
        ['mm', 'degrees', 'share', 'count', 'yes or no', 'one of', 'fret list'].includes(unit),
      )
      .map((field) => ({ section, field })),
  )

const changedField = fc.constantFrom(...FIELDS).chain(({ section, field }) =>
  arbitraryField(field, ['gone'], 'wild').map((value) => ({
    path: [section, ...field.name.split('.')],
    value,
  })),
)

/** A known design with up to three fields drawn anew; a draw that gives no legal design leaves it as it was. */
const nearKnown = fc.tuple(fc.nat(), fc.array(changedField, { maxLength: 3 })).map(([which, changes]) => {
  const all = knownDesigns()
  const copy = structuredClone(all[which % all.length]) as unknown as Record<string, unknown>
  for (const { path, value } of changes) {
    const holder = path
      .slice(0, -1)
      .reduce<Record<string, unknown> | undefined>(
        (here, key) => here?.[key] as Record<string, unknown> | undefined,
        copy,
      )
    if (holder) holder[path.at(-1) ?? ''] = value
  }
  const reading = checkDesign(copy)
  return reading.ok ? reading.design : (all[which % all.length] as Design)
})

/** Two of three seeds draw from the whole schema. */
export const designOfSeed = (seed: number): Design =>
  structuredClone(drawn(seed % 3 === 0 ? nearKnown : arbitraryDesign, seed))

const text = (design: Design) => JSON.stringify(design)
const read = (kept: string): Design => designOf(JSON.parse(kept))

const ruleName = (name: string) => `rule ${name}`
const kindName = (name: string) => `kind ${name}`

export const designsTrial: Trial<Design> = {
  name: 'designs',
  draw: designOfSeed,
  laws: [
    { name: 'all numbers of layout, parts and findings are finite', wrong: (one) => numbersIn(one).unsound },
    ...ENGINE_LAWS,
    ...WHAT_MUST_NOT_MATTER.map((law) => ({ ...law, name: `it does not matter: ${law.name}` })),
    ...WHAT_A_MIRROR_DOES.map((law) => ({ ...law, name: `a mirror ${law.name}`, every: 5 })),
    {
      name: 'a left-handed build is the mirror image',
      every: 5,
      wrong: (one) => MIRRORED.flatMap(([id, axis]) => mirrorsTheOther(id, axis)(one)),
    },
  ],
  reached: (design) => [
    ...design.things.map(({ kind }) => kindName(kind)),
    ...new Set(check(solve(design)).map(({ rule }) => ruleName(rule))),
  ],
  mustReach: [...Object.keys(KINDS).map(kindName), ...RULES.map(({ name }) => ruleName(name))],
  text,
  read,
}

export const exportsTrial: Trial<Design> = {
  name: 'exports',
  draw: designOfSeed,
  laws: EXPORT_LAWS,
  reached: (design) => [design.cutting.process, ...design.things.map(({ kind }) => kindName(kind))],
  mustReach: ['by hand', 'laser', 'router', ...Object.keys(KINDS).map(kindName)],
  text,
  read,
}

/** Designs read at once: starting Python costs more than a file. */
const BATCH = 6

export const ezdxfTrial: Trial<readonly Design[]> = {
  name: 'ezdxf',
  draw: (seed) => Array.from({ length: BATCH }, (_, index) => designOfSeed(seed * BATCH + index)),
  laws: [
    {
      name: 'DXF of both releases passes the audit of ezdxf and is true to a micrometre',
      wrong: wrongByEzdxf,
    },
  ],
  reached: (designs) => designs.map(({ cutting }) => cutting.process),
  mustReach: ['by hand', 'laser', 'router'],
  text: (designs) => JSON.stringify(designs),
  read: (kept) => (JSON.parse(kept) as Design[]).map((one) => designOf(one)),
}
