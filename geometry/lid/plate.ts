/**
 * The lid as a plate that rests on all four walls, pressed by the foot of the saddle. Millimetres, newtons, N/mm².
 *
 * Navier's double series for a simply supported rectangle with a load spread evenly over a small one: S. Timoshenko and
 * S. Woinowsky-Krieger, "Theory of Plates and Shells", 2nd ed., arts. 29, 33 and 34, and art. 85 for wood, which is far
 * stiffer along the grain. A brace is a beam that follows the lid along its line; each row of the series then has the
 * closed form of a matrix changed by one product (J. Sherman and W. J. Morrison, 1950). Openings, the neck under the
 * lid, play at the walls and creep are left out; a glued edge sags less, and so does any lid that sags by more than half
 * its thickness, since it then also hangs like a cloth.
 */
import { positive } from '../quantity/demand.ts'
import { type LidStiffness, type SheetStuff, stiffnessOf } from './sheet.ts'

export interface Lid {
  /** Free span along the strings and across them. */
  readonly length: number
  readonly width: number
  readonly thickness: number
  readonly stuff: SheetStuff
}

/** The load: all of it, spread over a foot, with its centre measured from the lid's neck-end and bass corner. */
export interface Foot {
  readonly force: number
  readonly along: number
  readonly across: number
  /** Size of the foot along and across the strings; 0 is a line or a point. */
  readonly long: number
  readonly wide: number
}

/** A brace over the whole span, `at` measured like the foot; `bend` is what it adds, N·mm² (see `brace.ts`). */
export interface LidBrace {
  readonly runs: 'across' | 'along'
  readonly at: number
  readonly bend: number
}

export interface LidSag {
  /** At the centre of the foot, downwards. */
  readonly sag: number
  /** Bending stress in the lid's faces under the foot, along and across the strings. */
  readonly stressAlong: number
  readonly stressAcross: number
  /** Bending moment in the brace where the foot's line crosses it, N·mm; 0 without one. */
  readonly braceMoment: number
}

/** Terms each way: the stress under a foot of a fiftieth of the span is settled after these. */
const TERMS = 60
/** The sag is settled far sooner: what is left out is less than a thousandth of it. */
export const SAG_TERMS = 20
/** A share of the load too small to show in any digit that is kept. */
const NOTHING = 1e-13

/**
 * Sag and stress of a lid under the saddle. The foot is kept within the lid. A foot of no size gives a sag but no
 * stress that means anything (it grows without end). `terms` of the series are taken each way: `SAG_TERMS` will do where
 * only the sag is asked for. Throws for a lid or a force that is none.
 * Example: 400 × 200 × 4 mm of 10 000 N/mm² both ways, 50 N on a point in the middle: 0.564 mm.
 */
export function sagOf(lid: Lid, foot: Foot, brace?: LidBrace, terms = TERMS): LidSag {
  const stiffness = stiffnessOf(lid.stuff, positive(lid.thickness, 'the thickness of a lid'))
  const along = {
    span: positive(lid.length, 'a span'),
    at: foot.along,
    size: foot.long,
    stiffness: stiffness.along,
  }
  const across = {
    span: positive(lid.width, 'a span'),
    at: foot.across,
    size: foot.wide,
    stiffness: stiffness.across,
  }
  // The sum below knows a brace that runs along its second side.
  const turned = brace?.runs === 'along'
  const [first, second] = turned ? [across, along] : [along, across]
  const sum = sumOf(first, second, stiffness, positive(foot.force, 'a force'), terms, brace)
  const perMoment = 6 / lid.thickness ** 2
  const [momentAlong, momentAcross] = turned ? [sum.second, sum.first] : [sum.first, sum.second]
  return {
    sag: sum.sag,
    stressAlong: perMoment * momentAlong,
    stressAcross: perMoment * momentAcross,
    braceMoment: sum.brace,
  }
}

interface Side {
  readonly span: number
  readonly at: number
  readonly size: number
  readonly stiffness: number
}

/** For term m of one side: `m π / span`, its sine at the foot, and the foot's share in it. */
function termsOf({ span, at, size }: Side, terms: number) {
  const wave = new Array<number>(terms + 1).fill(0)
  const sine = new Array<number>(terms + 1).fill(0)
  const load = new Array<number>(terms + 1).fill(0)
  const half = Math.min(Math.max(size, 0), span) / 2
  const centre = Math.min(Math.max(at, half), span - half)
  for (let term = 1; term <= terms; term++) {
    const k = (term * Math.PI) / span
    wave[term] = k
    sine[term] = Math.sin(k * centre)
    load[term] = half > 0 ? (sine[term]! * Math.sin(k * half)) / (k * half) : sine[term]!
  }
  return { wave, sine, load }
}

function sumOf(
  first: Side,
  second: Side,
  { mixed, coupling }: LidStiffness,
  force: number,
  terms: number,
  brace?: LidBrace,
) {
  const one = termsOf(first, terms)
  const two = termsOf(second, terms)
  const quarter = (first.span * second.span) / 4
  const atBrace = new Array<number>(terms + 1).fill(0)
  for (let m = 1; m <= terms; m++) atBrace[m] = brace ? Math.sin(one.wave[m]! * brace.at) : 0
  let sag = 0
  let curveFirst = 0
  let curveSecond = 0
  let braceMoment = 0
  for (let n = 1; n <= terms; n++) {
    // Half of the waves have a node under a foot in the middle and carry nothing.
    if (Math.abs(two.load[n]!) < NOTHING) continue
    const k2 = two.wave[n]! ** 2
    const across = second.stiffness * k2 * k2
    let free = 0
    let freeCurve = 0
    let onBrace = 0
    let ofBrace = 0
    let shape = 0
    let shapeCurve = 0
    for (let m = 1; m <= terms; m++) {
      const j2 = one.wave[m]! ** 2
      const give = 1 / (quarter * (first.stiffness * j2 * j2 + 2 * mixed * j2 * k2 + across))
      const amount = one.load[m]! * give
      const seen = one.sine[m]!
      free += amount * seen
      freeCurve += amount * seen * j2
      if (!brace) continue
      const on = atBrace[m]!
      onBrace += amount * on
      ofBrace += on * on * give
      shape += on * give * seen
      shapeCurve += on * give * seen * j2
    }
    const load = force * two.load[n]!
    const seen = two.sine[n]!
    const held = brace ? brace.bend * k2 * k2 * (second.span / 2) : 0
    const reaction = (held * onBrace) / (1 + held * ofBrace)
    const rise = load * (free - reaction * shape)
    sag += rise * seen
    curveFirst += load * (freeCurve - reaction * shapeCurve) * seen
    curveSecond += rise * k2 * seen
    if (brace) braceMoment += (brace.bend * k2 * load * onBrace * seen) / (1 + held * ofBrace)
  }
  return {
    sag,
    first: first.stiffness * curveFirst + coupling * curveSecond,
    second: second.stiffness * curveSecond + coupling * curveFirst,
    brace: braceMoment,
  }
}
