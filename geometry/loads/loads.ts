/** All loads of a layout, reckoned when first asked for and remembered with it. */

import { limitOf } from '../checks/finding.ts'
import type { Design } from '../design/schema.ts'
import { notes } from '../quantity/notes.ts'
import type { Layout } from '../solve/layout.ts'
import { neckCure, saddleHeight } from '../strings/heights.ts'
import { freeBand, saddleLine } from '../strings/saddle-line.ts'
import { lidLoadsOf } from './lid-loads.ts'
import { type NeckLoadsReading, neckLoadsOf } from './neck-loads.ts'
import {
  crownOf,
  heldAnew,
  overCrownsAtNut,
  type StringsBefore,
  sameStrings,
  stringLoadsOf,
} from './strings-loads.ts'
import type { Loads, Missing, NeckLoads, SaddleLoads, StringAtPitch, StringLoad } from './types.ts'

const known = notes<Layout, Loads>()

/**
 * What the strings do to the instrument. Needs a tuning that names a pitch for every string; until then everything that
 * hangs on pitches is `null` and `missing` says why. Never throws for the layout of a valid design.
 * Example: `loadsOf(solve(design)).totalPull` is some 200 N for three strings.
 */
export function loadsOf(layout: Layout): Loads {
  const before = known.get(layout)
  if (before) return before
  const { stringing } = layout.design
  const last = lately.get(stringing)
  const of = last && known.get(last)
  const loads =
    of && alike(last, layout) ? of : reckon(layout, of ? { layout: last, strings: of.strings } : null)
  known.set(layout, loads)
  lately.set(stringing, layout)
  return loads
}

/** The layout last reckoned with a stringing: while a hole is dragged about, no load changes. */
const lately = notes<Design['stringing'], Layout>()

/** What loads hang on; things do so only by what a pickup takes from the neck and where the saddle follows one. */
const SECTIONS = [
  ...['box', 'scale', 'strings', 'neck', 'board', 'headstock', 'nut', 'saddle', 'tailpiece', 'brace'],
  ...['woods', 'limits'],
] as (keyof Design)[]

function alike(one: Layout, other: Layout): boolean {
  for (const section of SECTIONS) if (one.design[section] !== other.design[section]) return false
  const [cuts, others] = [one.neck.cuts, other.neck.cuts]
  if (one.saddle.along !== other.saddle.along || cuts.length !== others.length) return false
  return cuts.every((cut, index) => {
    const its = others[index]
    return (
      its !== undefined && cut.x0 === its.x0 && cut.x1 === its.x1 && cut.top === its.top && cut.of === its.of
    )
  })
}

function reckon(layout: Layout, last: StringsBefore | null): Loads {
  const limit = limitOf(layout.design)
  const strings =
    last && sameStrings(last.layout, layout)
      ? heldAnew(layout, last.strings)
      : stringLoadsOf(layout, {
          slack: limit('stringSlack'),
          high: limit('stringHigh'),
          strained: limit('stringStrained'),
          breaking: limit('stringBreaking'),
        })
  const missing = whatIsMissing(layout, strings)
  const sounding = strings.flatMap((one) => (one.atPitch ? [one.atPitch] : []))
  if (missing || sounding.length < strings.length)
    return {
      missing: missing ?? { why: 'a string cannot be made' },
      strings,
      totalPull: null,
      spread: null,
      neck: null,
      neckTrouble: null,
      saddle: saddleLoadsOf(layout, null, null),
      lid: null,
    }
  const pulls = sounding.map((one) => one.tension)
  const totalPull = pulls.reduce((sum, pull) => sum + pull, 0)
  const mean = totalPull / pulls.length
  const { neck, trouble }: NeckLoadsReading = neckLoadsOf(layout, totalPull)
  const force = sounding.reduce((sum, one) => sum + (one.downForce ?? 0), 0)
  return {
    missing: null,
    strings,
    totalPull,
    spread: { mean, least: Math.min(...pulls) / mean, most: Math.max(...pulls) / mean },
    neck,
    neckTrouble: trouble,
    saddle: saddleLoadsOf(layout, sounding, neck),
    lid: lidLoadsOf(layout, force),
  }
}

function whatIsMissing({ design }: Layout, strings: readonly StringLoad[]): Missing | null {
  const stated = design.stringing.tuning.length
  if (stated === 0) return { why: 'no tuning' }
  if (stated < design.strings.count) return { why: 'tuning too short', stated }
  return strings.some((one) => one.trouble !== null) ? { why: 'a string cannot be made' } : null
}

function saddleLoadsOf(
  layout: Layout,
  sounding: readonly StringAtPitch[] | null,
  neck: NeckLoads | null,
): SaddleLoads {
  const { design, playingTop, strings, saddle, box } = layout
  const limit = limitOf(design)
  const scale = design.scale.length
  const crowns = playingTop + crownOf(design)
  const overNut = overCrownsAtNut(layout)
  const heightWanted = saddleHeight({
    crowns,
    slope: 0,
    overNut,
    octaveAction: design.saddle.action,
    scale,
  })
  const atSaddle = design.saddle.height - crowns
  const action = overNut + ((atSaddle - overNut) * (scale / 2)) / saddle.x
  // A slide presses no string down, so it wants no setback.
  const pressed = design.scale.fretless ? null : sounding
  const setbacks = pressed?.flatMap((one) => (one.setback === null ? [] : [one.setback])) ?? []
  const whole = pressed !== null && setbacks.length === strings.length
  const line = whole
    ? saddleLine(
        strings.map((one) => one.yAtSaddle),
        setbacks,
      )
    : null
  const band = freeBand([...setbacks, design.saddle.setback], design.saddle.freeBand)
  const built = Math.min(Math.max(heightWanted, limit('saddleLeast')), limit('saddleMost'))
  const behindWall = scale - box.x0
  return {
    crowns,
    heightWanted,
    action,
    actionUnderPull: neck && action + neck.actionChange,
    cure:
      built === heightWanted
        ? null
        : {
            raise: built - heightWanted,
            tilt: behindWall > 1 ? neckCure(heightWanted, built, scale, box.x0).tilt : null,
          },
    line,
    band: { from: scale + band.from, to: scale + band.to },
  }
}
