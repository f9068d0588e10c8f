/** What holds of every design there can be, each law as a question: what is wrong with this design? */
import {
  braceThatSuffices,
  type Chain,
  check,
  checkDesign,
  chooseGauges,
  type Design,
  faults,
  fretRoundingOf,
  intonationOf,
  loadsOf,
  type Operation,
  partsOf,
  pureTuningOf,
  reinforcementNeeded,
  ruleOf,
  scaleSuiting,
  sentenceOf,
  solve,
  thinnestStock,
} from '../../geometry/index.ts'
import { answers } from '../support/answers.ts'
import { troublesOf } from '../support/contours.ts'
import { fromFile } from '../support/designs.ts'
import { numbersOf } from '../support/walk.ts'
import { FINDING_LAWS } from './finding-laws.ts'

/** Sentences for what breaks a law; none where it holds. */
export type Wrong = (design: Design) => readonly string[]

export interface Law {
  readonly name: string
  readonly wrong: Wrong
  /** Asked only of every so-manyth design, because it costs many solves. */
  readonly every?: number
}

/** All numbers that the engine gives for a design. */
export function numbersIn(design: Design): ReturnType<typeof numbersOf> {
  const layout = solve(design)
  return numbersOf({
    layout,
    parts: partsOf(layout),
    findings: check(layout),
    loads: loadsOf(layout),
    intonation: intonationOf(layout),
    pure: pureTuningOf(layout),
    rounding: fretRoundingOf(layout),
  })
}

export const ENGINE_LAWS: readonly Law[] = [
  { name: 'what would do is a size that can be sawn, or nothing', wrong: sizesThatWouldDo, every: 3 },
  { name: 'what is cut or taken away is closed, simple and counter-clockwise', wrong: cutsAreSound },
  { name: 'what is drawn has a length, a name and a size', wrong: drawnHasSize },
  { name: 'outlines of things are closed, simple and counter-clockwise', wrong: thingsAreSound },
  { name: 'every finding has a name of its own, a place and a sentence', wrong: findingsSpeak },
  ...FINDING_LAWS,
  { name: 'what a finding is about is a thing, or a name that no thing can bear', wrong: findingsPoint },
  { name: 'the same design, made anew, gives the same answers to the last digit', wrong: sameAgain },
  { name: 'a design read back from its own text gives the same answers', wrong: readBack },
  { name: 'solve, check and partsOf leave the design as it was', wrong: leftAlone },
]

function sizesThatWouldDo(design: Design): string[] {
  const layout = solve(design)
  const brace = braceThatSuffices(layout)
  const sizes = [
    thinnestStock(layout) ?? 1,
    (reinforcementNeeded(layout) ?? 0) + 1,
    brace ? brace.width * brace.height : 1,
    scaleSuiting(design)?.length ?? 1,
    ...(chooseGauges(design)?.strings.map((one) => one?.tension ?? 1) ?? []),
  ]
  return sizes.filter((size) => !(size > 0 && size < 1e6)).map((size) => `a size of ${size}`)
}

function cutsAreSound(design: Design): string[] {
  return partsOf(solve(design)).flatMap((part) => {
    const cut = part.operations.flatMap((one) =>
      one.kind === 'cut' || one.kind === 'recess' ? [one.contour] : [],
    )
    return [part.outline, ...cut].flatMap((contour) =>
      [...troublesOf(contour), ...faults(contour)].map((fault) => `${part.id}: ${fault}`),
    )
  })
}

function drawnHasSize(design: Design): string[] {
  return partsOf(solve(design)).flatMap(({ id, thickness, operations }) => {
    const bad = operations.filter((one) => one.of === '' || !(sizeOf(one) > 1e-3))
    if (!(thickness > 0)) return [`${id} is ${thickness} thick`]
    return bad.map((one) => `${id}: ${one.kind} of ${one.of} is ${sizeOf(one)}`)
  })
}

function thingsAreSound(design: Design): string[] {
  return solve(design).placed.flatMap(({ thing, openings, footprint }) =>
    [...openings, footprint].flatMap((contour) =>
      [...troublesOf(contour), ...faults(contour)].map((fault) => `${thing.kind}: ${fault}`),
    ),
  )
}

function findingsSpeak(design: Design): string[] {
  const layout = solve(design)
  const findings = check(layout)
  const twice = findings.length - new Set(findings.map((one) => one.key)).size
  return [
    ...(twice > 0 ? [`${twice} findings share a name`] : []),
    ...findings.flatMap(({ key, where: { from, to } }) =>
      [from.x, from.y, to.x, to.y].every(Number.isFinite) ? [] : [`${key} has no place`],
    ),
    ...findings.flatMap((finding) => unspeakable(sentenceOf(finding, layout), finding.rule, design)),
  ]
}

function findingsPoint(design: Design): string[] {
  const named = [...design.things, ...design.box.inside, ...design.artwork]
  const ids = new Set<string>(named.map((one) => one.id))
  const names = new Set(check(solve(design)).flatMap((one) => one.about))
  return [...names].filter((name) => !ids.has(name) && isLegalId(name))
}

const copies = new WeakMap<Design, Design>()

/** The same design made anew, and frozen: whoever writes into it is told at once. */
function copyOf(design: Design): Design {
  const copy = copies.get(design) ?? frozen(structuredClone(design))
  copies.set(design, copy)
  return copy
}

function sameAgain(design: Design): string[] {
  const [one, other] = [solve(design), solve(copyOf(design))]
  return one !== other && answers(one) === answers(other) ? [] : ['two answers']
}

function readBack(design: Design): string[] {
  const read = fromFile(design)
  if (JSON.stringify(read) !== JSON.stringify(design)) return ['another design']
  return answers(solve(read)) === answers(solve(design)) ? [] : ['two answers']
}

function leftAlone(design: Design): string[] {
  const layout = solve(copyOf(design))
  check(layout)
  partsOf(layout)
  return JSON.stringify(layout.design) === JSON.stringify(design) ? [] : ['another design']
}

/** How large an operation is, by whatever makes it visible. */
function sizeOf(one: Operation): number {
  const spans = ({ vertices }: Chain) => {
    const [first, next] = vertices
    return first && next ? Math.hypot(first.x - next.x, first.y - next.y) : 0
  }
  switch (one.kind) {
    case 'drill':
      return one.diameter
    case 'recess':
      return one.depth
    case 'note':
      return one.text.length * one.height
    case 'slot':
      return Math.min(one.width, one.depth, Math.hypot(one.to.x - one.from.x, one.to.y - one.from.y))
    case 'datum':
      return spans(one.line)
    default:
      return one.contour.shape === 'circle' ? one.contour.radius : spans(one.contour)
  }
}

/** What is wrong with a sentence, names of things left aside: a builder may call a hole "undefined". */
function unspeakable(sentence: string, rule: string, design: Design): string[] {
  const spoken = design.things.reduce(
    (text, { name }) => (name ? text.replaceAll(name, '…') : text),
    sentence,
  )
  const unit = design.units.display === 'mm' ? ' mm' : ' in'
  const sound =
    /^\S.*\.$/su.test(sentence) &&
    !/NaN|undefined|\bnull\b|Infinity|\[object/.test(spoken) &&
    (ruleOf(rule).unit !== 'mm' || sentence.includes(unit))
  return sound ? [] : [`${rule} says: ${sentence}`]
}

const isLegalId = (id: string) =>
  checkDesign({ format: 'lidwright', version: 1, things: [{ kind: 'sound-hole', id }] }).ok

function frozen<T>(value: T): T {
  if (value !== null && typeof value === 'object') {
    Object.values(value).forEach(frozen)
    Object.freeze(value)
  }
  return value
}
