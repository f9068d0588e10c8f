/** What is soldered, for the report. */
import { check, isGrounded, type Layout, wiringOf } from '../geometry/index.ts'
import { counts, mm, type ReportKey, rows, words, yesNo } from './report-key.ts'

/** `null` where nothing is wired. */
export function wiringReport(layout: Layout) {
  const facts = wiringOf(layout)
  if (!facts) return null
  const { components, wires, slack, inputKilohms } = layout.design.wiring
  const { circuit, jackShorted, pickups, tones, idleKnobs, silences, runs } = facts
  return {
    slack,
    inputKilohms,
    components: components.map((one) => ({
      id: one.id,
      name: one.name,
      part: one.part,
      thing: one.thing || null,
      kilohms: ['pot', 'coil pickup', 'resistor'].includes(one.part) ? one.kilohms : null,
      nanofarads: ['capacitor', 'piezo pickup'].includes(one.part) ? one.nanofarads : null,
      ways: one.part === 'switch' ? one.ways : null,
      grounded: isGrounded(circuit, one),
    })),
    wires: wires.map(({ from, to, colour }, index) => ({
      number: index + 1,
      from,
      to,
      colour,
      length: runs[index]?.length ?? null,
      lost: [...(runs[index]?.lost ?? [])],
    })),
    jackShorted,
    pickups: pickups.map(({ component, shorted, most, bassCorner }) => ({
      component: component.id,
      shorted,
      heard: most,
      bassCorner,
    })),
    tones: tones.map(({ pot, capacitor, own, down }) => ({
      pot: pot.id,
      capacitor: capacitor.id,
      own,
      down,
    })),
    idleKnobs: idleKnobs.map(({ id }) => id),
    silences: silences.map(({ switchId, position }) => ({ switch: switchId, position })),
    findings: check(layout)
      .filter(({ rule }) => rule.startsWith('wiring-'))
      .map(({ key, grade }) => ({ key, grade })),
  }
}

export const WIRING_KEYS: readonly ReportKey[] = [
  ...mm('wiring.', { slack: 'Added to every wire. `wiring` is null where nothing is wired.' }),
  ...rows('kΩ', 'wiring.', { inputKilohms: 'Input of the amplifier.' }),
  ...words('wiring.components[].', {
    id: 'Its id: the first part of a terminal’s name.',
    name: 'Its name, empty where it has none.',
    part: 'What it is: `coil pickup`, `piezo pickup`, `pot`, `switch`, `jack`, `capacitor`, `resistor` or `metal part`.',
    thing: 'Id of the thing where it stands, or null.',
  }),
  ...rows('kΩ', 'wiring.components[].', { kilohms: 'Resistance, or null where it has none of its own.' }),
  ...rows('nF', 'wiring.components[].', { nanofarads: 'Capacitance, or null where it has none.' }),
  ...words('wiring.components[].', { ways: 'What a switch switches, else null.' }),
  ...yesNo('wiring.components[].', {
    grounded: 'Does its bare metal reach the sleeve of the jack? Null where it has none.',
  }),
  ...counts('wiring.wires[].', { number: 'Its place in the list, from 1.' }),
  ...words('wiring.wires[].', {
    from: 'Terminal, as in `volume.2`.',
    to: 'The other terminal.',
    colour: 'As the builder names it.',
  }),
  ...mm('wiring.wires[].', {
    length: 'Along and square to the box, slack included; null where an end stands nowhere.',
  }),
  ...words('wiring.wires[].', { 'lost[]': 'Ids of its components that stand nowhere.' }),
  ...yesNo('wiring.', { jackShorted: 'Do wires join the tip of the jack to its sleeve?' }),
  ...words('wiring.pickups[].', { component: 'Id of the component.' }),
  ...yesNo('wiring.pickups[].', { shorted: 'Do wires join its two ends?' }),
  ...rows('share', 'wiring.pickups[].', {
    heard: 'Of the lowest open string, what reaches the jack with all knobs for it.',
  }),
  ...rows('hertz', 'wiring.pickups[].', { bassCorner: 'Of a piezo, where its bass gives way; else null.' }),
  ...words('wiring.tones[].', { pot: 'Id of the pot.', capacitor: 'Id of its capacitor.' }),
  ...rows('hertz', 'wiring.tones[].', {
    own: 'Corner of the two alone, 1 / (2 π R C).',
    down: 'Corner with the pot turned fully down, or null.',
  }),
  ...words('wiring.', { 'idleKnobs[]': 'Ids of pots that change nothing.' }),
  ...words('wiring.silences[].', {
    switch: 'Id of a switch that can silence everything.',
    position: 'Its position that does.',
  }),
  ...words('wiring.findings[].', {
    key: 'Key of a finding about the wiring; it stands in `findings` in full.',
    grade: 'Its grade.',
  }),
]
