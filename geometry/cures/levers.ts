/** From the words of a rule to the levers of one of its findings. */
import { ruleOf } from '../checks/check.ts'
import type { Finding } from '../checks/finding.ts'
import type { Layout, Placed } from '../solve/layout.ts'
import { gaugeLevers, insideLevers, sectionLevers, sizeLevers, thingLevers } from './field-levers.ts'
import type { Lever } from './lever.ts'
import { moveLevers, type Slope, saddleLever, unfollowedLever } from './move-levers.ts'

/** Everything that may mend a finding, the likeliest first, in groups of one sort. */
export function leversFor(layout: Layout, finding: Finding, slope: Slope): readonly (() => Lever[])[] {
  if (finding.rule === 'place-followed') {
    const lever = unfollowedLever(layout, finding)
    return lever ? [() => [lever]] : []
  }
  const things = thingsOf(layout, finding)
  return (ruleOf(finding.rule).mendedBy ?? []).map(
    (name) => () => leversNamed(name, layout, finding, things, slope),
  )
}

function leversNamed(
  name: string,
  layout: Layout,
  finding: Finding,
  things: readonly Placed[],
  slope: Slope,
): Lever[] {
  if (name === 'place') return things.flatMap((placed) => moveLevers(layout, placed, slope))
  if (name === 'size') return things.flatMap(({ thing }) => sizeLevers(layout, thing))
  if (name === 'saddle.place') return [saddleLever(layout)]
  if (name === 'strings.gauges') return gaugeLevers(layout, numberOf(finding))
  const [of = '', ...rest] = name.split('.')
  if (of === 'thing') return things.flatMap(({ thing }) => thingLevers(layout, thing, rest.join('.')))
  if (of === 'inside') return finding.about.flatMap((id) => insideLevers(layout, id, rest.join('.')))
  return sectionLevers(layout, name)
}

const numberOf = ({ about }: Finding): number =>
  Number(about.find((one) => one.startsWith('string '))?.slice('string '.length))

/** The things that a finding is about, by its ids or in its data. */
function thingsOf({ placed }: Layout, { about, data }: Finding): readonly Placed[] {
  const [part] = about
  if (!part?.startsWith('part '))
    return placed.filter(({ thing }) => about.includes(thing.id) || thing.id === data?.what)
  // What a machine cannot cut is told by the names on its sheet.
  const names = String(data?.of).split('” and “')
  return placed.filter(
    ({ thing, kind, face }) => part === `part ${face}` && names.includes(thing.name || kind.title),
  )
}
