import { expect, test } from 'vitest'
import { scheduleCsv } from '../../../exporters/index.ts'
import { scheduleOf, solve } from '../../../geometry/index.ts'
import { Bench, risky, sound } from '../../support/commandLine.ts'
import { designOf } from '../../support/designs.ts'
import { samples } from '../../support/samples.ts'

/** Fields of a CSV text after RFC 4180, section 2, by its own grammar and nothing else. */
function fieldsIn(text: string): string[][] {
  expect(text.endsWith('\r\n')).toBe(true)
  return text
    .slice(0, -2)
    .split('\r\n')
    .map((line) =>
      [...`,${line}`.matchAll(/,(?:"((?:[^"]|"")*)"|([^",]*))/g)].map((one) =>
        (one[1] ?? one[2] ?? '').replaceAll('""', '"'),
      ),
    )
}

test.each(samples())(
  '$name: every row of the schedule is a record of as many fields as the heading',
  ({ design }) => {
    const [head, ...records] = fieldsIn(scheduleCsv(design))
    const rows = scheduleOf(solve(design))
    expect(records).toHaveLength(rows.length)
    for (const [index, record] of records.entries()) {
      expect(record).toHaveLength(head?.length ?? 0)
      const cell = (name: string) => record[head?.indexOf(name) ?? -1]
      expect(Number(cell('from edge mm'))).toBeCloseTo(rows[index]?.edge.distance ?? Number.NaN, 5)
      expect(cell('part')).toBe(rows[index]?.partTitle)
    }
  },
)

test('a name that a spreadsheet would reckon with is made harmless; a fraction stays one', () => {
  const things = [{ kind: 'sound-hole', id: 'a', name: '=1+1', along: 9.525, across: 40 }]
  const text = scheduleCsv(designOf({ units: { display: 'inches', fraction: 32 }, things }))
  expect(text).toContain(",'=1+1,")
  expect(text).toContain(',3/8 in,')
})

test('on the command line: one table for one file, a column with the file for several', async () => {
  const bench = new Bench()
  const files = [bench.put('a.lidwright.json', sound()), bench.put('b.lidwright.json', risky())]
  const one = await bench.run('schedule', 'a.lidwright.json', '--csv')
  expect([one.code, one.err, fieldsIn(one.out)[0]?.[0]]).toEqual([0, '', 'order'])
  const all = fieldsIn((await bench.run('schedule', ...files, '--csv')).out)
  expect(all[0]?.[0]).toBe('file')
  expect([...new Set(all.slice(1).map((record) => record[0]))]).toEqual(files)
  const text = await bench.run('schedule', 'a.lidwright.json')
  expect(text.out).toContain('Lid, from outside: from the neck-end edge, and across from the centreline')
})

test('a file that cannot be read is told, and what can is listed', async () => {
  const bench = new Bench()
  bench.put('a.lidwright.json', sound())
  const answer = await bench.run('schedule', 'no-such-box.lidwright.json', 'a.lidwright.json')
  expect(answer.code).toBe(2)
  expect(answer.err).toContain('there is no such file or folder')
  expect(answer.out).toContain('Tea box: drill and cut schedule')
})
