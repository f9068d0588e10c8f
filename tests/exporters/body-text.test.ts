import { expect, test } from 'vitest'
import { bodyRows } from '../../exporters/cli/body-text.ts'
import { reportOf } from '../../exporters/report.ts'
import { formatLength, solve, soundOf } from '../../geometry/index.ts'
import { designOf, type Stated } from '../support/designs.ts'

const rowsOf = (stated: Stated) => {
  const design = designOf(stated)
  return new Map(bodyRows(reportOf(design), (mm) => formatLength(mm, design.units)))
}

test('says the note of the air as the engine has it', () => {
  const stated = { things: [{ kind: 'sound-hole', id: 'hole', along: 60, across: 60 }] }
  const { note } = soundOf(solve(designOf(stated)))
  expect(rowsOf(stated).get('Its note')).toContain(`(${note?.hertz.toFixed(0)} Hz)`)
  expect(rowsOf({}).get('Its note')).toBe('none')
})

test('says which end drops, and how far a lid opens, where that is stated', () => {
  expect([...rowsOf({}).keys()].filter((one) => /Held|Lid/.test(one))).toEqual([])
  const rows = rowsOf({
    balance: { held: 'by a strap', strapAt: 200 },
    box: { lid: { kind: 'hinged', gap: 0.8, opens: 80 } },
  })
  expect(rows.get('Held by the strap')).toBe('the head drops')
  expect(rows.get('Lid, hinged on the bass wall')).toBe('opens 80.0° of 80.0°')
  expect(rowsOf({ box: { lid: { kind: 'sliding' } } }).get('Lid, slides out over the tail end')).toBe(
    'comes 0.0 of 240.0',
  )
})
