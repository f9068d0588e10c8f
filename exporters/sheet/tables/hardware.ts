/** What is bought or found in a drawer. */
import { loadsOf, type Make, type Thing, valueAt } from '../../../geometry/index.ts'
import { cellText } from '../../tables/cells.ts'
import type { Table } from '../model.ts'
import type { Source } from '../source.ts'

/** Fret wire lost in cutting and filing, as a share. Common practice, no source. */
const WIRE_LOST = 0.1

/** How a string is made, in words. */
export const madeWords = (make: Make): string =>
  make.construction === 'wound'
    ? `${make.material}, wound with ${make.wrap}`
    : make.construction === 'stated'
      ? `${make.material}, mass as stated`
      : `${make.material}, plain`

type Line = readonly [what: string, count: number, size: string]

function linesOf({ design, layout, report, say }: Source): Line[] {
  const strings = loadsOf(layout).strings.map(({ gauge, make }): string => {
    const { units } = design
    const text = cellText(gauge, { as: 'gauge' }, units)
    return `String ${units.display === 'mm' ? `${text} mm` : `${text} in`}, ${madeWords(make)}`
  })
  const wire = report.scale.fretless
    ? 0
    : report.frets.filter((one) => one.onWood).reduce((sum, one) => sum + (one.yTreble - one.yBass), 0)
  const slots = report.frets.filter((one) => one.onWood).length
  const { bassTuners, trebleTuners, postHole } = design.headstock
  const tuners = bassTuners + trebleTuners
  return [
    ...counted(strings).map(([what, count]): Line => [what, count, '']),
    ...(tuners > 0 ? [['Tuner', tuners, `posts through ${say(postHole)} holes`] as const] : []),
    ...(wire > 0
      ? [
          [
            'Fret wire',
            1,
            `${say(wire * (1 + WIRE_LOST))}, for ${slots} frets with a tenth to spare`,
          ] as const,
        ]
      : []),
    ...counted(
      design.things.map((thing) => {
        return thing.kind === 'screw' ? screwWords(thing, say) : ''
      }),
    ).map(([what, count]): Line => [what, count, '']),
    ...counted(report.things.filter(({ kind }) => bought(kind)).map(({ what }) => what)).map(
      ([what, count]): Line => [what, count, ''],
    ),
  ]
}

function screwWords(thing: Thing, say: Source['say']): string {
  const [long, hole, head] = ['screwLength', 'clearance', 'head'].map((key) => Number(valueAt(thing, [key])))
  if (long === undefined || hole === undefined || head === undefined) return ''
  const sunk = head > hole ? `, countersunk head ${say(head)}` : ''
  return `Wood screw, ${say(long)} long, for a ${say(hole)} hole${sunk}`
}

/** Holes are made, screws are counted by their size; everything else is bought. */
const bought = (kind: string): boolean =>
  kind !== 'screw' && !/hole|vent|rosette|curve|brace|label/.test(kind)

function counted(texts: readonly string[]): [string, number][] {
  const counts = new Map<string, number>()
  for (const text of texts) if (text !== '') counts.set(text, (counts.get(text) ?? 0) + 1)
  return [...counts]
}

export const hardwareList = (source: Source): Table => ({
  id: 'hardware',
  title: 'Hardware',
  columns: [
    { key: 'what', title: 'What', as: 'words' },
    { key: 'count', title: 'How many', as: 'count' },
    { key: 'size', title: 'Size', as: 'words' },
  ],
  rows: linesOf(source).map((one) => [...one]),
})
