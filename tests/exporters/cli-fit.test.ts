import { describe, expect, test } from 'vitest'
import { blocks, check, checkDesign, readDesign, solve, startingDesign } from '../../geometry/index.ts'
import { Bench, broken, sound } from '../support/commandLine.ts'

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
        ['fit.json', 'proposal-1.lidwright.json', 'proposal-2.lidwright.json'].map(
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
  ])('refuses %j in a sentence', async (words, sentence) => {
    const bench = new Bench()
    const { code, err } = await bench.run('fit', bench.put('box.json', sound()), ...words)
    expect(code).toBe(2)
    expect(err).toMatch(sentence)
  })
})
