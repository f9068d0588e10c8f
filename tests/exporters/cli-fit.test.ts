import { describe, expect, test } from 'vitest'
import {
  blocks,
  check,
  checkDesign,
  type Design,
  fittingOf,
  questionsFor,
  readDesign,
  solve,
  startingDesign,
} from '../../geometry/index.ts'
import { Bench, broken, sound } from '../support/commandLine.ts'
import { readCsv } from '../support/readCsv.ts'
import { twentySurveys } from '../support/surveys.ts'

const FEW = ['--scales', '22in,635mm', '--strings', '3-4', '--places', '60%,.75'] as const

interface Answer {
  readonly file: string
  readonly fits: number
  readonly asked: { readonly scales: number[]; readonly counts: number[]; readonly places: number[] }
  readonly rows: readonly {
    readonly scale: number
    readonly strings: number
    readonly saddlePlace: number
    readonly fits: boolean
    readonly reason: string
    readonly marks: number | null
    readonly numbers: { readonly overall: number; readonly pull: number | null } | null
  }[]
}

describe('lidwright fit', () => {
  test('says in a table what can be built, and in a line what cannot', async () => {
    const bench = new Bench()
    const { code, out, err } = await bench.run('fit', bench.put('box.json', sound()), ...FEW)
    expect({ code, err }).toEqual({ code: 0, err: '' })
    expect(out).toContain('of 8 rows can be built')
    expect(out).toContain('tightest margin')
    expect(out).toMatch(/3 strings: G2 D3 G3, .* \(your tuning, gauges chosen for it\)/)
  })

  test('gives every row as JSON, the best first, the impossible ones last with their reason', async () => {
    const bench = new Bench()
    const short = { ...sound(), neck: { ...sound().neck, length: 800 } }
    const { code, out } = await bench.run('fit', bench.put('box.json', short), ...FEW, '--json')
    expect(code).toBe(0)
    const answer = JSON.parse(out) as Answer
    expect(answer.asked).toMatchObject({ scales: [558.8, 635], counts: [3, 4], places: [0.6, 0.75] })
    expect(answer.rows).toHaveLength(8)
    const fits = answer.rows.map((row) => row.fits)
    expect(fits).toEqual([...fits].sort((a, b) => Number(b) - Number(a)))
    const marks = answer.rows.flatMap((row) => (row.marks === null ? [] : [row.marks]))
    expect(marks).toEqual([...marks].sort((a, b) => b - a))
    expect(answer.fits).toBe(marks.length)
    for (const row of answer.rows.filter((one) => !one.fits)) expect(row.reason).toMatch(/too short/)
    // Overall length is the head, the way to the body, the body and the tail, whatever the saddle's place is.
    for (const { scale, saddlePlace, numbers } of answer.rows)
      if (numbers) {
        const { box, headstock, neck, saddle } = short
        const body = scale + saddle.setback - saddlePlace * box.length
        expect(numbers.overall).toBeGreaterThanOrEqual(
          headstock.length + body + box.length + neck.tail - 1e-6,
        )
      }
  })

  test('a care that is given more weight comes first', async () => {
    const bench = new Bench()
    const file = bench.put('box.json', sound())
    const none = ['margins', 'pull', 'stiffness', 'frets', 'balance'].flatMap((name) => [
      '--care',
      `${name}=0`,
    ])
    const { out } = await bench.run('fit', file, '--json', ...FEW, ...none, '--care', 'short=1')
    const overall = (JSON.parse(out) as Answer).rows.flatMap(({ numbers }) =>
      numbers ? [numbers.overall] : [],
    )
    expect(overall.length).toBeGreaterThan(1)
    expect(overall).toEqual([...overall].sort((a, b) => a - b))
  })

  test('a folder of boxes becomes a folder of proposals, each a design without a stop', async () => {
    const bench = new Bench()
    const boxes = [230, 260].map((length) => startingDesign({ length, strings: 3, hand: 'right' }))
    boxes.forEach((box, index) => {
      bench.put(`class/box-${index}.lidwright.json`, box)
    })
    const { code, out } = await bench.run('fit', 'class', ...FEW, '--out', 'proposals', '--best', '2')
    expect(code).toBe(0)
    expect(out).toMatch(/box-0.*2 proposals in/)
    expect(bench.files('proposals')).toEqual(
      ['box-0', 'box-1'].flatMap((name) =>
        ['fit.csv', 'fit.json', 'proposal-1.lidwright.json', 'proposal-2.lidwright.json'].map(
          (file) => `proposals/${name}/${file}`,
        ),
      ),
    )
    for (const file of bench.files('proposals').filter((name) => name.includes('proposal-'))) {
      const read = readDesign(bench.read(file))
      if (!read.ok) throw new Error(read.faults[0]?.sentence)
      expect(checkDesign(JSON.parse(bench.read(file)))).toMatchObject({ ok: true })
      expect(check(solve(read.design)).filter(blocks)).toEqual([])
    }
  })

  test('twenty surveys become twenty folders of proposals in one call', async () => {
    const bench = new Bench()
    for (const { name, design } of twentySurveys()) bench.put(`surveys/${name}.lidwright.json`, design)
    const { code, out, err } = await bench.run('fit', 'surveys', ...FEW, '--out', 'proposals', '--best', '1')
    expect({ code, err }).toEqual({ code: 0, err: '' })
    expect(out.trim().split('\n')).toHaveLength(20)
    for (const { name, design } of twentySurveys()) {
      const read = readDesign(bench.read(`proposals/${name}/proposal-1.lidwright.json`))
      if (!read.ok) throw new Error(read.faults[0]?.sentence)
      // The box is as it was measured; what is proposed for it can be built.
      expect(read.design.box).toEqual(design.box)
      expect(check(solve(read.design)).filter(blocks), name).toEqual([])
    }
  }, 120_000)

  test('gives every row as CSV, of several designs one below the other, each in millimetres and on its own rule', async () => {
    const bench = new Bench()
    const short = { ...sound(), neck: { ...sound().neck, length: 800 } }
    const inches: Design = { ...short, units: { display: 'inches', fraction: 32 } }
    bench.put('class/inches.lidwright.json', inches)
    bench.put('class/mm.lidwright.json', sound())
    const { code, out } = await bench.run('fit', 'class', ...FEW, '--csv')
    expect(code).toBe(0)
    const csv = readCsv(out)
    expect(csv.rows).toHaveLength(16)
    expect(csv.column('Box')).toEqual(
      ['inches', 'mm'].flatMap((name) => Array(8).fill(`class/${name}.lidwright.json`)),
    )
    const asked = { scales: [558.8, 635], counts: [3, 4], places: [0.6, 0.75] }
    const fitting = fittingOf(inches, questionsFor(inches, asked))
    while (fitting.step()) {
      // Each step is a row.
    }
    const [scales, strings, places] = ['Scale (mm)', 'Strings', 'Saddle along the lid (of 1)'].map((name) =>
      csv.column(name).slice(0, 8),
    )
    for (const row of fitting.rows) {
      const at = [0, 1, 2, 3, 4, 5, 6, 7].find(
        (index) =>
          Number(scales?.[index]) === row.scale &&
          Number(strings?.[index]) === row.count &&
          Number(places?.[index]) === row.place,
      )
      if (at === undefined) throw new Error(`no row for ${row.scale} ${row.count} ${row.place}`)
      const cell = (name: string) => csv.column(name)[at] as string
      expect(cell('Can be built')).toBe(row.numbers ? 'yes' : 'no')
      expect(cell('Why not') !== '').toBe(row.numbers === null)
      if (!row.numbers) continue
      expect(Number(cell('Overall (mm)'))).toBeCloseTo(row.numbers.overall, 3)
      expect(Number(cell('Pull (N)'))).toBeCloseTo(row.numbers.pull ?? Number.NaN, 3)
      expect(Number(cell('Air (Hz)'))).toBeCloseTo(row.numbers.air?.hertz ?? Number.NaN, 3)
      expect(Number(cell('Cares'))).toBe(row.numbers.cares)
    }
    expect(
      csv
        .column('Scale (on the rule)')
        .slice(0, 8)
        .every((text) => text.endsWith(' in')),
    ).toBe(true)
    expect(
      csv
        .column('Scale (on the rule)')
        .slice(8)
        .every((text) => text.endsWith(' mm')),
    ).toBe(true)
  })

  test('a box that nothing fits ends with 1 and says why', async () => {
    const bench = new Bench()
    const { code, out } = await bench.run('fit', bench.put('box.json', broken()), ...FEW)
    expect(code).toBe(1)
    expect(out).toContain('0 of 8 rows can be built')
    expect(out).toMatch(/Such necks break/)
  })

  test.each([
    [['--scales', 'long'], /--scales/],
    [['--scales', '40mm'], /from 150\.0 mm to 1300\.0 mm is taken/],
    [['--strings', '0'], /counts from 1 to 12 are wanted/],
    [['--places', '130%'], /shares of the lid/],
    [['--care', 'beauty=2'], /--care "beauty=2": one of margins, pull/],
    [['--note', 'H9'], /--note/],
    [['--best', 'all'], /--best "all"/],
    [['--json', '--csv'], /--json and --csv: one of them/],
  ])('refuses %j in a sentence', async (words, sentence) => {
    const bench = new Bench()
    const { code, err } = await bench.run('fit', bench.put('box.json', sound()), ...words)
    expect(code).toBe(2)
    expect(err).toMatch(sentence)
  })
})
