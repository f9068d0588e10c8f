import { check, type Layout, loadsOf, partsOf } from '../../geometry/index.ts'

/** All that the engine says of a design, as text: layout, parts, findings and loads, to the last digit. */
export const answers = (layout: Layout): string =>
  JSON.stringify({
    ...layout,
    placed: layout.placed.map(({ kind, ...one }) => ({ ...one, kind: kind.kind })),
    parts: partsOf(layout),
    findings: check(layout),
    loads: loadsOf(layout),
  })
