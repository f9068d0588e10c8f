/** What can be measured again: every measure by a name that no other has, in the file and on screen. */
import { expect, test } from 'vitest'
import { plannedMeasures } from '../../../exporters/sheet/measures.ts'
import { sourceOf } from '../../../exporters/sheet/source.ts'
import { checkDesign, type Design } from '../../../geometry/index.ts'
import { samples } from '../../support/samples.ts'

const twice = (names: readonly string[]) => names.filter((name, index) => names.indexOf(name) !== index)

function ofNoNames(design: Design): Design {
  const reading = checkDesign({ ...design, things: design.things.map((thing) => ({ ...thing, name: '' })) })
  if (!reading.ok) throw new Error(reading.faults[0]?.sentence)
  return reading.design
}

test.each(samples())('$name', ({ design }) => {
  for (const one of [design, ofNoNames(design)]) {
    const measures = plannedMeasures(sourceOf(one))
    expect(twice(measures.map(({ name }) => name))).toEqual([])
    expect(twice(measures.map(({ title }) => title))).toEqual([])
  }
})
