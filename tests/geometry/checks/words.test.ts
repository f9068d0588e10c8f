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
