/** The note of the air in a box, reckoned when asked for and remembered with its layout. */
import { remembered } from '../loads/remembered.ts'
import { area, bounds, type Contour, move, turn } from '../plane/index.ts'
import type { Layout, Placed } from '../solve/layout.ts'
import { nameOf, nearestKey } from '../strings/pitch.ts'
import { airResonance, conductanceOf, type Opening } from './air.ts'
import { nextBit } from './bits.ts'
import { type Inside, insideOf } from './inside.ts'

export interface Note {
  readonly hertz: number
  /** The nearest key and how far the note lies over it. */
  readonly name: string
  readonly cents: number
}

/** An opening that lets the air out, as it is reckoned with. */
export interface Mouth extends Opening {
  /** Id of the thing it belongs to. */
  readonly of: string
  readonly round: boolean
  /** mm. */
  readonly conductance: number
}

/** All holes made with the next bit: what the note would become. */
export interface Step {
  readonly way: 'larger' | 'smaller'
  /** Through sizes, as they would be, in the order of the mouths; of long holes the longer. */
  readonly sizes: readonly number[]
  readonly note: Note
  /** From the note now, positive up. */
  readonly cents: number
}

export interface Sound {
  readonly inside: Inside
  readonly mouths: readonly Mouth[]
  /** Things meant to let the air out that open on a wall, the neck or nothing. */
  readonly blind: readonly string[]
  /** `null` where no air is left, or none comes out. */
  readonly note: Note | null
  readonly steps: readonly Step[]
}

/**
 * What the air of a box does. The estimate takes the walls as stiff, so a thin lid sounds lower; openings nearer to each
 * other than two diameters help each other less than is reckoned; the neck under an opening is left out.
 * Example: `soundOf(solve(design)).note?.name` is `F♯3`.
 */
export const soundOf = remembered((layout: Layout): Sound => {
  const inside = insideOf(layout)
  const mouths: Mouth[] = []
  const blind: string[] = []
  for (const placed of layout.placed) {
    if (!placed.kind.air) continue
    const found = mouthsOf(layout, placed)
    if (found.length === 0) blind.push(placed.thing.id)
    else mouths.push(...found)
  }
  const note = noteOf(mouths, inside.air)
  const steps = note ? stepsOf(mouths, inside.air, note, layout.design.units.display) : []
  return { inside, mouths, blind, note, steps }
})

function noteOf(mouths: readonly Opening[], air: number): Note | null {
  const conductance = mouths.reduce((sum, one) => sum + conductanceOf(one), 0)
  if (!(air > 0 && conductance > 0)) return null
  const hertz = airResonance(conductance, air)
  const { midi, cents } = nearestKey(hertz)
  return { hertz, name: nameOf(midi), cents }
}

/** The openings of a thing that lead into the box. */
function mouthsOf(layout: Layout, { thing, kind, face, at }: Placed): Mouth[] {
  const { thickness } = layout.panels[face]
  const rim = kind.rim?.(thing) ?? null
  const turned = (thing.turnDegrees * Math.PI) / 180
  return kind.openings(thing).flatMap((contour) => {
    const { minX, maxX, minY, maxY } = bounds(contour)
    const middle = bounds(move(turn(contour, turned), at.x, at.y))
    const centre = { x: (middle.minX + middle.maxX) / 2, y: (middle.minY + middle.maxY) / 2 }
    if (!leadsInside(layout, face, centre)) return []
    const [long, short] = [Math.max(maxX - minX, maxY - minY), Math.min(maxX - minX, maxY - minY)]
    const opening: Opening = {
      area: area(contour),
      long,
      short,
      thickness,
      ...(rim ? { rim: { depth: rim.depth, area: grown(contour, rim.ledge) } } : {}),
    }
    return [
      { ...opening, of: thing.id, round: contour.shape === 'circle', conductance: conductanceOf(opening) },
    ]
  })
}

/** Area of an opening with a step all round it, taken as the same shape made larger: exact where it is round. */
function grown(contour: Contour, ledge: number): number {
  const { minX, maxX, minY, maxY } = bounds(contour)
  const [w, h] = [maxX - minX, maxY - minY]
  return area(contour) * ((w + 2 * ledge) / w) * ((h + 2 * ledge) / h)
}

function leadsInside({ box, panels }: Layout, face: Placed['face'], at: { x: number; y: number }): boolean {
  const along = (x: number) => x > box.insideX0 && x < box.insideX1
  const across = (y: number) => y > box.insideBass && y < box.insideTreble
  if (face === 'lid' || face === 'base') return along(panels[face].originX + at.x) && across(at.y)
  const z = box.wallTop + at.y
  if (z <= box.baseTop || z >= box.lidBottom) return false
  return face === 'bass-wall' || face === 'treble-wall' ? along(panels[face].originX + at.x) : across(at.x)
}

/** A long hole goes up or down by this in both sizes: an eighth of an inch, about 3 mm. */
const LONG_STEP = { mm: 3, inches: 3.175 }

function stepsOf(mouths: readonly Mouth[], air: number, now: Note, units: 'mm' | 'inches'): Step[] {
  return (['smaller', 'larger'] as const).flatMap((way) => {
    const sized = mouths.map((mouth) => resized(mouth, way, units))
    const all = sized.flatMap((one) => (one ? [one] : []))
    if (all.length < mouths.length) return []
    const note = noteOf(all, air)
    if (!note) return []
    return [{ way, sizes: all.map((one) => one.long), note, cents: 1200 * Math.log2(note.hertz / now.hertz) }]
  })
}

/** The opening made with the next bit; its rim grows and shrinks with it. */
function resized(mouth: Mouth, way: Step['way'], units: 'mm' | 'inches'): Opening | null {
  const step = way === 'larger' ? LONG_STEP[units] : -LONG_STEP[units]
  const long = mouth.round ? nextBit(mouth.long, way, units) : mouth.long + step
  const short = mouth.round ? long : mouth.short + step
  if (long === null || short === null || short <= 0) return null
  const area = mouth.area * (long / mouth.long) * (short / mouth.short)
  const rim = mouth.rim && { depth: mouth.rim.depth, area: mouth.rim.area + area - mouth.area }
  return { area, long, short, thickness: mouth.thickness, ...(rim ? { rim } : {}) }
}
