/** What grades, margins and order of findings are made of, number by number. */
import { describe, expect, test } from 'vitest'
import { findingsAbout, findingsBy } from '../../../geometry/checks/check.ts'
import { gradeLeast, gradeMost } from '../../../geometry/checks/finding.ts'
import { capital, sayFor } from '../../../geometry/checks/say.ts'
import { check, isMargin, RULES, ruleOf, solve, spareOf } from '../../../geometry/index.ts'
import { designOf } from '../../support/designs.ts'
import { hole, things } from './breaking/case.ts'

describe('a grade', () => {
  test('of what is at least so much', () => {
    expect(gradeLeast(10, 10)).toBe('clear')
    expect(gradeLeast(9.9, 10)).toBe('care')
    expect(gradeLeast(-1e6, 10)).toBe('care')
    expect(gradeLeast(0, 10, 0)).toBe('care')
    expect(gradeLeast(-0.1, 10, 0)).toBe('stop')
    expect(gradeLeast(10.1, 10, 11)).toBe('stop')
  })

  test('of what is at most so much', () => {
    expect(gradeMost(10, 10)).toBe('clear')
    expect(gradeMost(10.1, 10)).toBe('care')
    expect(gradeMost(1e6, 10)).toBe('care')
    expect(gradeMost(12, 10, 12)).toBe('care')
    expect(gradeMost(12.1, 10, 12)).toBe('stop')
  })

  test('does not hang on the last digits of a floating number, but on a ten-millionth of a millimetre', () => {
    // 0.1 + 0.2 is 0.30000000000000004.
    expect(gradeMost(0.1 + 0.2, 0.3)).toBe('clear')
    expect(gradeLeast(0.3 - 0.1, 0.2)).toBe('clear')
    for (const tiny of [1e-10, -1e-10]) {
      expect(gradeLeast(10 + tiny, 10)).toBe('clear')
      expect(gradeLeast(tiny, 10, 0)).toBe('care')
      expect(gradeMost(10 + tiny, 10)).toBe('clear')
      expect(gradeMost(12 + tiny, 10, 12)).toBe('care')
    }
    expect(gradeLeast(10 - 1e-7, 10)).toBe('care')
    expect(gradeLeast(-1e-7, 10, 0)).toBe('stop')
    expect(gradeMost(10 + 1e-7, 10)).toBe('care')
    expect(gradeMost(12 + 1e-7, 10, 12)).toBe('stop')
  })
})

describe('a margin', () => {
  const one = { margin: 2, limit: 10, measured: 12, grade: 'clear', unit: 'mm' } as const

  test('is one where something could be tighter', () => {
    expect(isMargin(one)).toBe(true)
    expect(isMargin({ ...one, margin: null })).toBe(false)
    expect(isMargin({ ...one, limit: null })).toBe(false)
    expect(isMargin({ ...one, grade: 'note' })).toBe(false)
    // A count that is right is just right; one that is not is missing something.
    expect(isMargin({ ...one, unit: 'count' })).toBe(false)
    expect(isMargin({ ...one, unit: 'count', grade: 'stop' })).toBe(true)
    // What lies flush is meant to.
    expect(isMargin({ ...one, limit: 0, measured: 0, margin: 0 })).toBe(false)
    expect(isMargin({ ...one, limit: 0, measured: 0, margin: 0, grade: 'stop' })).toBe(true)
    expect(isMargin({ ...one, limit: 0, measured: 1, margin: 1 })).toBe(true)
    expect(isMargin({ ...one, limit: 1, measured: 0, margin: -1, grade: 'care' })).toBe(true)
    expect(isMargin({ ...one, limit: 1, measured: 0, margin: 1 })).toBe(true)
  })

  test('is weighed as a share of its limit', () => {
    expect(spareOf({ margin: 2, limit: 10 })).toBe(0.2)
    expect(spareOf({ margin: -5, limit: 10 })).toBe(-0.5)
    expect(spareOf({ margin: 5, limit: -10 })).toBe(0.5)
    // Where nothing is wanted any room is ample, and any lack grave.
    expect(spareOf({ margin: 1, limit: 0 })).toBe(1e6)
    expect(spareOf({ margin: -1, limit: null })).toBe(-1e6)
    expect(spareOf({ margin: null, limit: 10 })).toBe(0)
  })
})

describe('findings about a thing', () => {
  const layout = solve(designOf(things(hole({ across: 70 }), hole({ id: 'other', along: 150 }))))

  test('are those that name it, and they are as they are among all', () => {
    const about = findingsAbout(layout, (id) => id === 'hole')
    const among = check(layout).filter(({ about: ids }) => ids.includes('hole'))
    expect(among.length).toBeGreaterThan(3)
    expect(about).toEqual(among)
    expect(findingsAbout(layout, () => false)).toEqual([])
  })

  test('keep what was overruled', () => {
    const overruled = { 'opening-to-edge hole': 'Tried on scrap.' }
    const lived = solve(designOf({ ...things(hole({ across: 70 })), overruled }))
    const [one] = findingsAbout(lived, (id) => id === 'hole')
    expect(one).toMatchObject({ rule: 'opening-to-edge', grade: 'care', overruled: 'Tried on scrap.' })
  })

  test('by one rule come in the order in which it measures', () => {
    expect(findingsBy('opening-to-edge', layout).map(({ about }) => about[0])).toEqual(['hole', 'other'])
    expect(() => findingsBy('no-such-rule', layout)).toThrow('"no-such-rule"')
  })
})

describe('what is said of the rules themselves', () => {
  test('lengths too fine for a rule are said to the hundredth', () => {
    expect(
      RULES.filter(({ fine }) => fine)
        .map(({ name }) => name)
        .sort(),
    ).toEqual(['action-as-wanted', 'action-change', 'lid-sag', 'neck-bow', 'nut-rise', 'saddle-line'])
  })

  test('what is off its place is mended all the way', () => {
    expect(
      RULES.filter(({ aims }) => aims)
        .map(({ name }) => name)
        .sort(),
    ).toEqual(['action-as-wanted', 'neck-block-height', 'saddle-line'])
  })

  test('two sides of one measure have titles of their own', () => {
    expect(ruleOf('saddle-low').title).toBe('Saddle tall enough to build')
    expect(ruleOf('saddle-tall').title).toBe('Saddle low enough to stand')
    expect(ruleOf('pull-slackest').title).toBe('Slackest string against the mean')
    expect(ruleOf('pull-tightest').title).toBe('Tightest string against the mean')
  })
})

describe('how findings say', () => {
  const say = sayFor(designOf({}))
  const inches = sayFor(designOf({ units: { display: 'inches', fraction: 32 } }))

  test('of lengths, angles, forces and shares', () => {
    expect(say.length(12)).toBe('12.0 mm')
    expect(inches.length(25.4 * 1.5)).toBe('1 1/2 in')
    expect(say.fine(0.236)).toBe('0.24 mm')
    expect(inches.fine(0.236)).toMatch(/^0?\.009 in$/)
    expect(say.angle(7.46)).toBe('7.5°')
    expect(say.angle(180)).toBe('180.0°')
    expect(say.pull(72.4)).toBe('72 N')
    expect(say.pull(72.6)).toBe('73 N')
    expect(say.pull(9.94)).toBe('9.9 N')
    expect(say.pull(10)).toBe('10 N')
    expect(say.share(0.425)).toBe('43%')
  })

  test('of things by their names, of what there is one of with its article', () => {
    const named = sayFor(
      designOf({
        ...things(
          hole(),
          hole({ id: 'big', name: 'mouth', along: 120 }),
          hole({ id: 'sound-hole', along: 150, across: -60 }),
          hole({ id: 'sound-hole-2', along: 150 }),
        ),
        box: { inside: [{ id: 'corner' }, { id: 'post', name: 'my post', across: 50 }] },
        artwork: [{ id: 'swallow' }, { id: 'label', name: 'his label' }],
      }),
    )
    expect(named.thing('hole')).toBe('sound hole hole')
    expect(named.thing('big')).toBe('“mouth”')
    expect(named.thing('sound-hole')).toBe('the sound hole')
    expect(named.thing('sound-hole-2')).toBe('sound hole 2')
    expect(named.thing('saddle')).toBe('the saddle')
    expect(named.thing('string 1')).toBe('string 1')
    expect(named.thing('corner')).toBe('corner block corner')
    expect(named.thing('post')).toBe('“my post”')
    expect(named.thing('swallow')).toBe('artwork swallow')
    expect(named.thing('label')).toBe('“his label”')
    const inside = sayFor(designOf({ box: { inside: [{ id: 'post', name: 'my post' }] } }))
    expect(inside.thing('post')).toBe('“my post”')
    const art = sayFor(designOf({ artwork: [{ id: 'label', name: 'his label' }] }))
    expect(art.thing('label')).toBe('“his label”')
  })

  test('begin with a capital, behind a quotation mark too', () => {
    expect(capital('the saddle')).toBe('The saddle')
    expect(capital('“mouth” lies')).toBe('“Mouth” lies')
  })
})
