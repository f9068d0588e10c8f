/**
 * Limits for what pulls, bends and sags. All are starting values of common practice without a published source.
 * They are held against estimates: see the rooms `strings`, `neck` and `lid` for what each leaves out.
 */
import type { Limit } from './limit.ts'

const limit = (unit: Limit['unit'], value: number, label: string, why: string): Limit => ({
  value,
  unit,
  label,
  why,
})

export const LOAD_LIMITS = {
  stringStrained: limit(
    'share',
    0.75,
    'Share of the breaking load',
    'Over this a string breaks early, at the post or under a hard stroke. Common practice.',
  ),
  stringBreaking: limit(
    'share',
    0.9,
    'Share of the breaking load, at the very most',
    'Over this it breaks on the way up. Common practice.',
  ),
  stringSlack: limit(
    'newtons',
    40,
    'Least pull of a string',
    'Slacker, a steel string flaps and buzzes; of nylon, half of this does. Common practice.',
  ),
  stringHigh: limit(
    'newtons',
    110,
    'Most pull of a string',
    'More is hard on fingers, neck and lid. Common practice.',
  ),
  pullLeast: limit(
    'share',
    0.6,
    'Slackest string against the mean',
    'A string that much slacker than the rest feels and sounds like another instrument’s. Common practice.',
  ),
  pullMost: limit(
    'share',
    1.6,
    'Tightest string against the mean',
    'A string that much tighter than the rest feels like another instrument’s. Common practice.',
  ),
  neckBow: limit(
    'mm',
    0.3,
    'Bow of the neck',
    'Half way between nut and box. More and the frets buzz in one place or the strings stand high. Common practice.',
  ),
  nutRise: limit(
    'mm',
    1.5,
    'Rise of the nut',
    'How far the strings lift the end of the neck. The reckoning is an upper bound. Common practice.',
  ),
  actionChange: limit(
    'mm',
    1,
    'Change of the action',
    'How much higher the strings stand over the octave fret once they pull. Common practice.',
  ),
  neckStress: limit(
    'share',
    0.7,
    'Share of the wood’s strength',
    'Against what it bears for good, a good half of what it bears for minutes. Common practice.',
  ),
  neckStressMost: limit(
    'share',
    1,
    'Share of the wood’s strength, at the very most',
    'Over this it gives way sooner or later. Common practice.',
  ),
  headRoot: limit(
    'mm',
    12,
    'Head at its root',
    'With what is glued on. Thinner ones break along the grain when the instrument falls. Common practice.',
  ),
  breakAngleAtSaddle: limit(
    'degrees',
    7,
    'Bend over the saddle',
    'Less and a string rattles or wanders; under 5 it hardly presses. Common practice.',
  ),
  breakAngleMost: limit(
    'degrees',
    25,
    'Bend over the saddle, at the most',
    'More presses hard on the lid and breaks strings. Common practice.',
  ),
  breakAngleAtNut: limit(
    'degrees',
    5,
    'Bend over the nut',
    'Less and the open string buzzes in its slot. Common practice.',
  ),
  lidSag: limit(
    'mm',
    0.5,
    'Sag of the lid',
    'Under the saddle, with all strings at pitch. More and it caves in over the years. Common practice.',
  ),
  saddleLeast: limit(
    'mm',
    6,
    'Least saddle',
    'From the lid to the strings; lower, there is nothing to make it of and little bend over it. Common practice.',
  ),
  saddleMost: limit(
    'mm',
    20,
    'Tallest saddle',
    'From the lid to the strings; taller ones rock. Common practice.',
  ),
  actionOff: limit(
    'mm',
    0.5,
    'Action off what is wanted',
    'More is felt, and is more than filing slots will cure. Common practice.',
  ),
  setbackOff: limit(
    'mm',
    1,
    'Saddle line off its place',
    'A millimetre is some three cents at the octave. Common practice.',
  ),
  balanceOff: limit(
    'mm',
    60,
    'Balance point from the neck-end face',
    'Farther towards the head it dives on strap or knee, farther towards the tail it tips back. Common practice.',
  ),
} satisfies Record<string, Limit>
