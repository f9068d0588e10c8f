/**
 * Keeps one drawing up to date. Four layers, one over the other: the ground, the things at rest, what lies over them
 * (strings, section, findings), and what lives (what is moved, what is selected, handles, distances). While things are
 * dragged only the last is painted again. All work is gathered into animation frames, and no React takes part in one.
 * How often each layer was painted stands on the element (`data-ground-paints` and so on).
 */
import { type Finding, type Layout, type Placed, solve, steadyFilter } from '../../geometry/index.ts'
import { useBench } from '../state/index.ts'
import { thingsCalled } from './among.ts'
import type { Size } from './camera.ts'
import { dragging } from './dragging.ts'
import { findingsNow } from './findings-now.ts'
import { ghosts, paintGhosts } from './ghosts.ts'
import { paintHandles, roomOf, withHandles } from './handles.ts'
import { type Looks, looksAt } from './looks.ts'
import { paintMeasures } from './measures-paint.ts'
import { inNextFrame, notInNextFrame } from './next-frame.ts'
import type { Pen } from './paint.ts'
import type { Subject } from './subject.ts'
import { paintSelected, paintThing } from './things.ts'
import type { PointerAt, Tool } from './tools/tool.ts'
import { type Box, type FrameOf, paintFindings, paintLitWords } from './wrong.ts'

export const LAYERS = ['ground', 'resting', 'over', 'live'] as const
export type LayerName = (typeof LAYERS)[number]

/** Those that are not painted while something is dragged. */
export const AT_REST = ['ground', 'resting', 'over'] as const satisfies readonly LayerName[]

export interface Painted {
  readonly draw: (layer: LayerName) => void
  /** Some layers at rest were drawn, and all of them together make another picture. */
  readonly rest: () => void
}

export class Scene {
  private looks: Looks
  private size: Size = { width: 0, height: 0 }
  private tool: Tool | null = null
  private newest: PointerAt | null = null
  /** Counts up when everything has to be painted again. */
  private version = 0
  private arranged = false
  private atWork = false
  private drawn: Readonly<Record<LayerName, readonly unknown[]>> = {
    ground: [],
    resting: [],
    over: [],
    live: [],
  }
  private guided = false
  /** What stands here, of all that stands anywhere: while something on another face is dragged, the very same list. */
  private readonly rested = steadyFilter<Placed>((one) => this.isHere(one))
  private readonly paints: Record<LayerName, number> = { ground: 0, resting: 0, over: 0, live: 0 }
  private readonly stop: () => void

  constructor(
    readonly element: HTMLElement,
    readonly subject: Subject,
    private readonly painted: Painted,
  ) {
    this.looks = looksAt(element)
    this.stop = useBench.subscribe(() => this.schedule())
  }

  dispose(): void {
    this.stop()
    notInNextFrame(this.update)
    if (this.tool) this.drop('cancel')
  }

  /** False until the first frame has put everything in its place. */
  get ready(): boolean {
    return this.arranged
  }

  layout = (): Layout => solve(useBench.getState().design)

  resize(size: Size): void {
    this.size = size
    this.refresh()
  }

  /** Everything anew: another size, other colours, another view. */
  refresh(): void {
    this.looks = looksAt(this.element)
    this.version += 1
    this.schedule()
  }

  /** The view moved: colours are as they were. */
  viewMoved(): void {
    this.version += 1
    this.schedule()
  }

  schedule(): void {
    // What the tool changes is painted in this very frame: it needs no other.
    if (!this.atWork) inNextFrame(this.update)
  }

  /** Takes a tool in hand; it hears of the pointer once per frame. */
  hold(tool: Tool): void {
    this.tool = tool
    this.newest = null
    dragging.begin(() => this.drop('cancel'))
    this.schedule()
  }

  get holds(): boolean {
    return this.tool !== null
  }

  point(at: PointerAt): void {
    this.newest = at
    this.schedule()
  }

  drop(how: 'finish' | 'cancel'): void {
    const tool = this.tool
    if (!tool) return
    // The last place counts, even if no frame came in between.
    if (how === 'finish' && this.newest) tool.move(this.newest)
    this.newest = null
    this.tool = null
    dragging.release()
    tool[how]()
    this.element.style.cursor = ''
    this.schedule()
  }

  private readonly update = (): void => {
    if (this.size.width < 1 || this.size.height < 1) return
    if (this.tool && this.newest) {
      this.atWork = true
      try {
        this.tool.move(this.newest)
      } finally {
        this.atWork = false
      }
      this.newest = null
      this.element.style.cursor = this.tool?.cursor ?? ''
    }
    const layout = this.layout()
    this.subject.arrange(layout, this.size)
    this.arranged = true
    const before = this.paintedAtRest()
    const ground = [this.version, ...this.subject.groundOf(layout)]
    if (!same(ground, this.drawn.ground)) this.paint('ground')
    const { selection, also, litFinding } = useBench.getState()
    const moves = this.moving().size > 0
    // What stands still is the very same object; and what a tool does not move stands still until it is put down.
    const resting = [this.version, ...(moves ? [this.tool] : this.resting(layout))]
    if (!same(resting, this.drawn.resting)) this.paint('resting')
    const shown = this.subject.liveOf?.(layout)
    const still = moves ? this.subject.stillOf(layout) : (shown ?? [layout])
    const over = [this.version, litFinding, moves, findingsNow(layout).standing, ...still]
    if (!same(over, this.drawn.over)) this.paint('over')
    if (this.paintedAtRest() !== before) this.painted.rest()
    const live = shown
      ? [this.version, selection, also, litFinding, ghosts.now(), ...shown]
      : [Symbol('always')]
    // One more time after a tool is put down, to take its guides away.
    if (this.tool || this.guided || !same(live, this.drawn.live)) this.paint('live')
    this.guided = this.tool !== null
    this.drawn = { ground, resting, over, live }
  }

  /** How many paintings of layers at rest there have been. */
  private paintedAtRest = (): number => AT_REST.reduce((sum, layer) => sum + this.paints[layer], 0)

  private paint(layer: LayerName): void {
    this.painted.draw(layer)
    this.paints[layer] += 1
    this.element.dataset[`${layer}Paints`] = String(this.paints[layer])
  }

  /** Ids of what the tool in hand moves. */
  private moving = (): ReadonlySet<string> => this.tool?.moving ?? NOTHING

  private isHere = ({ face }: Placed): boolean => this.subject.faces.includes(face)

  private resting(layout: Layout): readonly Placed[] {
    const moving = this.moving()
    if (moving.size > 0) return layout.placed.filter((one) => this.isHere(one) && !moving.has(one.thing.id))
    return this.rested(layout.placed)
  }

  paintGround(pen: Pen): void {
    this.subject.paintGround(pen, this.looks, this.layout())
  }

  paintResting(pen: Pen): void {
    for (const placed of this.resting(this.layout())) {
      const frame = this.subject.frameOf(placed.face)
      if (frame) paintThing(pen, this.looks, frame, placed)
    }
  }

  paintOver(pen: Pen): void {
    const layout = this.layout()
    const moving = this.moving()
    if (moving.size === 0) {
      this.subject.paintOver(pen, this.looks, layout)
      this.paintFindings(pen, layout, findingsNow(layout).news)
      return
    }
    const placed = layout.placed.filter((one) => !moving.has(one.thing.id))
    this.subject.paintOver(pen, this.looks, { ...layout, placed })
    this.paintFindings(pen, layout, findingsNow(layout).standing)
  }

  private paintFindings(pen: Pen, layout: Layout, findings: readonly Finding[]): void {
    const { litFinding } = useBench.getState()
    const frameOf: FrameOf = (view) => this.subject.frameOf(view)
    paintFindings(pen, this.looks, layout, findings, litFinding, frameOf, this.moving())
  }

  private paintLit(pen: Pen, layout: Layout, clearOf: readonly Box[]): void {
    const { litFinding } = useBench.getState()
    const { news, standing } = findingsNow(layout)
    const isLit = ({ key }: Finding) => key === litFinding
    const lit = litFinding === null ? undefined : (news.find(isLit) ?? standing.find(isLit))
    const moving = this.moving()
    if (!lit || lit.about.some((id) => moving.has(id))) return
    paintLitWords(pen, this.looks, layout, lit, (view) => this.subject.frameOf(view), clearOf)
  }

  paintLive(pen: Pen): void {
    const layout = this.layout()
    const { selection, also } = useBench.getState()
    const moving = this.moving()
    const selected = new Set(selection === null ? also : [...also, selection])
    const moved: Placed[] = []
    for (const placed of thingsCalled(layout, new Set([...moving, ...selected]))) {
      const moves = moving.has(placed.thing.id)
      if (moves) moved.push(placed)
      const frame = this.isHere(placed) ? this.subject.frameOf(placed.face) : null
      if (!frame) continue
      if (selected.has(placed.thing.id)) paintSelected(pen, this.looks, frame, placed)
      if (moves) paintThing(pen, this.looks, frame, placed, true)
    }
    if (moved.length > 0) {
      this.subject.paintMoving?.(pen, this.looks, { ...layout, placed: moved })
      this.paintFindings(pen, layout, findingsNow(layout).news)
    }
    if (selection) this.subject.paintSelection?.(pen, this.looks, layout, selection)
    paintMeasures(
      pen,
      this.looks,
      layout,
      this.subject.faces,
      (face) => this.subject.frameOf(face),
      this.tool?.measured,
    )
    paintGhosts(pen, this.looks, this.subject.faces, (face) => this.subject.frameOf(face))
    const handled = this.tool ? null : withHandles(layout, selection, also)
    const frame =
      handled && this.subject.faces.includes(handled.face) ? this.subject.frameOf(handled.face) : null
    if (handled && frame) paintHandles(pen, this.looks, handled, frame)
    this.paintLit(pen, layout, handled && frame ? [roomOf(handled, frame)] : [])
    this.tool?.paint?.(pen, this.looks, layout)
  }
}

const NOTHING: ReadonlySet<string> = new Set()

const same = (a: readonly unknown[], b: readonly unknown[]) =>
  a.length === b.length && a.every((one, index) => Object.is(one, b[index]))
