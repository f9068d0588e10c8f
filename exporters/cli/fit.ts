/** `lidwright fit`: what boxes can become, as a table, as JSON, or as proposals to open. */
import { join, resolve } from 'node:path'
import type { Command } from 'commander'
import { CARE_WORDS, CARES, designText, proposals, type Row, USUAL_WEIGHTS } from '../../geometry/index.ts'
import { fitAnswer, rankedFit } from '../fit/fit-answer.ts'
import { fitCsv } from '../fit/fit-table.ts'
import { askedOf, type FitOptions, wishesOf } from './fit-asked.ts'
import { fitText } from './fit-text.ts'
import { foldersOf, readInputs, type Source, SUFFIX, tellTroubles } from './inputs.ts'
import { counted, EXIT, type Io, Trouble } from './io.ts'
import { settingOption } from './shared-help.ts'
import { type Text, writeWhole } from './write-files.ts'

interface Options extends FitOptions {
  readonly json?: boolean
  readonly csv?: boolean
  readonly all?: boolean
  readonly out?: string
  readonly best: string
  readonly set: readonly string[]
}

const MOST_PROPOSALS = 20

const CARE_LIST = CARES.map(
  (care) => `  ${care.padEnd(10)} ${String(USUAL_WEIGHTS[care]).padEnd(3)} ${CARE_WORDS[care].help}`,
).join('\n')

export function addFit(program: Command, io: Io, end: (code: number) => void): void {
  program
    .command('fit')
    .summary('what a box can become: scales, strings and places of the saddle')
    .description(
      'Tries scale lengths, counts of strings and places of the saddle on the box and the neck blank of a design: where\n' +
        'the body meets the frets, how long it gets, how hard it pulls, how tight its tightest margin is; and of what\n' +
        'cannot be built, why. Things on the faces stay where their places put them; what of them would be in the way\n' +
        'is counted apart, for it can be moved, unless it is locked.',
    )
    .argument('<file...>', 'designs, or folders that hold designs (*.lidwright.json)')
    .option('--scales <lengths>', 'scale lengths, as in "22in,24in,628mm"; else those in use')
    .option(
      '--strings <counts>',
      'counts of strings, as in "3,4" or "2-4"; else 2, 3, 4, 6 and the design’s own',
    )
    .option(
      '--places <shares>',
      'places of the saddle on the lid, as in "60%,70%"; else nine from 52% to 84%',
    )
    .option('--own-strings', 'the set of strings as stated wherever its count is asked for')
    .option(
      '--care <name=weight>',
      'how much a care counts; may be repeated',
      (text: string, before: string[]) => [...before, text],
      [] as string[],
    )
    .option('--note <pitch>', 'a note that the air of the box should speak near, as in "G3"')
    .option('--all', 'every row, and those that cannot be built with their reasons')
    .option('--json', 'every row as JSON: one object, or a list of them for folders and several files')
    .option('--csv', 'every row as one table for a spreadsheet, all designs below each other')
    .option(
      '--out <folder>',
      'write the best as designs to open, and all rows as JSON and CSV, into a folder for each design',
    )
    .option('--best <count>', 'how many proposals, each of another scale or count', '3')
    .addOption(settingOption())
    .addHelpText(
      'after',
      `
Cares, with what they count if you do not say:
${CARE_LIST}

Examples:
  lidwright fit tea-box.lidwright.json
  lidwright fit tea-box.lidwright.json --strings 3,4 --scales "23in,25in" --care short=2 --note G3
  lidwright fit class --json > class-fit.json
  lidwright fit class --csv > class-fit.csv
  lidwright fit surveys --out proposals --best 2

Exit codes: 0 something fits each box; 1 nothing that was asked fits one of them; 2 bad input, with the reason on stderr.`,
    )
    .action((paths: string[], options: Options) => {
      const best = bestOf(options.best)
      if (options.json && options.csv) throw new Trouble('--json and --csv: one of them is wanted.')
      const { sources, troubles, many } = readInputs(paths, options.set, io)
      const fitted = sources.map((source) => fittedOf(source, options))
      if (options.out !== undefined) write(fitted, options.out, many, best, io)
      else if (options.csv) io.out(csvOf(fitted))
      else if (options.json) {
        const answers = fitted.map(({ source, answer }) => ({ file: source.file, ...answer() }))
        if (many || answers.length > 0) io.out(`${JSON.stringify(many ? answers : answers[0], null, 2)}\n`)
      } else
        io.out(
          fitted
            .map(
              ({ source, rows }) =>
                `${many ? `${source.file}\n` : ''}${fitText(source.design, rows, options.all ?? false)}\n`,
            )
            .join('\n'),
        )
      tellTroubles(troubles, io, 'what could be read was tried')
      if (fitted.some(({ rows }) => rows.every((row) => row.numbers === null))) end(EXIT.stop)
      if (troubles.length > 0) end(EXIT.badInput)
    })
}

interface Fitted {
  readonly source: Source
  readonly rows: readonly Row[]
  answer(): ReturnType<typeof fitAnswer>
  csv(): string
}

function fittedOf(source: Source, options: Options): Fitted {
  const { design } = source
  const questions = askedOf(design, options)
  const wishes = wishesOf(design, options)
  const rows = rankedFit(design, questions, wishes)
  return {
    source,
    rows,
    answer: () => fitAnswer(design, questions, rows, wishes),
    csv: () => fitCsv(design, rows, wishes, source.file),
  }
}

/** The headings once, whatever the unit of a design: lengths stand in millimetres and beside it on its own rule. */
function csvOf(fitted: readonly Fitted[]): string {
  return fitted
    .map((one, index) => {
      const text = one.csv()
      return index === 0 ? text : text.slice(text.indexOf('\r\n') + 2)
    })
    .join('')
}

function bestOf(text: string): number {
  const count = /^\d{1,2}$/.test(text) ? Number(text) : 0
  if (count >= 1 && count <= MOST_PROPOSALS) return count
  throw new Trouble(`--best "${text}": a whole number from 1 to ${MOST_PROPOSALS} is wanted.`)
}

function write(fitted: readonly Fitted[], out: string, many: boolean, best: number, io: Io) {
  const folders = foldersOf(
    fitted.map((one) => one.source),
    out,
    many,
  )
  const texts: Text[] = []
  const lines: string[] = []
  for (const { source, rows, answer, csv } of fitted) {
    const folder = folders.get(source) ?? out
    const path = (name: string) => resolve(io.cwd, join(folder, name))
    const chosen = proposals(rows).slice(0, best)
    chosen.forEach(({ design }, index) => {
      texts.push({ path: path(`proposal-${index + 1}${SUFFIX}`), text: designText(design) })
    })
    texts.push({
      path: path('fit.json'),
      text: `${JSON.stringify({ file: source.file, ...answer() }, null, 2)}\n`,
    })
    texts.push({ path: path('fit.csv'), text: csv() })
    lines.push(
      chosen.length === 0
        ? `${source.file}: nothing that was asked fits; ${join(folder, 'fit.json')} says why.`
        : `${source.file}: ${counted(chosen.length, 'proposal')} in ${folder}.`,
    )
  }
  writeWhole(texts)
  if (lines.length > 0) io.out(`${lines.join('\n')}\n`)
}
