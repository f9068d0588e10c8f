/** What a drawing shows and what can be taken hold of in it. The scene does the rest: frames, layers, pointers. */
import type { Face, Layout, Point } from '../../geometry/index.ts'
import type { Camera, Fitting, Size } from './camera.ts'
import type { Frame } from './frame.ts'
import type { Hit } from './hit.ts'
import type { Looks } from './looks.ts'
import type { Pen } from './paint.ts'
import type { PointerAt, Tool } from './tools/tool.ts'

export interface Subject {
  /** Faces whose things are drawn here. */
  readonly faces: readonly Face[]
  /** Puts everything in its place for a size of the window; asked before anything is painted or hit. */
  arrange(layout: Layout, size: Size): void
  frameOf(view: 'plan' | 'section' | Face): Frame | null
  /** What the ground is made from: it is painted again only when one of these is another. */
  groundOf(layout: Layout): readonly unknown[]
  paintGround(pen: Pen, looks: Looks, layout: Layout): void
  /**
   * What the two upper layers show besides what is selected: they rest while all of these are the same. A subject
   * without it lives in every frame.
   */
  liveOf?(layout: Layout): readonly unknown[]
  /** What lies over the things, made from all that is in the layout. */
  paintOver(pen: Pen, looks: Looks, layout: Layout): void
  /** What `paintOver` is made from besides things: while some are moved it is painted again only when one of these is another. */
  stillOf(layout: Layout): readonly unknown[]
  /** What `paintOver` draws of things, for a layout that holds none but those that are moved. */
  paintMoving?(pen: Pen, looks: Looks, layout: Layout): void
  hit(layout: Layout, at: Point, near: number): Hit | null
  /** The tool for a drag that starts on something, or `null` where it cannot be moved. */
  drag(layout: Layout, hit: Hit, at: PointerAt): Tool | null
  /** Draws a line round the piece of the instrument that is selected. */
  paintSelection?(pen: Pen, looks: Looks, layout: Layout, name: string): void
  readonly camera?: {
    get(): Camera
    set(camera: Camera): void
    zoom(layout: Layout, at: Point, factor: number): void
    fit(what: Fitting): void
  }
}
