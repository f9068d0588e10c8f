/** Planned measures by name: what a measure of the finished instrument is put beside. */
import type { Source } from './source.ts'

export interface PlannedMeasure {
  /** Stable, stored in files: `saddle.fromEdge`, `hole-treble.fromEdge`. */
  readonly name: string
  /** As the sheet says it: `Saddle line from the lid’s edge`. */
  readonly title: string
  readonly mm: number
}

/** Every planned measure worth measuring again on the finished instrument, in the order of the work. */
export function plannedMeasures({ design, report, layout }: Source): PlannedMeasure[] {
  const { box, neck, nut, saddle, scale, board } = report
  const calledAlike = (called: string) =>
    report.things.filter((one) => (one.name || one.what) === called).length > 1
  const twelfth = report.frets.find((one) => Math.abs(one.cents - 1200) < 1e-6)
  const list: (readonly [string, string, number | null | undefined])[] = [
    ['box.length', 'Box, long', box.length],
    ['box.width', 'Box, wide', box.width],
    ['box.depth', 'Box, deep', box.depth],
    ['box.lid.thickness', 'Lid, thick', design.box.lid.thickness],
    ['scale.length', 'Scale length', scale.length],
    ['scale.saddleLine', 'Nut to saddle', scale.saddleLine],
    ['scale.octave', 'Nut to the octave fret', twelfth?.fromNut],
    ['neck.thickness', 'Neck, thick', design.neck.thickness],
    ['neck.width', 'Neck, wide at the box', design.neck.width],
    ['neck.widthAtNut', 'Neck, wide at the nut', design.neck.widthAtNut],
    ['neck.thinnest', 'Neck at its thinnest', neck.thinnest.left],
    ['board.thickness', 'Fretboard, thick', board ? design.board.thickness : null],
    ['nut.height', 'Nut, over the board', nut.top - neck.playingTop],
    ['nut.span', 'Outer strings at the nut', spanOf(layout.strings.map((one) => one.yAtNut))],
    ['saddle.fromEdge', 'Saddle from the lid’s edge at the neck', saddle.fromEdge],
    ['saddle.fromTailEdge', 'Saddle from the lid’s edge at the tail', saddle.fromTailEdge],
    ['saddle.height', 'Saddle, tall', saddle.height],
    ['saddle.span', 'Outer strings at the saddle', spanOf(layout.strings.map((one) => one.yAtSaddle))],
    ['saddle.action', 'Action over the octave', design.saddle.action],
    ['tailpiece.fromEdge', 'String holes from the edge', design.tailpiece.fromEdge],
    ...report.things.flatMap((one): (readonly [string, string, number])[] => {
      const plain = one.name || one.what
      const called = calledAlike(plain) ? `${plain} (${one.id})` : plain
      return [
        [`${one.id}.fromEdge`, `${called}, from the edge`, one.fromEdge],
        [`${one.id}.fromCentreline`, `${called}, from the centreline`, one.fromCentreline],
      ]
    }),
  ]
  return list.flatMap(([name, title, mm]) => (mm == null ? [] : [{ name, title, mm }]))
}

const spanOf = (places: readonly number[]): number | null =>
  places.length > 1 ? Math.max(...places) - Math.min(...places) : null
