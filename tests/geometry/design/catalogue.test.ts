import { describe, expect, test } from 'vitest'
import { ACROSS_LINES, ALONG_LINES } from '../../../geometry/design/place.ts'
import {
  checkDesign,
  ENTRY_LISTS,
  type Field,
  fieldsOf,
  fieldsOfEntry,
  fieldsOfKind,
  KINDS,
  LIMITS,
  sections,
  valueAt,
} from '../../../geometry/index.ts'
import { designOf } from '../../support/designs.ts'

const everyField: [section: string, field: Field][] = sections().flatMap((section) =>
  fieldsOf(section).map((field): [string, Field] => [section, field]),
)
const lengths = everyField.filter(
  ([section, field]) => ['mm', 'count'].includes(field.unit) && section !== 'limits',
)

describe('the catalogue of fields', () => {
  test('knows every section of a design', () => {
    const design = designOf()
    const held = Object.entries(design).filter(
      ([name, value]) =>
        typeof value === 'object' && !Array.isArray(value) && !['tolerances', 'overruled'].includes(name),
    )
    expect(sections()).toEqual(held.map(([name]) => name))
  })

  test('knows every field of a design and its default', () => {
    // The survey is left out of a box measured once; begun, it has no readings.
    const design = designOf({ box: { survey: {} } })
    for (const [section, field] of everyField.filter(([one]) => one !== 'limits')) {
      expect([section, field.name, valueAt(design, [section, ...field.name.split('.')])]).toEqual([
        section,
        field.name,
        field.standard,
      ])
    }
    const count = (value: unknown): number =>
      typeof value === 'object' &&
      value !== null &&
      !Array.isArray(value) &&
      !('by' in value) &&
      !('share' in value)
        ? Object.values(value).reduce((sum: number, one) => sum + count(one), 0)
        : 1
    for (const section of sections().filter((one) => one !== 'limits'))
      expect([section, fieldsOf(section).length]).toEqual([
        section,
        count(design[section as keyof typeof design]),
      ])
  })

  test.each(everyField)('%s: $name has words for people', (_section, field) => {
    expect(field.label).toMatch(/^\p{Lu}[^.]*$/u)
    expect(field.help).toMatch(/\.$/)
    expect(field.unit).not.toBe('')
  })

  test.each(lengths)('%s: $name reads its limits and refuses what lies beyond', (section, field) => {
    const reads = (value: number) => {
      const [first = '', second] = field.name.split('.')
      const inner = second === undefined ? { [first]: value } : { [first]: { [second]: value } }
      return checkDesign({ format: 'lidwright', version: 1, [section]: inner }).ok
    }
    const { min = Number.NaN, max = Number.NaN } = field
    expect(min).toBeLessThan(max)
    expect([reads(min), reads(max)]).toEqual([true, true])
    expect([reads(min - 1), reads(max + 1)]).toEqual([false, false])
    expect(Number(field.standard)).toBeGreaterThanOrEqual(min)
    expect(Number(field.standard)).toBeLessThanOrEqual(max)
  })

  test('shows a field only for values that its neighbour can have', () => {
    const fields = new Map(everyField.map(([section, field]) => [`${section}.${field.name}`, field]))
    let shown = 0
    for (const [section, { name, when }] of everyField) {
      for (const [neighbour, values] of Object.entries(when ?? {})) {
        const beside = fields.get([section, ...name.split('.').slice(0, -1), neighbour].join('.'))
        const options: readonly unknown[] = beside?.options ?? [true, false]
        for (const value of values) expect(options).toContain(value)
        shown += 1
      }
    }
    expect(shown).toBeGreaterThan(5)
  })

  test('finds a section within a section, and the top of the file', () => {
    expect(fieldsOf('box.lid').map((field) => field.name)).toEqual([
      'thickness',
      'kind',
      'fit',
      'play',
      'hingeEdge',
      'hingeIn',
      'hingeDown',
      'opens',
      'bevelAtHinge',
      'bevelOpposite',
      'slidesTo',
      'gap',
      'stuff',
      'grain',
    ])
    expect(fieldsOf('').map((field) => field.name)).toEqual([
      'format',
      'version',
      'title',
      'notes',
      'hand',
      'drills',
      'artwork',
      'things',
      'measures',
      'photos',
      'woods',
      'tolerances',
      'overruled',
    ])
  })

  test('refuses a section or a kind that is not there', () => {
    expect(() => fieldsOf('attic')).toThrow('"attic"')
    expect(() => fieldsOf('box.attic')).toThrow('"box.attic"')
    expect(() => fieldsOfKind('gong')).toThrow('"gong"')
  })

  test.each(ENTRY_LISTS)('knows the fields of an entry of %s', (list) => {
    const fields = fieldsOfEntry(list)
    expect(fields.length).toBeGreaterThan(3)
    for (const { label, help, unit } of fields) {
      expect(label).toMatch(/^\p{Lu}[^.]*$/u)
      expect(help).toMatch(/\.$/)
      expect(unit).not.toBe('')
    }
    expect(() => fieldsOfEntry(`${list}.gone`)).toThrow('gone')
  })

  test('gives every kind the same places, and its own fields after them', () => {
    for (const kind of Object.keys(KINDS)) {
      const names = fieldsOfKind(kind).map((field) => field.name)
      expect(names.slice(0, 8)).toEqual([
        ...['id', 'name', 'along', 'across', 'turnDegrees', 'face'],
        ...['locked', 'group'],
      ])
      expect(names.length).toBeGreaterThan(8)
    }
  })
})

describe('limits', () => {
  test('each can be set in a design, in the unit it states', () => {
    expect(fieldsOf('limits').map((field) => field.name)).toEqual(Object.keys(LIMITS))
    for (const field of fieldsOf('limits')) {
      const limit = LIMITS[field.name as keyof typeof LIMITS]
      expect(field).toMatchObject({ unit: limit.unit, label: limit.label, help: limit.why })
    }
  })

  test('each says why, and is a sensible number', () => {
    for (const { value, label, why } of Object.values(LIMITS)) {
      expect(value).toBeGreaterThan(0)
      expect(value).toBeLessThan(200)
      expect(label).toMatch(/^\p{Lu}[^.]*$/u)
      expect(why).toMatch(/\.$/)
    }
  })
})

describe('lines', () => {
  test('none has the name of another, and none could be the id of a thing', () => {
    const names = [...ALONG_LINES, ...ACROSS_LINES]
    expect(new Set(names).size).toBe(names.length)
    for (const id of names)
      expect(checkDesign({ format: 'lidwright', version: 1, things: [{ kind: 'screw', id }] }).ok).toBe(false)
  })
})
