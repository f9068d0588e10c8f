/** How the lid of a layout opens, reckoned when asked for and remembered with it. */
import type { Design } from '../../design/schema.ts'
import { remembered } from '../../loads/remembered.ts'
import type { Layout } from '../../solve/layout.ts'
import { type Bevels, type LidSection, pinOf, sectionOf } from './section.ts'
import { type Slide, slide } from './slide.ts'
import { type Encounter, type Swing, swing } from './swing.ts'

export type LidMotion =
  | { readonly by: 'hinge'; readonly section: LidSection; readonly swing: Swing }
  | { readonly by: 'slide'; readonly section: LidSection; readonly slide: Slide }

const bevelsOf = ({ bevelAtHinge, bevelOpposite }: Design['box']['lid']): Bevels => ({
  atHinge: bevelAtHinge,
  opposite: bevelOpposite,
})

/**
 * What happens when the lid opens; `null` for one that lifts off or is glued. Wires, a prop and the strings are left out:
 * they are slack or off.
 */
export const lidMotionOf = remembered((layout: Layout): LidMotion | null => {
  const { lid } = layout.design.box
  if (lid.kind === 'hinged') return hingedWith(layout, bevelsOf(lid))
  if (lid.kind !== 'sliding') return null
  const { bounds } = layout.panels.lid
  const along = lid.slidesTo === 'neck end' || lid.slidesTo === 'tail end'
  const section = sectionOf(layout, lid.slidesTo, pinOf(layout, lid.slidesTo, 0, 0), {
    atHinge: 0,
    opposite: 0,
  })
  const wanted = along ? bounds.maxX - bounds.minX : bounds.maxY - bounds.minY
  return { by: 'slide', section, slide: slide(section, wanted) }
})

/** The same hinged lid with other bevels. */
export function hingedWith(layout: Layout, bevels: Bevels): Extract<LidMotion, { by: 'hinge' }> {
  const { lid } = layout.design.box
  const pin = pinOf(layout, lid.hingeEdge, lid.hingeIn, lid.hingeDown)
  const section = sectionOf(layout, lid.hingeEdge, pin, bevels)
  return { by: 'hinge', section, swing: swing(section, (lid.opens * Math.PI) / 180) }
}

/** For each pair of pieces the one place that is worst: deepest bite, else least room. */
export function worstOfPairs(encounters: readonly Encounter[]): Encounter[] {
  const seen = new Set<string>()
  // They come worst first.
  return encounters.filter((one) => {
    const pair = `${one.moving} ${one.standing}`
    if (seen.has(pair)) return false
    seen.add(pair)
    return true
  })
}
