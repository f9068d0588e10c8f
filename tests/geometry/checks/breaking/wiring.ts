/** Designs made to break the rules about wiring: each a usual circuit with one wire wrong, missing or too many. */
import { checkDesign, presetWiring } from '../../../../geometry/index.ts'
import type { Stated } from '../../../support/designs.ts'
import type { Cases } from './case.ts'

const EMPTY = checkDesign({ format: 'lidwright', version: 1 })
if (!EMPTY.ok) throw new Error('the empty design is refused')

type Name = Parameters<typeof presetWiring>[0]
type Wire = { readonly from: string; readonly to: string; readonly colour?: string }

interface Changed {
  /** Wires left out, as `from to`. */
  readonly without?: readonly string[]
  readonly and?: readonly Wire[]
  /** Fields of components by their ids; `null` takes one out with its wires. */
  readonly parts?: Readonly<Record<string, Stated | null>>
  readonly more?: Stated
}

function wired(name: Name, { without = [], and = [], parts = {}, more = {} }: Changed = {}): Stated {
  const plain = presetWiring(name, (EMPTY as { design: Parameters<typeof presetWiring>[1] }).design)
  const gone = (end: string) => parts[end.split('.')[0] ?? ''] === null
  return {
    wiring: {
      ...plain,
      components: plain.components
        .filter(({ id }) => parts[id] !== null)
        .map((one) => ({ ...one, ...parts[one.id] })),
      wires: [
        ...plain.wires.filter(
          ({ from, to }) => !without.includes(`${from} ${to}`) && !gone(from) && !gone(to),
        ),
        ...and,
      ],
      ...more,
    },
  }
}

const FULL = 'coil, volume and tone'

export const WIRING: Cases = {
  'wiring-jack': {
    holds: wired(FULL),
    breaks: [
      {
        what: 'wires that lead nowhere',
        design: wired(FULL, { parts: { jack: null } }),
        grade: 'stop',
        measured: 0,
      },
    ],
  },
  'wiring-grounded': {
    holds: wired(FULL),
    breaks: [
      {
        what: 'strings left off the ground',
        design: wired(FULL, { without: ['strings.metal volume.case'] }),
        grade: 'stop',
        measured: 0,
      },
      {
        what: 'a case that reaches ground only through a capacitor',
        design: wired(FULL, { without: ['tone.case volume.case'] }),
        grade: 'stop',
        measured: 0,
      },
      {
        what: 'a star without a wire to the sleeve',
        design: wired(FULL, { without: ['volume.case jack.sleeve'] }),
        grade: 'stop',
        measured: 0,
      },
      {
        what: 'a metal cover with no wire',
        design: wired(FULL, { parts: { coil: { bare: true } } }),
        grade: 'stop',
        measured: 0,
      },
    ],
  },
  'wiring-strings': {
    holds: wired(FULL),
    breaks: [
      {
        what: 'steel strings without a wire',
        design: wired(FULL, { parts: { strings: null } }),
        grade: 'care',
        measured: 0,
      },
    ],
  },
  'wiring-shorted': {
    holds: wired(FULL),
    breaks: [
      {
        what: 'a wire between tip and sleeve',
        design: wired(FULL, { and: [{ from: 'jack.tip', to: 'jack.sleeve' }] }),
        grade: 'stop',
        measured: 1,
      },
      {
        what: 'a coil joined to itself the long way round',
        design: wired(FULL, { and: [{ from: 'coil.hot', to: 'tone.case' }] }),
        grade: 'stop',
        measured: 1,
      },
    ],
  },
  'wiring-heard': {
    holds: wired(FULL),
    breaks: [
      // No way from wiper to tip.
      {
        what: 'a tip without a wire',
        design: wired(FULL, { without: ['volume.2 jack.tip'] }),
        grade: 'stop',
        measured: 0,
      },
      {
        what: 'a switch never reached',
        design: wired('two coils, switch, volume and tone', { without: ['switch.common volume.3'] }),
        grade: 'stop',
        measured: 0,
      },
      // A divider by hand: 8 kΩ into 10 kΩ leaves 10 / 18.
      {
        what: 'a coil into a line input',
        design: wired('coil straight to the jack', { more: { inputKilohms: 10 } }),
        grade: 'care',
        measured: 10 / 18,
      },
      // 16 nF into 50 kΩ turns at 1 / (2 π 50 000 × 16e-9) = 198.94 Hz; E2 at 82.4069 Hz is under it by r = 0.41423:
      // r / √(1 + r²), the high-pass of any text on circuits.
      {
        what: 'a piezo into a line input',
        design: wired('piezo straight to the jack', { more: { inputKilohms: 50 } }),
        grade: 'care',
        measured: 0.41423 / Math.sqrt(1 + 0.41423 ** 2),
        within: 1e-4,
      },
    ],
  },
  'wiring-knobs': {
    holds: wired(FULL),
    breaks: [
      {
        what: 'a tone pot without its capacitor',
        design: wired(FULL, { without: ['cap.b tone.case'] }),
        grade: 'care',
        measured: 0,
      },
    ],
  },
  'wiring-silent': {
    holds: wired(FULL),
    breaks: [
      {
        what: 'a switch that takes the pickup away',
        design: {
          wiring: {
            components: [
              { id: 'coil', part: 'coil pickup', kilohms: 8, bare: false },
              { id: 'standby', part: 'switch', ways: 'on and off', bare: false },
              { id: 'jack', part: 'jack' },
            ],
            wires: [
              { from: 'coil.hot', to: 'standby.common' },
              { from: 'standby.a', to: 'jack.tip' },
              { from: 'coil.ground', to: 'jack.sleeve' },
            ],
          },
        },
        grade: 'note',
        measured: 0,
      },
    ],
  },
}
