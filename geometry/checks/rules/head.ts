/** What stands on the head: ways of the strings, tuners beside each other, wood between their holes, and its joint. */
import type { LimitName } from '../../design/limits.ts'
import { headOf } from '../../neck/head-layout.ts'
import { type HeadRoom, headRoomOf, type Tight } from '../../neck/head-room.ts'
import { scarfOf } from '../../neck/scarf.ts'
import type { Layout } from '../../solve/layout.ts'
import { type Finding, gradeLeast, type Measurement, NOTHING_LEFT, type Rule } from '../finding.ts'
import type { Say } from '../say.ts'

const onPlan = (layout: Layout, { from, to }: Tight): Measurement['where'] => {
  const { toPlan } = headOf(layout)
  return { view: 'plan', from: toPlan(from), to: toPlan(to) }
}

interface Nearness {
  readonly name: string
  readonly title: string
  /** `null` where the two must only not run into each other. */
  readonly limit: LimitName | null
  readonly of: (room: HeadRoom) => Tight | null
  readonly about: (tight: Tight) => readonly string[]
  readonly mendedBy: readonly string[]
  /** May the two just touch? */
  readonly touch?: boolean
  readonly clear: (finding: Finding, say: Say) => string
  readonly care: (finding: Finding, say: Say) => string
  readonly stop: (finding: Finding, say: Say) => string
}

/** The tightest of its sort on the head: `stop` where nothing is left. */
const nearness = (it: Nearness): Rule => ({
  name: it.name,
  title: it.title,
  unit: 'mm',
  wants: 'least',
  limits: it.limit ? [it.limit] : [],
  mendedBy: it.mendedBy,
  measure(layout, limit) {
    const found: Measurement[] = []
    const tight = it.of(headRoomOf(layout))
    if (!tight) return found
    const wanted = it.limit ? limit(it.limit) : 0
    found.push({
      about: it.about(tight),
      measured: tight.mm,
      limit: wanted,
      grade: gradeLeast(tight.mm, wanted, it.touch ? 0 : NOTHING_LEFT),
      where: onPlan(layout, tight),
      data: { a: tight.a, b: tight.b },
    })
    return found
  },
  words(finding, say) {
    return (finding.grade === 'stop' ? it.stop : finding.grade === 'clear' ? it.clear : it.care)(finding, say)
  },
})

const mm = ({ measured }: Finding, say: Say): string => say.length(Math.abs(measured ?? 0))
const wanted = ({ limit }: Finding, say: Say): string => say.length(limit ?? 0)

export const stringPastPost = nearness({
  name: 'string-past-post',
  title: 'String past the posts',
  limit: 'stringToPost',
  of: (room) => room.passing,
  mendedBy: ['headstock.postStep', 'headstock.postEdge', 'headstock.postSpacing'],
  about: ({ a }) => ['headstock', `string ${a}`],
  clear: (it, say) => `String ${it.data?.a} passes post ${it.data?.b} with ${mm(it, say)} to spare.`,
  care: (it, say) =>
    `String ${it.data?.a} passes post ${it.data?.b} at ${mm(it, say)}; ${wanted(it, say)} leave room for the turns on it. Set the next posts farther in or farther back.`,
  stop: (it, say) =>
    `String ${it.data?.a} runs into post ${it.data?.b} by ${mm(it, say)}, on which another string winds. Set each post farther in than the one before it, or the row nearer the edge.`,
})

export const stringsCrossAtHead = nearness({
  name: 'strings-cross-at-head',
  title: 'Strings behind the nut',
  limit: null,
  of: (room) => room.strings,
  mendedBy: ['headstock.postStep', 'headstock.postEdge'],
  about: ({ a, b }) => ['headstock', `string ${a}`, `string ${b}`],
  clear: (it, say) =>
    `Behind the nut strings ${it.data?.a} and ${it.data?.b} stay ${mm(it, say)} apart, the nearest of all.`,
  care: (it, say) => `Behind the nut strings ${it.data?.a} and ${it.data?.b} stay ${mm(it, say)} apart.`,
  stop: (it, say) =>
    `Strings ${it.data?.a} and ${it.data?.b} cross behind the nut: at their posts they lie ${mm(it, say)} past each other. Change how far in each post stands.`,
})

export const tunerKnobs = nearness({
  name: 'tuner-knobs',
  title: 'Knobs of the tuners apart',
  limit: 'knobsApart',
  of: (room) => room.knobs,
  mendedBy: ['headstock.postSpacing', 'headstock.knobLong'],
  about: () => ['headstock', 'posts'],
  clear: (it, say) => `The knobs of the tuners stand ${mm(it, say)} apart.`,
  care: (it, say) =>
    `The knobs of tuners ${it.data?.a} and ${it.data?.b} stand ${mm(it, say)} apart; under ${wanted(it, say)} a finger turns both. Set the posts farther apart.`,
  stop: (it, say) =>
    `The knobs of tuners ${it.data?.a} and ${it.data?.b} run into each other by ${mm(it, say)}. Set the posts farther apart, or take smaller knobs.`,
})

export const knobToHead = nearness({
  name: 'knob-to-head',
  title: 'Knob to the edge of the head',
  limit: 'knobToHead',
  of: (room) => room.knobToEdge,
  mendedBy: ['headstock.postEdge', 'headstock.width'],
  about: () => ['headstock', 'side'],
  clear: (it, say) => `The knobs begin ${mm(it, say)} outside the edge of the head.`,
  care: (it, say) =>
    `The knob of tuner ${it.data?.a} begins ${mm(it, say)} outside the edge of the head; fingers want ${wanted(it, say)}. Bring the posts nearer the edge.`,
  stop: (it, say) =>
    `The knob of tuner ${it.data?.a} lies ${mm(it, say)} within the edge of the head and cannot be turned. Bring the posts nearer the edge, or make the head narrower.`,
})

export const tunersApart = nearness({
  name: 'tuners-apart',
  title: 'Tuners apart behind the head',
  limit: 'tunersApart',
  of: (room) => room.bodies,
  mendedBy: ['headstock.stagger', 'headstock.width', 'headstock.postSpacing'],
  touch: true,
  about: () => ['headstock', 'posts'],
  clear: (it, say) => `Behind the head the tuners lie ${mm(it, say)} apart.`,
  care: (it, say) =>
    `Behind the head tuners ${it.data?.a} and ${it.data?.b} lie ${mm(it, say)} apart; ${wanted(it, say)} let them lie flat.`,
  stop: (it, say) =>
    `Behind the head tuners ${it.data?.a} and ${it.data?.b} lie ${mm(it, say)} into each other. Set one row farther back, widen the head, or set the posts farther apart.`,
})

const WOOD = {
  between: ['posts', (room: HeadRoom) => room.holes],
  edge: ['side', (room: HeadRoom) => room.holeToEdge],
  screw: ['tuner screws', (room: HeadRoom) => room.screws],
} as const

/** Wood round the holes in the head: to each other, to the edge, round the screws and under what is not drilled through. */
export const woodInHead: Rule = {
  name: 'wood-in-head',
  title: 'Wood left in the head',
  unit: 'mm',
  wants: 'least',
  limits: ['woodInHead', 'woodBesideScrew', 'woodUnderRecess'],
  mendedBy: [
    'headstock.postEdge',
    'headstock.postSpacing',
    'headstock.screwDepth',
    'headstock.bushingDepth',
    'headstock.thickness',
  ],
  measure(layout, limit) {
    const found: Measurement[] = []
    const room = headRoomOf(layout)
    const { headstock } = layout.design
    for (const [what, [about, of]] of Object.entries(WOOD)) {
      const tight = of(room)
      if (!tight) continue
      const least = limit(what === 'screw' ? 'woodBesideScrew' : 'woodInHead')
      found.push({
        about: ['headstock', about],
        measured: tight.mm,
        limit: least,
        grade: gradeLeast(tight.mm, least, NOTHING_LEFT),
        where: onPlan(layout, tight),
        data: { what, a: tight.a, b: tight.b },
      })
    }
    const first = layout.posts[0]
    if (!first) return found
    const depths = [
      ...(headstock.screws > 0 ? [['under tuner screws', headstock.screwDepth] as const] : []),
      ...(headstock.bushing === 'let in' ? [['under bushings', headstock.bushingDepth] as const] : []),
    ]
    for (const [what, deep] of depths) {
      const left = headstock.thickness - deep
      const least = limit('woodUnderRecess')
      const { x } = first
      found.push({
        about: ['headstock', what],
        measured: left,
        limit: least,
        grade: gradeLeast(left, least, NOTHING_LEFT),
        where: { view: 'plan', from: { x, y: first.y }, to: { x, y: first.y } },
        data: { what },
      })
    }
    return found
  },
  words(finding, say) {
    const { grade, data } = finding
    const left = mm(finding, say)
    const least = wanted(finding, say)
    switch (data?.what) {
      case 'between':
        if (grade === 'stop')
          return `The holes of posts ${data.a} and ${data.b} run into each other by ${left}. Set the posts farther apart.`
        return `Between the holes of posts ${data.a} and ${data.b} ${left} of wood are left${grade === 'clear' ? '.' : `; ${least} keep the head whole. Set the posts farther apart.`}`
      case 'edge':
        if (grade === 'stop')
          return `The hole of post ${data.a} breaks out of the edge of the head by ${left}. Move the posts in.`
        return `Between the hole of post ${data.a} and the edge of the head ${left} of wood are left${grade === 'clear' ? '.' : `; under ${least} it splits. Move the posts in.`}`
      case 'screw':
        if (grade === 'stop')
          return `A screw of tuner ${data.a} runs into a post hole or out of the edge by ${left}. Measure where its screws stand.`
        return `Round the screws of the tuners ${left} of wood are left${grade === 'clear' ? '.' : `; under ${least} it splits.`}`
      default: {
        const hole = data?.what === 'under tuner screws' ? 'pilot holes' : 'bushing holes'
        if (grade === 'stop')
          return `The ${hole} go ${left} through the other side of the head. Drill them less deep, or leave the head thicker.`
        return `Under the ${hole} ${left} of the head are left${grade === 'clear' ? '.' : `; ${least} keep the other side whole.`}`
      }
    }
  },
}

/** The joint of a scarfed head: the slope that is glued. */
export const scarfGlued: Rule = {
  name: 'scarf-glued',
  title: 'Glued face of the scarf',
  unit: 'mm',
  wants: 'least',
  limits: ['scarfGlued'],
  mendedBy: ['headstock.tiltDegrees', 'neck.thickness'],
  measure(layout, limit) {
    const found: Measurement[] = []
    const scarf = scarfOf(layout.design, layout.nut.x0)
    if (!scarf) return found
    const least = limit('scarfGlued')
    found.push({
      about: ['headstock', 'neck'],
      measured: scarf.glued,
      limit: least,
      grade: gradeLeast(scarf.glued, least),
      where: { view: 'section', from: scarf.top, to: scarf.bottom },
      data: { covered: layout.board && layout.board.x1 > scarf.top.x ? 'yes' : '' },
    })
    return found
  },
  words(finding, say) {
    const glued = `The scarf is glued over ${mm(finding, say)}`
    if (finding.grade === 'clear')
      return `${glued}${finding.data?.covered ? ' and the board covers its line' : '; its line shows on the neck, as no board covers it'}.`
    return `${glued}; ${wanted(finding, say)} hold the pull of the strings for good. Tilt the head less, or take a thicker stick.`
  },
}

/** The head has to come out of the same stick. */
export const headFromBlank: Rule = {
  name: 'head-from-blank',
  title: 'Head out of the blank',
  unit: 'mm',
  wants: 'least',
  limits: [],
  mendedBy: ['headstock.step', 'headstock.thickness', 'neck.thickness'],
  measure(layout) {
    const found: Measurement[] = []
    const { neck, headstock } = layout.design
    if (headstock.form === 'straight') return found
    const step = headstock.form === 'stepped' ? headstock.step : 0
    const measured = neck.thickness - step - headstock.thickness
    const { x0, top } = layout.neck
    found.push({
      about: ['headstock', 'neck'],
      measured,
      limit: 0,
      grade: neck.thickness - step <= NOTHING_LEFT ? 'stop' : measured < -NOTHING_LEFT ? 'note' : 'clear',
      where: { view: 'section', from: { x: x0, y: top }, to: { x: x0, y: top - step } },
      data: { step },
    })
    return found
  },
  words(finding, say) {
    if (finding.grade === 'stop')
      return `The head is stepped down ${say.length(Number(finding.data?.step))}, below the neck itself: nothing would hold it. Make the step lower.`
    return finding.grade === 'clear'
      ? `The head comes out of the blank with ${mm(finding, say)} to spare.`
      : `The head reaches ${mm(finding, say)} beyond the blank: glue so much on under it before it is shaped.`
  },
}

export const HEAD_RULES: readonly Rule[] = [
  stringPastPost,
  stringsCrossAtHead,
  tunerKnobs,
  knobToHead,
  tunersApart,
  woodInHead,
  scarfGlued,
  headFromBlank,
]
