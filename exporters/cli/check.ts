/** `lidwright check`: the findings of designs, gravest first. */
import type { Command } from 'commander'
import {
  blocks,
  byWorstCase,
  check,
  type Finding,
  formatMeasure,
  type Grade,
  type Layout,
  measureAgainWords,
  ruleOf,
  sentenceOf,
  solve,
  type WorstCase,
  worstCasesOf,
} from '../../geometry/index.ts'
import { reportOf } from '../report.ts'
import { readInputs, type Source, tellTroubles } from './inputs.ts'
import { counted, EXIT, type Io } from './io.ts'
import { EXIT_CODES, settingOption } from './shared-help.ts'

interface Options {
  readonly all?: boolean
  readonly json?: boolean
  readonly set: readonly string[]
}

export function addCheck(program: Command, io: Io, end: (code: number) => void): void {
  program
    .command('check')
    .summary('what is wrong with a design, gravest first')
    .description(
      'Measures every clearance of a design and says what is wrong, gravest first.\n' +
        'A stop cannot be built or will fail; a care is risky and yours to decide; a note is worth knowing. Every\n' +
        'margin stands with how far it may be off, from the rule that measured the box (rule.graduation) or from\n' +
        'tolerances of its own.',
    )
    .argument('<file...>', 'designs, or folders that hold designs (*.lidwright.json)')
    .option('--all', 'also what holds, each with its margin')
    .option('--json', 'as JSON: one object, or a list of them for folders and several files')
    .addOption(settingOption())
    .addHelpText(
      'after',
      `
Examples:
  lidwright check tea-box.lidwright.json
  lidwright check tea-box.lidwright.json --set "box.lid.thickness=1/8in" --all
  lidwright check boxes --json

${EXIT_CODES}`,
    )
    .action((paths: string[], options: Options) => {
      const { sources, troubles, many } = readInputs(paths, options.set, io)
      const checked = sources.map((source) => ({ source, layout: solve(source.design) }))
      if (options.json) {
        const answers = checked.map(({ source }) => answerOf(source, options.all ?? false))
        if (many || answers.length > 0) io.out(`${JSON.stringify(many ? answers : answers[0], null, 2)}\n`)
      } else
        io.out(
          checked.map(({ source, layout }) => textOf(source, layout, options.all ?? false, many)).join('\n'),
        )
      tellTroubles(troubles, io, 'what could be read was checked')
      if (checked.some(({ layout }) => check(layout).some(blocks))) end(EXIT.stop)
      if (troubles.length > 0) end(EXIT.badInput)
    })
}

function answerOf({ file, design }: Source, all: boolean) {
  const { title, hand, findings } = reportOf(design, { tolerances: true })
  return {
    file,
    title,
    hand,
    blocked: findings.some((one) => one.blocks),
    findings: findings.filter((one) => all || one.grade !== 'clear'),
  }
}

const GROUPS: readonly (readonly [Grade, string])[] = [
  ['stop', 'STOP: cannot be built, or will fail'],
  ['care', 'CARE: risky, yours to decide'],
  ['note', 'NOTE: worth knowing'],
  ['clear', 'CLEAR: holds'],
]

function textOf(source: Source, layout: Layout, all: boolean, named: boolean): string {
  const findings = check(layout)
  const worst = worstCasesOf(layout)
  const lines = [...(named ? [source.file] : []), `${source.design.title}: ${summaryOf(findings)}`]
  for (const [grade, heading] of GROUPS) {
    const here = byWorstCase(findings, worst).filter((one) => one.grade === grade)
    if (here.length === 0 || (grade === 'clear' && !all)) continue
    lines.push('', heading)
    for (const finding of here) lines.push(...linesOf(finding, layout, worst.get(finding.key)))
  }
  const doubtful = findings.filter((one) => one.grade === 'clear' && worst.get(one.key)?.doubtful)
  if (!all && doubtful.length > 0) {
    lines.push('', 'MEASURE AGAIN: holds, but not within what was measured')
    for (const finding of doubtful) lines.push(...linesOf(finding, layout, worst.get(finding.key)))
  }
  return `${lines.join('\n')}\n`
}

/** `1 stop, 2 cares, no notes; 31 measures hold`. */
export function summaryOf(findings: readonly Finding[]): string {
  const count = (grade: Grade) => findings.filter((one) => one.grade === grade).length
  const overruled = findings.filter((one) => one.grade === 'stop' && !blocks(one)).length
  return [
    counted(count('stop'), 'stop') + (overruled > 0 ? ` (${overruled} overruled)` : ''),
    counted(count('care'), 'care'),
    `${counted(count('note'), 'note')}; ${counted(count('clear'), 'measure holds', 'measures hold')}`,
  ].join(', ')
}

function linesOf(finding: Finding, layout: Layout, worst: WorstCase | undefined): string[] {
  const lines = [`  ${sentenceOf(finding, layout)}`]
  if (finding.measured !== null && finding.limit !== null)
    lines.push(`    ${measuresOf(finding, layout, worst)}`)
  const again = worst && measureAgainWords(finding, worst, layout)
  if (again) lines.push(`    ${again}`)
  if (finding.overruled !== undefined) lines.push(`    overruled: ${finding.overruled}`)
  lines.push(`    [${finding.key}]`)
  return lines
}

function measuresOf(finding: Finding, { design }: Layout, worst: WorstCase | undefined): string {
  const show = (value: number) => formatMeasure(value, finding, design.units, { unit: true })
  const side = ruleOf(finding.rule).wants === 'least' ? 'at least' : 'at most'
  const parts = [`measured ${show(finding.measured ?? 0)}`, `${side} ${show(finding.limit ?? 0)}`]
  if (finding.margin !== null)
    parts.push(
      `margin ${show(finding.margin)}${worst && worst.tolerance > 0 ? `, give or take ${show(worst.tolerance)}` : ''}`,
    )
  return parts.join(', ')
}
