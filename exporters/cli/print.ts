/** `lidwright templates --pdf`: paper, way round, margins and the printer's correction, from words to sheets. */
import { basename } from 'node:path'
import { type Command, Option } from 'commander'
import { type Part, readLength } from '../../geometry/index.ts'
import {
  correctionFrom,
  MEASURED_BAR,
  NO_CORRECTION,
  PAPER_NAMES,
  type PaperName,
  type PrintSetup,
  planPrint,
  printFileName,
  printPdf,
  STANDARD_SETUP,
} from '../pdf/index.ts'
import { type Io, Trouble } from './io.ts'

export interface PrintOptions {
  readonly pdf?: boolean
  readonly paper?: PaperName
  readonly upright?: boolean
  readonly lying?: boolean
  readonly margin?: number
  readonly overlap?: number
  readonly barX?: number
  readonly barY?: number
}

/** A length in any unit; without one it is taken as millimetres. Throws a `Trouble` that names the option. */
const lengthFor = (option: string) => (text: string) => {
  const reading = readLength(text, 'mm')
  if (!reading.ok) throw new Trouble(`${option}: ${reading.sentence}`)
  return reading.mm
}

/** Adds what printing on paper takes to a command. */
export function addPrintOptions(command: Command): Command {
  const length = (name: string, help: string) =>
    new Option(`--${name} <length>`, help).argParser(lengthFor(`--${name}`))
  return command
    .option('--pdf', 'a PDF for printing at 1:1, tiled over sheets of paper')
    .addOption(
      new Option('--paper <name>', 'paper of the PDF; A4 for millimetres, Letter for inches').choices(
        PAPER_NAMES,
      ),
    )
    .addOption(
      new Option('--upright', 'sheets stand upright; else each part lies as it needs fewer').conflicts(
        'lying',
      ),
    )
    .addOption(new Option('--lying', 'sheets lie on their long edge').conflicts('upright'))
    .addOption(length('margin', `white edge that the printer leaves (${STANDARD_SETUP.margin} mm)`))
    .addOption(length('overlap', `what neighbouring sheets share (${STANDARD_SETUP.overlap} mm)`))
    .addOption(
      length(
        'bar-x',
        `what the ${MEASURED_BAR} mm bar X measured on a print that was not corrected: along the paper's short edge`,
      ),
    )
    .addOption(length('bar-y', 'the same for bar Y: along the long edge'))
}

/** How to print, as the options say. A doubtful correction is told on stderr, an impossible one refused. */
export function setupFrom(options: PrintOptions, io: Io): Omit<PrintSetup, 'paper'> {
  const { barX, barY } = options
  let correction = NO_CORRECTION
  if (barX !== undefined || barY !== undefined) {
    const reading = correctionFrom(barX ?? MEASURED_BAR, barY ?? MEASURED_BAR)
    if (!reading.ok) throw new Trouble(`${reading.sentence} Nothing was written.`)
    if (reading.question !== undefined) io.err(`${reading.question}\n`)
    correction = reading.correction
  }
  return {
    way: options.upright ? 'upright' : options.lying ? 'lying' : 'fewest',
    margin: options.margin ?? STANDARD_SETUP.margin,
    overlap: options.overlap ?? STANDARD_SETUP.overlap,
    correction,
  }
}

/**
 * The sheets of some parts, as a file's name and bytes. What is on paper otherwise than written is told on stderr.
 *
 * @param file the design's file, for what has to be said about it
 */
export async function printed(
  file: string,
  parts: readonly Part[],
  setup: PrintSetup,
  title: string,
  io: Io,
): Promise<{ readonly name: string; readonly text: Uint8Array }> {
  const reading = planPrint(parts, setup)
  if (!reading.ok) throw new Trouble(`${reading.sentence} Nothing was written.`)
  const { bytes, cautions } = await printPdf(reading.plan, { title })
  for (const caution of cautions) io.err(`${basename(file)}: ${caution}\n`)
  return { name: printFileName(title, parts, setup.paper), text: bytes }
}
