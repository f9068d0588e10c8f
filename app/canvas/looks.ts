/** What the drawing looks like, read from the style sheet: one set of custom properties for light and dark. */

const NAMES = {
  sheet: '--sheet',
  ink: '--ink',
  soft: '--ink-soft',
  faint: '--line',
  accent: '--accent',
  accentSoft: '--accent-soft',
  onAccent: '--on-accent',
  stop: '--stop',
  care: '--care',
  lid: '--wood-lid',
  wall: '--wood-wall',
  neck: '--wood-neck',
  board: '--wood-board',
  bone: '--bone',
  steel: '--steel',
  rule: '--rule',
  hole: '--hole',
} as const

export type Looks = Readonly<Record<keyof typeof NAMES, string>> & {
  readonly font: string
  /** Sizes of words are multiplied by this: large screens get larger words. */
  readonly words: number
}

/** The looks in force at an element. */
export function looksAt(element: Element): Looks {
  const style = getComputedStyle(element)
  const entries = Object.entries(NAMES).map(([name, property]) => [
    name,
    style.getPropertyValue(property).trim(),
  ])
  return {
    ...(Object.fromEntries(entries) as Record<keyof typeof NAMES, string>),
    font: style.fontFamily,
    words: Number.parseFloat(style.fontSize) / 14 || 1,
  }
}

/** Line widths in pixels, after the ratio of ISO 128: visible edges twice as wide as all other lines. */
export const THICK = 1.6
export const THIN = 0.8

/** Dashes in pixels, after ISO 128: for what lies under, for centrelines, and for lines that tie two views. */
export const HIDDEN: number[] = [6, 3]
export const CENTRE: number[] = [18, 3, 3, 3]
export const TIE: number[] = [3, 4]
