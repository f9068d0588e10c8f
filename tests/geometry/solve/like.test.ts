/** A layout taken over in part from one that is like it, held against the same solved from nothing. */
import { expect, test } from 'vitest'
import { type Design, solve } from '../../../geometry/index.ts'
import { solveOnce } from '../../../geometry/solve/solve.ts'
import { samples } from '../../support/samples.ts'

/** What may differ between two designs, each alone and with the saddle elsewhere: some of it must be taken anew. */
const CHANGES: Readonly<Record<string, (design: Design) => Partial<Design>>> = {
  'nothing else': () => ({}),
  'a taller saddle': ({ saddle }) => ({ saddle: { ...saddle, height: saddle.height + 2 } }),
  'a saddle set back': ({ saddle }) => ({ saddle: { ...saddle, setback: saddle.setback + 1.5 } }),
  'a longer scale': ({ scale }) => ({ scale: { ...scale, length: scale.length + 25 } }),
  'wider spans': ({ strings }) => ({ strings: { ...strings, spanAtSaddle: strings.spanAtSaddle + 3 } }),
  'posts farther back': ({ headstock }) => ({
    headstock: { ...headstock, firstPost: headstock.firstPost + 7 },
  }),
  'a thicker nut': ({ nut }) => ({ nut: { ...nut, thickness: nut.thickness + 1, height: nut.height + 1 } }),
  'a thicker board': ({ board }) => ({ board: { ...board, thickness: board.thickness + 2 } }),
  'a higher neck': ({ neck }) => ({ neck: { ...neck, rise: neck.rise + 1, thickness: neck.thickness + 3 } }),
  'holes farther apart': ({ tailpiece }) => ({
    tailpiece: { ...tailpiece, span: tailpiece.span + 4, fromEdge: 9 },
  }),
  'a wider web': ({ limits }) => ({ limits: { ...limits, tailHoleWeb: 12 } }),
  'a deeper box': ({ box }) => ({ box: { ...box, depth: box.depth + 6 } }),
}

test.each(Object.entries(CHANGES))('%s', (_, changed) => {
  for (const { name, design } of samples()) {
    const like = solve(design)
    const with_ = { ...design, ...changed(design) }
    for (const share of [0.6, 0.71]) {
      const asked: Design = { ...with_, saddle: { ...with_.saddle, place: { share } } }
      const { design: _of, ...layout } = solveOnce(asked, like)
      const { design: _same, ...whole } = solve(structuredClone(asked))
      // Kinds hold functions: what is placed is compared by where it stands.
      const plain = ({ placed, ...rest }: typeof whole) => ({
        ...rest,
        placed: placed.map(({ kind: _k, ...one }) => one),
      })
      expect(plain(layout), name).toEqual(plain(whole))
    }
  }
})

test('of two with the same head and strings the posts are the same, and asked again it is made again', () => {
  for (const { design } of samples()) {
    const like = solve(design)
    const asked: Design = { ...design, saddle: { ...design.saddle, place: { share: 0.66 } } }
    expect(solveOnce(asked, like).posts).toBe(like.posts)
    expect(solveOnce(asked, null)).not.toBe(solveOnce(asked, null))
  }
})
