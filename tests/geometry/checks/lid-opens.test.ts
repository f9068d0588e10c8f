/**
 * A lid that swings or slides: every pair that bites or rubs, where, and how far it opens.
 *
 * The box lies from 462.2 to 702.2 along and 90 to either side; walls 6 and lid 4 thick, the pin at the lid's lower edge.
 */
import { describe, expect, test } from 'vitest'
import { check, sentenceOf, solve } from '../../../geometry/index.ts'
import { designOf, type Stated } from '../../support/designs.ts'
import { hole, pickup } from './breaking/case.ts'
import { to4, told } from './told.ts'

const lid = (fields: Stated, more: Stated = {}): Stated => ({
  ...more,
  box: { lid: { kind: 'hinged', ...fields } },
})
const BLOCK = { neck: { ends: 'at a block' } }

describe('a hinged lid', () => {
  test('its ends rub on the neck’s shoulders where nothing is left between them', () => {
    const rubs = (fields: Stated) => told('lid-clears', lid(fields))[0]
    // The lid ends at 462.2 and the neck begins a gap before it; the line is as long as the gap, away from the pin.
    expect(rubs({ gap: 0.2 })).toMatch(
      /^care lid \+ neck: 0.2 of 0.5, plan \((462.1|702.3), 0\) to \(\1, 0.2\)$/,
    )
    expect(rubs({ gap: 0.2, hingeEdge: 'treble wall' })).toMatch(
      /^care lid \+ neck: 0.2 of 0.5, plan \((462.1|702.3), 0\) to \(\1, -0.2\)$/,
    )
    expect(rubs({ gap: 0.5 })).toMatch(/^clear lid \+ neck: 0.5 of 0.5,/)
    expect(rubs({ gap: 0.49 })).toMatch(/^care lid \+ neck: 0.49 of 0.5,/)
  })

  test.each([
    // Upright, a lid of 4 stands before its pin, in the neck 4 high beside it: its middle 2 from the pin and 2 down.
    ['neck end', 0, 4, '(460.2, -2) to (464.2, -2)'],
    ['tail end', 0, 4, '(704.2, -2) to (700.2, -2)'],
    // A gap of 0.8 leaves 3.2 of it.
    ['neck end', 0.8, 3.2, '(459.8, -2) to (463, -2)'],
    ['tail end', 0.8, 3.2, '(704.6, -2) to (701.4, -2)'],
  ] as const)('hinged at the %s with a gap of %d bites into the neck', (hingeEdge, gap, bite, line) => {
    expect(told('lid-clears', lid({ hingeEdge, gap }))).toEqual([
      `stop lid + neck: ${-bite} of 0.5, section ${line}`,
    ])
  })

  test.each([
    ['bass wall', -1],
    ['treble wall', 1],
  ] as const)(
    'with a pin set in from the %s every wall it bites into is told, the deepest first',
    (hingeEdge, side) => {
      // 8 of the lid hang behind the pin at 82: as deep as the wall is thick, from 90 to 84.
      const walls = [
        `stop lid + ${hingeEdge}: -6 of 0.5, plan (582.2, ${side * 87}) to (582.2, ${side * 81})`,
        // Over the ends of the others, inside the side wall: 2 of 84 to 82.
        `stop lid + neck-end wall: -2 of 0.5, plan (465.2, ${side * 83}) to (465.2, ${side * 81})`,
        `stop lid + tail-end wall: -2 of 0.5, plan (699.2, ${side * 83}) to (699.2, ${side * 81})`,
      ]
      expect(told('lid-clears', lid({ hingeEdge, hingeIn: 8, gap: 0.8 }))).toEqual(walls)
      // What only rubs is told beside what bites.
      const rubs = told('lid-clears', lid({ hingeEdge, hingeIn: 8, gap: 0.3 }))
      expect(rubs.slice(0, 3)).toEqual(walls)
      expect(rubs.slice(3)).toEqual([expect.stringMatching(/^care lid \+ neck: 0.3 of 0.5,/)])
    },
  )

  test('let in between the walls bites into the one it is hinged on', () => {
    // The pin 0.5 inside the wall: of 4 that stand before it upright 3.5 are in the wall.
    const let_ = { fit: 'between the walls', play: 0.5, hingeIn: 6.5 }
    // 240 - 12 - 1 long; its saddle 0.72 of that along, the box 6.5 farther: it begins at 635 - 163.44 - 6.5.
    expect(told('lid-clears', lid(let_))).toEqual([
      'stop lid + bass wall: -3.5 of 0.5, plan (585.06, -85.75) to (585.06, -82.25)',
    ])
    expect(told('lid-clears', lid({ ...let_, hingeEdge: 'tail end' }, BLOCK))).toEqual([
      'stop lid + tail-end wall: -3.5 of 0.5, section (700.81, -2) to (697.31, -2)',
    ])
  })

  test('what bites is told whatever room is wanted, and of what does not the tightest', () => {
    const strict = (lidClear: number, fields: Stated) =>
      told('lid-clears', { ...lid(fields), limits: { lidClear } })
    expect(strict(0, { hingeIn: 8, gap: 0.3 }).map((line) => line.split(':')[0])).toEqual([
      'stop lid + bass wall',
      'stop lid + neck-end wall',
      'stop lid + tail-end wall',
    ])
    expect(strict(0, { gap: 0.3 })).toEqual([expect.stringMatching(/^clear lid \+ neck: 0.3 of 0,/)])
    expect(strict(0, {})).toEqual([expect.stringMatching(/^clear lid \+ neck: 0 of 0,/)])
  })

  test('that meets nothing has nothing to tell, nor has one that lifts off or is glued', () => {
    expect(told('lid-clears', lid({ hingeEdge: 'tail end', gap: 0.8 }, BLOCK))).toEqual([])
    for (const kind of ['lift-off', 'glued'])
      for (const rule of ['lid-clears', 'lid-reach', 'hinge-parallel'])
        expect(told(rule, lid({ kind, hingeEdge: 'neck end' }))).toEqual([])
  })
})

describe('what would cure it', () => {
  const said = (stated: Stated, moving: string, standing: string) => {
    const layout = solve(designOf(stated))
    const finding = check(layout).find(
      ({ rule, about }) => rule === 'lid-clears' && about[0] === moving && about[1] === standing,
    )
    if (!finding) throw new Error('nothing is said')
    return sentenceOf(finding, layout)
  }

  test('a lid under a board has to be freed of it', () => {
    const under = lid({ gap: 0.8 }, { board: { ends: 'at a length', length: 520 } })
    expect(said(under, 'lid', 'board')).toContain('end the board at the neck-end face')
  })

  test('what hangs in the way has to be moved by what it bites and what is wanted', () => {
    // Between the hinge and the neck: its lower corner turns from 70.1 across and 14 down into the neck, 71 off.
    const hangs = { along: 60, across: -28.9, sizeAlong: 20, sizeAcross: 18, depth: 18, cornerRadius: 0 }
    const bite = Math.sqrt(70.1 ** 2 + 14 ** 2 - 3 ** 2) - 71
    const words = said(lid({ gap: 0.8 }, { things: [pickup(hangs)] }), 'pickup', 'neck')
    expect(words).toContain(`bites ${bite.toFixed(1)} mm into`)
    expect(words).toContain(`Move it ${(bite + 0.5).toFixed(1)} mm away from the neck`)
  })

  test('a lid that rubs wants a gap, one let in a bevel or more play', () => {
    // Half a millimetre is wanted.
    expect(said(lid({}), 'lid', 'neck')).toMatch(/a gap at the neck of 0\.50 mm/)
    expect(said(lid({ hingeEdge: 'neck end' }), 'lid', 'neck')).not.toContain('Move it')
  })
})

describe('how far a lid opens', () => {
  const opens = (fields: Stated, more: Stated = {}) => told('lid-reach', lid(fields, more))

  test('is shown along its pin', () => {
    expect(opens({ gap: 0.8 })).toEqual(['clear lid: 90 of 90, plan (462.2, -90) to (702.2, -90)'])
    expect(opens({ gap: 0.8, hingeEdge: 'treble wall', opens: 75 })).toEqual([
      'clear lid: 75 of 75, plan (462.2, 90) to (702.2, 90)',
    ])
    expect(opens({ hingeIn: 8 })).toEqual(['care lid: 0 of 90, plan (462.2, -82) to (702.2, -82)'])
    expect(opens({ hingeEdge: 'neck end' })).toEqual(['care lid: 0 of 90, plan (462.2, -90) to (462.2, 90)'])
    expect(opens({ hingeEdge: 'tail end', hingeIn: 8 }, BLOCK)).toEqual([
      'care lid: 0 of 90, plan (694.2, -90) to (694.2, 90)',
    ])
  })

  test('a gap before the neck is met when the lid’s upper corner has come so far', () => {
    // The corner stands 4 over the pin: it has moved 0.8 back when sin a = 0.8 / 4.
    const degrees = to4((Math.asin(0.2) * 180) / Math.PI)
    const [line] = opens({ hingeEdge: 'tail end', gap: 0.8 })
    expect(Number(/: ([\d.]+) of 90/.exec(line ?? '')?.[1])).toBeCloseTo(degrees, 2)
    // As far as is wanted, if no more is.
    expect(opens({ hingeEdge: 'tail end', gap: 0.8, opens: 11 })[0]).toMatch(/^clear lid: 11 of 11,/)
    expect(opens({ hingeEdge: 'tail end', gap: 0.8, opens: 12 })[0]).toMatch(/^care lid: 11.5\d* of 12,/)
  })

  test('a lid that slides does not swing', () => {
    expect(opens({ kind: 'sliding' })).toEqual([])
  })
})

describe('a hinge across the neck', () => {
  const crosses = (hingeEdge: string, more: Stated = {}) => told('hinge-parallel', lid({ hingeEdge }, more))

  test.each([
    ['neck end', {}, ['care lid + neck: 90 of 0, plan (462.2, -19) to (462.2, 19)']],
    ['tail end', {}, ['care lid + neck: 90 of 0, plan (702.2, -19) to (702.2, 19)']],
    ['neck end', BLOCK, ['care lid + neck: 90 of 0, plan (462.2, -19) to (462.2, 19)']],
    ['tail end', BLOCK, []],
    ['bass wall', {}, []],
    ['treble wall', {}, []],
    // A narrower neck is crossed by as much.
    [
      'tail end',
      { neck: { width: 30, widthAtNut: 30 } },
      ['care lid + neck: 90 of 0, plan (702.2, -15) to (702.2, 15)'],
    ],
    // Inside it is 228 long: a tongue that reaches just to the wall is not in it, a longer one is.
    ['tail end', { neck: { ends: 'at a block', tongue: 228 } }, []],
    [
      'tail end',
      { neck: { ends: 'at a block', tongue: 229 } },
      ['care lid + neck: 90 of 0, plan (702.2, -19) to (702.2, 19)'],
    ],
  ] as const)('at the %s, %j', (edge, more, lines) => expect(crosses(edge, more)).toEqual(lines))
})

describe('a lid that slides', () => {
  const slides = (slidesTo: string, ...things: Stated[]) =>
    told('lid-clears', lid({ kind: 'sliding', slidesTo }, { things }))
  // 20 square and 16 deep, so 12 under a lid of 4: one to the treble, one to the bass.
  const one = pickup({ along: 60, across: 50, sizeAlong: 20, sizeAcross: 20, depth: 16 })
  const two = pickup({ id: 'two', along: 100, across: -50, sizeAlong: 20, sizeAcross: 20, depth: 16 })

  test.each([
    // 3 deeper than what the relief leaves over the neck: of 12 under the lid 9 stand in it; then the wall has all 12.
    [
      'bass wall',
      'pickup + neck: -9',
      '(522.2, 19)',
      ['two + bass wall', 562.2],
      ['pickup + bass wall', 522.2],
      -84,
    ],
    [
      'treble wall',
      'two + neck: -9',
      '(562.2, -19)',
      ['pickup + treble wall', 522.2],
      ['two + treble wall', 562.2],
      84,
    ],
  ] as const)(
    'to the %s each pair is told once, the first to be met first',
    (to, first, at, second, third, wall) => {
      const side = ([pair, x]: readonly [string, number]) =>
        `stop ${pair}: -12 of 0.5, plan (${x}, ${wall}) to (${x}, ${wall})`
      const lines = slides(to, one, two)
      expect(lines[0]).toBe(`stop ${first} of 0.5, plan ${at} to ${at}`)
      // Both are 24 from their wall's inside and 34 - 10 off: the other side's comes first.
      expect(lines.slice(1)).toEqual([side(second), side(third)])
    },
  )

  test.each([
    ['neck end', '(462.2, -2)', '(468.2, -10)', 'neck-end wall'],
    ['tail end', '(702.2, -2)', '(696.2, -10)', 'tail-end wall'],
  ] as const)('to the %s it stands against the neck at once', (to, neck, wall, name) => {
    expect(slides(to)).toEqual([`stop lid + neck: -4 of 0.5, section ${neck} to ${neck}`])
    // What hangs 12 under the lid meets the wall half way down.
    expect(slides(to, one)).toEqual([
      `stop lid + neck: -4 of 0.5, section ${neck} to ${neck}`,
      `stop pickup + ${name}: -12 of 0.5, section ${wall} to ${wall}`,
    ])
  })

  test('says how far it goes before that', () => {
    // From its side at -40 to the neck's at -19.
    const layout = solve(designOf(lid({ kind: 'sliding', slidesTo: 'treble wall' }, { things: [two] })))
    const finding = check(layout).find(({ rule, about }) => rule === 'lid-clears' && about[1] === 'neck')
    if (!finding) throw new Error('nothing is said')
    expect(sentenceOf(finding, layout)).toContain(
      'slides out 21.0 mm and then stands against the neck, 9.0 mm of it',
    )
  })

  test('with nothing under it slides out over a side wall', () => {
    expect(slides('bass wall')).toEqual([])
    expect(slides('treble wall', hole())).toEqual([])
  })
})
