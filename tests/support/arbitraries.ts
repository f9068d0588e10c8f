/**
 * Random designs for laws, drawn from the schema by way of the field catalogue: a field added there is drawn here.
 *
 * Most values lie near what is usual; some lie anywhere within their limits, and some on a limit, because that is
 * where arithmetic breaks.
 */
import fc, { type Arbitrary } from 'fast-check'
import { ACROSS_LINES, ALONG_LINES } from '../../geometry/design/place.ts'
import {
  CIRCUITS,
  type Design,
  type Field,
  fieldsOf,
  fieldsOfEntry,
  fieldsOfKind,
  KINDS,
  type KindName,
  kindOf,
  lidStuffNames,
  presetWiring,
  RULES,
  ratioOf,
  sections,
  woodNames,
} from '../../geometry/index.ts'
import { designOf } from './designs.ts'

/** Longer lists than this say nothing new and take their time. */
const MOST_THINGS = 8

/** JSON has no -0, so a design has none. */
const double = (min: number, max: number) => fc.double({ min, max, noNaN: true }).map((value) => value + 0)

const clamp = (value: number, min: number, max: number) => Math.min(max, Math.max(min, value))

/** Tame values stay near what is usual, so that the design could be built; wild ones go to the limits and past sense. */
export type Mood = 'tame' | 'wild'

function amount({ min = 0, max = 1000, standard }: Field, mood: Mood): Arbitrary<number> {
  const anywhere = double(min, max)
  const onALimit = fc.constantFrom(min, max)
  if (typeof standard !== 'number') return fc.oneof({ weight: 3, arbitrary: anywhere }, onALimit)
  const near = (less: number, more: number) =>
    fc.integer({ min: less, max: more }).map((percent) => clamp((standard * percent) / 100, min, max))
  if (mood === 'tame') return near(90, 110)
  return fc.oneof(
    { weight: 12, arbitrary: near(70, 130) },
    { weight: 2, arbitrary: anywhere },
    { weight: 1, arbitrary: onALimit },
  )
}

function count({ min = 0, max = 40, standard }: Field, mood: Mood): Arbitrary<number> {
  if (mood === 'tame') return fc.constant(Number(standard))
  const few = Math.min(max, Number(standard) + 3)
  return fc.oneof({ weight: 3, arbitrary: fc.integer({ min, max: few }) }, fc.integer({ min, max }))
}

const words = (max: number) =>
  fc
    .oneof(
      fc.constant(''),
      fc.constantFrom('Brass “lip”', '<b>&amp;', 'Zoë’s tin', '孔 3 ½', '%%d{}'),
      fc.string({ unit: 'grapheme', maxLength: 12 }),
    )
    .map((text) => text.replace(/\p{Cc}/gu, '').slice(0, max))

/** A list that rises from each to the next, as fret lists must. */
const rising = <T>(one: Arbitrary<T>, size: (value: T) => number, maxLength: number): Arbitrary<T[]> =>
  fc
    .uniqueArray(one, { minLength: 1, maxLength, selector: size })
    .map((list) => list.sort((a, b) => size(a) - size(b)))

const ratio = fc
  .integer({ min: 1, max: 40 })
  .chain((below) => fc.integer({ min: below + 1, max: 16 * below }).map((above) => `${above}/${below}`))

const value = (amount: number) => amount

/** Cents to the hundredth: finer ones differ by less than arithmetic can tell apart. */
const hundredths = fc.integer({ min: 1, max: 480_000 }).map((number) => number / 100)

const frets = fc.oneof(
  { weight: 3, arbitrary: fc.record({ by: fc.constant('equal'), count: fc.integer({ min: 0, max: 36 }) }) },
  fc.record({ by: fc.constant('steps'), list: rising(fc.integer({ min: 1, max: 48 }), value, 30) }),
  fc.record({ by: fc.constant('cents'), list: rising(hundredths, value, 30) }),
  fc.record({ by: fc.constant('ratios'), list: rising(ratio, ratioOf, 20) }),
)

/** A place by measure, or by relation to one of `ids`, to lines, or to what is not there. */
function place(axis: 'along' | 'across', ids: readonly string[], mood: Mood): Arbitrary<unknown> {
  const measure = axis === 'along' ? fc.integer({ min: 0, max: 240 }) : fc.integer({ min: -90, max: 90 })
  if (mood === 'tame') return measure
  const lines: readonly string[] = axis === 'along' ? ALONG_LINES : ACROSS_LINES
  const id = fc.constantFrom(...ids, 'gone')
  const line = fc.oneof({ weight: 3, arbitrary: fc.constantFrom(...lines) }, id)
  return fc.oneof(
    { weight: 4, arbitrary: measure },
    { weight: 1, arbitrary: double(-3000, 3000) },
    { weight: 2, arbitrary: double(-1.5, 1.5).map((share) => ({ share })) },
    { weight: 2, arbitrary: fc.tuple(line, line).map((midway) => ({ midway })) },
    { weight: 2, arbitrary: id.map((mirror) => ({ mirror })) },
    { weight: 1, arbitrary: fc.record({ from: id, by: fc.double({ min: -60, max: 60, noNaN: true }) }) },
    ...(axis === 'along' ? [{ weight: 2, arbitrary: double(0, 1).map((ofScale) => ({ ofScale })) }] : []),
  )
}

/** Fields that take fewer characters than others. */
const SHORT_WORDS: Readonly<Record<string, number>> = { group: 40, name: 80, made: 60 }

/** One field of a section, whatever its sort. Throws for a sort that this file does not know how to draw. */
export function arbitraryField(field: Field, ids: readonly string[], mood: Mood): Arbitrary<unknown> {
  switch (field.unit) {
    case 'mm':
    case 'degrees':
    case 'share':
    case 'newtons':
    case 'g':
    case 'hertz':
      return amount(field, mood)
    case 'count':
      return count(field, mood)
    case 'curve':
      return fc.constantFrom(field.standard, [
        [0, 0, 0],
        [30, 0, 0.5],
        [30, 20, 0],
        [5, 25, -0.2],
      ])
    case 'yes or no':
      return fc.boolean()
    case 'one of':
      return fc.constantFrom(...(field.options ?? []))
    case 'text':
      return words(SHORT_WORDS[field.name] ?? 120)
    case 'mm, a list':
      return fc.array(mood === 'tame' ? fc.constantFrom(0.3, 0.45, 0.6) : double(0.1, 5), { maxLength: 12 })
    case 'mm, readings':
      return readings(field.name, mood)
    case 'fret list':
      return mood === 'tame' ? fc.constant({ by: 'equal', count: 12 }) : frets
    case 'place':
      // The saddle's own place: a draw over the whole lid leaves no neck, or no lid.
      if (field.name === 'place' && mood === 'tame')
        return fc.integer({ min: 60, max: 75 }).map((percent) => ({ share: percent / 100 }))
      return place(field.name === 'across' ? 'across' : 'along', ids, mood)
    case 'wood':
      return fc.constantFrom(...woodNames([]), OWN_WOOD.name)
    case 'lid stuff':
      return fc.constantFrom(...lidStuffNames([]), OWN_WOOD.name)
    case 'pitches, a list':
      return tuning(mood)
    case 'list of makes':
      return fc.array(make(mood), { maxLength: 4 })
    case 'list of strings':
      return fc.array(
        double(0.2, 2).map((gauge) => ({ gauge })),
        { maxLength: 4 },
      )
    case 'list of built measures':
      return fc.array(
        fc.record({
          what: words(120),
          planned: fc.oneof(fc.constantFrom('saddle.fromEdge', 'box.depth', 'neck.width'), words(120)),
          built: double(-3000, 3000),
          note: words(400),
        }),
        { maxLength: 4 },
      )
    // Wires lead to components: `wiring` below draws both together.
    case 'list of components':
    case 'list of wires':
      return fc.constant([])
    case 'list of solids':
      return listOf('box.inside', 'piece', mood)
    case 'list of dates':
      return fc.array(
        fc.record({ who: words(120), when: words(60), strings: words(400), note: words(400) }),
        { maxLength: 4 },
      )
    default:
      throw new Error(`no random values for the field "${field.name}", which is of the sort "${field.unit}"`)
  }
}

/** A list whose entries have fields and an id of their own. */
function listOf(list: string, id: string, mood: Mood): Arbitrary<object[]> {
  const fields = fieldsOfEntry(list).filter(({ name, unit }) => name !== 'id' && unit !== 'list of corners')
  return fc
    .array(someOf(fields, [], 60, mood), { maxLength: mood === 'tame' ? 0 : 3 })
    .map((entries) => entries.map((one, index) => ({ ...one, ...undrawn(one), id: `${id}--${index}` })))
}

/** An outline of one's own has its corners; here artwork has a plain shape instead. */
const undrawn = (one: object) => ('shape' in one && one.shape === 'drawn' ? { shape: 'oval' } : {})

/** Readings near enough to a box of the size that is usual, or of no box at all. */
function readings(name: string, mood: Mood): Arbitrary<number[]> {
  const usual = name.includes('diagonal')
    ? 300
    : name.includes('height')
      ? 47
      : /bass|treble/.test(name)
        ? 240
        : 180
  const near = fc.integer({ min: -20, max: 20 }).map((tenths) => usual + tenths / 10)
  return fc.array(mood === 'tame' ? near : fc.oneof({ weight: 5, arbitrary: near }, double(1, 5000)), {
    maxLength: 3,
  })
}

/** A wood that no table has, very stiff and very weak; every design has it, for any part may be of it. */
const OWN_WOOD = { name: 'bog oak', density: 900, stiffness: 400_000, strength: 2 }

/** Pitches for all strings or too few of them; of a wild design any that can be written. */
function tuning(mood: Mood): Arbitrary<string[]> {
  const usual = fc.constantFrom('E2', 'G2', 'A2', 'D3', 'G3', 'B3', 'E4')
  if (mood === 'tame') return fc.array(usual, { minLength: 3, maxLength: 3 })
  const wild = fc.oneof(
    fc.integer({ min: 16, max: 5000 }).map((hertz) => `${hertz} Hz`),
    fc.constantFrom('C0', 'F♯3', 'B♭2 -14 cents', '82,4 hertz', 'C8'),
  )
  return fc.oneof(
    { weight: 3, arbitrary: fc.array(usual, { minLength: 12, maxLength: 12 }) },
    { weight: 1, arbitrary: fc.array(fc.oneof(usual, wild), { minLength: 12, maxLength: 12 }) },
    { weight: 1, arbitrary: fc.array(usual, { maxLength: 4 }) },
  )
}

const make = (mood: Mood): Arbitrary<object> =>
  someOf(fieldsOfEntry('stringing.makes').map(tamed), [], mood === 'tame' ? 10 : 50, mood)

/** Masses in grams are amounts like any other. */
const tamed = (field: Field): Field =>
  ['g', 'g/m'].includes(field.unit) ? { ...field, unit: 'share', standard: 0.5, min: 0, max: 20 } : field

/** Some of the fields, the rest left to their defaults; dotted names become nested objects. */
function someOf(
  fields: readonly Field[],
  ids: readonly string[],
  share: number,
  mood: Mood,
): Arbitrary<object> {
  const drawn = fields.map((field) =>
    fc.oneof(
      {
        weight: share,
        arbitrary: arbitraryField(field, ids, mood).map((value) => [field.name, value] as const),
      },
      { weight: 100 - share, arbitrary: fc.constant(null) },
    ),
  )
  return fc.tuple(...drawn).map((entries) => {
    const section: Record<string, Record<string, unknown>> = {}
    for (const entry of entries) {
      if (!entry) continue
      const [first = '', second] = entry[0].split('.')
      if (second === undefined) section[first] = entry[1] as never
      else section[first] = { ...section[first], [second]: entry[1] }
    }
    return section
  })
}

/** A thing of any kind called `id` whose places may hang on any of `ids`. */
export function arbitraryThing(id: string, ids: readonly string[], mood: Mood): Arbitrary<object> {
  return fc.constantFrom(...(Object.keys(KINDS) as KindName[])).chain((kind) => {
    const fields = fieldsOfKind(kind).filter(({ name }) => name !== 'id' && name !== 'face')
    return fc
      .tuple(someOf(fields, ids, 60, mood), fc.constantFrom(...kindOf(kind).faces))
      .map(([some, face]) => ({ kind, id, face, ...some }))
  })
}

const things = (mood: Mood): Arbitrary<object[]> =>
  fc
    .uniqueArray(fc.stringMatching(/^[a-z][a-z0-9-]{0,5}$/).filter(isFree), {
      maxLength: mood === 'tame' ? 2 : MOST_THINGS,
    })
    .chain((ids) => fc.tuple(...ids.map((id) => arbitraryThing(id, ids, mood))))

/** Short names that parts of every instrument bear already. */
const isFree = (id: string) =>
  ![
    'lid',
    'base',
    'along',
    'across',
    'board',
    'box',
    'brace',
    'hand',
    'neck',
    'nut',
    'posts',
    'saddle',
    'side',
  ].includes(id)

const overruled = fc.dictionary(fc.constantFrom(...RULES.map((rule) => `${rule.name} neck`)), words(500), {
  maxKeys: 2,
})

/** A usual circuit with some of its wires, as left by somebody in the middle of it; most designs have none. */
const wiring: Arbitrary<object> = fc.oneof(
  { weight: 4, arbitrary: fc.constant({}) },
  fc
    .constantFrom(...CIRCUITS)
    .map((name) => presetWiring(name, designOf()))
    .chain((circuit) => fc.subarray([...circuit.wires]).map((wires) => ({ ...circuit, wires }))),
)

const design = (mood: Mood): Arbitrary<Design> =>
  fc
    .tuple(
      fc.record({
        title: words(120),
        hand: fc.constantFrom('right', 'left', 'not stated'),
        things: things(mood),
        overruled,
        woods: fc.constant([OWN_WOOD]),
        artwork: listOf('artwork', 'art', mood),
      }),
      ...sections().map((section) => {
        if (section === 'wiring') return wiring.map((fields) => ({ wiring: fields }))
        const share = section === 'limits' ? 5 : mood === 'tame' ? 20 : 40
        const all = fieldsOf(section)
        const measured = all.filter(({ name }) => name.startsWith('survey.'))
        const stated = all.filter((one) => !measured.includes(one))
        const some = (fields: readonly Field[]) => someOf(fields, ['gone'], share, mood)
        if (measured.length === 0) return some(stated).map((fields) => ({ [section]: fields }))
        // Most boxes are measured once; every fourth is surveyed.
        return fc
          .tuple(some(stated), fc.oneof({ weight: 3, arbitrary: fc.constant({}) }, some(measured)))
          .map(([fields, survey]) => ({ [section]: { ...fields, ...survey } }))
      }),
    )
    .map((parts) => designOf(Object.assign({}, ...parts)))

/**
 * Any legal design: a draw of every section, and up to eight things with places and relations. Every third is tame.
 */
export const arbitraryDesign: Arbitrary<Design> = fc.oneof(
  { weight: 2, arbitrary: design('wild') },
  { weight: 1, arbitrary: design('tame') },
)
