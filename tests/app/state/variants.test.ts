/** Variants held beside the design, and what differs in one table. */
import { beforeEach, expect, test } from 'vitest'
import { compare, compareMany } from '../../../app/parts/compare.ts'
import { holdVariant, letAllGo, letGo, useVariants } from '../../../app/state/variants.ts'
import { fitOf, fittingOf, questionsFor, startingDesign } from '../../../geometry/index.ts'

const design = startingDesign({ length: 240, strings: 3, hand: 'right' })
const scaled = (length: number) => ({ ...design, scale: { ...design.scale, length } })

beforeEach(letAllGo)

test('four at the most, each once, and a number that is free again is given again', () => {
  expect([500, 510, 520, 530].map((mm) => holdVariant(String(mm), scaled(mm)))).toEqual([1, 2, 3, 4])
  expect(holdVariant('one more', scaled(540))).toBeNull()
  letGo(2)
  const again = scaled(550)
  expect(holdVariant('another', again)).toBe(2)
  letGo(4)
  expect(holdVariant('the same', again)).toBeNull()
  expect(useVariants.getState().held.map((one) => one.number)).toEqual([1, 2, 3])
})

test('one line for everything that differs in any, with what comparing two says', () => {
  const others = [scaled(600), { ...design, title: 'Another', neck: { ...design.neck, thickness: 21 } }]
  const lines = compareMany(design, others)
  others.forEach((other, index) => {
    const two = compare(design, other)
    const mine = lines.filter((line) => line.others[index] !== null)
    expect(mine.map(({ what, others: all }) => `${what} ${all[index]}`).sort()).toEqual(
      two.map(({ what, after }) => `${what} ${after}`).sort(),
    )
  })
  expect(lines.find((line) => line.what === 'Scale length')?.others).toEqual(['600.0 mm', null])
})

test('the numbers of a design by itself are those of its row', () => {
  const share = (design.saddle.place as { share: number }).share
  const asked = { scales: [635], counts: [3], places: [share], strings: 'as stated' as const }
  const fitting = fittingOf(design, questionsFor(design, asked))
  while (fitting.step()) {
    // One row.
  }
  const { inTheWay: _, ...numbers } = fitting.rows[0]?.numbers ?? {}
  expect(fitOf(design).numbers).toMatchObject(numbers)
})
