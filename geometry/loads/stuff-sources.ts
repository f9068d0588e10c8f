/** Where the figures of the woods, sheets and strings that an instrument is of come from. */
import { lidStuffNamed, woodNamed } from '../neck/named-woods.ts'
import type { Layout } from '../solve/layout.ts'
import { MATERIALS } from '../strings/materials.ts'
import { loadsOf } from './loads.ts'

/**
 * Sources of the woods, sheets and strings that a layout is of, each named once: `White oak: Wood Handbook …`.
 * Example: `stuffSources(layout, 'neck')` names those of neck, board and reinforcement.
 */
export function stuffSources(layout: Layout, of: 'strings' | 'neck' | 'lid'): string[] {
  const { design } = layout
  if (of === 'strings') {
    const names = loadsOf(layout).strings.flatMap(({ make }) =>
      make.construction === 'wound' ? [make.material, make.wrap] : [make.material],
    )
    return [...new Set(names)].map((name) => `${MATERIALS[name].title}: ${MATERIALS[name].source}`)
  }
  const found =
    of === 'lid'
      ? [
          lidStuffNamed(design.box.lid.stuff, design.woods),
          ...(design.brace.height > 0 ? [woodNamed(design.brace.wood, design.woods)] : []),
        ]
      : [
          woodNamed(design.neck.wood, design.woods),
          ...(design.board.fitted ? [woodNamed(design.board.wood, design.woods)] : []),
        ]
  return [...new Set(found.flatMap((one) => (one ? [`${one.title}: ${one.source}`] : [])))]
}
