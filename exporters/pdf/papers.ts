/** Papers: the real sheets, and what a printer leaves of them. */

import type { Design } from '../../geometry/index.ts'

/** Sizes are those of the upright sheet, mm. */
export interface Paper {
  readonly name: PaperName
  readonly title: string
  readonly width: number
  readonly height: number
}

export type PaperName = 'a4' | 'a3' | 'a2' | 'letter' | 'legal' | 'tabloid'

const INCH = 25.4

/**
 * A4, A3, A2 after ISO 216. Letter and Tabloid are sizes A and B of ASME Y14.1; Legal, 8.5 by 14 inches, is in no
 * standard of drawing sheets but in every paper shop of North America.
 */
export const PAPERS: readonly Paper[] = [
  { name: 'a4', title: 'A4', width: 210, height: 297 },
  { name: 'a3', title: 'A3', width: 297, height: 420 },
  { name: 'a2', title: 'A2', width: 420, height: 594 },
  { name: 'letter', title: 'Letter', width: 8.5 * INCH, height: 11 * INCH },
  { name: 'legal', title: 'Legal', width: 8.5 * INCH, height: 14 * INCH },
  { name: 'tabloid', title: 'Tabloid', width: 11 * INCH, height: 17 * INCH },
]

export const PAPER_NAMES: readonly PaperName[] = PAPERS.map((paper) => paper.name)

/** @throws for a name that is not in the table */
export function paperNamed(name: PaperName): Paper {
  const found = PAPERS.find((paper) => paper.name === name)
  if (found === undefined) {
    throw new Error(`There is no paper "${name}": the papers are ${PAPER_NAMES.join(', ')}.`)
  }
  return found
}

/** The paper that goes with a unit: where rules are in inches, printers hold Letter. Common practice, no source. */
export function paperFor({ units }: Pick<Design, 'units'>): PaperName {
  return units.display === 'inches' ? 'letter' : 'a4'
}
