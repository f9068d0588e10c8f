/**
 * A part turned into what a laser or router follows. The part itself stays nominal; here its outside grows and its
 * openings shrink by half of what the tool takes away, and marks, datums and words stay where they are.
 */
import {
  type Contour,
  type Design,
  type Feature,
  featuresOf,
  type Operation,
  type Part,
  type Tool,
  toolFor,
} from '../../geometry/index.ts'
import { lengthLabel } from '../numbers.ts'
import { begun } from './along.ts'
import { type Tabs, tabsOf } from './tabs.ts'

type Cutting = Design['cutting']

/** A part whose lines are the way of a tool's middle. */
export interface CutPart extends Part {
  readonly tool: Tool
  /** The outline as it comes out. */
  readonly finished: Contour
  readonly tabs: Tabs | null
  /** Height of wood left in a tab, mm; `null` where all of it is left. */
  readonly tabHeight: number | null
}

export type ToCut =
  | { readonly ok: true; readonly part: CutPart; readonly byHand: readonly string[] }
  | { readonly ok: false; readonly sentence: string }

export const isCutPart = (part: Part): part is CutPart => 'finished' in part && 'tool' in part

/** How paths run and begin: what a file with any of them says. */
const RUN =
  'each line is the middle of the tool; openings run counter-clockwise, outlines clockwise, each from the middle of its longest straight side'

/** `laser, kerf 0.2 mm`. */
export function toolWords({ process, width }: Tool): string {
  return `${process}, ${process === 'laser' ? 'kerf' : 'cutter'} ${text(width)} mm`
}

/**
 * What the lines of some parts are, and how they run; `undefined` where none of them is cut by a machine. Tools that
 * differ are all named.
 */
export function pathWords(
  parts: readonly Part[],
): { readonly short: string; readonly long: string } | undefined {
  const tools = [...new Set(parts.filter(isCutPart).map((part) => toolWords(part.tool)))]
  if (tools.length === 0) return undefined
  const short = tools.join('; ')
  return { short, long: `Cut by ${short}: ${RUN}.` }
}

const text = (length: number) => lengthLabel(length, 'Width of the tool')

/**
 * A part as its tool follows it. Openings run counter-clockwise and outlines clockwise, so that a cutter that turns
 * clockwise climbs; each begins in the middle of its longest straight side.
 *
 * @param part nominal, lengths in mm
 * @param design whose `cutting` says with what
 * @returns with `byHand`, a sentence for each opening that the tool cannot follow whole: it is drawn as a mark, to
 *   be cut by hand. An outline that cannot be followed is no drawing, and only a sentence comes back.
 * @throws for a design that is cut by hand
 * @example cutPart(lid, design).ok // true
 */
export function cutPart(part: Part, design: Design): ToCut {
  const tool = toolFor(design, part.id)
  if (tool === null) throw new Error(`"${design.title}" is cut by hand: its parts are drawn as they are.`)
  const features = featuresOf(part, tool)
  const edge = features.find(({ kind }) => kind === 'outline')
  if (edge?.path == null) return { ok: false, sentence: outlineSentence(part, tool) }
  const outline = begun(edge.path, true)
  const tabs = tabsFor(outline, design.cutting, tool)
  if (tabs === 'too many') return { ok: false, sentence: tabsSentence(part, design.cutting) }
  const worked = features.filter((one) => one !== edge)
  return {
    ok: true,
    byHand: worked.filter(({ path }) => path === null).map((one) => handSentence(part, one, tool)),
    part: {
      ...part,
      outline,
      operations: [...part.operations.filter((one) => isKept(one, tool)), ...worked.map(operationOf)],
      tool,
      finished: edge.contour,
      tabs,
      tabHeight: tool.process === 'router' ? design.cutting.tabHeight : null,
    },
  }
}

export interface Followed {
  /** Parts that the tool follows; all of them, as they are, where a design is cut by hand. */
  readonly parts: readonly Part[]
  /** A sentence for each opening that is left to be cut by hand. */
  readonly byHand: readonly string[]
  /** A sentence for each part whose outline the tool cannot follow: it is not among the parts. */
  readonly wrong: readonly string[]
}

/** All of some parts as the design's tool follows them; see `cutPart`. Example: `followed(parts, design).parts`. */
export function followed(parts: readonly Part[], design: Design): Followed {
  if (design.cutting.process === 'by hand') return { parts, byHand: [], wrong: [] }
  const ways = parts.map((part) => cutPart(part, design))
  return {
    parts: ways.flatMap((way) => (way.ok ? [way.part] : [])),
    byHand: ways.flatMap((way) => (way.ok ? way.byHand : [])),
    wrong: ways.flatMap((way) => (way.ok ? [] : [way.sentence])),
  }
}

/** What no tool path takes the place of. */
function isKept(one: Operation, tool: Tool): boolean {
  if (one.kind === 'cut' || one.kind === 'recess') return false
  if (one.kind === 'slot') return !tool.cutsSlots
  return one.kind !== 'drill' || one.depth !== 'through' || tool.process !== 'laser'
}

function operationOf({ of, contour, path, depth }: Feature): Operation {
  if (path === null) return { kind: 'mark', contour, of: `${of}, by hand` }
  const line = begun(path, false)
  if (depth !== undefined) return { kind: 'recess', contour: line, depth, of }
  return { kind: 'cut', side: 'inside', contour: line, of }
}

function tabsFor(outline: Contour, { tabs, tabWidth }: Cutting, tool: Tool): Tabs | null | 'too many' {
  if (tabs === 0) return null
  return tabsOf(outline, tabs, tabWidth + tool.width) ?? 'too many'
}

const toolName = ({ process, width }: Tool) =>
  `${process === 'laser' ? 'a kerf' : 'a cutter'} of ${text(width)} mm`

function handSentence(part: Part, { of }: Feature, tool: Tool): string {
  return `${part.title}: ${of} is too narrow for ${toolName(tool)}; it is drawn as a mark, to be cut by hand.`
}

function outlineSentence(part: Part, tool: Tool): string {
  return `${part.title}: ${toolName(tool)} cannot follow its outline in one piece. A notch is narrower than the tool, or a cut parts it in two; take a finer tool, or leave this part out.`
}

function tabsSentence(part: Part, { tabs, tabWidth }: Cutting): string {
  return `${part.title}: ${tabs} tabs of ${text(tabWidth)} mm take more than half of its outline. Fewer or narrower ones are wanted.`
}
