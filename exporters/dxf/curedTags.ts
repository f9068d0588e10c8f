/**
 * The DXF library's list of pairs, with what is wrong in single pairs put right as they are pushed: whichever
 * object pushes them, ours or the library's.
 */
import TagsManager from 'dxf-writer/src/TagsManager.js'
import type { LengthUnit } from '../drawing/layers.ts'
import { BULGE_DIGITS, INCH_DIGITS, lengthLabel, MILLIMETRE_DIGITS } from '../numbers.ts'

/** Codes common to all entities: space, layer, line type, colour, line type scale, visibility, weight. */
const COMMON_CODES = new Set([67, 8, 6, 62, 48, 60, 370])

/** Real numbers by group code (Autodesk DXF Reference, "Group Code Value Types"). */
function isReal(code: number): boolean {
  return (code >= 10 && code <= 59) || (code >= 110 && code <= 149) || (code >= 210 && code <= 239)
}

export class CuredTags extends TagsManager {
  readonly #lengthDigits: number
  readonly #plotStyle: string
  #record = ''
  /** Whether the last pair was the marker that all entities share. */
  #isBehindEntity = false
  /** An entity's own marker, held back until the common codes are through. */
  #heldMarker = ''
  #hasLayer = false

  /** @param plotStyle the handle of the plot style of all layers */
  constructor(unit: LengthUnit, plotStyle: string) {
    super()
    this.#lengthDigits = unit === 'mm' ? MILLIMETRE_DIGITS : INCH_DIGITS
    this.#plotStyle = plotStyle
  }

  override push(code: number, value: string | number): void {
    if (this.#isBehindEntity || this.#heldMarker !== '') {
      if (this.#isHeldBack(code, value)) return
    }
    if (code === 0) this.#record = String(value)
    else if (code === 390) value = this.#plotStyle
    else if (isReal(code)) value = this.#real(code, value)
    else if (code < 10) this.#checkLine(code, value)
    if (value === 'AcDbEntity') this.#isBehindEntity = true
    super.push(code, value)
  }

  /**
   * Flaw: layer, line type, colour and weight stand behind the second subclass marker, so that 90 is not the
   * first tag of a polyline (and one widespread program then leaves it open); blocks name no layer at all.
   */
  #isHeldBack(code: number, value: string | number): boolean {
    if (this.#isBehindEntity) {
      this.#isBehindEntity = false
      this.#hasLayer = false
      this.#heldMarker = String(value)
      return true
    }
    if (COMMON_CODES.has(code)) {
      this.#hasLayer ||= code === 8
      return false
    }
    const marker = this.#heldMarker
    this.#heldMarker = ''
    if (!this.#hasLayer) super.push(8, '0')
    super.push(100, marker)
    return false
  }

  /** Flaw: numbers come as the language prints them: 1e-7, NaN, 0.30000000000000004, -0. */
  #real(code: number, value: string | number): string {
    const digits = code === 42 && this.#record === 'LWPOLYLINE' ? BULGE_DIGITS : this.#lengthDigits
    return lengthLabel(
      typeof value === 'number' ? value : Number.NaN,
      `Group ${code} of a ${this.#record}`,
      digits,
    )
  }

  /** Flaw: a line break in a string shifts every pair behind it. */
  #checkLine(code: number, value: string | number): void {
    if (typeof value !== 'string' || !value.includes('\n')) return
    throw new Error(
      `Group ${code} of a ${this.#record} is ${JSON.stringify(value)}: what comes behind its line break is not a group code.`,
    )
  }
}
