import { expect, it } from 'vitest'
import { loadsOf, partsOf, solve } from '../../../geometry/index.ts'
import { designOf, type Stated } from '../../support/designs.ts'

const lidLines = (stated: Stated) => {
  const layout = solve(designOf(stated))
  const lid = partsOf(layout).find((part) => part.id === 'lid')!
  const lines = lid.operations.flatMap((one) => (one.kind === 'datum' ? [one] : []))
  const line = (of: string) => lines.find((one) => one.of === of)?.line.vertices
  return { layout, line }
}

it('draws where a loose saddle must be free, and the line on which it plays in tune, once a tuning is stated', () => {
  const { layout, line } = lidLines({ stringing: { tuning: ['G2', 'D3', 'G3'] } })
  const { band, line: inTune } = loadsOf(layout).saddle
  const origin = layout.panels.lid.originX
  expect(line('A loose saddle stands free from here')?.map(({ x }) => x)).toEqual([
    band.from - origin,
    band.from - origin,
  ])
  expect(line('A loose saddle stands free to here')?.[0]?.x).toBe(band.to - origin)
  const [bass, treble] = line('Saddle in tune, by estimate')!
  expect((bass!.x + treble!.x) / 2).toBeCloseTo(layout.design.scale.length + inTune!.atCentre - origin, 9)
  expect(Math.atan2(treble!.x - bass!.x, treble!.y - bass!.y)).toBeCloseTo(inTune!.slant, 9)
})

it('draws neither while the pull is not known', () => {
  const { line } = lidLines({})
  expect(line('Saddle in tune, by estimate')).toBeUndefined()
  expect(line('A loose saddle stands free to here')).toBeUndefined()
})
