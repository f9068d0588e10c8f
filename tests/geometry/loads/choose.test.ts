import { describe, expect, test } from 'vitest'
import { apply, change, chooseGauges, loadsOf, scaleSuiting, solve } from '../../../geometry/index.ts'
import { designOf } from '../../support/designs.ts'
import { strung } from '../checks/breaking/case.ts'

describe('choosing gauges', () => {
  const design = designOf(
    strung({
      scale: { length: 609.6 },
      strings: { count: 4, gauges: [] },
      stringing: { tuning: ['D3', 'G3', 'B3', 'E4'], wantedPull: 72 },
    }),
  )

  test('takes from the usual stock what pulls nearest to the pull wanted', () => {
    const chosen = chooseGauges(design)
    // Common practice, no source: a set near .028w .018 .014 .011 for this tuning on 24 inches.
    expect(chosen?.strings.map((one) => one?.name)).toEqual(['.026w', '.018', '.014', '.011'])
    expect(chosen?.spread.apart ?? 9).toBeLessThan(0.25)
    for (const one of chosen?.strings ?? []) expect(Math.abs((one?.tension ?? 0) / 72 - 1)).toBeLessThan(0.12)
  })

  test('gives what a design can take over, and the loads then agree', () => {
    const chosen = chooseGauges(design)
    const taken = designOf(
      apply(
        design,
        change(
          design,
          [['strings', 'gauges'], chosen?.strings.map((one) => one?.gauge)],
          [['stringing', 'makes'], chosen?.strings.map((one) => one?.make)],
        ),
      ),
    )
    const pulls = loadsOf(solve(taken)).strings.map(({ atPitch }) => atPitch?.tension)
    chosen?.strings.forEach((one, index) => {
      expect(pulls[index]).toBeCloseTo(one?.tension ?? 0, 9)
    })
  })

  test('keeps to the builder’s own drawer, and says where it has nothing', () => {
    const drawer = (stock: object[]) =>
      chooseGauges(designOf({ ...design, stringing: { ...design.stringing, stock } }))
    expect(
      drawer([{ gauge: 0.254 }, { gauge: 0.66, construction: 'wound' }])?.strings.map((one) => one?.name),
    ).toEqual(['.026w', '.026w', '.010', '.010'])
    // Steel of this length breaks near 470 Hz: A4 is too near to that.
    const high = { ...design, stringing: { ...design.stringing, tuning: ['D3', 'G3', 'B3', 'A4'] } }
    expect(chooseGauges(high)?.strings.map((one) => one === null)).toEqual([false, false, false, true])
  })

  test('waits for a tuning', () => {
    expect(chooseGauges(designOf())).toBeNull()
    expect(scaleSuiting(designOf())).toBeNull()
  })
})

describe('the scale that suits a set', () => {
  test('is the one on which it pulls what is wanted', () => {
    const design = designOf(strung())
    const { totalPull } = loadsOf(solve(design))
    const mean = (totalPull ?? 0) / 3
    const suits = scaleSuiting({ ...design, stringing: { ...design.stringing, wantedPull: mean } })
    // Nearly alike pulls: the mean of logarithms is the mean within a per cent.
    expect(Math.abs((suits?.length ?? 0) / design.scale.length - 1)).toBeLessThan(0.01)
    expect(suits?.longest ?? 0).toBeGreaterThan(design.scale.length)
  })

  test('is not told for a string that cannot be made', () => {
    expect(scaleSuiting(designOf(strung({ stringing: { makes: [{ construction: 'stated' }] } })))).toBeNull()
  })
})
