/** Lids that the benches drag things on. */
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { checkDesign, type Design, readDesign } from '../../geometry/index.ts'

/** A sample, by its file's name without the ending. Throws where it cannot be read. */
export function sample(name: string): Design {
  const read = readDesign(readFileSync(join('sample-boxes', `${name}.lidwright.json`), 'utf8'))
  if (!read.ok) throw new Error(`the sample ${name} cannot be read: ${read.faults[0]?.sentence}`)
  return read.design
}

/** The sample that most figures are about. */
export const teaBox = (): Design => sample('tea-box-three-strings')

/** A stated design, whole. Throws where it is wrong: a bench of nothing would be quick. */
export function checked(stated: object): Design {
  const read = checkDesign({ format: 'lidwright', version: 1, hand: 'right', ...stated })
  if (!read.ok) throw new Error(`the bench's own design is wrong: ${read.faults[0]?.sentence}`)
  return read.design
}

/** A lid with `howMany` round holes, whatever their number on one lid: they are smaller the more there are. */
export function manyHoles(howMany: number): Design {
  const columns = Math.ceil(Math.sqrt(howMany))
  const step = 900 / columns
  return checked({
    title: `${howMany} holes`,
    box: { length: 960, width: 960 },
    things: Array.from({ length: howMany }, (_, index) => ({
      kind: 'sound-hole',
      id: `hole-${index}`,
      along: step * ((index % columns) + 0.5) + 20,
      across: step * (Math.floor(index / columns) + 0.5) - 450,
      diameter: step * 0.4,
    })),
  })
}

/** A lid with a rosette of some two thousand holes, the first of its things. */
export const rosetteLid = (): Design =>
  checked({
    title: 'A rosette of many holes',
    box: { length: 400, width: 260 },
    things: [
      {
        kind: 'rosette',
        id: 'rosette',
        along: 140,
        across: 70,
        diameter: 110,
        pattern: 'spiral',
        hole: 1.2,
        pitch: 2.2,
      },
      { kind: 'sound-hole', id: 'hole', along: 60, across: -60 },
    ],
  })
