/** Where the instrument is in tune: cents at every fret, the chord tuned pure, and what a rule's lines cost. */
import { stepOf } from '../quantity/units.ts'
import { fretsOf } from '../scale/frets.ts'
import { compensate, fretErrors } from '../strings/compensation.ts'
import { type RoundedFret, roundedFrets } from '../strings/fret-error.ts'
import { beatsOfNeighbours, pureOffsets, type Ratio, rootOf } from '../strings/just.ts'
import { centsBetween, hertzOf, nameOf } from '../strings/pitch.ts'
import { loadsOf } from './loads.ts'
import { remembered } from './remembered.ts'
import { playedAs } from './strings-loads.ts'

/** Cents above the intended interval, fret by fret; `null` for a fret that lies behind the saddle. */
export interface StringIntonation {
  /** Saddle at the bare scale, nut in its place. */
  readonly before: readonly (number | null)[]
  /** Saddle and nut as the design states them. */
  readonly asStated: readonly (number | null)[]
  /** Saddle at the string's own setback. */
  readonly after: readonly (number | null)[]
}

/** Millimetres of string in front of the saddle that can still be called a string. */
const LEAST_STRING = 2

/**
 * Cents at every fret for every string, bass first; the frets are those of the layout without a zero fret. `null` for a
 * string whose pull is not known. It is an estimate, for a finger that presses straight down on a level neck.
 * Example: `intonationOf(layout)[2]?.asStated[11]` is the octave fret of the third string.
 */
export const intonationOf = remembered((layout): (StringIntonation | null)[] => {
  const { design } = layout
  const frets = layout.frets.filter((fret) => fret.number > 0)
  const end = design.scale.length + Math.min(0, design.saddle.setback) - LEAST_STRING
  const sounding = frets.filter((fret) => fret.fromNut < end)
  const padded = (cents: readonly number[]) => frets.map((_, index) => cents[index] ?? null)
  return loadsOf(layout).strings.map(({ atPitch }) => {
    if (!atPitch) return null
    const { string, path } = playedAs(layout, atPitch.body, atPitch.tension)
    const { before, after } = compensate(string, path, sounding)
    const asStated = fretErrors(string, path, sounding, design.saddle.setback, design.nut.setback)
    return { before: padded(before), asStated: padded(asStated), after: padded(after) }
  })
})

export interface PureTarget {
  readonly ratio: Ratio
  readonly hertz: number
  /** Where it rests, in cents over its tempered pitch: what a tuner shows. */
  readonly offset: number
  /** Cents to go from the pitch stated. */
  readonly fromStated: number
}

export interface PureTuning {
  /** The string that the others are tuned to, bass string 0, and its name. */
  readonly root: number
  readonly rootName: string
  readonly strings: readonly PureTarget[]
  /** Beats a second of each string with the next, as stated and tuned pure; `null` where no ear hears them. */
  readonly beatsAsStated: readonly (number | null)[]
  readonly beatsPure: readonly (number | null)[]
}

/**
 * The open chord tuned until it stands still, the root staying where it is; `null` where the strings make no major or
 * minor chord, nor bare fifths and octaves, or have no pitches.
 * Example: in G D G B the last string rests 13.7 cents under the tuner's mark.
 */
export const pureTuningOf = remembered((layout): PureTuning | null => {
  const pitches = loadsOf(layout).strings.flatMap((one) => (one.atPitch ? [one.atPitch.pitch] : []))
  if (pitches.length < layout.strings.length || pitches.length < 2) return null
  const midis = pitches.map((one) => Math.round(one.midi))
  const rootMidi = rootOf(midis)
  if (rootMidi === null) return null
  const root = midis.indexOf(rootMidi)
  const rootHertz = pitches[root]?.hertz ?? hertzOf(rootMidi, layout.design.stringing.a4)
  const strings = pureOffsets(midis, rootMidi).map(({ ratio, offset }, index) => {
    const hertz = (rootHertz * ratio.above) / ratio.below
    return { ratio, offset, hertz, fromStated: centsBetween(pitches[index]?.hertz ?? hertz, hertz) }
  })
  return {
    root,
    rootName: nameOf(rootMidi),
    strings,
    beatsAsStated: beatsOfNeighbours(pitches.map((one) => one.hertz)),
    beatsPure: beatsOfNeighbours(strings.map((one) => one.hertz)),
  }
})

/**
 * The frets as they fall on the builder's rule: whole millimetres or the finest fraction of an inch, and what that
 * costs in cents. Example: `fretRoundingOf(layout)[6]?.cents` for the seventh fret.
 */
export const fretRoundingOf = remembered((layout): RoundedFret[] => {
  const { scale, units } = layout.design
  return roundedFrets(
    scale.length,
    fretsOf(scale).map((one) => one.fromNut),
    stepOf(units),
  )
})
