/** The text of sample-boxes/README.md, made from the schema, the rules, the report and the layers themselves. */
import { buildSheet, LAYER_TABLE, tablesOf } from '../../exporters/index.ts'
import { REPORT_KEYS } from '../../exporters/report-keys.ts'
import {
  ACROSS_LINES,
  ALONG_LINES,
  checkDesign,
  type Design,
  ENTRY_LISTS,
  type Field,
  fieldsOf,
  fieldsOfEntry,
  fieldsOfKind,
  formatLength,
  KINDS,
  LIMITS,
  PANELS,
  RULES,
  sections,
  VERSION,
  woodNames,
} from '../../geometry/index.ts'

export interface Sample {
  /** Name of the file. */
  readonly file: string
  readonly design: Design
  /** Is there a folder `expected/<name>` beside it? */
  readonly expected: boolean
}

/** The whole page. The same samples give the same text. */
export function samplesReadme(samples: readonly Sample[]): string {
  return `${[
    '<!-- Made by "npm run docs" from the schema itself. Do not edit: the next run would undo it. -->',
    '# Sample boxes, and what a design file holds',
    ...sampleSection(samples),
    ...fileSection(),
    ...frameSection(),
    ...fieldSection(),
    ...placeSection(),
    ...kindSection(),
    ...limitSection(),
    ...ruleSection(),
    ...reportSection(),
    ...layerSection(),
    ...sheetSection(),
    ...bundleSection(),
  ].join('\n\n')}\n`
}

const cell = (text: string) => text.replace(/\|/g, '\\|').replace(/\s*\n\s*/g, ' ')

function table(headings: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]) => `| ${cells.map(cell).join(' | ')} |`
  return [line(headings), line(headings.map(() => '---')), ...rows.map(line)].join('\n')
}

const WOOD_NAMES = woodNames([])

const code = (text: string) => `\`${text}\``

function sampleSection(samples: readonly Sample[]): string[] {
  const what =
    'Each sample is a finished design: it opens in the page, and the tests build it again on every run.'
  if (samples.length === 0) return ['## Samples', 'There are none yet.']
  const rows = samples.map(({ file, design, expected }) => [
    `[${file}](${file})`,
    design.title,
    design.hand,
    `${design.strings.count}`,
    formatLength(design.scale.length, design.units, { unit: true }),
    expected ? `[${code(stem(file))}](expected/${stem(file)})` : '',
  ])
  return ['## Samples', what, table(['file', 'title', 'hand', 'strings', 'scale', 'expected output'], rows)]
}

export const stem = (file: string) => file.replace(/\.lidwright\.json$/, '')

function fileSection(): string[] {
  return [
    '## The file',
    `A design is a JSON file whose name ends in ${code('.lidwright.json')}. It holds what the builder states and nothing that can be computed. Every length is in millimetres and every angle in degrees, whatever the screen shows. Only ${code('format')} and ${code('version')} must be there; everything left out is as the tables say. A field that is not in them is refused, so that a slip of the pen is found.`,
    fence({
      format: 'lidwright',
      version: VERSION,
      title: 'Tea box',
      hand: 'right',
      box: { length: 241.3, width: 178, depth: 51 },
    }),
    'The same fields can be set on the command line, by their dotted names, with lengths in any unit: `lidwright check box.lidwright.json --set "box.length=9 1/2in" --set things.hole-treble.diameter=30mm --set hand=left`.',
    '### Top of the file',
    fieldTable('', fieldsOf('').map(withThings)),
    'What a finding is called stands behind it in the output of `lidwright check`. To live with one, write its name and your reason:',
    fence({ overruled: { 'saddle-to-tail-wall saddle': 'short box, and it sounded well' } }),
  ]
}

/** The list of things has no label in the schema: its entries have. */
const withThings = (field: Field): Field =>
  field.name === 'things'
    ? { ...field, unit: 'list', help: 'What is put on the faces; see Things below.' }
    : field

const fence = (value: unknown) => `\`\`\`json\n${JSON.stringify(value, null, 2)}\n\`\`\``

function frameSection(): string[] {
  return [
    '## How things are measured',
    [
      '- Along: from the front edge of the nut (or the crown of the zero fret) towards the tail. Derived places are called x.',
      '- Across: from the centreline, the treble side positive. Called y. It is the same for both hands; drawings of a left-handed build are turned over.',
      '- Up: from the outer face of the lid; what is inside the box is below 0. Called z.',
      '- On lid and base a thing stands so far from the neck-end edge, and so far from the centreline.',
      '- On a wall a thing stands so far from the middle, towards the tail or the treble, and so far down from the lid-side edge.',
    ].join('\n'),
  ]
}

function fieldSection(): string[] {
  return [
    '## Fields',
    ...sections().flatMap(sectionTable),
    ...ENTRY_LISTS.flatMap((list) => [`An entry of ${code(list)}:`, fieldTable('', fieldsOfEntry(list))]),
    `Woods: ${WOOD_NAMES.map(code).join(', ')}. Sheets, for a lid: ${Object.keys(PANELS).map(code).join(', ')}. Any other is to be stated in ${code('woods')}.`,
    'The frets, `scale.frets`, are one of these:',
    table(
      ['frets', 'what it means'],
      [
        [
          code('{ "by": "equal", "count": 18 }'),
          'Eighteen frets, twelve to the octave, in equal temperament.',
        ],
        [
          code('{ "by": "steps", "list": [2, 4, 5, 7, 9, 10, 12] }'),
          'Only these semitones above the open string, as on a stick with a seven-note scale.',
        ],
        [code('{ "by": "cents", "list": [204, 386, 498, 702] }'), 'Cents above the open string.'],
        [
          code('{ "by": "ratios", "list": ["9/8", "5/4", "4/3", "3/2", "2"] }'),
          'Frequency ratios to the open string.',
        ],
      ],
    ),
  ]
}

function sectionTable(section: string): string[] {
  if (section === 'limits') return []
  return [`### ${code(section)}`, fieldTable(section, fieldsOf(section))]
}

function fieldTable(section: string, fields: readonly Field[]): string {
  const rows = fields.map((field) => [
    code(section === '' ? field.name : `${section}.${field.name}`),
    field.unit,
    standardOf(field),
    rangeOf(field),
    helpOf(field),
  ])
  return table(['field', 'unit', 'left out', 'may be', 'what it is'], rows)
}

function standardOf({ standard, unit }: Field): string {
  if (standard === undefined) return unit === 'id' ? 'must be given' : ''
  return typeof standard === 'string'
    ? standard === ''
      ? 'empty'
      : standard
    : code(JSON.stringify(standard))
}

function rangeOf({ min, max, options, unit, standard }: Field): string {
  if (unit === 'fixed') return code(JSON.stringify(standard))
  if (options) return options.join(', ')
  if (min !== undefined && max !== undefined) return `${min} to ${max}`
  return max === undefined ? '' : `up to ${max}`
}

function helpOf({ name, label, help, when }: Field): string {
  const only = Object.entries(when ?? {}).map(
    ([name, values]) => `${name} is ${values.map(word).join(' or ')}`,
  )
  const words = help === '' || label === name ? help : `${label}: ${help}`
  return [words, ...(only.length > 0 ? [`Counts only while ${only.join(' and ')}.`] : [])]
    .filter(Boolean)
    .join(' ')
}

const word = (value: string | boolean) => (value === true ? 'yes' : value === false ? 'no' : value)

function placeSection(): string[] {
  const rows = [
    ['60', 'Sixty millimetres, whatever becomes of the box.'],
    [
      '{ "share": 0.72 }',
      'So much of the face: along it from the neck-end edge; across it from the centreline, where 1 is the treble edge and -1 the bass edge; on a wall, down from the lid-side edge.',
    ],
    [
      '{ "midway": ["neck treble side", "treble edge"] }',
      'Half way between two lines, or between a line and another thing, or between two things.',
    ],
    [
      '{ "ofScale": 0.25 }',
      'Along lid or base only: a quarter of the scale from the saddle line towards the nut.',
    ],
    [
      '{ "mirror": "hole-treble" }',
      'Where that thing is: along, the same place; across, the other side of the centreline.',
    ],
    [
      '{ "from": "hole-treble", "by": 12 }',
      'So far from that thing, centre to centre, counted as measures on the face are: towards the tail and the treble; across a wall, down.',
    ],
  ]
  const lines = (names: readonly string[]) => names.map(code).join(', ')
  return [
    '## Places',
    'A place is a measure, or an intent that is kept and followed when the box changes. On the next box, a millimetre or two larger, a hole half way between neck and edge is still half way.',
    table(
      ['place', 'what it means'],
      rows.map(([place = '', meaning = '']) => [code(place), meaning]),
    ),
    `Lines along the box, for a place along it: ${lines(ALONG_LINES)}.`,
    `Lines for a place across it: ${lines(ACROSS_LINES)}.`,
    'In either, the id of another thing on lid or base stands for that thing’s centre. A wall has only its centreline and the things on walls. The saddle itself is placed first, so it cannot hang on a line that hangs on it. A relation that cannot be followed is a stop, and the thing stands in the middle of its face until it is mended.',
    'Two holes that mirror each other:',
    fence({ things: EXAMPLE_THINGS }),
  ]
}

const EXAMPLE_THINGS = [
  {
    kind: 'sound-hole',
    id: 'hole-treble',
    along: { midway: ['neck-end wall', 'saddle'] },
    across: { midway: ['neck treble side', 'treble edge'] },
    diameter: 30,
  },
  {
    kind: 'sound-hole',
    id: 'hole-bass',
    along: { mirror: 'hole-treble' },
    across: { mirror: 'hole-treble' },
    diameter: 30,
  },
]

function kindSection(): string[] {
  const kinds = Object.values(KINDS)
  const common = new Set(['id', 'name', 'along', 'across', 'turnDegrees', 'face', 'locked', 'group'])
  const first = kinds[0]?.kind ?? ''
  const faceless = (field: Field): Field =>
    field.name === 'face' ? { ...field, options: ['see below'], standard: undefined } : field
  return [
    '## Things',
    `${code('things')} is the list of what is put on the faces. Each says its ${code('kind')}: ${kinds.map((kind) => code(kind.kind)).join(', ')}. All have these fields:`,
    fieldTable(
      '',
      fieldsOfKind(first)
        .filter((field) => common.has(field.name))
        .map(faceless),
    ),
    ...kinds.flatMap((kind) => [
      `### ${code(kind.kind)}`,
      `${kind.title}. Goes on ${kind.faces.map(code).join(', ')}${kind.faces.length > 1 ? '; on the first of these where nothing is said' : ''}.`,
      fieldTable(
        '',
        fieldsOfKind(kind.kind).filter((field) => !common.has(field.name)),
      ),
    ]),
  ]
}

function limitSection(): string[] {
  const rows = Object.entries(LIMITS).map(([name, { value, unit, label, why }]) => [
    code(`limits.${name}`),
    `${value}`,
    unit,
    `${label}. ${why}`,
  ])
  return [
    '## Limits',
    'What findings are held against. A design may set its own; what it leaves out is as here.',
    table(['field', 'left out', 'unit', 'what it is'], rows),
  ]
}

function ruleSection(): string[] {
  const rows = RULES.map(({ name, title, unit, wants, limits }) => [
    code(name),
    title,
    unit,
    wants === 'least' ? 'at least' : 'at most',
    limits.map((limit) => code(`limits.${limit}`)).join(', '),
  ])
  return [
    '## Rules',
    'What is measured, in the order of the list. The name of a finding begins with that of its rule.',
    table(['rule', 'what it measures', 'unit', 'wants', 'held against'], rows),
  ]
}

function reportSection(): string[] {
  return [
    '## The report',
    `${code('lidwright report FILE --json')} gives everything that follows from a design: one object for one file, a list of them for a folder or several files. Numbers are rounded to a millionth. Keys stay as they are; new ones may be added. ${code('[]')} stands for every entry of a list. In front stands ${code('file')}, the file as it was named.`,
    table(
      ['key', 'unit', 'what it is'],
      REPORT_KEYS.map(({ key, unit, meaning }) => [code(key), unit, meaning]),
    ),
  ]
}

function layerSection(): string[] {
  const rows = LAYER_TABLE.map((layer) => [
    code(layer.name),
    layer.meaning,
    layer.worked ? 'yes' : 'no',
    `${layer.colourIndex}`,
    code(layer.ink),
    layer.lineType.toLowerCase(),
  ])
  return [
    '## Layers of the templates',
    `SVG and DXF files have the same layers, in the order in which the wood is worked. Where a depth or width belongs to the work it follows the name, as in ${code('RECESS-3.0')} or ${code('SLOT-0.6x2.0')}; files in inches end it in ${code('IN')}.`,
    table(['layer', 'what to do', 'worked', 'DXF colour', 'SVG ink', 'line'], rows),
  ]
}

/** Columns as CSV has them, for the sample whose sheet has most tables. */
function sheetSection(): string[] {
  const reading = checkDesign({
    format: 'lidwright',
    version: VERSION,
    hand: 'right',
    things: EXAMPLE_THINGS,
  })
  if (!reading.ok) throw new Error(reading.faults[0]?.sentence)
  const tuned = tunedExample(reading.design)
  const rows = tablesOf(buildSheet(tuned)).map(({ id, title, columns }) => [
    code(id),
    title,
    columns.map(({ key }) => code(key)).join(', '),
  ])
  return [
    '## The build sheet and its tables',
    `${code('lidwright sheet FILE --out FOLDER')} writes the sheet as HTML and PDF, the label as SVG and PDF, a CSV of every table and one JSON of everything. A column of lengths comes twice in a CSV: in millimetres, and as the builder’s rule shows it. Words that a spreadsheet would run as a formula are led by an apostrophe.`,
    table(['table', 'title', 'columns'], rows),
    `Other tables come where there is something to say: ${code('overruled')}, ${code('open')}.`,
    `The JSON of everything, ${code('lidwright-everything')}, holds ${code('checksum')}, the ${code('design')} itself, the ${code('report')} as above, ${code('tables')} with their columns and rows, and ${code('parts')}: each an outline with its operations, lengths in millimetres, closed contours counter-clockwise, a bulge for every arc (the tangent of a quarter of its sweep).`,
  ]
}

/** The same with a tuning, so that tables of loads are there. */
function tunedExample(design: Design): Design {
  const tuning = tunedTo(design.strings.count)
  return { ...design, stringing: { ...design.stringing, tuning } }
}

const tunedTo = (count: number): string[] => ['E4', 'B3', 'G3', 'D3', 'A2', 'E2'].slice(0, count).reverse()

function bundleSection(): string[] {
  return [
    '## The bundle and the label',
    `${code('lidwright bundle FILE --out FILE.zip')} writes all of that and every template into one zip; the same design gives the same bytes, on the command line and in the page. ${code('read-me.txt')} in it says what each file is.`,
    `The label carries the whole design in a QR code where it fits (a hundred holes do), else its checksum: the first 16 digits of the SHA-256 of everything but ${code('record')}. ${code('lidwright recall "LIDWRIGHT1:…" --out FILE')} turns the code’s text back into the same design, as does “Open from a label” in the page. The text is ${code('LIDWRIGHT1:')}, the checksum, a colon, and the design without what is usual, as JSON, deflated (RFC 1951) and written in Base45 (RFC 9285).`,
  ]
}
