/** Second half of reading a length: numbers, units and signs to millimetres. */
import { type Amount, divided, multiplied, toMm } from './amount.ts'
import { EXAMPLES, Refusal, sentenceOf } from './refusal.ts'
import { type NumberToken, type Sign, type SignToken, type Token, tokensOf } from './tokens.ts'
import type { Units } from './units.ts'

/** A length read, or one sentence to show instead: what was read, what is wrong, what would do. */
export type Reading =
  | { readonly ok: true; readonly mm: number }
  | { readonly ok: false; readonly sentence: string }

/** Nothing on a bench is longer; more than this is a slip of the unit. */
const LONGEST = 10_000
/** Far more than any sum of lengths needs, and little enough that brackets cannot nest out of hand. */
const MOST_CHARACTERS = 120

/**
 * Read a length as builders write it, sums included. Never throws: what cannot be read, or can be read in two
 * ways, comes back as a sentence. The sign is kept; whether less than nothing makes sense is the caller's.
 *
 *     sum     = product { (+ | -) product }
 *     product = signed { (* | /) signed }
 *     signed  = [ + | - ] operand
 *     operand = (number | '(' sum ')') [ unit ]
 *             | number ft [ tight - ] number [ in ]          2' 3 1/2"   2'-3"   the inches less than 12
 *     number  = mixed | fraction | decimal
 *     mixed   = whole (space | tight -) fraction             11 1/16   11-1/16   11½   the fraction less than 1
 *     fraction = whole/whole without spaces, or one of ½ ¼ ¾ ⅛ ⅜ ⅝ ⅞
 *     decimal = 281   28.1   .5   28,1                       but 1,234 is asked about
 *     unit    = mm | cm | m | in | ft | " | '                and their names, curly quotes and primes
 *
 * - A mixed number binds before everything: `9 1/2 / 2` is half of nine and a half. A minus with a space on
 *   both sides takes away, one without any joins, even inside a longer sum (`8*2-1/4` is 8 times 2 1/4); with
 *   a space on one side only it is asked about, and so is a fraction right behind a division bar (`3mm/4/5`).
 * - A unit binds to the operand before it. `2 * 3mm` is a number times a length. A length times a length and
 *   anything divided by a length are refused.
 * - Bare numbers stay plain numbers while they meet only each other; the first length they are added to, or
 *   the end of the sum, makes them `assumed`: `9 1/2 / 2 + 3mm` in inches is 4.75 in and 3 mm.
 *
 * @param assumed unit of a number written without one
 * @returns millimetres, at most 10 m either way, and never NaN
 * @example readLength('11 1/16', 'inches') // { ok: true, mm: 280.9875 }
 */
export function readLength(text: string, assumed: Units['display']): Reading {
  const line = oneLine(text)
  if (line === '') {
    return { ok: false, sentence: `Nothing is written here. Write a length, such as ${EXAMPLES}.` }
  }
  try {
    if (line.length > MOST_CHARACTERS) {
      throw new Refusal('that is more than a length needs', `Write only the length, such as ${EXAMPLES}`)
    }
    const mm = totalOf(tokensOf(line), assumed)
    if (!(Math.abs(mm) <= LONGEST)) throw tooLong(mm, assumed)
    return { ok: true, mm: mm === 0 ? 0 : mm }
  } catch (trouble) {
    if (trouble instanceof Refusal) return { ok: false, sentence: sentenceOf(line, trouble) }
    throw trouble
  }
}

/** White space as single spaces, and what cannot be printed as a sign that can be shown. */
function oneLine(text: string): string {
  return text.replace(/\s+/g, ' ').trim().replace(/\p{C}/gu, '\uFFFD')
}

function tooLong(mm: number, assumed: Units['display']): Refusal {
  const metres = Math.abs(mm) / 1000
  const size = metres < 100_000 ? `${Number(metres.toPrecision(4))} m` : 'more than 100 km'
  return new Refusal(
    `that comes to ${size}, and 10 m is the longest taken here`,
    `Is another unit meant? A number without one counts as ${assumed}; write it out, such as ${EXAMPLES}`,
  )
}

/** Millimetres that the tokens come to. Throws a `Refusal` where they make no length. */
function totalOf(tokens: readonly Token[], assumed: Units['display']): number {
  let at = 0
  const total = asLength(sum())
  if (at < tokens.length) {
    throw new Refusal('a bracket closes that was never opened', 'Take it out, or open it')
  }
  return total

  function sum(): Amount {
    let result = product()
    for (let sign = take('+', '-'); sign !== undefined; sign = take('+', '-')) {
      result = added(result, product(), sign.sign === '-' ? -1 : 1)
    }
    return result
  }

  function added(a: Amount, b: Amount, sense: 1 | -1): Amount {
    if (a.isLength === b.isLength) return { value: a.value + sense * b.value, isLength: a.isLength }
    return { value: asLength(a) + sense * asLength(b), isLength: true }
  }

  function asLength(amount: Amount): number {
    return amount.isLength ? amount.value : toMm(amount.value, assumed === 'mm' ? 'mm' : 'in')
  }

  function product(): Amount {
    let result = signed()
    for (let sign = take('*', '/'); sign !== undefined; sign = take('*', '/')) {
      if (sign.sign === '*') {
        result = multiplied(result, signed())
      } else {
        refuseBarAfterBar(tokens[at])
        result = divided(result, signed())
      }
    }
    return result
  }

  function signed(): Amount {
    const minus = take('+', '-')?.sign === '-'
    const amount = operand()
    return minus ? { ...amount, value: -amount.value } : amount
  }

  function operand(): Amount {
    const amount = numberOrBracket()
    const unit = tokens[at]
    if (unit?.kind !== 'unit') return alone(amount)
    at += 1
    if (amount.isLength) {
      throw new Refusal(`“${unit.text}” stands behind what already has a unit`, 'Leave one of the units out')
    }
    const mm = toMm(amount.value, unit.unit) + (unit.unit === 'ft' ? inchesAfterFeet() : 0)
    return alone({ value: mm, isLength: true })
  }

  function numberOrBracket(): Amount {
    const token = tokens[at]
    if (token === undefined) {
      throw new Refusal('it stops where a number should follow', 'Add the number, or take the last sign out')
    }
    at += 1
    if (token.kind === 'number') return { value: token.value, isLength: false }
    if (token.kind === 'unit') {
      throw new Refusal(
        `no number stands before “${token.text}”`,
        `Write the number first, as in ${EXAMPLES}`,
      )
    }
    if (token.sign !== '(') {
      throw new Refusal(
        `a number is missing before “${token.text}”`,
        'Put the number in, or take the sign out',
      )
    }
    const inner = sum()
    if (take(')') === undefined) throw new Refusal('a bracket is opened and never closed', 'Close it with )')
    return inner
  }

  /** `2' 3 1/2"`, `2'-3"`: millimetres of the inches that belong to the feet just read, or 0. */
  function inchesAfterFeet(): number {
    const hyphen = isSign(tokens[at], '-') ? tokens[at] : undefined
    const place = hyphen === undefined ? at : at + 1
    const inches = tokens[place]
    const unit = tokens[place + 1]
    if (inches?.kind !== 'number' || (unit?.kind === 'unit' && unit.unit !== 'in')) return 0
    if (hyphen?.spaced && inches.spaced) return 0
    if (hyphen !== undefined && hyphen.spaced !== inches.spaced) throw joinedOrTakenAway(inches)
    if (inches.value >= 12) {
      throw new Refusal(
        `${inches.text} inches follow the feet, and from 12 on they would make another foot`,
        'Put + or - with a space on both sides between the two',
      )
    }
    at = unit?.kind === 'unit' ? place + 2 : place + 1
    return toMm(inches.value, 'in')
  }

  /** The amount, if nothing leans on it without a sign between. */
  function alone(amount: Amount): Amount {
    const token = tokens[at]
    if (token === undefined || (token.kind === 'sign' && token.sign !== '(')) return amount
    if (token.kind === 'unit') {
      throw new Refusal(`“${token.text}” stands behind what already has a unit`, 'Leave one of the units out')
    }
    throw new Refusal(
      `nothing says how “${token.text}” goes with what stands before it`,
      'Put +, -, * or / between the two',
    )
  }

  function take(...signs: Sign[]): SignToken | undefined {
    const token = tokens[at]
    if (!isSign(token, ...signs)) return undefined
    at += 1
    return token
  }
}

function isSign(token: Token | undefined, ...signs: Sign[]): token is SignToken {
  return token?.kind === 'sign' && signs.includes(token.sign)
}

/** `3mm/4/5`: a fraction of 4/5 below the bar, or divided twice? */
function refuseBarAfterBar(below: Token | undefined): void {
  if (below?.kind !== 'number' || !below.barred || below.spaced) return
  throw new Refusal(
    `${below.text} right behind a division bar can be read two ways`,
    `Write / (${below.text}) to divide by the fraction, or ${below.text.replace('/', ' / ')} to divide twice`,
  )
}

function joinedOrTakenAway(inches: NumberToken): Refusal {
  return new Refusal(
    `the space on one side of the minus leaves it open whether ${inches.text} in is added or taken away`,
    'Leave the minus out to add, or put a space on both sides of it to take away',
  )
}
