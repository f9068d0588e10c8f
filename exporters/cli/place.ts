/** `lidwright place`: where holes, pickup, controls, jack and screws may go, three answers for each design. */
import { join, resolve } from 'node:path'
import type { Command } from 'commander'
import {
  apply,
  type Design,
  designText,
  type Finding,
  formatLength,
  formatMeasure,
  KINDS,
  type KindName,
  movableIn,
  type Placing,
  type PlacingWishes,
  type Proposal,
  placeFor,
  readPitch,
  ruleOf,
} from '../../geometry/index.ts'
import { foldersOf, readInputs, type Source, SUFFIX, tellTroubles } from './inputs.ts'
import { counted, EXIT, type Io, Trouble } from './io.ts'
import { settingOption } from './shared-help.ts'
import { type Text, writeWhole } from './write-files.ts'

interface Options {
  readonly things?: string
  readonly add: readonly string[]
  readonly symmetry?: boolean
  readonly note?: string
  readonly pickupAt?: string
  readonly jackOffKnee?: boolean
  readonly json?: boolean
  readonly out?: string
  readonly set: readonly string[]
}

const MOST_ADDED = 20

export function addPlace(program: Command, io: Io, end: (code: number) => void): void {
  program
    .command('place')
    .summary('where holes, pickup, controls, jack and screws may go')
    .description(
      'Places what stands on the faces so that its tightest margin is as wide as can be had: clear of neck, walls,\n' +
        'blocks, artwork, edges and each other. Three answers that differ, each with its tightest margins and with what\n' +
        'every other rule says of it. What is locked stays; what follows another goes with it. The same design and\n' +
        'wishes give the same answers.',
    )
    .argument('<file...>', 'designs, or folders that hold designs (*.lidwright.json)')
    .option('--things <ids>', 'place only these, as in "hole-bass,jack"')
    .option(
      '--add <kind=count>',
      'add and place so many, as in "sound-hole=2"; may be repeated',
      (text: string, before: string[]) => [...before, text],
      [] as string[],
    )
    .option('--symmetry', 'two of a kind and size become mirror images of each other')
    .option(
      '--note <pitch>',
      'a note near which the air is to sound; openings grow or shrink for it, as in "G2"',
    )
    .option('--pickup-at <share>', 'the pickup at this share of the scale from the saddle, as in "25%"')
    .option(
      '--jack-off-knee',
      'the jack on the tail-end wall, or on the third of the treble wall next to the tail (common practice, no source)',
    )
    .option('--json', 'as JSON: one object, or a list of them for folders and several files')
    .option('--out <folder>', 'write the answers as designs to open, into a folder for each design')
    .addOption(settingOption())
    .addHelpText(
      'after',
      `
Examples:
  lidwright place tea-box.lidwright.json
  lidwright place tea-box.lidwright.json --add sound-hole=2 --symmetry --note G2
  lidwright place crate.lidwright.json --pickup-at 25% --jack-off-knee --json
  lidwright place surveys --out proposals

Exit codes: 0 every design has an answer in which no stop is about what was placed; 1 one has none, so what was asked
does not fit there; 2 bad input, with the reason on stderr. A stop that no place can mend (the hand not stated, a blank
too short) is told with every answer and does not count here: "lidwright check" ends with 1 for it. Where nothing can be
placed, because it is locked or follows another, that is said and nothing is wrong.`,
    )
    .action((paths: string[], options: Options) => {
      const wishes = wishesOf(options)
      const { sources, troubles, many } = readInputs(paths, options.set, io)
      const answers = sources.map((source) => ({ source, placing: placedBy(source, wishes, options) }))
      if (options.out !== undefined) write(answers, options.out, many, io)
      else if (options.json) {
        const told = answers.map(({ source, placing }) => ({
          file: source.file,
          ...placeAnswer(source.design, placing),
        }))
        if (many || told.length > 0) io.out(`${JSON.stringify(many ? told : told[0], null, 2)}\n`)
      } else
        io.out(
          answers
            .map(
              ({ source, placing }) => `${many ? `${source.file}\n` : ''}${textOf(source.design, placing)}\n`,
            )
            .join('\n'),
        )
      tellTroubles(troubles, io, 'what could be read was placed')
      const unanswered = ({ proposals, placed }: Placing) =>
        placed.length > 0 && !proposals.some((one) => one.ownStops.length === 0)
      if (answers.some(({ placing }) => unanswered(placing))) end(EXIT.stop)
      if (troubles.length > 0) end(EXIT.badInput)
    })
}

function placedBy({ file, design }: Source, wishes: PlacingWishes, { things }: Options): Placing {
  if (things === undefined) return placeFor(design, wishes)
  const wanted = idsIn(things)
  const movable = new Set(movableIn(design).map((one) => one.id))
  const not = wanted.filter((id) => !movable.has(id))
  if (not.length > 0)
    throw new Trouble(
      `${file}: ${not.map((id) => `"${id}"`).join(', ')} cannot be placed: it is not there, locked, or follows another. What can: ${[...movable].join(', ') || 'nothing'}.`,
    )
  return placeFor(design, { ...wishes, things: wanted })
}

const idsIn = (text: string): string[] => text.split(/[,\s]+/).filter(Boolean)

function wishesOf({ add, symmetry, note, pickupAt, jackOffKnee }: Options): PlacingWishes {
  return {
    ...(symmetry ? { symmetry } : {}),
    ...(jackOffKnee ? { jackOffKnee } : {}),
    ...(note === undefined ? {} : { hertz: hertzIn(note) }),
    ...(pickupAt === undefined ? {} : { pickupAt: shareIn(pickupAt) }),
    ...(add.length === 0 ? {} : { add: addedBy(add) }),
  }
}

function hertzIn(text: string): number {
  const pitch = readPitch(text)
  if (!pitch.ok) throw new Trouble(`--note "${text}": ${pitch.sentence}`)
  return pitch.hertz
}

function shareIn(text: string): number {
  const [, figures = '', percent] = /^\s*(\d*\.?\d+)\s*(%?)\s*$/.exec(text) ?? []
  const share = Number(figures) / (percent ? 100 : 1)
  if (figures !== '' && share > 0 && share <= 0.5) return share
  throw new Trouble(`--pickup-at "${text}": a share of the scale up to a half is wanted, as in 25% or 0.25.`)
}

function addedBy(texts: readonly string[]): Partial<Record<KindName, number>> {
  const added: Partial<Record<KindName, number>> = {}
  for (const text of texts) {
    const [kind = '', count = ''] = text.split('=')
    if (!Object.hasOwn(KINDS, kind) || !/^\d+$/.test(count) || Number(count) > MOST_ADDED)
      throw new Trouble(
        `--add "${text}": a kind and how many, up to ${MOST_ADDED}, are wanted, as in sound-hole=2. Kinds: ${Object.keys(KINDS).join(', ')}.`,
      )
    added[kind as KindName] = Number(count)
  }
  return added
}

/** An answer as data: millimetres and the findings' own units. */
export function placeAnswer(design: Design, { proposals, said, placed }: Placing) {
  return {
    title: design.title,
    placed,
    said,
    proposals: proposals.map((one) => ({
      stops: one.stops.map((finding) => finding.key),
      stopsOfPlaced: one.ownStops.map((finding) => finding.key),
      cares: one.cares.map((finding) => finding.key),
      tightest: one.tightest.map(({ key, measured, limit, margin }) => ({ key, measured, limit, margin })),
      wishes: one.wishes,
      things: one.layout.placed.map(({ thing, face, at }) => ({ id: thing.id, face, x: at.x, y: at.y })),
    })),
  }
}

function textOf(design: Design, { proposals, said, placed }: Placing): string {
  if (placed.length === 0)
    return `${design.title}: nothing here can be placed; what is there is locked or follows another.`
  const lines = [`${design.title}: ${counted(proposals.length, 'answer')} for ${placed.join(', ')}`, ...said]
  proposals.forEach((one, index) => {
    lines.push('', `${index + 1}. ${headOf(one)}`)
    for (const wish of one.wishes) lines.push(`   ${wish.met ? 'met:    ' : 'missed: '} ${wish.words}`)
    for (const finding of one.tightest) lines.push(`   ${marginWords(finding, design)}`)
    for (const { thing, face, at } of one.layout.placed)
      if (placed.includes(thing.id))
        lines.push(
          `   ${thing.id.padEnd(16)} ${face.padEnd(14)} ${length(at.x, design)} along, ${length(at.y, design)} across`,
        )
  })
  return lines.join('\n')
}

const length = (mm: number, { units }: Design): string => formatLength(mm, units, { unit: true })

const headOf = ({ stops, ownStops, cares }: Proposal): string => {
  const keys = (list: readonly Finding[]) => list.map((one) => one.key).join(', ')
  const others = stops.filter((one) => !ownStops.includes(one))
  return [
    `${ownStops.length === 0 ? 'no stop' : counted(ownStops.length, 'stop')} about what was placed${ownStops.length === 0 ? '' : ` (${keys(ownStops)})`}`,
    ...(others.length === 0 ? [] : [`${counted(others.length, 'other stop')} (${keys(others)})`]),
    counted(cares.length, 'care'),
  ].join(', ')
}

const marginWords = (finding: Finding, { units }: Design): string =>
  `margin ${formatMeasure(finding.margin ?? 0, finding, units, { unit: true })}: ${ruleOf(finding.rule).title.toLowerCase()}, ${finding.about.join(' and ')}`

function write(
  answers: readonly { readonly source: Source; readonly placing: Placing }[],
  out: string,
  many: boolean,
  io: Io,
): void {
  const folders = foldersOf(
    answers.map((one) => one.source),
    out,
    many,
  )
  const texts: Text[] = []
  const lines: string[] = []
  for (const { source, placing } of answers) {
    const folder = folders.get(source) ?? out
    const path = (name: string) => resolve(io.cwd, join(folder, name))
    placing.proposals.forEach(({ change }, index) => {
      texts.push({
        path: path(`placed-${index + 1}${SUFFIX}`),
        text: designText(apply(source.design, change)),
      })
    })
    texts.push({
      path: path('place.json'),
      text: `${JSON.stringify({ file: source.file, ...placeAnswer(source.design, placing) }, null, 2)}\n`,
    })
    lines.push(`${source.file}: ${counted(placing.proposals.length, 'answer')} in ${folder}.`)
  }
  writeWhole(texts)
  if (lines.length > 0) io.out(`${lines.join('\n')}\n`)
}
