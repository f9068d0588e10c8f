/** Every dimension of a design that somebody measured or will measure, and how far it may be off. */
import { graduationOf } from '../box/real-box.ts'
import { DISTANCE_NAMES, DISTANCES, type Distance } from '../box/survey/distances.ts'
import { surveyOf } from '../box/survey/index.ts'
import {
  counts,
  type Field,
  fieldsOf,
  fieldsOfEntry,
  fieldsOfKind,
  labelOf,
  sections,
} from '../design/catalogue.ts'
import { apply, change, type Path, valueAt } from '../design/changes.ts'
import type { Design, Thing } from '../design/schema.ts'

export interface Dimension {
  /** As `tolerances` in the file names it: `box.depth`, `things.hole-treble.along`, `box.survey.bass`. */
  readonly path: string
  /** What a builder calls it, as it stands behind a colon: `box, depth`. */
  readonly label: string
  /** How far it may be off either way, millimetres. */
  readonly tolerance: number
  /** How it comes by that: readings repeated, the rule's half graduation, or stated. */
  readonly by: 'readings' | 'rule' | 'stated'
  /** The design with this dimension longer by so much; never beyond what the field may hold. */
  readonly changed: (by: number) => Design
}

/** Sections whose lengths are limits, wishes or the rule itself, not dimensions. */
const NOT_MEASURED = new Set(['limits', 'rule', 'units', 'stringing', 'balance', 'record', 'cutting'])

/** Wishes among the dimensions, and what is bought to the maker's own measure. */
const WISHES = new Set([
  'saddle.action',
  'saddle.freeBand',
  'scale.slotWidth',
  'scale.slotDepth',
  'scale.crown',
  ...['post', 'bodyLong', 'bodyIn', 'knobWide', 'knobFrom', 'knobLong', 'bushingHole', 'bushingDepth'].map(
    (name) => `headstock.${name}`,
  ),
  ...['screwAlong', 'screwIn', 'screwPilot', 'screwDepth'].map((name) => `headstock.${name}`),
])

let named: readonly (readonly [section: string, field: Field])[] | undefined
const fields = () => {
  named ??= sections()
    .filter((section) => !NOT_MEASURED.has(section))
    .flatMap((section) => fieldsOf(section).map((field) => [section, field] as const))
    .filter(([section, { unit, name }]) => unit === 'mm' && !WISHES.has(`${section}.${name}`))
  return named
}

const ofKinds = new Map<string, readonly Field[]>()
function fieldsOfThing(kind: string): readonly Field[] {
  const known = ofKinds.get(kind)
  if (known) return known
  const made = fieldsOfKind(kind).filter(({ unit }) => unit === 'mm' || unit === 'place')
  ofKinds.set(kind, made)
  return made
}

const ofLists = new Map<string, readonly Field[]>()
function fieldsOfList(list: 'box.inside' | 'artwork'): readonly Field[] {
  const known = ofLists.get(list)
  if (known) return known
  const made = fieldsOfEntry(list).filter(({ unit }) => unit === 'mm')
  ofLists.set(list, made)
  return made
}

/**
 * Sections first, then the things of `among` in their order. A dimension of 0 is left out: flush, or not there, is meant exactly.
 * Places that follow something else have no measure of their own.
 * Example: the first of a box measured once is `box.length`.
 */
export function dimensionsOf(design: Design, among: readonly Thing[] = design.things): Dimension[] {
  const half = graduationOf(design) / 2
  const surveyed = surveyDimensions(design)
  const adjusted = new Set(surveyed.length > 0 ? coveredBy(design) : [])
  const found: Dimension[] = [...surveyed]
  for (const [section, field] of fields()) {
    const path = [section, ...field.name.split('.')]
    if (adjusted.has(path.join('.'))) continue
    if (!counts(valueAt(design, path.slice(0, -1)), field)) continue
    const label = labelOf(section, field.label)
    add(found, design, path, path.join('.'), label, field, half)
  }
  for (const [list, entries] of [
    ['box.inside', design.box.inside],
    ['artwork', design.artwork],
  ] as const)
    entries.forEach((entry, index) => {
      for (const field of fieldsOfList(list)) {
        if (!counts(entry, field)) continue
        const label = `${entry.name ? `“${entry.name}”` : entry.id}, ${field.label.toLowerCase()}`
        const path = [...list.split('.'), index, field.name]
        add(found, design, path, `${list}.${entry.id}.${field.name}`, label, field, half)
      }
    })
  for (const thing of among) {
    const index = design.things.indexOf(thing)
    for (const field of fieldsOfThing(thing.kind)) {
      if (!counts(thing, field)) continue
      const who = thing.name ? `“${thing.name}”` : thing.id
      const label = `${who}, ${field.label.toLowerCase()}`
      add(
        found,
        design,
        ['things', index, field.name],
        `things.${thing.id}.${field.name}`,
        label,
        field,
        half,
      )
    }
  }
  return found.filter((one) => one.tolerance > 0)
}

function add(
  into: Dimension[],
  design: Design,
  path: Path,
  name: string,
  label: string,
  { min = Number.NEGATIVE_INFINITY, max = Number.POSITIVE_INFINITY }: Field,
  half: number,
): void {
  const value = valueAt(design, path)
  if (typeof value !== 'number' || value === 0) return
  const stated = design.tolerances[name]
  into.push({
    path: name,
    label,
    tolerance: stated ?? half,
    by: stated === undefined ? 'rule' : 'stated',
    changed: (by) => apply(design, change(design, [path, Math.min(max, Math.max(min, value + by))])),
  })
}

/** A distance read several times is known better than the rule reads, unless its readings say otherwise. */
function surveyDimensions(design: Design): Dimension[] {
  const { box, tolerances } = design
  const result = box.survey ? surveyOf(box, graduationOf(design)) : null
  if (!result?.ok) return []
  const { sigma, scatter, distances } = result.survey
  return DISTANCES.flatMap((of): Dimension[] => {
    const { readings } = distances[of]
    if (readings === 0) return []
    const path = `box.survey.${of}`
    const stated = tolerances[path]
    return [
      {
        path,
        label: DISTANCE_NAMES[of],
        tolerance: stated ?? (sigma * scatter) / Math.sqrt(readings),
        by: stated !== undefined ? 'stated' : readings > 1 ? 'readings' : 'rule',
        changed: (by) => withReadings(design, of, by),
      },
    ]
  })
}

function withReadings(design: Design, of: Distance, by: number): Design {
  const readings = design.box.survey?.[of] ?? []
  return apply(design, change(design, [['box', 'survey', of], readings.map((one) => Math.max(1, one + by))]))
}

/** What a survey speaks for in place of the stated length and width, unless it had to fall back on them. */
function coveredBy(design: Design): string[] {
  const result = surveyOf(design.box, graduationOf(design))
  const stated = result?.ok ? result.survey.assumptions.filter((one) => one.as === 'stated') : []
  const needs = (...sides: Distance[]) => stated.some((one) => sides.includes(one.of))
  return [
    ...(needs('bass', 'treble') ? [] : ['box.length']),
    ...(needs('neckEnd', 'tailEnd') ? [] : ['box.width']),
  ]
}
