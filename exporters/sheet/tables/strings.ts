/** Strings at pitch, where they lie, and where the saddle must stand for each. */
import { loadsOf } from '../../../geometry/index.ts'
import type { Table } from '../model.ts'
import type { Source } from '../source.ts'
import { madeWords } from './hardware.ts'

const fromTreble = <T>(list: readonly T[]): T[] => [...list].reverse()

/** Gauge, pitch and pull of each string, treble first as the trade counts. */
export function stringTable({ report, layout }: Source): Table {
  const makes = loadsOf(layout).strings.map((one) => madeWords(one.make))
  return {
    id: 'strings',
    title: 'Strings and pull',
    columns: [
      { key: 'number', title: 'String', as: 'count' },
      { key: 'pitch', title: 'Pitch', as: 'words' },
      { key: 'hertz', title: 'Open', as: 'hertz' },
      { key: 'gauge', title: 'Gauge', as: 'gauge' },
      { key: 'make', title: 'Made of', as: 'words' },
      { key: 'tension', title: 'Pull', as: 'pull' },
      { key: 'shareOfBreaking', title: 'Of breaking', as: 'share' },
      { key: 'feel', title: 'Feels', as: 'words' },
    ],
    rows: fromTreble(report.strings).map((one) => [
      one.number,
      one.pitch?.name ?? null,
      one.pitch?.hertz ?? null,
      one.gauge,
      makes[one.index] ?? null,
      one.tension,
      one.shareOfBreaking,
      one.feel,
    ]),
    note:
      report.pull.missing === null
        ? 'An estimate from scale, pitch and what a metre of the string weighs.'
        : 'Pull is not known: no pitch is stated for every string, or a string cannot be made as stated.',
  }
}

/** Where each string lies, and the saddle for it: lines to mark on the lid. */
export function saddleTable({ report }: Source): Table {
  return {
    id: 'saddle-marks',
    title: 'String places and saddle marks',
    columns: [
      { key: 'number', title: 'String', as: 'count' },
      { key: 'yAtNut', title: 'At the nut, from the centreline', as: 'length', signed: true },
      { key: 'yAtSaddle', title: 'At the saddle', as: 'length', signed: true },
      { key: 'setback', title: 'Own setback', as: 'exact' },
      { key: 'fromNut', title: 'Octave true at, from the nut', as: 'length' },
      { key: 'fromEdge', title: 'from the lid’s edge', as: 'length' },
      { key: 'hole', title: 'Hole', as: 'count' },
    ],
    rows: fromTreble(report.strings).map((one) => {
      const fromNut = one.setback === null ? null : report.scale.length + one.setback
      return [
        one.number,
        one.yAtNut,
        one.yAtSaddle,
        one.setback,
        fromNut,
        fromNut === null ? null : report.saddle.fromEdge + fromNut - report.saddle.fromNut,
        one.tail?.hole ?? null,
      ]
    }),
    note: 'Treble side positive. The lid’s edge is the one at the neck. The setbacks are estimates: mark them, then let the tuner decide.',
  }
}

/** The saddle line as planned, from every edge a tape can be hooked on. */
export function saddleLine({ report }: Source): Table {
  const { saddle } = report
  const rows: (readonly [string, number])[] = [
    ['Saddle line from the nut', saddle.fromNut],
    ['from the lid’s edge at the neck', saddle.fromEdge],
    ['from the lid’s edge at the tail', saddle.fromTailEdge],
    ['A loose saddle stands free from', saddle.freeFrom],
    ['to', saddle.freeTo],
  ]
  return {
    id: 'saddle-line',
    title: 'Saddle line',
    columns: [
      { key: 'what', title: 'Measure', as: 'words' },
      { key: 'planned', title: 'Planned', as: 'length' },
      { key: 'exact', title: 'exactly', as: 'exact' },
    ],
    rows: rows.map(([what, mm]) => [what, mm, mm]),
  }
}
