/** From what was measured of a box to a whole instrument to begin with. */
import {
  apply,
  change,
  checkDesign,
  type Design,
  type Path,
  startingDesign,
  valueAt,
} from '../../geometry/index.ts'

/**
 * The whole instrument from what was typed: everything not asked for here comes as the engine starts a design, and
 * what was said of the neck blank stands as it was said.
 */
export function begun(draft: Design, said: readonly Path[]): Design {
  const { box, strings, scale, title, hand, units } = draft
  const start = startingDesign({
    title,
    hand,
    units,
    length: box.length,
    width: box.width,
    depth: box.depth,
    wall: box.walls.neckEnd,
    lid: box.lid.thickness,
    lidFit: box.lid.fit,
    base: box.base.thickness,
    strings: strings.count,
    scale: scale.length,
  })
  const kept: Path[] = [['box', 'cornerRadius'], ...said]
  const reading = checkDesign(
    apply(start, change(start, ...kept.map((path) => [path, valueAt(draft, path)] as const))),
  )
  return reading.ok ? reading.design : start
}
