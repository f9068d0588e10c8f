import { describe, expect, test } from 'vitest'
import { blocks, check, limitOf, RULES, ruleOf, sentenceOf, solve } from '../../../geometry/index.ts'
import { designOf } from '../../support/designs.ts'

const GRADES = ['stop', 'care', 'note', 'clear']

/** A hole over the edge, another near it, no hand: something of every grade. */
const troubled = designOf({
  hand: 'not stated',
  things: [
    { kind: 'sound-hole', id: 'over', along: 60, across: 85 },
    { kind: 'sound-hole', id: 'near', along: 110, across: 70 },
  ],
})

describe('check', () => {
  const findingsOf = () => check(solve(troubled))

  test('names the gravest first, and of one grade the tightest', () => {
    const findings = findingsOf()
    const order = findings.map((one) => GRADES.indexOf(one.grade))
    expect(order).toEqual([...order].sort((a, b) => a - b))
    expect(new Set(order).size).toBe(4)
    for (const grade of GRADES) {
      const margins = findings
        .filter((one) => one.grade === grade)
        .map((one) => one.margin ?? Number.POSITIVE_INFINITY)
      expect(margins).toEqual([...margins].sort((a, b) => a - b))
    }
  })

  test('gives a margin that is what is left over a least, or under a most', () => {
    const findings = findingsOf()
    for (const { rule, measured, limit, margin } of findings) {
      if (measured === null || limit === null) expect(margin).toBeNull()
      else
        expect(margin).toBeCloseTo(ruleOf(rule).wants === 'least' ? measured - limit : limit - measured, 12)
    }
    expect(findings.some((one) => one.margin === null)).toBe(true)
  })

  test('names each finding once, by its rule and what it is about', () => {
    const findings = findingsOf()
    expect(new Set(findings.map((one) => one.key)).size).toBe(findings.length)
    for (const { key, rule, about } of findings) expect(key).toBe([rule, ...about].join(' '))
  })

  test('answers from memory for the same layout', () => {
    expect(findingsOf()).toBe(findingsOf())
  })

  test('finds nothing to stop a design of all defaults but for its hand', () => {
    const graded = (hand: string) => check(solve(designOf({ hand }))).filter((one) => one.grade !== 'clear')
    const notes = ['saddle-setback saddle', 'tuning-stated strings']
    expect(graded('right').map((one) => one.key)).toEqual(notes)
    expect(graded('not stated').map((one) => one.key)).toEqual(['hand-stated hand', ...notes])
  })
})

describe('what blocks cutting', () => {
  test('is a stop, nothing less', () => {
    for (const one of check(solve(troubled))) expect(blocks(one)).toBe(one.grade === 'stop')
  })

  test('is not overruled by the name of another finding', () => {
    const design = designOf({
      hand: 'not stated',
      overruled: { 'hand-stated': 'ours', 'hand-stated hands': 'ours' },
    })
    expect(
      check(solve(design))
        .filter(blocks)
        .map((one) => one.key),
    ).toEqual(['hand-stated hand'])
  })

  test('is overruled by its own name and any reason, even an empty one', () => {
    const design = designOf({ hand: 'not stated', overruled: { 'hand-stated hand': '' } })
    const [first] = check(solve(design))
    expect(first).toMatchObject({ key: 'hand-stated hand', grade: 'stop', overruled: '' })
    expect(check(solve(design)).filter(blocks)).toEqual([])
  })
})

describe('rules and limits by name', () => {
  test('ruleOf finds every rule and refuses another name', () => {
    for (const rule of RULES) expect(ruleOf(rule.name)).toBe(rule)
    expect(() => ruleOf('no-such-rule')).toThrow('"no-such-rule"')
    expect(() => ruleOf('constructor')).toThrow('"constructor"')
  })

  test('limitOf gives the limit of the design before the default', () => {
    expect(limitOf(designOf())('openingToEdge')).toBe(12)
    expect(limitOf(designOf({ limits: { openingToEdge: 0 } }))('openingToEdge')).toBe(0)
  })
})

describe('sentences', () => {
  const sentences = (stated: object) => {
    const layout = solve(designOf(stated as never))
    return check(layout).map((one) => sentenceOf(one, layout))
  }

  test('call a thing by the name its builder gave it, else by its kind and id', () => {
    const thing = { kind: 'sound-hole', id: 'over', along: 60, across: 85 }
    expect(sentences({ things: [thing] })).toContain(
      'Sound hole over reaches 7.5 mm beyond the edge of the lid. Move it in or make it smaller.',
    )
    expect(sentences({ things: [{ ...thing, name: 'big mouth' }] })).toContain(
      '“Big mouth” reaches 7.5 mm beyond the edge of the lid. Move it in or make it smaller.',
    )
  })

  test('speak in the unit and fraction of the design', () => {
    // 70 - 12.5 - 19 = 38.5 mm = 1.51575 in: 1 33/64 to the nearest sixty-fourth, 1 1/2 to the nearest eighth.
    const things = [{ kind: 'sound-hole', id: 'hole', along: 60, across: 70 }]
    const says = (fraction: number) => sentences({ units: { display: 'inches', fraction }, things })
    expect(says(64)).toContain('Sound hole hole clears the neck by 1 33/64 in.')
    expect(says(8)).toContain('Sound hole hole clears the neck by 1 1/2 in.')
    expect(says(0)).toContain('Sound hole hole clears the neck by 1.516 in.')
  })

  test('have no finding of their own to speak of when the rule is unknown', () => {
    const layout = solve(designOf())
    const [first] = check(layout)
    if (!first) throw new Error('no finding')
    expect(() => sentenceOf({ ...first, rule: 'gone' }, layout)).toThrow('"gone"')
  })
})
