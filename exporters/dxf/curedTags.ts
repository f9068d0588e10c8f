/**
 * The DXF library's list of pairs, with what is wrong in single pairs put right as they are pushed: whichever
 * object pushes them, ours or the library's.
 */
import TagsManager from 'dxf-writer/src/TagsManager.js'
import type { LengthUnit } from '../drawing/layers.ts'
import { realText } from './fileFacts.ts'

/** Real numbers by group code (Autodesk DXF Reference, "Group Code Value Types"). */
function isReal(code: number): boolean {
  return (code >= 10 && code <= 59) || (code >= 110 && code <= 149) || (code >= 210 && code <= 239)
}

/** The two records around a block. */
const BLOCK_ENDS: ReadonlySet<string> = new Set(['BLOCK', 'ENDBLK'])

export class CuredTags extends TagsManager {
  readonly #unit: LengthUnit
  readonly #plotStyle: string
  #record = ''

  /** @param plotStyle the handle of the plot style of all layers */
  constructor(unit: LengthUnit, plotStyle: string) {
    super()
    this.#unit = unit
    this.#plotStyle = plotStyle
  }

  override push(code: number, value: string | number): void {
    if (code === 0) this.#record = String(value)
    // Flaw: whatever the drawing, layers point to handle 1 as their plot style.
    else if (code === 390) value = this.#plotStyle
    else if (isReal(code)) value = this.#real(code, value)
    else if (code < 10) this.#checkLine(code, value)
    super.push(code, value)
    // Flaw: blocks name no layer, which follows the marker of all entities.
    if (value === 'AcDbEntity' && BLOCK_ENDS.has(this.#record)) super.push(8, '0')
  }

  /** Pairs that are text already, joined with line breaks: nothing is looked at. */
  pushLines(lines: string): void {
    this.lines.push(lines)
  }

  /** Flaw: numbers come as the language prints them: 1e-7, NaN, 0.30000000000000004, -0. */
  #real(code: number, value: string | number): string {
    const number = typeof value === 'number' ? value : Number.NaN
    return realText(number, `Group ${code} of a ${this.#record}`, this.#unit)
  }

  /** Flaw: a line break in a string shifts every pair behind it. */
  #checkLine(code: number, value: string | number): void {
    if (typeof value !== 'string' || !value.includes('\n')) return
    throw new Error(
      `Group ${code} of a ${this.#record} is ${JSON.stringify(value)}: what comes behind its line break is not a group code.`,
    )
  }
}
