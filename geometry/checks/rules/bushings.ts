/** Thick and thin faces: does the thread come through, is there wood left, does the shaft reach its knob? */
import type { Bushing } from '../../kinds/kind.ts'
import type { Layout, Placed } from '../../solve/layout.ts'
import { gradeLeast, gradeMost, type Measurement, NOTHING_LEFT, type Rule, type Where } from '../finding.ts'
import { capital } from '../say.ts'

interface Mounted {
  readonly placed: Placed
  readonly bushing: Bushing
  readonly thickness: number
  /** Wood and backing that the thread has to pass. */
  readonly net: number
}

function* mounted({ placed, panels }: Layout): Generator<Mounted> {
  for (const one of placed) {
    const bushing = one.kind.bushing?.(one.thing)
    if (!bushing) continue
    const { thickness } = panels[one.face]
    const bored = bushing.bore === 'none' ? 0 : Math.min(bushing.boreDepth, thickness)
    yield { placed: one, bushing, thickness, net: thickness + bushing.backing - bored }
  }
}

const at = ({ placed }: Mounted): Where => ({ view: placed.face, from: placed.at, to: placed.at })

const faceWord = (face: unknown) => (face === 'lid' || face === 'base' ? String(face) : 'wall')

/** Tenths of a millimetre upwards: a bore that is a hair too shallow holds no nut. */
const upToTenth = (mm: number) => Math.ceil(mm * 10 - 1e-6) / 10

export const threadThrough: Rule = {
  name: 'thread-through',
  title: 'Thread through the face',
  unit: 'mm',
  wants: 'least',
  limits: [],
  mendedBy: ['thing.boreDepth', 'thing.backing'],
  measure(layout) {
    const found: Measurement[] = []
    for (const one of mounted(layout)) {
      const { bushing, net, thickness, placed } = one
      const measured = bushing.thread - net
      found.push({
        about: [one.placed.thing.id],
        where: at(one),
        measured,
        limit: bushing.nut,
        grade: gradeLeast(measured, bushing.nut, bushing.nut),
        data: {
          thread: bushing.thread,
          thickness: thickness + bushing.backing,
          face: placed.face,
          deep: upToTenth(thickness + bushing.backing + bushing.nut - bushing.thread),
          wide: Math.max(
            bushing.boreDiameter,
            (bushing.bore === 'from outside' ? bushing.widthOutside : bushing.widthInside) + BORE_ROOM,
          ),
          from: bushing.bore === 'from outside' ? 'outside' : 'inside',
        },
      })
    }
    return found
  },
  words({ measured, limit, about, grade, data }, say) {
    const who = say.thing(about[0] ?? '')
    const passes = `${possessive(who)} thread is ${say.length(Number(data?.thread))} and the ${faceWord(data?.face)} is ${say.length(Number(data?.thickness))}`
    if (grade === 'clear')
      return `${capital(passes)}: ${say.length(measured ?? 0)} stand out, and the nut wants ${say.length(limit ?? 0)}.`
    return `${capital(passes)}: bore ${say.length(Number(data?.wide))} wide, ${say.length(Number(data?.deep))} deep from ${data?.from}.`
  },
}

/** A bore wider than what goes into it by this. Common practice, no source. */
const BORE_ROOM = 2

/** `“Out”’s`, or `the jack’s` where the builder gave it no name. */
const possessive = (who: string): string => (/^(“|the )/.test(who) ? `${who}’s` : `the ${who}’s`)

export const boreWide: Rule = {
  name: 'bore-wide',
  title: 'Bore wide enough',
  unit: 'mm',
  wants: 'least',
  limits: [],
  mendedBy: ['thing.boreDiameter'],
  measure(layout) {
    const found: Measurement[] = []
    for (const one of mounted(layout)) {
      const { bore, boreDiameter, widthInside, widthOutside } = one.bushing
      if (bore === 'none') continue
      const wanted = bore === 'from inside' ? widthInside : widthOutside
      found.push({
        about: [one.placed.thing.id],
        where: at(one),
        measured: boreDiameter,
        limit: wanted,
        grade: gradeLeast(boreDiameter, wanted, wanted),
        data: { goes: bore === 'from inside' ? 'body' : 'nut' },
      })
    }
    return found
  },
  words({ measured, limit, about, grade, data }, say) {
    const who = say.thing(about[0] ?? '')
    const wide = `The bore of ${who} is ${say.length(measured ?? 0)} wide and its ${data?.goes} ${say.length(limit ?? 0)}`
    return grade === 'clear' ? `${wide}.` : `${wide}: it does not go in. Bore wider.`
  },
}

export const faceForBushing: Rule = {
  name: 'face-for-bushing',
  title: 'Wood for a nut to press on',
  unit: 'mm',
  wants: 'least',
  limits: ['woodForNut'],
  mendedBy: ['thing.boreDepth', 'thing.backing'],
  measure(layout, limit) {
    const found: Measurement[] = []
    const wanted = limit('woodForNut')
    for (const one of mounted(layout))
      found.push({
        about: [one.placed.thing.id],
        where: at(one),
        measured: one.net,
        limit: wanted,
        grade: gradeLeast(one.net, wanted, NOTHING_LEFT),
        data: { face: one.placed.face, bored: one.bushing.bore === 'none' ? '' : 'yes' },
      })
    return found
  },
  words({ measured, limit, about, grade, data }, say) {
    const who = say.thing(about[0] ?? '')
    if (grade === 'stop')
      return `The bore of ${who} leaves ${say.length(0)} of the ${faceWord(data?.face)}: it goes right through. Bore less deep.`
    const held = `${capital(who)} is held by ${say.length(measured ?? 0)} of wood`
    if (grade === 'clear') return `${held}.`
    const cure = data?.bored ? 'Bore less deep, or glue' : 'Glue'
    return `${held}; a plug pulled sideways breaks less than ${say.length(limit ?? 0)}. ${cure} a backing plate ${say.length((limit ?? 0) - (measured ?? 0))} thick or more behind it.`
  },
}

/** Length of shaft that stands out before the face. */
const shaftOut = ({ bushing, thickness }: Mounted): number => {
  const inside = bushing.bore === 'from inside' ? Math.min(bushing.boreDepth, thickness) : 0
  return (bushing.shaft?.length ?? 0) - (thickness + bushing.backing - inside)
}

export const shaftInKnob: Rule = {
  name: 'shaft-in-knob',
  title: 'Shaft in its knob',
  unit: 'mm',
  wants: 'least',
  limits: ['shaftInKnob'],
  mendedBy: ['thing.boreDepth', 'thing.knobDepth', 'thing.shaft'],
  measure(layout, limit) {
    const found: Measurement[] = []
    const wanted = limit('shaftInKnob')
    for (const one of mounted(layout)) {
      if (!one.bushing.shaft) continue
      const measured = Math.min(shaftOut(one), one.bushing.shaft.knobDepth)
      found.push({
        about: [one.placed.thing.id],
        where: at(one),
        measured,
        limit: wanted,
        grade: gradeLeast(measured, wanted, NOTHING_LEFT),
      })
    }
    return found
  },
  words({ measured, limit, about, grade }, say) {
    const who = say.thing(about[0] ?? '')
    if (grade === 'stop')
      return `The shaft of ${who} ends ${say.length(-(measured ?? 0))} short of the outer side: no knob can hold. Bore from inside, or choose a longer shaft.`
    const held = `The knob of ${who} holds ${say.length(measured ?? 0)} of its shaft`
    return grade === 'clear'
      ? `${held}.`
      : `${held}; under ${say.length(limit ?? 0)} it slips. Bore from inside, or choose a longer shaft or a deeper knob.`
  },
}

export const knobOffFace: Rule = {
  name: 'knob-off-face',
  title: 'Knob standing off the face',
  unit: 'mm',
  wants: 'most',
  limits: ['knobOffFace'],
  mendedBy: ['thing.shaft'],
  measure(layout, limit) {
    const found: Measurement[] = []
    const wanted = limit('knobOffFace')
    for (const one of mounted(layout)) {
      if (!one.bushing.shaft) continue
      const measured = Math.max(0, shaftOut(one) - one.bushing.shaft.knobDepth)
      found.push({
        about: [one.placed.thing.id],
        where: at(one),
        measured,
        limit: wanted,
        grade: gradeMost(measured, wanted),
      })
    }
    return found
  },
  words({ measured, limit, about, grade }, say) {
    const stands = `The knob of ${say.thing(about[0] ?? '')} stands ${say.length(measured ?? 0)} off the face`
    return grade === 'clear'
      ? `${stands}.`
      : `${stands}; more than ${say.length(limit ?? 0)} shows the nut. Cut the shaft shorter by ${say.length((measured ?? 0) - (limit ?? 0))}.`
  },
}
