/**
 * Cross-sections of several woods glued into one: transformed sections.
 *
 * Millimetres and N/mm² (the same as MPa). Heights are any one frame's z. Parts stay flat and glued, so strain is
 * straight over the height: `E A = Σ E A`, axis `Σ E A z / Σ E A`, `E I = Σ E (I + A (z − axis)²)`; the stress in a part
 * is its own E times the strain. Source: J. M. Gere and B. J. Goodno, "Mechanics of Materials", ch. 6, composite beams.
 */
import { notNegative, positive } from '../quantity/demand.ts'

/** One part of a section. */
export interface Part {
  readonly area: number
  /** Height of its own centre, lower and upper edge. */
  readonly centre: number
  readonly bottom: number
  readonly top: number
  /** Second moment about its own centre. */
  readonly inertia: number
  /** Young's modulus, or what it exceeds that of the wood it stands in by. */
  readonly stiffness: number
  /** Young's modulus of its own stuff, for the stress in it. */
  readonly own: number
  /** What its stuff bears. */
  readonly strength: number
  /** A part that lies loose in its channel adds its own bending stiffness and no more. */
  readonly loose: boolean
}

/** What of a wood or a bar counts here: see `woods.ts`. */
export interface Stuff {
  readonly stiffness: number
  readonly strength: number
}

/** A plank, a board, a strip. A height of 0 is a part that is not there. Example: `plank(45, 0, 20, maple)`. */
export function plank(width: number, bottom: number, top: number, stuff: Stuff): Part {
  const height = notNegative(top - bottom, 'the height of a plank')
  const area = positive(width, 'the width of a plank') * height
  return {
    area,
    centre: (bottom + top) / 2,
    bottom,
    top,
    inertia: (area * height * height) / 12,
    stiffness: positive(stuff.stiffness, 'a stiffness'),
    own: stuff.stiffness,
    strength: positive(stuff.strength, 'a strength'),
    loose: false,
  }
}

/** A bar let into wood and glued there; it takes the wood's place, so only what is stiffer counts. */
export function bar(width: number, bottom: number, top: number, stuff: Stuff, within: Stuff): Part {
  return { ...plank(width, bottom, top, stuff), stiffness: stuff.stiffness - within.stiffness }
}

/** A round rod, glued in as `bar`, or loose in its channel: then the wood is missing and the rod bends by itself. */
export function rod(diameter: number, centre: number, stuff: Stuff, within: Stuff, loose = false): Part {
  const square = positive(diameter, 'the diameter of a rod') ** 2
  return {
    area: (Math.PI / 4) * square,
    centre,
    bottom: centre - diameter / 2,
    top: centre + diameter / 2,
    inertia: (Math.PI / 64) * square * square,
    stiffness: loose ? -within.stiffness : stuff.stiffness - within.stiffness,
    own: stuff.stiffness,
    strength: stuff.strength,
    loose,
  }
}

export interface Section {
  /** `E A` in N. */
  readonly stretch: number
  /** `E I` about the axis, N·mm². */
  readonly bend: number
  /** Height of the neutral axis. */
  readonly axis: number
  readonly parts: readonly Part[]
}

/**
 * The section made of these parts; `null` where nothing is left that bears a load.
 * Example: 20 mm of maple (12 600) under 6 mm of walnut (11 600), 45 mm wide: axis 12.81 mm from the back,
 * `E I` 8.02e8 N·mm², 2.12 times the bare neck.
 */
export function sectionOf(parts: readonly Part[]): Section | null {
  let stretch = 0
  let moment = 0
  for (const { area, centre, stiffness } of parts) {
    stretch += stiffness * area
    moment += stiffness * area * centre
  }
  if (!(stretch > 0)) return null
  const axis = moment / stretch
  let bend = 0
  for (const { area, centre, inertia, stiffness, own, loose } of parts) {
    bend += stiffness * (inertia + area * (centre - axis) ** 2)
    if (loose) bend += own * inertia
  }
  return bend > 0 ? { stretch, bend, axis, parts } : null
}

export interface Strain {
  /** Stress that is farthest from what its part bears, N/mm²; pressure is positive. */
  readonly stress: number
  /** Of the strength of that part; 1 breaks. */
  readonly share: number
  /** Height at which it is found. */
  readonly height: number
}

/**
 * The most strained edge of a section under a push along its axis (N, positive presses) and a bending moment (N·mm,
 * positive presses the top): `σ = E (P / EA + M (z − axis) / EI)`.
 * Example: maple 40 × 20 mm under 200 N and 2400 N·mm is pressed with 1.15 N/mm² at its top.
 */
export function mostStrained(section: Section, push: number, moment: number): Strain {
  return strainInto(section, push, moment, { stress: 0, share: 0, height: 0 })
}

/** The same, written into an object that is used again and again. */
export function strainInto(
  section: Section,
  push: number,
  moment: number,
  into: { -readonly [key in keyof Strain]: number },
): Strain {
  const along = push / section.stretch
  const curve = moment / section.bend
  into.stress = 0
  into.share = 0
  into.height = section.axis
  for (const part of section.parts) {
    if (part.area === 0) continue
    // A loose part is not pressed along and bends about its own middle.
    const pressed = part.loose ? 0 : along
    const axis = part.loose ? part.centre : section.axis
    for (let edge = 0; edge < 2; edge++) {
      const at = edge === 0 ? part.bottom : part.top
      const found = part.own * (pressed + curve * (at - axis))
      const ofIts = Math.abs(found) / part.strength
      if (ofIts <= into.share) continue
      into.stress = found
      into.share = ofIts
      into.height = at
    }
  }
  return into
}
