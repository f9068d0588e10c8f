/** Numbers in the sentences of findings: what a builder sets his square and his plane to. */
import { expect, test } from 'vitest'
import { check, loadsOf, sentenceOf, solve } from '../../../geometry/index.ts'
import { braceThatSuffices } from '../../../geometry/loads/index.ts'
import { designOf } from '../../support/designs.ts'
import { CASES } from './breaking/cases.ts'

/** The sentence of a rule about a design that was made to break it, in millimetres. */
function told(rule: string, index = 0) {
  const layout = solve(designOf(CASES[rule]?.breaks[index]?.design ?? {}))
  const finding = check(layout).find((one) => one.rule === rule)
  if (!finding) throw new Error(`${rule} says nothing`)
  return { layout, finding, sentence: sentenceOf(finding, layout) }
}

test.each([
  ['saddle-low', 'Raise', 'back'],
  ['saddle-tall', 'Let in', 'forward'],
] as const)(
  '%s tells how far the neck has to move, or how many degrees it has to turn',
  (rule, way, lean) => {
    const { layout, finding, sentence } = told(rule)
    const tilt = loadsOf(layout).saddle.cure?.tilt
    // A radian is 57.2958 degrees.
    const degrees = Math.abs(tilt ?? Number.NaN) * 57.2958
    const found =
      /(Raise|Let in) the neck by ([\d.]+) mm, or tilt it ([\d.]+)° at the box, its head (\w+)\./.exec(
        sentence,
      )
    expect(found?.[1]).toBe(way)
    // Crowns and saddle go with the neck: it has to move by what is missing.
    expect(Number(found?.[2])).toBeCloseTo(Math.abs((finding.measured ?? 0) - (finding.limit ?? 0)), 0)
    expect(Number(found?.[3])).toBeCloseTo(degrees, 1)
    expect(found?.[4]).toBe(lean)
  },
)

test('a lid that sags is told the brace that holds it, as wide and tall as it is reckoned', () => {
  const { layout, sentence } = told('lid-sag')
  const brace = braceThatSuffices(layout)
  if (!brace) throw new Error('no brace would hold it')
  expect(sentence).toContain(`brace ${brace.width.toFixed(1)} mm wide and ${brace.height.toFixed(1)} mm tall`)
})

// Under a neck whose back lies 32 over the base; beside it the lid lies 47 over it (breaking/inside.ts).
test.each([
  [0, 'under', 32],
  [1, 'too tall', 32],
  [2, 'under', 47],
] as const)('a neck block is told the height at which it just touches (%d)', (index, where, tall) => {
  const { sentence } = told('neck-block-height', index)
  expect(sentence).toContain(where)
  expect(sentence).toContain(`just touches: ${tall.toFixed(1)} mm tall`)
})

test('a neck that bows is told the blank that would hold, and that would hold indeed', () => {
  const { layout, finding, sentence } = told('neck-bow')
  const thick = Number(/A blank ([\d.]+) mm thick would hold/.exec(sentence)?.[1])
  expect(thick).toBeGreaterThan(layout.design.neck.thickness)
  const thicker = { ...layout.design, neck: { ...layout.design.neck, thickness: thick + 0.1 } }
  const bow = check(solve(thicker)).find((one) => one.rule === 'neck-bow')
  expect(bow?.grade).toBe('clear')
  expect(bow?.limit).toBe(finding.limit)
})

test('less relief is a cure only for a through neck that has some', () => {
  const { layout, sentence } = told('neck-bow')
  const { neck } = layout.design
  const saysRelief = (relief: number, ends: typeof neck.ends) => {
    const other = solve({ ...layout.design, neck: { ...neck, relief, ends } })
    const bow = check(other).find((one) => one.rule === 'neck-bow')
    return bow ? sentenceOf(bow, other).includes('less relief under the lid') : null
  }
  expect(sentence.includes('less relief')).toBe(neck.relief > 0 && neck.ends === 'through the box')
  expect(saysRelief(2, 'through the box')).toBe(true)
  expect(saysRelief(0, 'through the box')).toBe(false)
})
