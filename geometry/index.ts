/** The only door of the engine. */

export { type Balance, balanceOf, type Held } from './balance/balance.ts'
export type { Piece } from './balance/weight.ts'
export { type Artwork, type ArtworkPiece, artworkOf } from './box/artwork.ts'
export { type Inside, type InsidePiece, insidePiecesOf, isWood, seenFrom } from './box/inside-pieces.ts'
export { edgesAt, endsOf, sidesAt, wallLinesOf } from './box/outlines.ts'
export { graduationOf } from './box/real-box.ts'
export * from './box/survey/index.ts'
export { type LidCure, lidCuresOf } from './box/swing/cures.ts'
export { type LidMotion, lidMotionOf } from './box/swing/lid-motion.ts'
export { type LidSection, type Moving, runsAlong, type Standing } from './box/swing/section.ts'
export { type Encounter, type Swing, swung } from './box/swing/swing.ts'
export * from './checks/index.ts'
export * from './cures/index.ts'
export { type CurveReading, readCurve } from './curves/read-curve.ts'
export * from './cutting/index.ts'
export * from './design/index.ts'
export * from './fit/index.ts'
export * from './hearing/index.ts'
export { FACES, type Face, GROUPS, type Kind } from './kinds/kind.ts'
export { KINDS, type KindName, kindOf } from './kinds/kinds.ts'
export * from './loads/index.ts'
export { faceHeight } from './neck/head-form.ts'
export { type HeadLayout, type HeadPath, headOf, type Tuner } from './neck/head-layout.ts'
export { lidStuffNamed, lidStuffNames, type OwnWood, woodNamed, woodNames } from './neck/named-woods.ts'
export { halfWidthAt, sidesOfNeck } from './neck/neck.ts'
export { type Scarf, scarfOf } from './neck/scarf.ts'
export { TUNER_PRESETS, type TunerPreset } from './neck/tuner-presets.ts'
export { BARS, CREEP, LONG_TERM, PANELS, WOODS, type Wood } from './neck/woods.ts'
export * from './parts/index.ts'
export * from './placing/index.ts'
export * from './plane/index.ts'
export * from './quantity/index.ts'
export type { Fret } from './scale/frets.ts'
export { centsOf, ratioOf } from './scale/ratio.ts'
export * from './schedule/index.ts'
export * from './solids/index.ts'
export { placedCalled } from './solve/called.ts'
export type * from './solve/layout.ts'
export {
  type Measure,
  type Measured,
  type MeasureEnd,
  measuredOn,
  shapeOf,
  takeMeasure,
} from './solve/measures.ts'
export {
  clean,
  type FieldSet,
  followersOf,
  moveFields,
  onRule,
  placeFields,
  relatedTo,
  saddleFields,
} from './solve/moves.ts'
export { solve, stringAt } from './solve/solve.ts'
export { BOTH_ENDS, SPEED_OF_SOUND } from './sound/air.ts'
export { type Mouth, type Note, type Sound, type Step, soundOf } from './sound/sound.ts'
export { type Feel, feelOf } from './strings/feel.ts'
export type { Ratio } from './strings/just.ts'
export { MATERIALS, type MaterialName } from './strings/materials.ts'
export { centsBetween, hertzOf, nameOf, type PitchReading, readPitch } from './strings/pitch.ts'
export { gaugesFor, holesServing } from './strings/spacing.ts'
export { type TailPath, tailPathsOf } from './strings/tail-paths.ts'
export { countsOf, holesFor } from './strings/tail-row.ts'
export { lettersOf, TUNINGS, type Tuning, tunedTo, tuningsFor } from './strings/tunings.ts'
export * from './uncertainty/index.ts'
export * from './wiring/index.ts'
