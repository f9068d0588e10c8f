/** Each string of a layout: how it bends over nut and saddle, and at pitch how it pulls. */
import { type BreakAngle, breakAngle, downForce } from '../lid/down-force.ts'
import type { Layout, StringLine, WindingPoint } from '../solve/layout.ts'
import type { StringBody } from '../strings/body.ts'
import { compensate } from '../strings/compensation.ts'
import { type FeelLimits, feelOf } from '../strings/feel.ts'
import { shareOfBreaking } from '../strings/strength.ts'
import { tensionOf } from '../strings/tension.ts'
import { pitchesOf, type StatedPitch, strungFor } from './strung.ts'
import type { StringAtPitch, StringLoad } from './types.ts'

/** Share of the least pull at which soft strings still sound. Common practice, from memory. */
export const SOFT_SHARE = 0.5
/** N/mm²: strings of softer stuff than this are nylon and its like. */
const SOFTEST_METAL = 50_000

/** Is it a nylon or fluorocarbon string, which stretches far more than any metal one? */
export const isSoft = ({ stretch, core }: { readonly stretch: number; readonly core: number }): boolean =>
  stretch / ((Math.PI / 4) * core * core) < SOFTEST_METAL

/** Height of the strings over the plane of the crowns (or over a bare board) at the nut; below 0 they lie on it. */
export function overCrownsAtNut({ design, zeroFret }: Layout): number {
  if (zeroFret) return 0
  return design.nut.height - crownOf(design)
}

export const crownOf = ({ scale }: Layout['design']): number => (scale.fretless ? 0 : scale.crown)

/** All strings of a layout. Pull limits say in which words a pull is felt. */
export function stringLoadsOf(layout: Layout, limits: FeelLimits): StringLoad[] {
  const pitches = pitchesOf(layout.design)
  return layout.strings.map((line): StringLoad => {
    const made = strungFor(layout.design.stringing, line.index, line.gauge)
    const atSaddle = overSaddle(layout, line)
    const pitch = pitches?.[line.index]
    const told = {
      index: line.index,
      number: line.number,
      gauge: line.gauge,
      atSaddle,
      breakAtNut: line.post && line.post.x < 0 ? behindNut(line.zAtNut, line.post.winds) : null,
      atPitch: made.body && pitch ? atPitchOf(layout, made.body, pitch, atSaddle, limits) : null,
    }
    return made.body
      ? { make: made.make, body: made.body, trouble: null, ...told }
      : { make: made.make, body: null, trouble: made.trouble, ...told }
  })
}

/** Strings already reckoned, and the layout they belong to. */
export interface StringsBefore {
  readonly layout: Layout
  readonly strings: readonly StringLoad[]
}

/** Do two layouts of one stringing differ in nothing that a string at pitch hangs on, from its post to the saddle? */
export function sameStrings(one: Layout, other: Layout): boolean {
  const { scale, strings, nut, limits } = one.design
  return (
    scale === other.design.scale &&
    strings === other.design.strings &&
    nut === other.design.nut &&
    limits === other.design.limits &&
    one.posts === other.posts &&
    one.playingTop === other.playingTop &&
    one.saddle.top === other.saddle.top &&
    one.saddle.x === other.saddle.x
  )
}

/** The same strings where only what holds them behind the saddle has moved. */
export function heldAnew(layout: Layout, strings: readonly StringLoad[]): StringLoad[] {
  return layout.strings.map((line, index): StringLoad => {
    const before = strings[index] as StringLoad
    const atSaddle = overSaddle(layout, line)
    const { atPitch } = before
    return {
      ...before,
      atSaddle,
      atPitch: atPitch && { ...atPitch, downForce: atSaddle && downForce(atPitch.tension, atSaddle) },
    }
  })
}

/** The string falls from the saddle to its hole, or over the tail-end edge where it would run through it. */
function overSaddle({ saddle, box }: Layout, { tail, zAtNut, zAtSaddle }: StringLine): BreakAngle | null {
  if (!tail || tail.x <= saddle.x) return null
  const over = { x: saddle.x, z: zAtSaddle }
  let behind = { x: tail.x, z: tail.z }
  if (box.x1 > saddle.x && box.x1 <= tail.x) {
    const atEdge = over.z + ((behind.z - over.z) * (box.x1 - over.x)) / (behind.x - over.x)
    if (atEdge < 0) behind = { x: box.x1, z: 0 }
  }
  return breakAngle({ x: 0, z: zAtNut }, over, behind)
}

const behindNut = (zAtNut: number, { x, z }: WindingPoint): number => Math.atan2(zAtNut - z, -x)

function atPitchOf(
  layout: Layout,
  body: NonNullable<StringLoad['body']>,
  pitch: StatedPitch,
  atSaddle: BreakAngle | null,
  limits: FeelLimits,
): StringAtPitch {
  const tension = tensionOf(body.unitMass, layout.design.scale.length, pitch.hertz)
  const share = shareOfBreaking(tension, body.breaking)
  const { string, path } = playedAs(layout, body, tension)
  return {
    pitch,
    body,
    tension,
    shareOfBreaking: share,
    feel: feelOf(tension, share, isSoft(body) ? { ...limits, slack: limits.slack * SOFT_SHARE } : limits),
    setback: compensate(string, path, []).setback,
    downForce: atSaddle && downForce(tension, atSaddle),
  }
}

/** A string at pitch as `compensation.ts` knows it. */
export function playedAs(layout: Layout, body: StringBody, tension: number) {
  const { design, playingTop } = layout
  return {
    string: { tension, stretch: body.stretch, bend: body.bend },
    path: {
      length: design.scale.length,
      nutHeight: overCrownsAtNut(layout),
      saddleHeight: design.saddle.height - playingTop - crownOf(design),
    },
  }
}
