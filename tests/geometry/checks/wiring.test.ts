/** What the wiring says of each component, and where that stands: on its face, or at the saddle where it is on none. */
import { describe, expect, test } from 'vitest'
import { check, type Design, presetWiring, sentenceOf, solve } from '../../../geometry/index.ts'
import { designOf, type Stated } from '../../support/designs.ts'
import { graded, to4, told } from './told.ts'

const FULL = 'coil, volume and tone'
type Name = Parameters<typeof presetWiring>[0]
type Part = Design['wiring']['components'][number]

/** Two pots in the lid and a jack in the treble wall, wired as usual; pickup and strings stand on no face. */
const THINGS: readonly Stated[] = [
  { kind: 'pot', id: 'loud', along: 120, across: 55 },
  { kind: 'pot', id: 'dull', along: 150, across: 55 },
  { kind: 'jack', id: 'out', face: 'treble-wall', along: 40, across: 25 },
]
function wired(name: Name, change: (wiring: Design['wiring']) => Stated = (wiring) => wiring): Stated {
  const bare = designOf({ things: THINGS })
  return { things: THINGS, wiring: { ...bare.wiring, ...change(presetWiring(name, bare)) } }
}
const without = (from: string, to: string) => (wiring: Design['wiring']) => ({
  ...wiring,
  wires: wiring.wires.filter((wire) => wire.from !== from || wire.to !== to),
})
const and = (from: string, to: string) => (wiring: Design['wiring']) => ({
  ...wiring,
  wires: [...wiring.wires, { from, to }],
})
const parts = (change: (part: Part) => Part | null) => (wiring: Design['wiring']) => {
  const components = wiring.components.flatMap((one) => change(one) ?? [])
  const there = new Set(components.map(({ id }) => id))
  const leadsOn = (end: string) => there.has(end.split('.')[0] ?? '')
  return { ...wiring, components, wires: wiring.wires.filter(({ from, to }) => leadsOn(from) && leadsOn(to)) }
}

const SADDLE = 'plan (635, 0) to (635, 0)'
const LOUD = 'lid (120, 55) to (120, 55)'
const DULL = 'lid (150, 55) to (150, 55)'
const OUT = 'treble-wall (40, -25) to (40, -25)'

test('nothing is said where nothing is wired', () => {
  for (const rule of ['jack', 'grounded', 'strings', 'shorted', 'heard', 'knobs', 'silent'])
    expect(told(`wiring-${rule}`, { things: THINGS })).toEqual([])
})

describe('a jack', () => {
  test('is wanted, and two are enough', () => {
    expect(told('wiring-jack', wired(FULL))).toEqual([`clear wiring: 1 of 1, ${SADDLE}`])
    expect(
      told(
        'wiring-jack',
        wired(
          FULL,
          parts((one) => (one.part === 'jack' ? null : one)),
        ),
      ),
    ).toEqual([`stop wiring: 0 of 1, ${SADDLE}`])
    const second = (wiring: Design['wiring']) => ({
      ...wiring,
      components: [...wiring.components, { id: 'other', part: 'jack' }],
    })
    expect(told('wiring-jack', wired(FULL, second as never))).toEqual([`clear wiring: 2 of 1, ${SADDLE}`])
  })

  test('without one nothing else can be told', () => {
    const none = wired(
      FULL,
      parts((one) => (one.part === 'jack' ? null : one)),
    )
    for (const rule of ['grounded', 'heard', 'knobs', 'silent'])
      expect(told(`wiring-${rule}`, none)).toEqual([])
  })
})

describe('metal that is to be grounded', () => {
  test('is, in a usual circuit', () => {
    expect(told('wiring-grounded', wired(FULL))).toEqual([`clear wiring: 1 of 1, ${SADDLE}`])
  })

  test('is told part by part, each where it stands', () => {
    // The star leads to the sleeve no more: both pots and the strings are left.
    expect(told('wiring-grounded', wired(FULL, without('volume.case', 'jack.sleeve')))).toEqual([
      `stop loud + component volume: 0 of 1, ${LOUD}`,
      `stop dull + component tone: 0 of 1, ${DULL}`,
      `stop component strings: 0 of 1, ${SADDLE}`,
    ])
    expect(told('wiring-grounded', wired(FULL, without('strings.metal', 'volume.case')))).toEqual([
      `stop component strings: 0 of 1, ${SADDLE}`,
    ])
  })
})

describe('strings of metal', () => {
  const strings = (material: string | null, wiring: Stated) =>
    told('wiring-strings', {
      ...wiring,
      stringing: { makes: material === null ? [] : [{ construction: 'plain', material }] },
    })
  const off = wired(
    FULL,
    parts((one) => (one.part === 'metal part' ? null : one)),
  )

  test('belong in the net, and count as metal where nobody says of what they are', () => {
    expect(strings(null, wired(FULL))).toEqual([`clear wiring + strings: 1 of 1, ${SADDLE}`])
    expect(strings(null, off)).toEqual([`care wiring + strings: 0 of 1, ${SADDLE}`])
    expect(strings('music wire', off)).toEqual([`care wiring + strings: 0 of 1, ${SADDLE}`])
  })

  test('of nylon do not, unless one of them is of metal', () => {
    expect(strings('nylon', off)).toEqual([])
    expect(strings('fluorocarbon', off)).toEqual([])
    const mixed = [
      { construction: 'plain', material: 'nylon' },
      { construction: 'plain', material: 'music wire' },
    ]
    expect(graded('wiring-strings', { ...off, stringing: { makes: mixed } })).toEqual(['care'])
  })

  test('are not asked after where nothing hears them', () => {
    const deaf = wired(
      FULL,
      parts((one) => (one.part === 'coil pickup' || one.part === 'metal part' ? null : one)),
    )
    expect(strings(null, deaf)).toEqual([])
  })
})

describe('wires that short', () => {
  test('none do, in a usual circuit', () => {
    expect(told('wiring-shorted', wired(FULL))).toEqual([`clear wiring: 0 of 0, ${SADDLE}`])
  })

  test('the jack is told where it stands, the pickup by its name', () => {
    expect(told('wiring-shorted', wired(FULL, and('jack.tip', 'jack.sleeve')))).toEqual([
      `stop out + component jack: 1 of 0, ${OUT}`,
    ])
    expect(told('wiring-shorted', wired(FULL, and('coil.hot', 'tone.case')))).toEqual([
      `stop component coil: 1 of 0, ${SADDLE}`,
    ])
    // Coil straight to the jack: what joins the two of one joins the two of the other.
    expect(
      told('wiring-shorted', wired('coil straight to the jack', and('jack.tip', 'jack.sleeve'))),
    ).toEqual([`stop out + component jack: 1 of 0, ${OUT}`, `stop component coil: 1 of 0, ${SADDLE}`])
  })
})

describe('what is heard at the jack', () => {
  // A coil of 8 kΩ into so many: R / (R + 8). An input of 18.667 kΩ leaves 0.7.
  const into = (inputKilohms: number, limits: Stated = {}) => ({
    ...wired('coil straight to the jack', (wiring) => ({ ...wiring, inputKilohms })),
    limits,
  })

  test.each([
    [(8 * 7) / 3 + 0.01, 'clear'],
    [(8 * 7) / 3 - 0.01, 'care'],
  ])('of a coil into %d kΩ', (kilohms, grade) => {
    const share = to4(kilohms / (kilohms + 8))
    expect(told('wiring-heard', into(kilohms))).toEqual([
      `${grade} component coil: ${share} of 0.7, ${SADDLE}`,
    ])
  })

  test('goes by what is wanted, but silence is never enough', () => {
    expect(told('wiring-heard', into(8, { wiringHeard: 0.5 }))).toEqual([
      `clear component coil: 0.5 of 0.5, ${SADDLE}`,
    ])
    const silent = { ...wired(FULL, without('volume.2', 'jack.tip')), limits: { wiringHeard: 0 } }
    expect(told('wiring-heard', silent)).toEqual([`stop component coil: 0 of 0.01, ${SADDLE}`])
  })

  test('tells of a coil and of a piezo what would mend it', () => {
    const said = (name: Name) => {
      const layout = solve(designOf(wired(name, (wiring) => ({ ...wiring, inputKilohms: 10 }))))
      const finding = check(layout).find(({ rule }) => rule === 'wiring-heard')
      if (!finding) throw new Error('nothing is said')
      return sentenceOf(finding, layout)
    }
    expect(said('coil straight to the jack')).toContain('Pots of more kΩ, or another input.')
    expect(said('piezo straight to the jack')).toContain('Pots of 1 MΩ, or a buffer.')
  })

  test('is told of each pickup', () => {
    const two = told('wiring-heard', wired('two coils, switch, volume and tone'))
    expect(two.map((line) => line.split(':')[0])).toEqual([
      'clear component neck-coil',
      'clear component saddle-coil',
    ])
  })
})

describe('knobs and switches', () => {
  test('a knob that does nothing is told where it stands', () => {
    expect(told('wiring-knobs', wired(FULL))).toEqual([])
    expect(told('wiring-knobs', wired(FULL, without('cap.b', 'tone.case')))).toEqual([
      `care dull + component tone: 0 of 1, ${DULL}`,
    ])
  })

  test('without a pickup no knob is asked', () => {
    const deaf = wired(
      FULL,
      parts((one) => (one.part === 'coil pickup' ? null : one)),
    )
    expect(told('wiring-knobs', deaf)).toEqual([])
    expect(told('wiring-silent', deaf)).toEqual([])
  })

  test('a position in which nothing is heard is told, where the switch stands', () => {
    const standby = {
      things: [{ kind: 'switch', id: 'stand-by', along: 120, across: -50 }],
      wiring: {
        components: [
          { id: 'coil', part: 'coil pickup', kilohms: 8, bare: false },
          { id: 'standby', part: 'switch', ways: 'on and off', bare: false, thing: 'stand-by' },
          { id: 'jack', part: 'jack' },
        ],
        wires: [
          { from: 'coil.hot', to: 'standby.common' },
          { from: 'standby.a', to: 'jack.tip' },
          { from: 'coil.ground', to: 'jack.sleeve' },
        ],
      },
    }
    expect(told('wiring-silent', standby)).toEqual([
      'note stand-by + component standby + position off: 0 of 1, lid (120, -50) to (120, -50)',
    ])
    expect(told('wiring-silent', wired('two coils, switch, volume and tone'))).toEqual([])
  })
})
