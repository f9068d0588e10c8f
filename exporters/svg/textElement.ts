/** A line of words on paper. */
import { numberText } from '../numbers.ts'
import { element, type Markup, textNode } from './element.ts'

export interface TextLook {
  readonly bold?: boolean
  readonly anchor?: 'start' | 'middle' | 'end'
  readonly colour?: string
  /** Radians clockwise on paper about the start of the line. */
  readonly turn?: number
}

/** Ink of words that explain, darker than 7:1 against white. */
export const INK = '#1a1a1a'
export const FAINT_INK = '#4d4d4d'

/**
 * @param x mm, where the line is anchored
 * @param y mm, its baseline
 * @param size the em, mm: bare numbers are user units here, and one user unit is one millimetre
 */
export function textElement(x: number, y: number, size: number, text: string, look: TextLook = {}): Markup {
  const [xText, yText] = [numberText(x, 'x of words', 3), numberText(y, 'y of words', 3)]
  const degrees = numberText(((look.turn ?? 0) * 180) / Math.PI, 'Turn of words', 3)
  return element(
    'text',
    {
      x: xText,
      y: yText,
      'font-size': numberText(size, 'Size of words', 3),
      'font-weight': look.bold === true ? 'bold' : undefined,
      'text-anchor': look.anchor === undefined || look.anchor === 'start' ? undefined : look.anchor,
      fill: look.colour ?? INK,
      transform: degrees === '0' ? undefined : `rotate(${degrees} ${xText} ${yText})`,
    },
    [textNode(text)],
  )
}
