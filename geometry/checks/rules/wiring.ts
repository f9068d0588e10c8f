import type { Point } from '../../plane/index.ts'
import { placedCalled } from '../../solve/called.ts'
import type { Layout } from '../../solve/layout.ts'
import { componentName } from '../../wiring/presets.ts'
import { SILENT, wiringOf } from '../../wiring/wiring.ts'
import { gradeLeast, type Measurement, type Rule, type Where } from '../finding.ts'

/** Where a component stands on the plan; the saddle for one that stands nowhere. */
function whereOf(layout: Layout, thing: string): Where {
  const placed = placedCalled(layout, thing)
  if (placed) return { view: placed.face, from: placed.at, to: placed.at }
  const at: Point = { x: layout.saddle.x, y: 0 }
  return { view: 'plan', from: at, to: at }
}

/** What a finding about a component is about: the thing where it is one, and the component by a name that no thing can bear. */
const about = (thing: string, id: string): string[] =>
  thing === '' ? [`component ${id}`] : [thing, `component ${id}`]

export const wiringJack: Rule = {
  name: 'wiring-jack',
  title: 'A jack to play through',
  unit: 'count',
  wants: 'least',
  limits: [],
  measure(layout) {
    const found: Measurement[] = []
    const { components } = layout.design.wiring
    if (components.length === 0) return found
    const jacks = components.filter((one) => one.part === 'jack').length
    found.push({
      about: ['wiring'],
      measured: jacks,
      limit: 1,
      grade: gradeLeast(jacks, 1, 1),
      where: whereOf(layout, ''),
    })
    return found
  },
  words({ grade, measured }) {
    if (grade !== 'clear') return 'Something is wired, but there is no jack. Add one, or take the wiring out.'
    return measured === 1
      ? 'There is a jack.'
      : `There are ${measured} jacks; the first of them is reckoned with.`
  },
}

/** Every metal part must reach the sleeve of the jack: what is left out hums when it is touched. */
export const wiringGrounded: Rule = {
  name: 'wiring-grounded',
  title: 'Metal grounded',
  unit: 'count',
  wants: 'least',
  limits: [],
  measure(layout) {
    const found: Measurement[] = []
    const facts = wiringOf(layout)
    if (!facts?.circuit.jack) return found
    for (const one of facts.ungrounded)
      found.push({
        about: about(one.thing, one.id),
        measured: 0,
        limit: 1,
        grade: 'stop',
        where: whereOf(layout, one.thing),
        data: { name: componentName(one) },
      })
    if (facts.ungrounded.length === 0)
      found.push({ about: ['wiring'], measured: 1, limit: 1, grade: 'clear', where: whereOf(layout, '') })
    return found
  },
  words({ grade, data }) {
    return grade === 'clear'
      ? 'Every metal part of the wiring reaches the sleeve of the jack.'
      : `The metal of “${data?.name}” does not reach the sleeve of the jack: it will hum, and more so when touched. Run a wire from it to ground.`
  },
}

/** Steel strings are metal under the hand: with a pickup they belong in the net. */
export const wiringStrings: Rule = {
  name: 'wiring-strings',
  title: 'Strings grounded',
  unit: 'count',
  wants: 'least',
  limits: [],
  measure(layout) {
    const found: Measurement[] = []
    const facts = wiringOf(layout)
    if (!facts || facts.pickups.length === 0) return found
    const { wiring, stringing } = layout.design
    const metal = stringing.makes.length === 0 || stringing.makes.some((one) => METAL.test(one.material))
    if (!metal) return found
    const parts = wiring.components.filter((one) => one.part === 'metal part').length
    found.push({
      about: ['wiring', 'strings'],
      measured: parts,
      limit: 1,
      grade: gradeLeast(parts, 1),
      where: whereOf(layout, ''),
    })
    return found
  },
  words({ grade }) {
    return grade === 'clear'
      ? 'The wiring has a metal part for the strings.'
      : 'The strings are of metal and no wire leads to them: they will hum until they are touched. Add them to the wiring as a metal part, by tailpiece or saddle.'
  },
}

const METAL = /wire|steel|bronze|brass|nickel/

export const wiringShorted: Rule = {
  name: 'wiring-shorted',
  title: 'Nothing shorted',
  unit: 'count',
  wants: 'most',
  limits: [],
  measure(layout) {
    const found: Measurement[] = []
    const facts = wiringOf(layout)
    if (!facts) return found
    const { jack } = facts.circuit
    const shorted = facts.pickups.filter((one) => one.shorted).map((one) => one.component)
    for (const one of [...(facts.jackShorted && jack ? [jack] : []), ...shorted])
      found.push({
        about: about(one.thing, one.id),
        measured: 1,
        limit: 0,
        grade: 'stop',
        where: whereOf(layout, one.thing),
        data: { name: componentName(one), at: one.part === 'jack' ? 'jack' : 'pickup' },
      })
    if (!facts.jackShorted && shorted.length === 0)
      found.push({ about: ['wiring'], measured: 0, limit: 0, grade: 'clear', where: whereOf(layout, '') })
    return found
  },
  words({ grade, data }) {
    if (grade === 'clear') return 'No wire shorts the jack or a pickup.'
    return data?.at === 'jack'
      ? `Tip and sleeve of “${data.name}” are joined by wires: nothing will be heard. Follow the wires and part them.`
      : `Hot and ground of “${data?.name}” are joined by wires: it will not be heard. Part them.`
  },
}

/** How much of the lowest note reaches the jack: nothing is a dead circuit, little is a load too heavy. */
export const wiringHeard: Rule = {
  name: 'wiring-heard',
  title: 'Pickup heard at the jack',
  unit: 'share',
  wants: 'least',
  limits: ['wiringHeard'],
  measure(layout, limit) {
    const found: Measurement[] = []
    const facts = wiringOf(layout)
    if (!facts?.circuit.jack) return found
    // What is as good as silence cannot be wanted.
    const wanted = Math.max(limit('wiringHeard'), SILENT)
    for (const { component, most } of facts.pickups)
      found.push({
        about: about(component.thing, component.id),
        measured: most,
        limit: wanted,
        grade: gradeLeast(most, wanted, SILENT),
        where: whereOf(layout, component.thing),
        data: { name: componentName(component), piezo: component.part === 'piezo pickup' ? 1 : 0 },
      })
    return found
  },
  words({ grade, measured, limit, data }, say) {
    const who = `“${data?.name}”`
    if (grade === 'stop')
      return `${say.share(measured ?? 0)} of ${who} reaches the jack, wherever knobs and switches stand: it is not heard. Follow its hot wire: somewhere the way to the tip is missing.`
    const share = `With all knobs for it, ${say.share(measured ?? 0)} of what ${who} gives at the lowest note reaches the jack`
    if (grade === 'clear') return `${share}.`
    return data?.piezo === 1
      ? `${share}, less than ${say.share(limit ?? 0)}: pots or amplifier load it and its bass is gone. Pots of 1 MΩ, or a buffer.`
      : `${share}, less than ${say.share(limit ?? 0)}: pots or amplifier load it. Pots of more kΩ, or another input.`
  },
}

export const wiringKnobs: Rule = {
  name: 'wiring-knobs',
  title: 'Knobs that do something',
  unit: 'count',
  wants: 'least',
  limits: [],
  measure(layout) {
    const found: Measurement[] = []
    const facts = wiringOf(layout)
    if (!facts?.circuit.jack || facts.pickups.length === 0) return found
    for (const one of facts.idleKnobs)
      found.push({
        about: about(one.thing, one.id),
        measured: 0,
        limit: 1,
        grade: 'care',
        where: whereOf(layout, one.thing),
        data: { name: componentName(one) },
      })
    return found
  },
  words({ data }) {
    return `Turning “${data?.name}” changes nothing that is heard. A lug of it may have no wire.`
  },
}

/** A position in which nothing is heard may be meant; it is told. */
export const wiringSilent: Rule = {
  name: 'wiring-silent',
  title: 'Switch that silences',
  unit: 'count',
  wants: 'least',
  limits: [],
  measure(layout) {
    const found: Measurement[] = []
    const facts = wiringOf(layout)
    if (!facts?.circuit.jack || facts.pickups.length === 0) return found
    for (const { switchId, position } of facts.silences) {
      const one = layout.design.wiring.components.find(({ id }) => id === switchId)
      if (!one) continue
      found.push({
        about: [...about(one.thing, one.id), `position ${position}`],
        measured: 0,
        limit: 1,
        grade: 'note',
        where: whereOf(layout, one.thing),
        data: { name: componentName(one), position },
      })
    }
    return found
  },
  words({ data }) {
    return `With “${data?.name}” at “${data?.position}” nothing is heard. Well if that is meant.`
  },
}
