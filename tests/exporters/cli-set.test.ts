import { describe, expect, test } from 'vitest'
import { distance, nearest } from '../../exporters/cli/nearest.ts'
import { applySettings } from '../../exporters/cli/settings.ts'
import { type Design, fieldsOf, fieldsOfKind, KINDS, sections, valueAt } from '../../geometry/index.ts'
import { Bench, sound } from '../support/commandLine.ts'
import { designOf } from '../support/designs.ts'

const metric = sound()
const inches: Design = { ...metric, units: { display: 'inches', fraction: 32 } }

function set(design: Design, ...settings: string[]): Design {
  const settled = applySettings(design, settings)
  if (settled.ok) return settled.design
  throw new Error(settled.sentences.join('\n'))
}

function refusal(setting: string, design = metric): string {
  const settled = applySettings(design, [setting])
  if (settled.ok) throw new Error(`${setting} was taken`)
  return settled.sentences.join('\n')
}

describe('--set', () => {
  // An inch is 25.4 mm exactly (NIST SP 811, appendix B).
  test.each([
    ['box.length=9 1/2in', ['box', 'length'], 241.3],
    ['box.length=241.3', ['box', 'length'], 241.3],
    ['box.walls.neckEnd=3/8"', ['box', 'walls', 'neckEnd'], 9.525],
    ['strings.count=4', ['strings', 'count'], 4],
    ['hand=left', ['hand'], 'left'],
    ['hand=Not stated', ['hand'], 'not stated'],
    ['title=A box = a song', ['title'], 'A box = a song'],
    ['title="quoted"', ['title'], 'quoted'],
    ['units.fraction=64', ['units', 'fraction'], 64],
    ['scale.fretless=yes', ['scale', 'fretless'], true],
    ['board.fitted=false', ['board', 'fitted'], false],
    ['scale.frets={"by":"equal","count":20}', ['scale', 'frets'], { by: 'equal', count: 20 }],
    ['scale.frets=20', ['scale', 'frets'], { by: 'equal', count: 20 }],
    ['scale.frets.count=20', ['scale', 'frets'], { by: 'equal', count: 20 }],
    ['limits.openingToEdge=10', ['limits', 'openingToEdge'], 10],
    ['limits.sideAngleAtNut=9.5°', ['limits', 'sideAngleAtNut'], 9.5],
    ['saddle.place=6in', ['saddle', 'place'], 152.4],
    ['saddle.place.share=0.7', ['saddle', 'place'], { share: 0.7 }],
    ['things.hole-treble.diameter=1in', ['things', 0, 'diameter'], 25.4],
    ['things.1.diameter=20', ['things', 1, 'diameter'], 20],
    ['things.hole-bass.along.mirror=hole-treble', ['things', 1, 'along'], { mirror: 'hole-treble' }],
    ['things.hole-bass.across=-1 1/2 in', ['things', 1, 'across'], -38.1],
    ['strings.gauges=.04in; .016in', ['strings', 'gauges'], [1.016, 0.4064]],
    ['strings.gauges=[1.2, 0.4]', ['strings', 'gauges'], [1.2, 0.4]],
    [
      'overruled.tail-hole-to-end tailpiece side=hard wood',
      ['overruled', 'tail-hole-to-end tailpiece side'],
      'hard wood',
    ],
    ['things=[]', ['things'], []],
    ['stringing.tuning=G2 D3 G3', ['stringing', 'tuning'], ['G2', 'D3', 'G3']],
    ['stringing.tuning=98 Hz; D3', ['stringing', 'tuning'], ['98 Hz', 'D3']],
    ['stringing.tuning=82.4 hertz', ['stringing', 'tuning'], ['82.4 hertz']],
    ['stringing.wantedPull=65', ['stringing', 'wantedPull'], 65],
    ['neck.wood=cherry', ['neck', 'wood'], 'cherry'],
    ['neck.bar.kind=steel bar', ['neck', 'bar', 'kind'], 'steel bar'],
  ])('%s', (setting, path, value) => {
    expect(valueAt(set(metric, setting), path)).toEqual(value)
  })

  test('a length without a unit is in the unit of the design, and sheets may change it on the way', () => {
    expect(set(inches, 'box.length=9.5').box.length).toBeCloseTo(241.3, 9)
    expect(set(metric, 'units.display=inches', 'box.length=9 1/2').box.length).toBeCloseTo(241.3, 9)
    expect(set(metric, 'box.length=200', 'units.display=inches').box.length).toBe(200)
  })

  test('readings are parted by semicolons, each in its own unit, and a survey begins with the first of them', () => {
    const surveyed = set(metric, 'box.survey.bass=9 1/2in; 241', 'box.survey.treble=24cm')
    expect(surveyed.box.survey?.bass.map((one) => Math.round(one * 1e6) / 1e6)).toEqual([241.3, 241])
    expect(surveyed.box.survey?.treble).toEqual([240])
  })

  test('a tolerance stands behind the path of its dimension', () => {
    expect(set(metric, 'tolerances.box.lid.thickness=.1').tolerances).toEqual({ 'box.lid.thickness': 0.1 })
  })

  test('the last of two counts, and the design given is left as it was', () => {
    const before = JSON.stringify(metric)
    expect(set(metric, 'strings.count=4', 'strings.count=5').strings.count).toBe(5)
    expect(JSON.stringify(metric)).toBe(before)
  })

  test('every field that the schema has can be set to what it is', () => {
    const design = designOf({
      box: { survey: { bass: [240, 240.5] } },
      things: Object.keys(KINDS).map((kind) => ({ kind, id: `a-${kind}` })),
      limits: Object.fromEntries(fieldsOf('limits').map(({ name }) => [name, 5])),
    })
    const fields = [
      ...fieldsOf('')
        .filter(({ unit }) => unit !== 'fixed')
        .map(({ name }) => name),
      ...sections().flatMap((section) => fieldsOf(section).map(({ name }) => `${section}.${name}`)),
      ...Object.keys(KINDS).flatMap((kind) =>
        fieldsOfKind(kind).map(({ name }) => `things.a-${kind}.${name}`),
      ),
    ]
    expect(fields.length).toBeGreaterThan(100)
    for (const field of fields) {
      const steps = field.split('.')
      const path =
        steps[0] === 'things' && steps[1]
          ? ['things', design.things.findIndex(({ id }) => id === steps[1]), ...steps.slice(2)]
          : steps
      const value = valueAt(design, path)
      const text = typeof value === 'string' ? value : JSON.stringify(value)
      expect(set(design, `${field}=${text}`), field).toEqual(design)
    }
  })
})

describe('--set refuses, with what was read and what would do', () => {
  test.each([
    ['box.lenght=9', /There is no field "box\.lenght"\. Is box\.length, .*meant\?/],
    ['wdth=9', /box\.width/],
    ['box.walls=6', /"box\.walls" is a group of fields\. Name one of them: box\.walls\.neckEnd, /],
    ['box=6', /"box" is a group of fields/],
    ['zzzzzzzz=1', /The first word is one of: title, .*box.*README/],
    [
      'things.hole-middle.diameter=9',
      /There is no thing called "hole-middle"\. There are: hole-treble and hole-bass\./,
    ],
    ['things.hole-treble.diamter=9', /things\.hole-treble\.diameter/],
    ['version=2', /cannot be set/],
    ['box.length', /an equals sign/i],
    ['=3', /an equals sign/i],
    ['box.length=', /Nothing is written here\. Write a length/],
    ['box.length=nine', /“nine”/],
    ['box.length=3', /Read 3; at least 40 is wanted/],
    ['strings.count=many', /Read "many"; a number is wanted/],
    ['strings.count=2.5', /2\.5/],
    ['hand=up', /Read "up"; wanted is "not stated" or "right" or "left"/],
    ['scale.fretless=maybe', /yes or no is wanted/],
    ['scale.frets={by:equal}', /not JSON.*single quotes/],
    ['scale.frets.list=[1]', /Only "count" can be set alone/],
    ['saddle.place.midway=x', /A place is a length/],
    ['things=5', /list/],
    ['__proto__.x=1', /There is no field/],
    ['things.hole-bass.id=hole-treble', /already/],
  ])('%s', (setting, sentence) => {
    const said = refusal(setting)
    expect(said).toMatch(sentence)
    expect(said.startsWith(`--set ${setting}: `)).toBe(true)
  })

  test('all that is wrong at once', () => {
    const settled = applySettings(metric, ['a=1', 'strings.count=4', 'b=2'])
    expect(settled).toEqual({
      ok: false,
      sentences: [expect.stringContaining('--set a=1'), expect.stringContaining('--set b=2')],
    })
  })

  test('on the command line: stderr, 2, and nothing on stdout', async () => {
    const bench = new Bench()
    const { code, out, err } = await bench.run(
      'check',
      bench.put('box.json', metric),
      '--set',
      'box.lenght=9',
    )
    expect({ code, out }).toEqual({ code: 2, out: '' })
    expect(err).toMatch(/^box\.json: --set box\.lenght=9: There is no field/)
  })

  test('on the command line it changes what is found, not the file', async () => {
    const bench = new Bench()
    const file = bench.put('box.json', metric)
    const before = bench.read(file)
    const { code, out } = await bench.run('check', file, '--set', 'neck.thickness=8mm', '--set', 'hand=left')
    expect(code).toBe(1)
    expect(out).toContain('[neck-left neck]')
    expect(bench.read(file)).toBe(before)
  })
})

describe('nearest', () => {
  // Optimal string alignment, worked by hand; "kitten"/"sitting" is the usual example of edit distance.
  test.each([
    ['kitten', 'sitting', 3],
    ['lenght', 'length', 1],
    ['', 'abc', 3],
    ['abc', '', 3],
    ['same', 'same', 0],
  ])('from %j to %j are %i steps', (from, to, steps) => {
    expect(distance(from, to)).toBe(steps)
  })

  test('finds by the whole path first, then by the last step, and nothing that is far', () => {
    expect(nearest('box.lenght', ['scale.length', 'box.length', 'box.width'])).toEqual([
      'box.length',
      'scale.length',
    ])
    expect(nearest('lid', ['lid', 'base'])).toEqual(['lid'])
    expect(nearest('qqqq', ['box.length', 'box.width'])).toEqual([])
  })
})
