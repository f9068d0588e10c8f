/** Levers that set a field: one of a section, of a thing or of a piece inside. */
import { capital, sayFor } from '../checks/say.ts'
import { counts, type Field, fieldsOf, fieldsOfEntry, fieldsOfKind, labelOf } from '../design/catalogue.ts'
import { type Path, valueAt } from '../design/changes.ts'
import { setWithCompanions } from '../design/pairs.ts'
import { roundingStep } from '../design/rounding.ts'
import type { Design, Thing } from '../design/schema.ts'
import { kindOf } from '../kinds/kinds.ts'
import type { Layout } from '../solve/layout.ts'
import { clean, type FieldSet, shownStep } from '../solve/moves.ts'
import type { Lever, Turn } from './lever.ts'

/** A size is changed to this share of itself at the least, and to its inverse or so much more at the most. */
const LEAST_SHARE = 0.4
const FARTHEST = { mm: 30, g: 2000 } as const

/** Set finer than a rule shows, and said so. */
const FINE = new Set([
  'saddle.setback',
  'box.lid.gap',
  'box.lid.play',
  'box.lid.bevelAtHinge',
  'box.lid.bevelOpposite',
])

const ofSections = new Map<string, readonly Field[]>()
function fieldOf(section: string, name: string): Field | undefined {
  const known = ofSections.get(section) ?? fieldsOf(section)
  ofSections.set(section, known)
  return known.find((one) => one.name === name)
}

const ofKinds = new Map<string, readonly Field[]>()
function fieldOfKind(kind: string, name: string): Field | undefined {
  const known = ofKinds.get(kind) ?? fieldsOfKind(kind)
  ofKinds.set(kind, known)
  return known.find((one) => one.name === name)
}

/** A field by its dotted name, `neck.relief`; `hand` is one of the file's own. */
export function sectionLevers({ design }: Layout, name: string): Lever[] {
  const [section = '', ...rest] = name.split('.')
  if (rest.length === 0) return choices(design, fieldOf('', name), [name], '', true)
  const path = [section, ...rest]
  const field = fieldOf(section, rest.join('.'))
  if (!field) return name === 'scale.frets.count' ? fretCount(design) : []
  if (!counts(valueAt(design, path.slice(0, -1)), field)) return []
  if (field.options) return choices(design, field, path, section, false)
  return slides(
    design,
    field,
    path,
    capital(labelOf(section, field.label)),
    FINE.has(name) ? 0.1 : Math.max(roundingStep(design.units), shownStep(design.units)),
  )
}

const fretCount = (design: Design): Lever[] =>
  slides(
    design,
    {
      name: 'count',
      address: 'scale.frets',
      label: 'Frets',
      help: '',
      unit: 'count',
      standard: 0,
      min: 1,
      max: 36,
    },
    ['scale', 'frets', 'count'],
    'Frets',
    1,
  )

/** The gauge of the string that a finding speaks of, in thousandths of an inch as strings are sold. */
export function gaugeLevers({ design, strings }: Layout, number: number): Lever[] {
  const index = strings.find((one) => one.number === number)?.index ?? -1
  const field: Field = {
    name: 'gauges',
    address: 'strings.gauges',
    label: 'Gauge',
    help: '',
    unit: 'mm',
    standard: 0,
    min: 0.1,
    max: 3,
  }
  return slides(design, field, ['strings', 'gauges', index], `String ${number}, thick`, 0.0254)
}

/** A field of a thing, `boreDepth`; companions that are alike stay alike. */
export function thingLevers(layout: Layout, thing: Thing, name: string): Lever[] {
  const { design } = layout
  const index = design.things.indexOf(thing)
  const field = fieldOfKind(thing.kind, name)
  if (!field) return []
  if (name === 'boreDepth' && 'bore' in thing && thing.bore === 'none') return bores(layout, thing, index)
  if (!counts(thing, field)) return []
  const label = `${capital(sayFor(design).thing(thing.id))}, ${field.label.toLowerCase()}`
  return slides(
    design,
    field,
    ['things', index, name],
    label,
    shownStep(design.units),
    (value) => setWithCompanions(design, index, name, value),
    kindOf(thing.kind).group !== 'Openings',
  )
}

const SIZES = ['diameter', 'sizeAlong', 'sizeAcross']

/** Sizes of an opening, which are the builder's to choose; those of a piece of hardware are the maker's. */
export function sizeLevers(layout: Layout, thing: Thing): Lever[] {
  if (kindOf(thing.kind).group !== 'Openings') return []
  return SIZES.flatMap((name) => thingLevers(layout, thing, name))
}

/** The sizes of an opening made smaller to a share of themselves, with how that is said; nothing for hardware. */
export function smallerFields(
  design: Design,
  index: number,
  share: number,
): { readonly field: FieldSet; readonly words: string; readonly by: number }[] {
  const thing = design.things[index]
  if (!thing || kindOf(thing.kind).group !== 'Openings') return []
  const say = sayFor(design)
  const step = shownStep(design.units)
  return SIZES.flatMap((name) => {
    const field = fieldOfKind(thing.kind, name)
    const now = valueAt(thing, [name])
    if (!field || typeof now !== 'number' || !counts(thing, field)) return []
    const value = clean(Math.max(field.min ?? 0, Math.ceil((now * share) / step) * step))
    const label = `${capital(say.thing(thing.id))}, ${field.label.toLowerCase()}`
    return [
      {
        field: [['things', index, name], value] as const,
        words: `${label}: ${say.length(value)} instead of ${say.length(now)}`,
        by: now - value,
      },
    ]
  })
}

/** A size of a piece that stands inside: what is sawn off it. */
export function insideLevers({ design }: Layout, id: string, name: string): Lever[] {
  const index = design.box.inside.findIndex((one) => one.id === id)
  const field = fieldsOfEntry('box.inside').find((one) => one.name === name)
  if (index < 0 || !field) return []
  const label = `${capital(sayFor(design).thing(id))}, ${field.label.toLowerCase()}`
  return slides(design, field, ['box', 'inside', index, name], label, shownStep(design.units))
}

/** A bore from inside, as wide as what goes into it and a little more, where none is made so far. */
function bores(layout: Layout, thing: Thing, index: number): Lever[] {
  const bushing = kindOf(thing.kind).bushing?.(thing)
  if (!bushing) return []
  const step = shownStep(layout.design.units)
  const say = sayFor(layout.design)
  const wide = clean(Math.ceil((bushing.widthInside + BORE_ROOM) / step - 1e-6) * step)
  const at = (steps: number): Turn => ({
    fields: [
      [['things', index, 'bore'], 'from inside'],
      [['things', index, 'boreDiameter'], wide],
      [['things', index, 'boreDepth'], clean(steps * step)],
    ],
    words: () =>
      `Bore ${say.length(wide)} wide and ${say.length(steps * step)} deep from inside for ${say.thing(thing.id)}`,
  })
  const { thickness } = layout.panels[thing.face]
  return [{ sort: 'slide', step, most: Math.floor(thickness / step), ways: [1], at }]
}

/** A bore wider than what goes into it by this. Common practice, no source. */
const BORE_ROOM = 2

function slides(
  design: Design,
  field: Field,
  path: Path,
  label: string,
  ruled: number,
  set: (value: number) => readonly FieldSet[] = (value) => [[path, value]],
  free = field.unit === 'g',
): Lever[] {
  const now = valueAt(design, path)
  if (typeof now !== 'number') return []
  const step = field.unit === 'count' ? 1 : field.unit === 'g' ? 10 : field.unit === 'degrees' ? 0.5 : ruled
  const far = field.unit === 'g' ? FARTHEST.g : FARTHEST.mm
  // What has been measured or bought is of its own size; what is to be made keeps something of the one it has.
  const low = Math.max(field.min ?? -far, free || now <= 0 ? now - far : now * LEAST_SHARE)
  const high = Math.min(field.max ?? far, Math.max(now + far, now / LEAST_SHARE))
  const say = sayFor(design)
  const shown = (value: number) =>
    field.unit === 'count'
      ? String(value)
      : field.unit === 'g'
        ? `${value} g`
        : field.unit === 'degrees'
          ? say.angle(value)
          : step < shownStep(design.units) - 1e-9
            ? say.fine(value)
            : say.length(value)
  const at = (steps: number): Turn | null => {
    const from = steps > 0 ? Math.floor(now / step + 1e-6) : Math.ceil(now / step - 1e-6)
    const value = clean((from + steps) * step)
    if (value < low - 1e-9 || value > high + 1e-9) return null
    return { fields: set(value), words: () => `${label}: ${shown(value)} instead of ${shown(now)}` }
  }
  return [{ sort: 'slide', step, most: Math.ceil((high - low) / step) + 1, ways: [1, -1], at }]
}

function choices(
  design: Design,
  field: Field | undefined,
  path: Path,
  section: string,
  yours: boolean,
): Lever[] {
  const now = valueAt(design, path)
  const label = field && capital(section ? labelOf(section, field.label) : field.label)
  const turns = (field?.options ?? [])
    .filter((option) => option !== now && !(yours && option === field?.standard))
    .map(
      (option): Turn => ({
        fields: [[path, option]],
        words: () => `${label}: ${option}, instead of ${String(now)}`,
      }),
    )
  return turns.length === 0 ? [] : [{ sort: 'choice', turns, ...(yours ? { yours } : {}) }]
}
