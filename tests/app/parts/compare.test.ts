/** Two designs compared in numbers. */
import { expect, test } from 'vitest'
import { compare } from '../../../app/parts/compare.ts'
import { checkDesign, type Design } from '../../../geometry/index.ts'

function design(more: object): Design {
  const reading = checkDesign({ format: 'lidwright', version: 1, hand: 'right', ...more })
  if (!reading.ok) throw new Error(reading.faults[0]?.sentence)
  return reading.design
}

const hole = { kind: 'sound-hole', id: 'hole', name: 'Hole', along: 60, across: 50, diameter: 25 }

test('nothing differs between a design and itself', () => {
  const one = design({ things: [hole] })
  expect(compare(one, one)).toEqual([])
})

test('what is stated, where things stand and what the rules measure, each with the way between', () => {
  const before = design({ box: { length: 250 }, things: [hole, { kind: 'screw', id: 'gone' }] })
  const after = design({
    box: { length: 260 },
    things: [
      { ...hole, along: 65, diameter: 30 },
      { kind: 'pickup', id: 'new', name: 'Pickup' },
    ],
  })
  const rows = compare(before, after)
  const of = (under: string, what: string) => rows.find((one) => one.under === under && one.what === what)
  expect(of('Box', 'Length')).toMatchObject({ before: '250.0 mm', after: '260.0 mm', more: '+10.0 mm' })
  expect(of('Hole', 'stands along the face at')).toMatchObject({ more: '+5.0 mm' })
  expect(of('Hole', 'Through hole, across')).toMatchObject({ before: '25.0 mm', after: '30.0 mm' })
  expect(of('Pickup', 'the thing itself')).toMatchObject({ before: 'not there', after: 'there' })
  expect(rows.some((one) => one.after === 'gone')).toBe(true)
  // 2.5 mm more of radius are 2.5 mm less to the neck.
  expect(of('Measured by the rules', 'To the neck: Hole')).toMatchObject({
    before: '18.5 mm',
    after: '16.0 mm',
    more: '−2.5 mm',
  })
})
