import { describe, expect, test } from 'vitest'
import { checkDesign, readDesign } from '../../../geometry/index.ts'
import { designOf } from '../../support/designs.ts'
import { faultsOf, file, proveFaults, withFrets, withHole } from './files.ts'

/** What is wrong, the path that must be named, and what the sentence must say: what was read, what would do. */
const WRONG: readonly [what: string, text: string, path: string, says: readonly string[]][] = [
  ['an unknown field', file({ bocks: {} }), 'bocks', ['"bocks"', 'spelling']],
  ['a misspelt field', file({ box: { lenght: 240 } }), 'box.lenght', ['"lenght"']],
  ['an unknown field of a thing', withHole({ radius: 5 }), 'things.hole.radius', ['"radius"']],
  ['a field of another variant', withFrets({ by: 'equal', list: [1] }), 'scale.frets.list', ['"list"']],
  ['an unknown limit', file({ limits: { openingToMoon: 3 } }), 'limits.openingToMoon', ['"openingToMoon"']],
  ['text for a number', file({ box: { length: '240' } }), 'box.length', ['"240"', 'a number']],
  ['nothing for a number', file({ box: { length: null } }), 'box.length', ['null', 'a number']],
  ['a number for text', file({ title: 5 }), 'title', ['5', 'text in quotes']],
  ['a number for yes or no', file({ board: { fitted: 1 } }), 'board.fitted', ['1', 'true or false']],
  ['a list for an object', file({ box: [] }), 'box', ['[]', 'an object in braces']],
  ['an object for a list', file({ things: {} }), 'things', ['{}', 'a list in brackets']],
  ['a number for a thing', file({ things: [5] }), 'things[0]', ['5', 'an object in braces']],
  ['a part of a string', file({ strings: { count: 3.5 } }), 'strings.count', ['3.5', 'a whole number']],
  ['too small a length', file({ box: { length: 39 } }), 'box.length', ['39', 'at least 40']],
  ['too large a length', file({ box: { length: 1501 } }), 'box.length', ['1501', 'at most 1500']],
  [
    'an endless length',
    '{"format":"lidwright","version":1,"box":{"length":1e999}}',
    'box.length',
    ['Infinity'],
  ],
  ['a negative limit', file({ limits: { openingToEdge: -1 } }), 'limits.openingToEdge', ['-1', 'at least 0']],
  [
    'a string thinner than air',
    file({ strings: { gauges: [0.4, 0] } }),
    'strings.gauges[1]',
    ['0', 'at least 0.1'],
  ],
  [
    'too many gauges',
    file({ strings: { gauges: Array(13).fill(1) } }),
    'strings.gauges',
    ['13', 'at most 12'],
  ],
  ['a word that is not to be chosen', file({ hand: 'both' }), 'hand', ['"both"', '"right"', '"left"']],
  ['a fraction no rule has', file({ units: { fraction: 7 } }), 'units.fraction', ['7', '8, 16, 32, 64']],
  ['too long a title', file({ title: 'x'.repeat(121) }), 'title', ['at most 120']],
  ['a control character', file({ title: 'Box\u0007' }), 'title', ['control character', '\\u0007']],
  [
    'an escape to the terminal in a name',
    withHole({ name: '\u001b[2J' }),
    'things.hole.name',
    ['control character'],
  ],
  ['no kind', file({ things: [{ id: 'hole' }] }), 'things.hole.kind', ['nothing', 'sound-hole']],
  [
    'an unknown kind',
    file({ things: [{ kind: 'gong', id: 'hole' }] }),
    'things.hole.kind',
    ['"gong"', 'sound-hole, slot, rosette'],
  ],
  ['no id', file({ things: [{ kind: 'screw' }] }), 'things[0].id', ['missing']],
  [
    'an id in capitals',
    file({ things: [{ kind: 'screw', id: 'S1' }] }),
    'things[0].id',
    ['"S1"', 'small letters'],
  ],
  ['the id of a line', withHole({ id: 'saddle' }), 'things.saddle.id', ['"saddle"', 'another id']],
  ['the id of a part', withHole({ id: 'tail-end-wall' }), 'things.tail-end-wall.id', ['another id']],
  [
    'a face that the kind does not go on',
    file({ things: [{ kind: 'pickup', id: 'p', face: 'base' }] }),
    'things.p.face',
    ['"base"', 'goes on: lid'],
  ],
  ['a face that no box has', withHole({ face: 'roof' }), 'things.hole.face', ['"roof"', '"lid"']],
  [
    'a turn of more than half',
    withHole({ turnDegrees: 181 }),
    'things.hole.turnDegrees',
    ['181', 'at most 180'],
  ],
  [
    'a place that is text',
    withHole({ along: '60' }),
    'things.hole.along',
    ['"60"', 'millimetres', 'share', 'midway', 'mirror'],
  ],
  [
    'a place that is misspelt',
    withHole({ along: { shrae: 0.5 } }),
    'things.hole.along',
    ['shrae', '{"share": 0.5}'],
  ],
  [
    'a place of two sorts',
    withHole({ along: { share: 0.5, mirror: 'b' } }),
    'things.hole.along',
    ['a place is'],
  ],
  ['a place far away', withHole({ along: 3001 }), 'things.hole.along', ['3001', 'at most 3000']],
  [
    'a share past the face',
    withHole({ across: { share: 2 } }),
    'things.hole.across.share',
    ['2', 'at most 1.5'],
  ],
  ['midway of one line', withHole({ along: { midway: ['saddle'] } }), 'things.hole.along', ['midway']],
  [
    'midway of no line',
    withHole({ along: { midway: ['The Moon', 'saddle'] } }),
    'things.hole.along.midway[0]',
    ['"The Moon"', '"tail-end wall"'],
  ],
  [
    'a share of the scale across',
    withHole({ across: { ofScale: 0.2 } }),
    'things.hole.across',
    ['ofScale', 'along the face'],
  ],
  ['a saddle at no place', file({ saddle: { place: 'here' } }), 'saddle.place', ['"here"', 'millimetres']],
  [
    'an unknown way to list frets',
    withFrets({ by: 'feel' }),
    'scale.frets.by',
    ['"feel"', 'equal, steps, cents, ratios'],
  ],
  ['frets that are a number', withFrets(18), 'scale.frets', ['18', 'an object in braces']],
  [
    'a ratio with a colon',
    withFrets({ by: 'ratios', list: ['3:2'] }),
    'scale.frets.list[0]',
    ['"3:2"', '"3/2"'],
  ],
  [
    'a ratio under the open string',
    withFrets({ by: 'ratios', list: ['2/3'] }),
    'scale.frets.list',
    ['2/3', 'between 1 and 16'],
  ],
  ['a ratio to nothing', withFrets({ by: 'ratios', list: ['3/0'] }), 'scale.frets.list', ['3/0']],
  [
    'ratios that fall',
    withFrets({ by: 'ratios', list: ['3/2', '5/4'] }),
    'scale.frets.list',
    ['does not rise'],
  ],
  [
    'one ratio in two ways',
    withFrets({ by: 'ratios', list: ['3/2', '6/4'] }),
    'scale.frets.list',
    ['does not rise'],
  ],
  ['a step twice', withFrets({ by: 'steps', list: [2, 2] }), 'scale.frets.list', ['does not rise']],
  ['a fret at the nut', withFrets({ by: 'steps', list: [0] }), 'scale.frets.list[0]', ['0', 'more than 0']],
  [
    'no frets in a list',
    withFrets({ by: 'cents', list: [] }),
    'scale.frets.list',
    ['0 entries', 'at least 1'],
  ],
  [
    'a reason that is a number',
    file({ overruled: { 'neck-left neck': 5 } }),
    'overruled.neck-left neck',
    ['5', 'text in quotes'],
  ],
  [
    'too many things',
    file({ things: Array.from({ length: 10_001 }, (_, n) => ({ kind: 'screw', id: `s${n}` })) }),
    'things',
    ['10001', 'at most 10000'],
  ],
]

describe('what is wrong with a design', () => {
  test.each(WRONG)('%s', (_what, text, path, says) => {
    const faults = faultsOf(text)
    proveFaults(faults)
    expect(faults.map((one) => one.path)).toContain(path)
    const sentence = faults.find((one) => one.path === path)?.sentence ?? ''
    for (const word of says) expect(sentence).toContain(word)
  })

  test('an id that is borne twice names both', () => {
    const things = ['a', 'b', 'a'].map((id) => ({ kind: 'screw', id }))
    expect(faultsOf(file({ things }))).toEqual([
      {
        path: 'things[2].id',
        sentence: 'The id "a" is already that of things[0]; every thing needs its own.',
      },
    ])
  })

  test('everything wrong is told, but no more than fifty', () => {
    expect(
      faultsOf(file({ hand: 'both', box: { length: 0, width: 0 } }))
        .map((one) => one.path)
        .sort(),
    ).toEqual(['box.length', 'box.width', 'hand'])
    const many = (id: (n: number) => string) =>
      file({ things: Array.from({ length: 200 }, (_, n) => ({ kind: 'screw', id: id(n) })) })
    expect(faultsOf(many((n) => `S${n}`))).toHaveLength(50)
    expect(faultsOf(many(() => 'same'))).toHaveLength(50)
  })

  test('a thing is named by its id where it has a usable one, else by its number', () => {
    const paths = (id: unknown) =>
      faultsOf(file({ things: [{ kind: 'screw', id, head: 99 }] })).map((one) => one.path)
    expect(paths('corner-1')).toEqual(['things.corner-1.head'])
    for (const id of ['', 'a.b', 'a\nb', 'x'.repeat(90), 7]) expect(paths(id)).toContain('things[0].head')
  })
})

describe('what is not a design at all', () => {
  test.each([
    ['nothing', '', 'not JSON'],
    ['a drawing', '<svg xmlns="http://www.w3.org/2000/svg"/>', 'not JSON'],
    ['a file cut off', file({ title: 'Tea box' }).slice(0, -3), 'cut off'],
    ['two files in one', `${file({})}${file({})}`, 'not JSON'],
    ['a number with its unit', '{"format":"lidwright","version":1,"box":{"length":240mm}}', 'not JSON'],
    ['a terminal’s escapes', '\u001b[2J\u202e', 'not JSON'],
    ['null', 'null', 'an object in braces; read null'],
    ['a number', '12', 'read 12'],
    ['a list', '[]', 'read []'],
    ['text', '"lidwright"', 'read "lidwright"'],
  ])('%s', (_what, text, says) => {
    const faults = faultsOf(text)
    proveFaults(faults)
    expect(faults).toHaveLength(1)
    expect(faults[0]?.path).toBe('')
    expect(faults[0]?.sentence).toContain(says)
  })

  test('a comma forgotten by hand is told with its line, and nothing of the file is repeated', () => {
    const [fault] = faultsOf('{\n  "format": "lidwright",\n  "version": 1\n  "title": "NaN"\n}')
    expect(fault?.sentence).toMatch(/, line 4\)\.$/)
    expect(faultsOf('NaN{"NaN{""')[0]?.sentence).not.toContain('NaN')
  })

  test.each([
    ['no format', '{}', 'format', 'read nothing'],
    ['another format', '{"format":"svg","version":1}', 'format', 'read "svg"'],
    ['no version', '{"format":"lidwright"}', 'version', 'Read nothing; wanted is 1'],
    ['a version in words', '{"format":"lidwright","version":"1"}', 'version', 'Read "1"'],
    ['a version before the first', '{"format":"lidwright","version":0}', 'version', 'Read 0'],
  ])('%s', (_what, text, path, says) => {
    const faults = faultsOf(text)
    proveFaults(faults)
    expect(faults.map((one) => one.path)).toEqual([path])
    expect(faults[0]?.sentence).toContain(says)
  })

  test.each([2, 1.5, 99])(
    'version %d of a later program is refused untouched, whatever else it holds',
    (version) => {
      const value = { format: 'lidwright', version, box: { shape: 'round' }, hand: ['both'] }
      const before = JSON.stringify(value)
      const reading = checkDesign(value)
      expect(reading).toMatchObject({ ok: false, faults: [{ path: 'version' }] })
      if (!reading.ok)
        expect(reading.faults[0]?.sentence).toMatch(new RegExp(`version ${version};.*newer Lidwright`))
      expect(JSON.stringify(value)).toBe(before)
    },
  )

  test('values that are no JSON are refused as well', () => {
    for (const value of [undefined, () => 1, Symbol('design'), 10n, new Date(0), new Map()]) {
      const reading = checkDesign(value)
      expect(reading.ok).toBe(false)
      if (!reading.ok) proveFaults(reading.faults)
    }
  })
})

describe('what is left out', () => {
  test('takes its default, all the way down', () => {
    const design = designOf({ hand: 'not stated' })
    expect(design).toMatchObject({
      title: 'Untitled box',
      hand: 'not stated',
      units: { display: 'mm', fraction: 32 },
      box: {
        length: 240,
        walls: { neckEnd: 6, tailEnd: 6, bass: 6, treble: 6 },
        lid: { thickness: 4, fit: 'on the walls' },
      },
      scale: { length: 635, start: 'nut', frets: { by: 'equal', count: 18 } },
      strings: { count: 3, gauges: [] },
      things: [],
      limits: {},
      overruled: {},
    })
    const reading = readDesign('{"format":"lidwright","version":1}')
    expect(reading).toEqual({ ok: true, design })
  })

  test('is filled in beside what is stated', () => {
    const design = designOf({ box: { walls: { bass: 9 } }, scale: { frets: { by: 'equal' } } })
    expect(design.box.walls).toEqual({ neckEnd: 6, tailEnd: 6, bass: 9, treble: 6 })
    expect(design.scale.frets).toEqual({ by: 'equal', count: 18 })
  })

  test('is written out when the design is, and reads back as the same', () => {
    const things = [
      {
        kind: 'sound-hole',
        id: 'a',
        along: { share: 0.3 },
        across: { midway: ['neck treble side', 'treble edge'] },
      },
      { kind: 'screw', id: 'b', along: { mirror: 'a' }, across: { mirror: 'a' } },
      { kind: 'pickup', id: 'c', along: { ofScale: 0.125 } },
    ]
    const design = designOf({
      notes: 'Zoë’s tin\nlid: 3 ½ mm\t“brass”',
      things,
      limits: { neckLeft: 9 },
      overruled: { 'a b': 'c' },
    })
    for (const space of [undefined, 2]) {
      expect(readDesign(JSON.stringify(design, null, space))).toEqual({ ok: true, design })
    }
  })

  test('a mark at the start of the file, as some editors leave it, is read over', () => {
    expect(readDesign(`\ufeff${file({})}`).ok).toBe(true)
  })

  test('what was given stays as it was', () => {
    const given = Object.freeze({ format: 'lidwright', version: 1, box: Object.freeze({ length: 300 }) })
    const reading = checkDesign(given)
    expect(reading.ok && reading.design.box.length).toBe(300)
    expect(given).toEqual({ format: 'lidwright', version: 1, box: { length: 300 } })
    expect(reading.ok && reading.design.box).not.toBe(given.box)
  })
})
