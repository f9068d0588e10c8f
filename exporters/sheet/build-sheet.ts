/** The build sheet of a design: everything that goes with the instrument, in the order it is needed. */
import { type Design, FACES, type Face, partsOf, pureTuningOf } from '../../geometry/index.ts'
import { checksumOf } from '../label/checksum.ts'
import { wiringDiagram } from '../wiring/diagram.ts'
import { plainLine } from '../words/plain.ts'
import { type Block, lines, picture, type Section, type Sheet, type Table, table } from './model.ts'
import { facePicture } from './pictures/face.ts'
import { bowPicture, centsPicture, pullPicture } from './pictures/loads.ts'
import { surveyPicture } from './pictures/survey.ts'
import { wholePicture } from './pictures/whole.ts'
import { type Source, sourceOf } from './source.ts'
import { stepsOf } from './steps.ts'
import { openTable, overruledTable } from './tables/findings.ts'
import { centsTable, fretTable } from './tables/frets.ts'
import { hardwareList } from './tables/hardware.ts'
import { headTable } from './tables/head.ts'
import { bendTable, heightTable } from './tables/heights.ts'
import { placeTable } from './tables/places.ts'
import { builtTable, historyTable } from './tables/record.ts'
import { scheduleTable } from './tables/schedule.ts'
import { saddleLine, saddleTable, stringTable } from './tables/strings.ts'
import { cornerTable, outlineTable } from './tables/survey.ts'
import { boxTable, cutList } from './tables/wood.ts'

const section = (id: string, title: string, ...blocks: readonly (Block | null)[]): Section => ({
  id,
  title,
  blocks: blocks.filter((one): one is Block => one !== null),
})

const tableOrNot = (one: Table | null): Block | null => one && table(one)

/**
 * The build sheet as data. The same design gives the same sheet, and its numbers are those of the report.
 * Never throws for a valid design. Example: `buildSheet(design).sections[0].title` is `The instrument`.
 */
export function buildSheet(design: Design): Sheet {
  const source = sourceOf(design)
  return {
    title: plainLine(design.title) || 'Untitled box',
    units: design.units,
    head: headOf(source),
    checksum: checksumOf(design),
    sections: [
      section('instrument', 'The instrument', picture(wholePicture(source.layout)), ...notesOf(design.notes)),
      section(
        'wood',
        'Wood and hardware',
        table(cutList(source)),
        filled(hardwareList(source)),
        table(boxTable(source)),
        ...surveyOf(source),
      ),
      section(
        'frets',
        'Frets',
        filled(fretTable(source)),
        source.report.frets.length === 0 ? lines('No frets.') : null,
      ),
      section('head', 'Head', filled(headTable(source))),
      section('faces', 'On the faces', ...facesOf(source), filled(placeTable(source))),
      section('schedule', 'Drilling and cutting', filled(scheduleTable(source))),
      section('strings', 'Strings', ...stringsOf(source)),
      section('saddle', 'Saddle', table(saddleLine(source)), table(saddleTable(source))),
      section('heights', 'Heights, neck and lid', table(heightTable(source)), ...bendOf(source)),
      section('wiring', 'Wiring', ...wiringOfSheet(source)),
      section('steps', 'Order of work', { kind: 'steps', steps: stepsOf(source) }),
      section('findings', 'Findings', ...findingsOf(source)),
      section('as-built', 'As built', table(builtTable(source)), ...notesOf(design.record.notes)),
      section('history', 'Strung', table(historyTable(source))),
    ].filter(({ blocks }) => blocks.length > 0),
  }
}

/** The box as it was surveyed; nothing where it was measured once. */
function surveyOf(source: Source): Block[] {
  const drawn = surveyPicture(source.layout, source.report.survey)
  return [drawn && picture(drawn), tableOrNot(outlineTable(source)), tableOrNot(cornerTable(source))].filter(
    (one): one is Block => one !== null,
  )
}

/** A table that is left out where it has no rows. */
const filled = (one: Table): Block | null => (one.rows.length > 0 ? table(one) : null)

function headOf({ design, report, say }: Source): [string, string][] {
  const tuning = report.strings.map((one) => one.pitch?.name ?? '?').join(' ')
  const { record } = design
  const rows: [string, string][] = [
    ['Hand', design.hand === 'not stated' ? 'not stated; drawn right-handed' : `${design.hand}-handed`],
    ['Scale', say(report.scale.length)],
    [
      'Strings',
      `${design.strings.count}${report.pull.missing === null ? `, ${tuning}` : ', no tuning stated'}`,
    ],
    ['Box', `${say(report.box.length)} × ${say(report.box.width)} × ${say(report.box.depth)}`],
    [
      'Lengths',
      design.units.display === 'mm'
        ? 'in millimetres'
        : design.units.fraction === 0
          ? 'in decimal inches'
          : `in inches, to 1/${design.units.fraction}`,
    ],
    ['Made by', plainLine(record.maker)],
    ['Made', plainLine(record.made)],
  ]
  return rows.filter(([, value]) => value !== '')
}

function notesOf(text: string): Block[] {
  const paragraphs = text
    .split(/\n+/)
    .map((one) => plainLine(one, 4000))
    .filter((one) => one !== '')
  return paragraphs.length > 0 ? [lines(...paragraphs)] : []
}

/** Faces on which something stands or is cut, each drawn with its dimensions. */
function facesOf({ layout, letters }: Source): Block[] {
  const faces: readonly string[] = FACES
  return partsOf(layout)
    .filter((part) => faces.includes(part.id))
    .filter((part) => part.operations.some((one) => one.kind !== 'datum' && one.kind !== 'note'))
    .map((part) => {
      const things = layout.placed
        .filter((one) => one.face === (part.id as Face))
        .map((placed) => ({ placed, letter: letters.get(placed.thing.id) ?? '' }))
      return picture(facePicture(layout, part, things))
    })
}

function stringsOf(source: Source): Block[] {
  const strings = stringTable(source)
  const cents = centsTable(source)
  const pulls = pullPicture(source.layout, strings)
  const numbers = source.report.frets.filter((one) => one.number > 0).map((one) => one.number)
  const plot =
    cents &&
    centsPicture(
      numbers,
      [...source.report.strings].reverse().map((one) => ({ number: one.number, cents: one.centsAtFret })),
      cents,
    )
  return [
    ...(pulls ? [picture(pulls)] : [table(strings)]),
    ...(plot ? [picture(plot)] : cents ? [table(cents)] : []),
    ...pureOf(source),
  ]
}

/** Tuned by ear to a pure chord: what a tuner then shows. */
function pureOf({ layout, report }: Source): Block[] {
  const pure = pureTuningOf(layout)
  if (!pure) return []
  const rows = report.strings.map((one, index) => {
    const target = pure.strings[index]
    return [
      one.number,
      target ? `${target.ratio.above}/${target.ratio.below}` : null,
      target?.hertz ?? null,
      target?.offset ?? null,
    ]
  })
  return [
    table({
      id: 'tuned-pure',
      title: 'Tuned pure, as an open chord',
      columns: [
        { key: 'number', title: 'String', as: 'count' },
        { key: 'ratio', title: `Ratio to ${pure.rootName}`, as: 'words' },
        { key: 'hertz', title: 'Open', as: 'hertz' },
        { key: 'offset', title: 'A tuner shows', as: 'cents', signed: true },
      ],
      rows: rows.reverse(),
    }),
  ]
}

/** The diagram with its wires; nothing where nothing is wired. */
function wiringOfSheet({ layout }: Source): Block[] {
  const diagram = wiringDiagram(layout)
  return diagram ? [picture(diagram.picture)] : []
}

function bendOf(source: Source): Block[] {
  const bends = bendTable(source)
  if (!bends) return []
  const bow = bowPicture(source.layout, bends)
  return [bow ? picture(bow) : table(bends)]
}

function findingsOf(source: Source): Block[] {
  const blocks = [tableOrNot(overruledTable(source)), tableOrNot(openTable(source))].filter(
    (one): one is Block => one !== null,
  )
  return blocks.length > 0 ? blocks : [lines('Nothing is overruled and nothing is open.')]
}
