import { expect, test } from 'vitest'
import { readDesign } from '../../geometry/index.ts'
import { Bench, sound } from '../support/commandLine.ts'

const twoHoles = () => ({
  ...sound(),
  things: [
    { kind: 'sound-hole', id: 'a', along: 40, across: 30 },
    { kind: 'sound-hole', id: 'b', along: 90, across: -55, locked: true },
  ],
})

test('says three answers with their tightest margins, and leaves what is locked', async () => {
  const bench = new Bench()
  const { code, out, err } = await bench.run('place', bench.put('box.json', twoHoles() as never))
  expect({ code, err }).toEqual({ code: 0, err: '' })
  expect(out).toMatch(/3 answers for a\n/)
  expect(out).toMatch(/1\. no stop/)
  expect(out).toMatch(/margin \d+\.\d mm: /)
})

test('a folder of designs becomes a folder of proposals', async () => {
  const bench = new Bench()
  bench.put('class/one.lidwright.json', twoHoles() as never)
  bench.put('class/two.lidwright.json', twoHoles() as never)
  const { code, out } = await bench.run('place', 'class', '--out', 'placed', '--things', 'a')
  expect(code).toBe(0)
  expect(out).toContain('3 answers in placed/one')
  const read = readDesign(bench.read('placed/two/placed-3.lidwright.json'))
  expect(read.ok && read.design.things[1]).toMatchObject({ id: 'b', along: 90, across: -55 })
  expect(JSON.parse(bench.read('placed/one/place.json'))).toMatchObject({
    file: 'class/one.lidwright.json',
    placed: ['a'],
  })
})

test('JSON holds places and margins; a box without an answer ends with 1', async () => {
  const bench = new Bench()
  const narrow = { ...twoHoles(), box: { ...sound().box, width: 60 } }
  const { code, out } = await bench.run('place', bench.put('box.json', narrow as never), '--json')
  expect(code).toBe(1)
  const { proposals } = JSON.parse(out) as { proposals: { stops: string[]; things: { id: string }[] }[] }
  expect(proposals[0]?.stops.length).toBeGreaterThan(0)
})

test.each([
  [['--add', 'drum=2'], /--add "drum=2": a kind and how many/],
  [['--pickup-at', '90%'], /--pickup-at "90%": a share of the scale up to a half/],
  [['--things', 'b'], /"b" cannot be placed: it is not there, locked, or follows another. What can: a\./],
  [['--note', 'H9'], /--note "H9": /],
] as const)('%j is refused with a sentence', async (words, sentence) => {
  const bench = new Bench()
  const { code, err } = await bench.run('place', bench.put('box.json', twoHoles() as never), ...words)
  expect(code).toBe(2)
  expect(err).toMatch(sentence)
})
