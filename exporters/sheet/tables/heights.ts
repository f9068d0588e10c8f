/** Heights from head to tail, and what the pull does to neck and lid. */
import type { Cell, Table } from '../model.ts'
import { FACE_WORDS, type Source } from '../source.ts'

/** Heights over the outer face of the lid, and what is left of the neck. */
export function heightTable({ report, design }: Source): Table {
  const { nut, saddle, board, neck } = report
  const rows: (readonly [string, number | null])[] = [
    ['Top of the neck, over the lid', neck.top],
    ['Top of the fretboard, over the lid', board?.top ?? null],
    ['Strings at the nut, over the lid', nut.top],
    ['Nut over the board or bare neck', nut.top - neck.playingTop],
    ['Saddle, lid to strings', saddle.height],
    ['Saddle that gives the action wanted', saddle.heightWanted],
    ['Action wanted over the octave', design.saddle.action],
    ['Action as drawn', saddle.action],
    ['Action with the neck bent by the pull', saddle.actionUnderPull],
    ['Neck blank, thick', design.neck.thickness],
    [`Neck left at its thinnest (${neck.thinnest.of})`, neck.thinnest.left],
    ...neck.slots.flatMap((slot): (readonly [string, number])[] => [
      [`Slot in the ${FACE_WORDS[slot.face] ?? slot.face}, deep`, slot.depth],
      ['the same, wide', slot.width],
    ]),
  ]
  return {
    id: 'heights',
    title: 'Heights and depths',
    columns: [
      { key: 'what', title: 'Measure', as: 'words' },
      { key: 'planned', title: 'Planned', as: 'length' },
      { key: 'exact', title: 'exactly', as: 'exact' },
    ],
    rows: rows.filter(([, mm]) => mm !== null).map(([what, mm]) => [what, mm, mm]),
  }
}

/** Neck and lid under the pull; `null` until the pull is known. */
export function bendTable({ report }: Source): Table | null {
  const { neck, lid, saddle } = report
  if (report.pull.missing !== null) return null
  const exact: (readonly [string, number | null])[] = [
    ['Bow at mid-neck', neck.bow],
    ['Rise of the nut, at most', neck.nutRise],
    ['Action higher at the octave, at most', neck.actionChange],
    ['Lid sags under the saddle', lid.onNeck === true ? null : lid.sag],
  ]
  const rows: Cell[][] = exact.filter(([, mm]) => mm !== null).map(([what, mm]) => [what, mm, '', '', ''])
  rows.push(['All strings together', '', report.pull.total, '', ''])
  if (lid.downForce !== null) rows.push(['Press on the lid', '', lid.downForce, '', ''])
  if (neck.weakest)
    rows.push([`Weakest place of the neck: ${neck.weakest.of}`, '', '', neck.weakest.share, ''])
  if (saddle.breakAngle !== null)
    rows.push(['Least break angle at the saddle', '', '', '', saddle.breakAngle])
  return {
    id: 'under-pull',
    title: 'Neck and lid under the pull',
    columns: [
      { key: 'what', title: 'Estimate', as: 'words' },
      { key: 'exact', title: 'Comes to', as: 'exact' },
      { key: 'pull', title: 'Force', as: 'pull' },
      { key: 'share', title: 'Of what it bears', as: 'share' },
      { key: 'angle', title: 'Angle', as: 'angle' },
    ],
    rows,
  }
}
