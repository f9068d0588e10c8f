import { expect, test } from 'vitest'
import { blocks, check, readDesign, solve } from '../../geometry/index.ts'
import { Bench, sound } from '../support/commandLine.ts'
import { twentySurveys } from '../support/surveys.ts'

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
  expect(out).toMatch(/1\. no stop about what was placed, \d+ cares?\n/)
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
  const { proposals } = JSON.parse(out) as { proposals: { stops: string[]; stopsOfPlaced: string[] }[] }
  expect(proposals[0]?.stopsOfPlaced.length).toBeGreaterThan(0)
})

test('a stop that no place can mend is told, and does not make the answer none', async () => {
  const bench = new Bench()
  const file = bench.put('box.json', { ...twoHoles(), hand: 'not stated' } as never)
  expect((await bench.run('check', file)).code).toBe(1)
  const { code, out } = await bench.run('place', file)
  expect(code).toBe(0)
  expect(out).toMatch(/1\. no stop about what was placed, 1 other stop \(hand-stated hand\), /)
  const { out: json } = await bench.run('place', file, '--json')
  const { proposals } = JSON.parse(json) as { proposals: { stops: string[]; stopsOfPlaced: string[] }[] }
  expect(proposals[0]).toMatchObject({ stops: ['hand-stated hand'], stopsOfPlaced: [] })
})

test('where everything is locked nothing is placed, and nothing is wrong', async () => {
  const bench = new Bench()
  const things = twoHoles().things.map((thing) => ({ ...thing, locked: true }))
  const { code, out } = await bench.run('place', bench.put('box.json', { ...sound(), things } as never))
  expect(code).toBe(0)
  expect(out).toMatch(/nothing here can be placed; what is there is locked or follows another/)
})

test('twenty surveys become twenty folders of places in one call', async () => {
  const bench = new Bench()
  for (const { name, design } of twentySurveys()) bench.put(`surveys/${name}.lidwright.json`, design)
  const { code, out, err } = await bench.run(
    ...['place', 'surveys', '--add', 'sound-hole=2', '--symmetry', '--out', 'placed'],
  )
  expect({ code, err }).toEqual({ code: 0, err: '' })
  expect(out.trim().split('\n')).toHaveLength(20)
  for (const { name } of twentySurveys()) {
    const read = readDesign(bench.read(`placed/${name}/placed-1.lidwright.json`))
    if (!read.ok) throw new Error(read.faults[0]?.sentence)
    expect(read.design.box.survey, name).not.toBeNull()
    expect(read.design.things.map((thing) => thing.id)).toEqual(['sound-hole', 'sound-hole-2'])
    const stops = check(solve(read.design)).filter(blocks)
    expect(stops.filter((one) => one.about.some((id) => id.startsWith('sound-hole')))).toEqual([])
  }
}, 120_000)

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
