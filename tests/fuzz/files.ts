/** Files as they come back from a bad disk, a mail program or somebody who means no good: mutated, cut off, swapped. */

import fc from 'fast-check'
import { zipSync } from 'fflate'
import { takeInFiles } from '../../app/shelf/take-in.ts'
import { carry, readCarried } from '../../exporters/index.ts'
import {
  check,
  type Design,
  designText,
  faults as faultsOfContour,
  partsOf,
  readCurve,
  readDesign,
  solve,
} from '../../geometry/index.ts'
import { numbersIn } from '../laws/engine-laws.ts'
import { faultyFaults, isSentence } from '../support/sentences.ts'
import { knownDesigns } from './designs.ts'
import { type Mutation, mutated, mutation } from './mutations.ts'
import { drawn, type Trial } from './trial.ts'

type Sort = 'design' | 'curve' | 'label' | 'zip'

interface Damaged {
  readonly sort: Sort
  /** The file, a byte a letter. */
  readonly text: string
}

const CURVES = [
  'M0 0 C 10 -20 30 -20 40 0 S 50 40 20 50 Q 0 40 0 0 Z',
  'M10 0 H 50 A 10 10 0 0 1 60 10 V 40 A 10 10 0 0 1 50 50 H 10 A 10 10 0 0 1 0 40 V 10 A 10 10 0 0 1 10 0 Z',
  '<svg xmlns="http://www.w3.org/2000/svg"><g id="a"><path d="M0 0l40 0l-10 30z"/><circle cx="9" cy="8" r="5"/></g></svg>',
  '<svg><rect x="1" y="2" width="30" height="20" rx="3"/><polygon points="0,0 50,0 20,40"/><ellipse rx="9" ry="4"/></svg>',
] as const

/** Another file of each sort, as text of one byte a letter. */
function source(sort: Sort, which: number): string {
  const all = knownDesigns()
  const design = all[which % all.length] as Design
  const asFile = designText(design)
  if (sort === 'curve') return CURVES[which % CURVES.length] ?? ''
  if (sort === 'label') return carry(design)
  if (sort === 'zip')
    return Buffer.from(
      zipSync({ 'a.lidwright.json': Buffer.from(asFile) }, { mtime: '2020-01-01' }),
    ).toString('latin1')
  // Half of them as compact as another program would write them.
  return which % 2 ? asFile : JSON.stringify(JSON.parse(asFile))
}

const damaged: fc.Arbitrary<Damaged> = fc
  .tuple(
    fc.constantFrom<Sort>('design', 'design', 'design', 'design', 'curve', 'curve', 'label', 'zip'),
    fc.nat(),
    fc.array(mutation, { maxLength: 3 }),
  )
  .map(([sort, which, changes]: [Sort, number, Mutation[]]) => ({
    sort,
    text: changes.reduce((text, one) => mutated(text, one), source(sort, which)),
  }))

/** How each came out, so that a trial in which nothing was ever read, or never refused, is known for idle. */
const outcomes = new WeakMap<Damaged, string>()

const reached = (one: Damaged): string[] => [`${one.sort} ${outcomes.get(one) ?? 'not asked'}`]

export const filesTrial: Trial<Damaged> = {
  name: 'files',
  draw: (seed) => drawn(damaged, seed),
  laws: [{ name: 'a file is read whole or refused with a place and a sentence', wrong }],
  reached,
  mustReach: ['design', 'curve', 'label', 'zip'].flatMap((sort) => [`${sort} read`, `${sort} refused`]),
  text: (one) => JSON.stringify(one),
  read: (text) => JSON.parse(text),
}

async function wrong(one: Damaged): Promise<readonly string[]> {
  const settle = (read: boolean, words: readonly string[]) => {
    outcomes.set(one, read ? 'read' : 'refused')
    return words
  }
  switch (one.sort) {
    case 'design': {
      const reading = readDesign(one.text)
      return reading.ok ? settle(true, unsound(reading.design)) : settle(false, faultyFaults(reading.faults))
    }
    case 'curve': {
      const reading = readCurve(one.text)
      if (!reading.ok) return settle(false, isSentence(reading.sentence) ? [] : [reading.sentence])
      const vertices = reading.curve.map(([x, y, bulge]) => ({ x: x * 50, y: y * 50, bulge }))
      const bad = vertices.some(({ x, y, bulge }) => ![x, y, bulge].every(Number.isFinite))
      // Which way it runs is the business of whoever puts it on a face.
      const faulty = bad ? ['not finite'] : faultsOfContour({ shape: 'chain', closed: true, vertices })
      return settle(
        true,
        faulty.filter((fault) => !fault.includes('clockwise')),
      )
    }
    case 'label': {
      const reading = readCarried(one.text)
      if (!reading.ok) return settle(false, faultyFaults(reading.faults))
      const same = knownDesigns().some((design) => designText(design) === designText(reading.design))
      return settle(true, same ? [] : ['a damaged label opened as another instrument'])
    }
    case 'zip': {
      const file = new File([Buffer.from(one.text, 'latin1')], 'shelf.zip')
      const { designs, refused } = await takeInFiles([file])
      const words = refused.filter((sentence) => !isSentence(sentence))
      return settle(designs.length > 0, [...words, ...designs.flatMap(unsound)])
    }
  }
}

/** A design that was read must be as good as one that was made. */
function unsound(design: Design): string[] {
  const layout = solve(design)
  check(layout)
  partsOf(layout)
  const again = readDesign(designText(design))
  const same = again.ok && designText(again.design) === designText(design)
  return [...numbersIn(design).unsound, ...(same ? [] : ['it does not come back from its own file'])]
}
