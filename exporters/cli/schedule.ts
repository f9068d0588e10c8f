/** `lidwright schedule`: what is drilled and cut, hole by hole in the order of the work. */
import type { Command } from 'commander'
import {
  type Design,
  measuredFrom,
  ORDER_OF_WORK,
  scheduleOf,
  scheduleWords,
  solve,
  WORKS,
} from '../../geometry/index.ts'
import { scheduleCsv } from '../schedule/csv.ts'
import { readInputs, tellTroubles } from './inputs.ts'
import { EXIT, type Io } from './io.ts'
import { settingOption } from './shared-help.ts'
import { table } from './table.ts'

interface Options {
  readonly csv?: boolean
  readonly set: readonly string[]
}

export function addSchedule(program: Command, io: Io, end: (code: number) => void): void {
  program
    .command('schedule')
    .summary('every hole and cut in the order of the work, as text or CSV')
    .description(
      'Every hole, recess and cut: on which part, how far from an edge and from the centreline, how wide, how deep,\n' +
        'with which stock drill, in the order of the work. The drill is never smaller than the hole wanted, unless\n' +
        'the list says UNDER. Which drills there are is the design’s field "drills".',
    )
    .argument('<file...>', 'designs, or folders that hold designs (*.lidwright.json)')
    .option('--csv', 'as CSV (RFC 4180), millimetres and the builder’s unit side by side')
    .addOption(settingOption())
    .addHelpText(
      'after',
      `
Examples:
  lidwright schedule tea-box.lidwright.json
  lidwright schedule tea-box.lidwright.json --csv > tea-box.csv
  lidwright schedule tea-box.lidwright.json --set drills="fractional, number and letter"

Exit codes: 0 fine; 2 bad input, with the reason on stderr. A list is given whatever is found: ask "lidwright check".`,
    )
    .action((paths: string[], options: Options) => {
      const { sources, troubles, many } = readInputs(paths, options.set, io)
      for (const [index, { file, design }] of sources.entries()) {
        if (options.csv) io.out(scheduleCsv(design, many ? { file, heading: index === 0 } : {}))
        else io.out(`${many ? `${index > 0 ? '\n' : ''}${file}\n` : ''}${scheduleText(design)}\n`)
      }
      tellTroubles(troubles, io, 'what could be read was listed')
      if (troubles.length > 0) end(EXIT.badInput)
    })
}

/** The schedule for reading, part by part. */
function scheduleText(design: Design): string {
  const rows = scheduleOf(solve(design))
  const words = rows.map((row) => scheduleWords(row, design.units))
  const parts = [...new Set(rows.map((row) => row.part))]
  const sections = parts.flatMap((part) => {
    const here = rows.flatMap((row, index) => (row.part === part ? [{ row, said: words[index] }] : []))
    const [first] = here
    if (!first) return []
    return [
      '',
      `${first.row.partTitle}, ${first.row.seen}: ${measuredFrom(first.row)}`,
      ...table(
        ['no.', 'what', 'work', 'size', 'from the edge', 'across', 'depth', 'drill'],
        here.flatMap(({ said }) =>
          said
            ? [[said.order, said.what, said.work, said.size, said.edge, said.line, said.depth, said.drill]]
            : [],
        ),
        8,
      ),
    ]
  })
  const used = WORKS.filter((work) => rows.some((row) => row.work === work))
  return [
    `${design.title}: drill and cut schedule, lengths in ${design.units.display}`,
    ...sections,
    '',
    'Order of the work',
    ...used.map((work) => `  ${work}: ${ORDER_OF_WORK[work]}`),
  ].join('\n')
}
