/** The group Stringing as a form, and the tables made from it, against the engine. */
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { act, type ReactNode } from 'react'
import { createRoot, type Root } from 'react-dom/client'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { Intonation } from '../../../app/parts/Intonation.tsx'
import { NeckAndLid } from '../../../app/parts/NeckAndLid.tsx'
import { OwnWoods } from '../../../app/parts/OwnWoods.tsx'
import { PullTable } from '../../../app/parts/PullTable.tsx'
import { PureTuning } from '../../../app/parts/PureTuning.tsx'
import { Group } from '../../../app/places/Choose.tsx'
import { adopt, setField, undo, useBench } from '../../../app/state/index.ts'
import {
  chooseGauges,
  type Design,
  formatShare,
  loadsOf,
  pureTuningOf,
  readDesign,
  scaleSuiting,
  solve,
} from '../../../geometry/index.ts'
import { project } from '../../support/project-files.ts'

let root: Root
let page: HTMLElement

function sample(name: string): Design {
  const read = readDesign(readFileSync(join(project, 'sample-boxes', `${name}.lidwright.json`), 'utf8'))
  if (!read.ok) throw new Error(read.faults[0]?.sentence)
  return read.design
}

beforeEach(() => {
  page = document.body.appendChild(document.createElement('div'))
  root = createRoot(page)
  adopt(sample('tea-box-three-strings'))
})
afterEach(() => {
  act(() => root.unmount())
  page.remove()
})

const design = () => useBench.getState().design
const loads = () => loadsOf(solve(design()))
const show = (node: ReactNode) => act(() => root.render(node))
const showGroup = () => show(<Group section="stringing" title="Stringing" />)

function one<E extends Element>(selector: string): E {
  const found = page.querySelector<E>(selector)
  if (!found) throw new Error(`nothing on the page is ${selector}`)
  return found
}
const field = (label: string) => one<HTMLInputElement>(`[aria-label="${label}"]`)
const button = (words: RegExp) =>
  [...page.querySelectorAll('button')].find((each) => words.test(each.textContent ?? '')) ??
  (() => {
    throw new Error(`no button says ${words}`)
  })()
const press = (words: RegExp) => act(() => button(words).click())
const rows = () =>
  [...page.querySelectorAll('tbody tr')].map((row) =>
    [...row.children].map((cell) => cell.textContent?.trim() ?? ''),
  )

/** Types as a hand does, and leaves the field or presses a key. */
function type(input: HTMLInputElement | HTMLSelectElement, text: string, key = 'Enter'): void {
  const proto = input instanceof HTMLSelectElement ? HTMLSelectElement.prototype : HTMLInputElement.prototype
  act(() => {
    Object.getOwnPropertyDescriptor(proto, 'value')?.set?.call(input, text)
    input.dispatchEvent(new Event(input instanceof HTMLSelectElement ? 'change' : 'input', { bubbles: true }))
  })
  if (input instanceof HTMLInputElement)
    act(() => void input.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true })))
}

describe('the group', () => {
  test('shows each string with pitch, gauge and make, the treble string first', () => {
    showGroup()
    const stated = loads().strings
    expect(field('Pitch of string 1').value).toBe(design().stringing.tuning[2])
    expect(field('Pitch of string 3').value).toBe(design().stringing.tuning[0])
    for (const { number, make } of stated)
      expect(field(`String ${number} is made`).value).toBe(make.construction)
  })

  test('nonsense for a pitch is answered by a sentence, the last good one stays in force, Escape brings it back', () => {
    showGroup()
    const before = design()
    type(field('Pitch of string 2'), 'X9')
    expect(one('[role="alert"]').textContent).toMatch(/X9.*neither a note nor a frequency/)
    expect(field('Pitch of string 2').getAttribute('aria-invalid')).toBe('true')
    expect(design()).toBe(before)
    type(field('Pitch of string 2'), 'X9', 'Escape')
    expect(field('Pitch of string 2').value).toBe('D3')
  })

  test('a pitch is taken by its name or in hertz, for its own string only', () => {
    showGroup()
    type(field('Pitch of string 2'), 'E3')
    type(field('Pitch of string 3'), '98 Hz')
    expect(design().stringing.tuning).toEqual(['98 Hz', 'E3', 'G3'])
    expect(loads().strings[0]?.atPitch?.pitch.hertz).toBe(98)
  })

  test('the pitch of a string before those on its bass side waits for them, and says so', () => {
    act(() => void setField(['stringing', 'tuning'], [], 'Tuning'))
    showGroup()
    type(field('Pitch of string 1'), 'G3')
    expect(one('[role="alert"]').textContent).toContain('that of string 3 comes first')
    expect(design().stringing.tuning).toEqual([])
    type(field('Pitch of string 3'), 'G2')
    expect(design().stringing.tuning).toEqual(['G2'])
  })

  test('a usual tuning is applied by its name', () => {
    showGroup()
    const menu = [...page.querySelectorAll('select')].find((each) =>
      each.value.includes('root, fifth, octave'),
    )
    if (!menu) throw new Error('the menu of usual tunings is missing')
    const other = [...menu.options].find((each) => each.value.startsWith('A2 E3 A3'))
    type(menu, other?.value ?? '')
    expect(design().stringing.tuning).toEqual(['A2', 'E3', 'A3'])
    expect(field('Pitch of string 1').value).toBe('A3')
  })

  test('a make for one string states those of all, as they were; the usual ones come back by one press', () => {
    showGroup()
    const before = loads().strings.map((each) => each.make.construction)
    const pull = loads().strings[1]?.atPitch
    type(field('String 2 is made') as unknown as HTMLSelectElement, 'stated')
    expect(design().stringing.makes.map((each) => each.construction)).toEqual([
      before[0],
      'stated',
      before[2],
    ])
    // It begins with what it weighed and bore as it was made.
    expect(loads().strings[1]?.atPitch?.tension).toBeCloseTo(pull?.tension ?? 0, 1)
    expect(loads().strings[1]?.atPitch?.shareOfBreaking).toBeCloseTo(pull?.shareOfBreaking ?? 0, 2)
    press(/Back to the usual/)
    expect(design().stringing.makes).toEqual([])
  })

  test('the nearest gauges are taken by one press, which is one step of history', () => {
    showGroup()
    const before = design()
    const proposed = chooseGauges(before)?.strings.map((each) => each?.gauge)
    press(/Take these gauges/)
    expect(design().strings.gauges).toEqual(proposed)
    act(() => void undo())
    expect(design()).toEqual(before)
  })

  test('a drawer of one’s own is typed as a list, and gauges come from it alone', () => {
    showGroup()
    const drawer = one<HTMLInputElement>('input[placeholder="what is usually sold singly"]')
    type(drawer, '.012, .016 .024w; .036w')
    // An inch is 25.4 mm: the international inch.
    expect(design().stringing.stock.map((each) => [each.gauge, each.construction])).toEqual([
      [0.3048, 'plain'],
      [0.4064, 'plain'],
      [0.6096, 'wound'],
      [0.9144, 'wound'],
    ])
    const offered = new Set(design().stringing.stock.map((each) => each.gauge))
    for (const each of chooseGauges(design())?.strings ?? []) expect(offered).toContain(each?.gauge)
    const before = design()
    type(drawer, '.012, thick')
    expect(one('[role="alert"]').textContent).toContain('thick')
    expect(design()).toBe(before)
  })

  test('the scale that suits the set is taken by one press, as fine as the rule', () => {
    showGroup()
    const fitting = scaleSuiting(design())?.length ?? Number.NaN
    press(/Take this scale/)
    // A line of a rule in 1/32 in lies never farther than 0.4 mm away.
    expect(Math.abs(design().scale.length - fitting)).toBeLessThan(0.4)
    expect((design().scale.length / 25.4) * 32).toBeCloseTo(
      Math.round((design().scale.length / 25.4) * 32),
      4,
    )
  })
})

describe('the tables', () => {
  test('pulls and shares are those of the engine, in newtons and pounds', () => {
    show(<PullTable />)
    const strings = [...loads().strings].reverse()
    expect(rows()).toHaveLength(3)
    for (const [index, row] of rows().entries()) {
      const { tension = 0, shareOfBreaking = 0, feel = '' } = strings[index]?.atPitch ?? {}
      // 1 lbf = 4.448 222 N: NIST SP 811, Appendix B.
      expect(row[3]).toBe(`${tension.toFixed(0)} N, ${(tension / 4.448222).toFixed(1)} lb`)
      expect(row[4]).toContain(formatShare(shareOfBreaking))
      expect(row[5]).toBe(feel)
    }
    expect(page.textContent).toContain('Protect your eyes')
  })

  test('a string near breaking is hatched and says so in words', () => {
    act(() => void setField(['stringing', 'tuning'], ['G2', 'D3', 'E5'], 'Tuning'))
    show(<PullTable />)
    expect(loads().strings[2]?.atPitch?.feel).toBe('breaking')
    expect(rows()[0]?.[4]).toContain('stop')
    expect(one('.share-part.stop').getAttribute('fill')).toMatch(/^url\(#/)
    expect(rows()[1]?.[4]).not.toMatch(/stop|care/)
  })

  test('without a tuning it is said what is wanted', () => {
    act(() => void setField(['stringing', 'tuning'], [], 'Tuning'))
    show(<PullTable />)
    expect(page.textContent).toContain('Choose one under Stringing')
    act(() => void setField(['stringing', 'tuning'], ['G2'], 'Tuning'))
    expect(page.textContent).toContain('names 1 of 3 pitches')
  })

  test('the saddle is set where the engine wants it: its line and its height', () => {
    show(<Intonation />)
    press(/Set the saddle back/)
    expect(design().saddle.setback).toBeCloseTo(loads().saddle.line?.atCentre ?? Number.NaN, 1)
    act(() => void setField(['saddle', 'action'], 4, 'Action'))
    press(/Make the saddle/)
    // As fine as the rule shows: half of 1/32 in.
    expect(Math.abs(design().saddle.height - loads().saddle.heightWanted)).toBeLessThan(0.4)
  })

  test('a saddle too low to be built is answered by the neck raised or tilted', () => {
    act(() => void setField(['neck', 'rise'], -12, 'Rise'))
    show(<Intonation />)
    const { cure } = loads().saddle
    expect(cure?.raise).toBeGreaterThan(0)
    expect(page.textContent).toMatch(
      /So low a saddle cannot well be built\. Raise the neck by .*, or tilt it back by/,
    )
  })

  test('a brace that suffices is taken by one press and then holds the lid', () => {
    act(() => void setField(['box', 'lid', 'thickness'], 3, 'Lid'))
    show(<NeckAndLid />)
    const before = loads().lid?.bareSag ?? 0
    expect(before).toBeGreaterThan(0.5)
    press(/Take this brace/)
    expect(design().brace.height).toBeGreaterThan(0)
    expect(loads().lid?.sag).toBeLessThanOrEqual(0.5)
  })

  test('the third of an open chord tuned pure rests 13.7 cents low', () => {
    adopt(sample('cutlery-box-four-strings'))
    show(<PureTuning />)
    const pure = pureTuningOf(solve(design()))
    const [third] = rows()
    // 5:4 is 386.31 cents, 13.69 under the tempered third: H. von Helmholtz, On the Sensations of Tone, App. XX.
    expect(third?.slice(1, 4)).toEqual([pure?.strings[3]?.hertz.toFixed(2), '−13.7', '5 : 2'])
  })
})

describe('own woods', () => {
  test('are added, renamed with what is of them, and not removed while something is', () => {
    show(<OwnWoods />)
    press(/Add a wood/)
    expect(design().woods).toHaveLength(1)
    act(() => void setField(['neck', 'wood'], design().woods[0]?.name, 'Neck of'))
    const name = [...page.querySelectorAll('input')].find((each) => each.value === design().woods[0]?.name)
    if (!name) throw new Error('the name of the wood is not to be typed')
    type(name, 'plum')
    expect(design().neck.wood).toBe('plum')
    press(/Remove plum/)
    expect(one('[role="alert"]').textContent).toContain('plum is what the neck is of')
    expect(design().woods).toHaveLength(1)
    act(() => void setField(['neck', 'wood'], 'cherry', 'Neck of'))
    press(/Remove plum/)
    expect(design().woods).toEqual([])
  })
})
