/** `lidwright new`: a starting design from the sizes of a box. */
import { basename, resolve } from 'node:path'
import type { Command } from 'commander'
import {
  blocks,
  check,
  type Design,
  type Field,
  fieldsOf,
  formatLength,
  readLength,
  type Stated,
  sentenceOf,
  solve,
  startingDesign,
} from '../../geometry/index.ts'
import { summaryOf } from './check.ts'
import { EXIT, type Io, Trouble } from './io.ts'
import { applySettings } from './settings.ts'
import { settingOption } from './shared-help.ts'
import { exists, writeWhole } from './write-files.ts'

interface Options {
  readonly title?: string
  readonly hand?: string
  readonly units?: string
  readonly out: string
  readonly replace?: boolean
  readonly fretless?: boolean
  readonly set: readonly string[]
  readonly [size: string]: unknown
}

/** Options that state one field each: what `startingDesign` calls it, and where the design holds it. */
const SIZES = {
  length: ['box', 'length'],
  width: ['box', 'width'],
  depth: ['box', 'depth'],
  wall: ['box', 'walls.neckEnd'],
  lid: ['box', 'lid.thickness'],
  base: ['box', 'base.thickness'],
  scale: ['scale', 'length'],
} as const satisfies Partial<Record<keyof Stated, readonly [string, string]>>

type Size = keyof typeof SIZES
type Units = Design['units']['display']

export function addNew(program: Command, io: Io, end: (code: number) => void): void {
  program
    .command('new')
    .summary('a starting design from the sizes of a box')
    .description(
      'Makes a whole design from the few sizes you have: neck, spans, posts, tail holes, saddle and two sound\n' +
        'holes, chosen so that it should hold. Sizes may be written in any unit; what you leave out is usual.\n' +
        'State the hand: while it is not stated, no template is written.',
    )
    .option('--title <words>', 'name of the instrument')
    .option('--length <length>', 'box, outside, along the neck')
    .option('--width <length>', 'box, outside, across the neck')
    .option('--depth <length>', 'box, outside, lid closed')
    .option('--wall <length>', 'thickness of the walls')
    .option('--lid <length>', 'thickness of the lid')
    .option('--lid-fit <words>', '"on the walls" or "between the walls"')
    .option('--base <length>', 'thickness of the base')
    .option('--strings <count>', 'how many strings')
    .option('--scale <length>', 'scale length, nut to saddle')
    .option('--frets <count>', 'how many frets')
    .option('--fretless', 'frets are only marked')
    .option('--hand <hand>', 'right or left: the hand that plucks')
    .option(
      '--units <unit>',
      'mm or inches: for sizes without a unit, and on sheets; else as the sizes are written',
    )
    .option('--out <file>', 'where the design goes; stdout where it is not named, or named "-"', 'stdout')
    .option('--replace', 'write over a design that lies there already')
    .addOption(settingOption())
    .addHelpText(
      'after',
      `
Examples:
  lidwright new --length 240 --width 180 --depth 55 --hand right --out box.lidwright.json
  lidwright new --title "Tea box" --length "9 1/2in" --width 7in --depth 2in --strings 4 --scale 25in --hand left
  lidwright new --length 260 --set tailpiece.holes=5 --set things.hole-treble.diameter=30

Exit codes: 0 the design was made (a stop in it is told on stderr); 2 bad input, with the reason on stderr.`,
    )
    .action((options: Options) => {
      const design = designFor(options)
      const text = `${JSON.stringify(design, null, 2)}\n`
      if (toStdout(options.out)) io.out(text)
      else {
        const path = resolve(io.cwd, options.out)
        if (!options.replace && exists(path))
          throw new Trouble(
            `${options.out}: something lies there already and was left untouched. Choose another name, or add --replace.`,
          )
        writeWhole([{ path, text }])
        io.out(`Wrote ${options.out}: ${summaryOf(check(solve(design)))}.\n`)
      }
      tellStops(design, toStdout(options.out) ? 'the design' : basename(options.out), io)
      end(EXIT.fine)
    })
}

function designFor(options: Options): Design {
  const units = unitsFor(options)
  const troubles: string[] = []
  const stated: Record<string, unknown> = {
    units: { display: units, fraction: 32 },
    fretless: options.fretless ?? false,
  }
  const take = <T>(name: string, read: { value: T } | { sentence: string }) => {
    if ('sentence' in read) troubles.push(read.sentence)
    else stated[name] = read.value
  }
  for (const [name, [section, path]] of Object.entries(SIZES)) {
    const text = options[name]
    if (typeof text === 'string') take(name, sizeOf(`--${name}`, text, field(section, path), units))
  }
  for (const [name, min, max] of [
    ['strings', 1, 12],
    ['frets', 0, 36],
  ] as const) {
    const text = options[name]
    if (typeof text === 'string') take(name, countOf(`--${name}`, text, min, max))
  }
  if (options.hand !== undefined) take('hand', wordOf('--hand', options.hand, field('', 'hand')))
  if (typeof options.lidFit === 'string')
    take('lidFit', wordOf('--lid-fit', options.lidFit, field('box', 'lid.fit')))
  if (troubles.length > 0) throw new Trouble(troubles.join('\n'))
  const title = options.title === undefined ? [] : [`title=${options.title}`]
  const set = applySettings(startingDesign(stated as Stated), [...title, ...options.set])
  if (!set.ok) throw new Trouble(set.sentences.join('\n'))
  return set.design
}

function field(section: string, name: string): Field {
  const found = fieldsOf(section).find((one) => one.name === name)
  if (!found) throw new Error(`a design has no field "${section}.${name}"`)
  return found
}

/** As stated; else inches where a size is written in them and none in millimetres. */
function unitsFor(options: Options): Units {
  const stated = options.units?.toLowerCase()
  if (stated === 'mm' || stated === 'inches') return stated
  if (stated !== undefined) throw new Trouble(`--units ${options.units}: mm or inches is wanted.`)
  const texts = (Object.keys(SIZES) as Size[])
    .map((name) => options[name])
    .filter((text) => typeof text === 'string')
  const metric = texts.some((text) => /m\s*$/i.test(text))
  const imperial = texts.some((text) => /(in|inch|inches|ft|feet|foot|["”″'’′])\.?\s*$/i.test(text))
  return imperial && !metric ? 'inches' : 'mm'
}

function sizeOf(option: string, text: string, { min = 0, max = 10_000 }: Field, units: Units) {
  const read = readLength(text, units)
  if (!read.ok) return { sentence: `${option}: ${read.sentence}` }
  if (read.mm >= min && read.mm <= max) return { value: read.mm }
  const say = (mm: number) => formatLength(mm, { display: units, fraction: 32 }, { unit: true })
  return {
    sentence: `${option} "${text}": that is ${say(read.mm)}; from ${say(min)} to ${say(max)} is taken.`,
  }
}

function countOf(option: string, text: string, min: number, max: number) {
  const count = /^\d{1,4}$/.test(text.trim()) ? Number(text) : Number.NaN
  if (count >= min && count <= max) return { value: count }
  return { sentence: `${option} "${text}": a whole number from ${min} to ${max} is wanted.` }
}

function wordOf(option: string, text: string, { options = [] }: Field) {
  const word = options.find((one) => one === text.toLowerCase())
  if (word !== undefined) return { value: word }
  return { sentence: `${option} "${text}": wanted is ${options.map((one) => `"${one}"`).join(' or ')}.` }
}

function tellStops(design: Design, name: string, io: Io): void {
  const layout = solve(design)
  for (const finding of check(layout).filter(blocks))
    io.err(`${name}: stop: ${sentenceOf(finding, layout)}\n`)
}

const toStdout = (out: string) => out === 'stdout' || out === '-'
