/**
 * First half of reading a length: text to numbers, units and signs. What belongs to one number is settled
 * here (mixed numbers, fractions, decimal comma), because only here is it known where the spaces stood.
 */
import { EXAMPLES, quotable, Refusal } from './refusal.ts'

export type LengthUnit = 'mm' | 'cm' | 'm' | 'in' | 'ft'
export type Sign = '+' | '-' | '*' | '/' | '(' | ')'

interface Placed {
  /** As written, for sentences. */
  readonly text: string
  /** White space stands before it. */
  readonly spaced: boolean
}

export type NumberToken = Placed & {
  readonly kind: 'number'
  readonly value: number
  /** Written as one fraction with a bar, such as `7/16`. */
  readonly barred: boolean
}
export type UnitToken = Placed & { readonly kind: 'unit'; readonly unit: LengthUnit }
export type SignToken = Placed & { readonly kind: 'sign'; readonly sign: Sign }
export type Token = NumberToken | UnitToken | SignToken

/** A Map, not an object, so that words such as `constructor` are not found in it. */
const UNITS = new Map<string, LengthUnit>([
  ...spellings('mm', 'mm millimetre millimetres millimeter millimeters'),
  ...spellings('cm', 'cm centimetre centimetres centimeter centimeters'),
  ...spellings('m', 'm metre metres meter meters'),
  ...spellings('in', 'in inch inches "'),
  ...spellings('ft', "ft foot feet '"),
])

function spellings(unit: LengthUnit, words: string): [string, LengthUnit][] {
  return words.split(' ').map((word) => [word, unit])
}

const GLYPHS: Readonly<Record<string, number>> = {
  '½': 1 / 2,
  '¼': 1 / 4,
  '¾': 3 / 4,
  '⅛': 1 / 8,
  '⅜': 3 / 8,
  '⅝': 5 / 8,
  '⅞': 7 / 8,
}

const FRACTION = String.raw`(?:(\d+)\/(\d+)(?!\d|[.,]\d)|([½¼¾⅛⅜⅝⅞]))`
const FRACTION_HERE = new RegExp(FRACTION, 'y')
const MIXED_HERE = new RegExp(String.raw`(\d+)( ?- ?| |(?=[½¼¾⅛⅜⅝⅞]))${FRACTION}`, 'y')
const FIGURES_HERE = /[\d.,]+/y
const WORD_HERE = /([\p{L}\p{M}]+)\.?|["']/uy

/**
 * Cut one line into tokens; its white space has to be single spaces inside and none outside. Throws a
 * `Refusal` for what can be no part of a length.
 */
export function tokensOf(text: string): Token[] {
  const plain = plainSigns(text)
  const tokens: Token[] = []
  let at = 0
  while (at < plain.length) {
    const spaced = plain[at] === ' '
    if (spaced) at += 1
    const token = tokenAt(plain, at, spaced)
    tokens.push(token)
    at += token.text.length
  }
  return tokens
}

/** Typographic quotes, dashes and bars as the keyboard's own. */
function plainSigns(text: string): string {
  return text
    .replace(/[−–—‐‑]/g, '-')
    .replace(/[⁄∕÷]/g, '/')
    .replace(/[′‘’]/g, "'")
    .replace(/[″“”„]|''/g, '"')
}

function matchAt(pattern: RegExp, text: string, at: number): RegExpExecArray | null {
  pattern.lastIndex = at
  return pattern.exec(text)
}

function tokenAt(text: string, at: number, spaced: boolean): Token {
  const number = mixedAt(text, at, spaced) ?? fractionAt(text, at, spaced) ?? figuresAt(text, at, spaced)
  if (number !== undefined) return number
  const word = matchAt(WORD_HERE, text, at)
  if (word !== null) return unitOf(word[0], word[1] ?? word[0], spaced)
  const letter = String.fromCodePoint(text.codePointAt(at) ?? 0)
  if (isSign(letter)) return { kind: 'sign', sign: letter, text: letter, spaced }
  if (letter === '×') throw twoSizes(letter)
  throw new Refusal(`“${letter}” has no place in a length`, `Write it as ${EXAMPLES}`)
}

function isSign(letter: string): letter is Sign {
  return '+-*/()'.includes(letter)
}

/** `11 1/16`, `11-1/16`, `11½`: a whole number and a proper fraction, as one number. */
function mixedAt(text: string, at: number, spaced: boolean): NumberToken | undefined {
  const match = matchAt(MIXED_HERE, text, at)
  if (match === null) return undefined
  const [written, whole = '', joint = ''] = match
  if (joint === ' - ') return undefined
  if (joint === ' -' || joint === '- ') {
    const fraction = written.slice(whole.length + joint.length)
    throw new Refusal(
      `the space on one side of the minus leaves it open whether ${fraction} is added or taken away`,
      `Write ${whole} ${fraction} for the mixed number, ${whole} - ${fraction} for the difference`,
    )
  }
  const part = fractionValue(match[3], match[4], match[5])
  if (part >= 1) {
    throw new Refusal(
      `the fraction in “${written}” is not less than one, so it is no mixed number`,
      'Put + or - with a space on both sides between the two',
    )
  }
  return { kind: 'number', value: Number(whole) + part, barred: false, text: written, spaced }
}

/** `7/16` or `½`. */
function fractionAt(text: string, at: number, spaced: boolean): NumberToken | undefined {
  const match = matchAt(FRACTION_HERE, text, at)
  if (match === null) return undefined
  const value = fractionValue(match[1], match[2], match[3])
  return { kind: 'number', value, barred: match[3] === undefined, text: match[0], spaced }
}

function fractionValue(
  above: string | undefined,
  below: string | undefined,
  glyph: string | undefined,
): number {
  if (glyph !== undefined) return GLYPHS[glyph] ?? Number.NaN
  if (Number(below) === 0) {
    throw new Refusal(
      `${above}/${below} divides by zero`,
      'The lower number of a fraction has to be 1 or more',
    )
  }
  return Number(above) / Number(below)
}

/** `281`, `28.1`, `.5`, `28,1`: figures with at most one point or comma. */
function figuresAt(text: string, at: number, spaced: boolean): NumberToken | undefined {
  const written = matchAt(FIGURES_HERE, text, at)?.[0]
  if (written === undefined) return undefined
  if (/^[1-9]\d{0,2},\d{3}$/.test(written)) {
    const without = written.replace(',', '')
    const point = written.replace(',', '.')
    throw new Refusal(
      `the comma in “${written}” may part thousands or decimals`,
      `Write ${without} or ${point}, whichever is meant`,
    )
  }
  if (!/^(\d+\.?|\d*[.,]\d+)$/.test(written)) {
    throw new Refusal(
      `“${written}” is not one number`,
      'Use one decimal point or comma, and nothing between thousands, as in 1234.5',
    )
  }
  return { kind: 'number', value: Number(written.replace(',', '.')), barred: false, text: written, spaced }
}

function unitOf(text: string, word: string, spaced: boolean): UnitToken {
  const unit = UNITS.get(word.toLowerCase())
  if (unit !== undefined) return { kind: 'unit', unit, text, spaced }
  if (word.toLowerCase() === 'x') throw twoSizes(word)
  throw new Refusal(
    `“${quotable(word, 20)}” is no unit of length known here`,
    `Use mm, cm, m, in or ft after a number, as in ${EXAMPLES}`,
  )
}

/** Read as multiplication, `30 x 20 mm` would quietly become 600 mm. */
function twoSizes(sign: string): Refusal {
  return new Refusal(
    `“${sign}” stands between two sizes, and one length is wanted here`,
    'Write that one length, or * to multiply, as in 2 * 3 mm',
  )
}
