/** What the files are to be like: choices of the moment, not kept with the design. */
import type { DxfRelease, SvgPurpose, SvgWords } from '../../../exporters/index.ts'

export const COME = ['on one sheet', 'one file each', 'laid out on stock'] as const
export const LINES = ['the middle of the tool', 'the parts as drawn'] as const

export interface Choices {
  readonly come: (typeof COME)[number]
  readonly lines: (typeof LINES)[number]
  readonly purpose: SvgPurpose
  readonly letters: SvgWords
  readonly release: DxfRelease
}

export const USUAL: Choices = {
  come: 'on one sheet',
  lines: 'the middle of the tool',
  purpose: 'print',
  letters: 'text',
  release: '2000',
}

/** Pens and beams write with lines; paper takes letters. */
export const lettersFor = (purpose: SvgPurpose): SvgWords => (purpose === 'print' ? 'text' : 'single lines')
