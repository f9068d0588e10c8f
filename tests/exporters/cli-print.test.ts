import { expect, test } from 'vitest'
import { Bench, sound } from '../support/commandLine.ts'

test('--pdf writes one file of sheets, and nothing else where no other format is named', async () => {
  const bench = new Bench()
  const file = bench.put('box.json', sound())
  const { code, out, err } = await bench.run('templates', file, '--out', 'paper', '--pdf')
  expect({ code, err }).toEqual({ code: 0, err: '' })
  expect(bench.files('paper')).toEqual(['paper/tea-box-sheets-a4.pdf'])
  expect(out).toContain('Wrote 1 file to paper:\n  tea-box-sheets-a4.pdf')
  expect(bench.read('paper/tea-box-sheets-a4.pdf')).toMatch(/^%PDF-1\.7/)
})

test('paper, way round, margins in any unit, one part, and other formats beside it', async () => {
  const bench = new Bench()
  const file = bench.put('box.json', sound())
  const words = ['--paper', 'letter', '--upright', '--margin', '1/2in', '--overlap', '12']
  const { code } = await bench.run(
    'templates',
    file,
    '--out',
    'p',
    '--pdf',
    '--svg',
    '--part',
    'lid',
    ...words,
  )
  expect(code).toBe(0)
  expect(bench.files('p')).toEqual(['p/tea-box-lid-letter.pdf', 'p/tea-box-lid.svg'])
  // Letter upright is 612 by 792 points.
  expect(bench.read('p/tea-box-lid-letter.pdf')).toMatch(/\/MediaBox \[ ?0 0 612 792 ?\]/)
})

test('a correction over 5 % asks, one over 10 % and a margin wider than the paper write nothing', async () => {
  const bench = new Bench()
  const file = bench.put('box.json', sound())
  const run = (...words: string[]) => bench.run('templates', file, '--out', 'p', '--pdf', ...words)
  const asked = await run('--bar-x', '94')
  expect(asked).toMatchObject({
    code: 0,
    err: expect.stringMatching(/6\.4 % along X: was "fit to page" on\?/),
  })
  const second = new Bench()
  second.put('box.json', sound())
  for (const [words, sentence] of [
    [['--bar-y', '88'], /off by 13\.6 % along Y.*Nothing was written/],
    [['--margin', '150'], /leaves too little of A4.*Nothing was written/],
    [['--overlap', 'wide'], /--overlap: .*is no/],
    [['--paper', 'foolscap'], /foolscap/],
    [['--upright', '--lying'], /cannot be used with/],
  ] as const) {
    const { code, err } = await second.run('templates', 'box.json', '--out', 'p', '--pdf', ...words)
    expect(code, words.join(' ')).toBe(2)
    expect(err).toMatch(sentence)
  }
  expect(second.has('p')).toBe(false)
})

test('a title in a script that the letters lack is said', async () => {
  const bench = new Bench()
  const file = bench.put('box.json', { ...sound(), title: '茶箱' })
  const { code, err } = await bench.run('templates', file, '--out', 'p', '--pdf', '--part', 'lid')
  expect(code).toBe(0)
  expect(err).toMatch(/^box\.json: "茶箱" cannot be printed/)
})
