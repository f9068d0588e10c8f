import { gradeLeast, type Rule } from '../finding.ts'

export const tailHoleWeb: Rule = {
  name: 'tail-hole-web',
  title: 'Wood between string holes',
  unit: 'mm',
  wants: 'least',
  limits: ['tailHoleWeb'],
  *measure(layout, limit) {
    const [first, second] = layout.tailHoles
    if (!first || !second) return
    const { diameter } = layout.design.tailpiece
    const measured = second.y - first.y - diameter
    const wanted = Math.max(limit('tailHoleWeb'), diameter)
    yield {
      about: ['tailpiece'],
      measured,
      limit: wanted,
      grade: gradeLeast(measured, wanted, 0),
      where: { view: 'plan', from: { x: first.x, y: first.y + diameter / 2 }, to: { x: second.x, y: second.y - diameter / 2 } },
    }
  },
  words({ measured, limit, grade }, say) {
    if (grade === 'stop') return `The string holes run into each other by ${say.length(-(measured ?? 0))}. Set them farther apart, or drill them smaller.`
    const left = `Between the string holes ${say.length(measured ?? 0)} of wood are left`
    return grade === 'clear' ? `${left}.` : `${left}; one hole’s width and ${say.length(limit ?? 0)} at least keep the row whole.`
  },
}

export const tailHoleToEnd: Rule = {
  name: 'tail-hole-to-end',
  title: 'String holes to the edge',
  unit: 'mm',
  wants: 'least',
  limits: ['tailHoleToEndGrain', 'stringToBoardEdge'],
  *measure(layout, limit) {
    const { tailpiece, neck, box } = layout.design
    const radius = tailpiece.diameter / 2
    const outer = layout.tailHoles.at(-1)
    if (!outer) return
    const onTail = tailpiece.at === 'the tail of the neck'
    const behind = onTail ? neck.tail - tailpiece.fromEdge - radius : tailpiece.fromEdge - radius
    const half = onTail ? neck.width / 2 : box.width / 2
    const beside = half - outer.y - radius
    const wanted = limit('tailHoleToEndGrain')
    yield {
      about: ['tailpiece'],
      measured: behind,
      limit: wanted,
      grade: gradeLeast(behind, wanted, 0),
      where: { view: 'plan', from: { x: outer.x, y: 0 }, to: { x: outer.x + (onTail ? Math.max(behind, 0) : 0), y: 0 } },
      data: { to: onTail ? 'the end of the tail' : 'the edge' },
    }
    const wantedBeside = limit('stringToBoardEdge')
    yield {
      about: ['tailpiece', 'side'],
      measured: beside,
      limit: wantedBeside,
      grade: gradeLeast(beside, wantedBeside, 0),
      where: { view: 'plan', from: { x: outer.x, y: outer.y }, to: { x: outer.x, y: half } },
      data: { to: onTail ? 'the side of the neck' : 'the side of the box' },
    }
  },
  words({ measured, limit, grade, data }, say) {
    if (grade === 'stop') return `The string holes break out of ${data?.to} by ${say.length(-(measured ?? 0))}. Move them in.`
    const left = `From the string holes to ${data?.to} are ${say.length(measured ?? 0)}`
    return grade === 'clear' ? `${left}.` : `${left}; under ${say.length(limit ?? 0)} the wood splits along the grain.`
  },
}

/** Holes down through the tail need a tail: a neck that ends inside the box has none. */
export const tailToHold: Rule = {
  name: 'tail-to-hold',
  title: 'A tail to hold the strings',
  unit: 'mm',
  wants: 'least',
  limits: [],
  *measure(layout) {
    const { tailpiece, neck } = layout.design
    if (tailpiece.at !== 'the tail of the neck') return
    const measured = neck.ends === 'through the box' ? neck.tail : 0
    const { x1 } = layout.box
    yield {
      about: ['tailpiece', 'neck'],
      measured,
      limit: tailpiece.fromEdge,
      grade: gradeLeast(measured, tailpiece.fromEdge, tailpiece.fromEdge),
      where: { view: 'plan', from: { x: x1, y: 0 }, to: { x: x1 + tailpiece.fromEdge, y: 0 } },
    }
  },
  words({ measured, limit, grade }, say) {
    return grade === 'clear'
      ? `The tail stands out ${say.length(measured ?? 0)} and holds the strings at ${say.length(limit ?? 0)}.`
      : `The strings are to be held ${say.length(limit ?? 0)} behind the box, but the tail stands out ${say.length(measured ?? 0)}. Lengthen the tail, or hold them at the tail-end wall or the lid.`
  },
}

export const tailHolesForStrings: Rule = {
  name: 'tail-holes-for-strings',
  title: 'A hole for every string',
  unit: 'count',
  wants: 'least',
  limits: [],
  *measure(layout) {
    const holes = layout.tailHoles.length
    const strings = layout.strings.length
    const first = layout.tailHoles[0] ?? { x: layout.box.x1, y: 0 }
    yield {
      about: ['tailpiece'],
      measured: holes,
      limit: strings,
      grade: gradeLeast(holes, strings, strings),
      where: { view: 'plan', from: first, to: layout.tailHoles.at(-1) ?? first },
    }
  },
  words({ measured, limit, grade }) {
    return grade === 'clear'
      ? `${measured} holes hold ${limit} ${limit === 1 ? 'string' : 'strings'}.`
      : `There are ${limit} strings and only ${measured} ${measured === 1 ? 'hole' : 'holes'} to hold them. Add holes to the row.`
  },
}
