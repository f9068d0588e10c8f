import { type Grade, gradeLeast, type Measurement, type Rule } from '../finding.ts'

export const blankLength: Rule = {
  name: 'blank-length',
  title: 'Blank left over',
  unit: 'mm',
  wants: 'least',
  limits: ['blankSpare'],
  mendedBy: ['headstock.length', 'neck.tail', 'saddle.place', 'scale.length'],
  measure(layout, limit) {
    const found: Measurement[] = []
    const { neck, design } = layout
    const measured = design.neck.length - neck.needs.total
    const wanted = limit('blankSpare')
    found.push({
      about: ['neck'],
      measured,
      limit: wanted,
      grade: gradeLeast(measured, wanted, 0),
      // What is left of the blank, or missing from it, at the tail.
      where: {
        view: 'plan',
        from: { x: neck.x1 + Math.min(0, measured), y: 0 },
        to: { x: neck.x1 + Math.max(0, measured), y: 0 },
      },
      data: { ...neck.needs, blank: design.neck.length },
    })
    return found
  },
  words({ measured, limit, grade, data }, say) {
    const l = (name: string) => say.length(Number(data?.[name]))
    const sum = `${l('headstock')} of head, ${l('scale')} to the saddle, ${l('behindSaddle')} behind it${Number(data?.tail) > 0 ? ` and ${l('tail')} of tail` : ''} make ${l('total')}`
    if (grade === 'stop')
      return `The blank is ${say.length(-(measured ?? 0))} too short: ${sum}, and it has ${l('blank')}. Shorten scale, head or tail, or move the saddle down the lid.`
    if (grade === 'clear') return `${sum}; ${say.length(measured ?? 0)} of the blank are left.`
    return `${sum}; ${say.length(measured ?? 0)} of the blank are left, ${say.length(limit ?? 0)} are wanted to square its ends.`
  },
}

/** The head may be wider than the blank only with cheeks glued on. */
export const headOnBlank: Rule = {
  name: 'head-on-blank',
  title: 'Head wider than the blank',
  unit: 'mm',
  wants: 'least',
  limits: [],
  mendedBy: ['headstock.width', 'neck.widthAtNut'],
  measure(layout) {
    const found: Measurement[] = []
    const { neck, headstock } = layout.design
    const widest = Math.max(headstock.width, neck.widthAtNut)
    if (widest <= neck.width) return found
    found.push({
      about: ['neck'],
      measured: neck.width - widest,
      limit: 0,
      grade: 'note',
      where: {
        view: 'plan',
        from: { x: layout.neck.x0, y: -widest / 2 },
        to: { x: layout.neck.x0, y: widest / 2 },
      },
    })
    return found
  },
  words({ measured }, say) {
    return `The head or the nut is ${say.length(-(measured ?? 0))} wider than the blank: glue cheeks of ${say.length(-(measured ?? 0) / 2)} on each side before cutting.`
  },
}

export const firstPost: Rule = {
  name: 'first-post',
  title: 'First post behind the nut',
  unit: 'mm',
  wants: 'least',
  limits: ['firstPost', 'firstPostLeast'],
  mendedBy: ['headstock.firstPost', 'headstock.stagger'],
  measure(layout, limit) {
    const found: Measurement[] = []
    const nearest = layout.posts.reduce<(typeof layout.posts)[number] | null>(
      (near, post) => (!near || post.x > near.x ? post : near),
      null,
    )
    if (!nearest) return found
    const measured = -nearest.x
    // A least that is stated above what is wanted is wanted too.
    const least = limit('firstPostLeast')
    const wanted = Math.max(limit('firstPost'), least)
    found.push({
      about: ['headstock'],
      measured,
      limit: wanted,
      grade: gradeLeast(measured, wanted, least),
      where: { view: 'plan', from: { x: 0, y: nearest.y }, to: { x: nearest.x, y: nearest.y } },
    })
    return found
  },
  words({ measured, limit, grade }, say) {
    const behind = `The first post stands ${say.length(measured ?? 0)} behind the nut`
    if (grade === 'stop') return `${behind}: too near to be strung. Give it ${say.length(limit ?? 0)}.`
    return grade === 'clear' ? `${behind}.` : `${behind}; ${say.length(limit ?? 0)} make it easy to wind.`
  },
}

export const postsOnHead: Rule = {
  name: 'posts-on-head',
  title: 'Posts on the head',
  unit: 'mm',
  wants: 'least',
  limits: ['postsApart'],
  mendedBy: ['headstock.postSpacing', 'headstock.length', 'headstock.firstPost'],
  measure(layout, limit) {
    const found: Measurement[] = []
    const { headstock } = layout.design
    const last = layout.posts.reduce((far, post) => Math.min(far, post.x), 0)
    if (layout.posts.length === 0) return found
    const toEnd = headstock.length + last - headstock.postHole / 2
    found.push({
      about: ['headstock'],
      measured: toEnd,
      limit: 0,
      grade: gradeLeast(toEnd, 0, 0),
      where: { view: 'plan', from: { x: last, y: 0 }, to: { x: layout.neck.x0, y: 0 } },
      data: { what: 'end' },
    })
    if (Math.max(headstock.bassTuners, headstock.trebleTuners) < 2) return found
    // Less than their holes are wide cannot be wanted.
    const wanted = Math.max(limit('postsApart'), headstock.postHole)
    found.push({
      about: ['headstock', 'posts'],
      measured: headstock.postSpacing,
      limit: wanted,
      grade: gradeLeast(headstock.postSpacing, wanted, headstock.postHole),
      where: { view: 'plan', from: { x: last, y: 0 }, to: { x: last + headstock.postSpacing, y: 0 } },
      data: { what: 'apart' },
    })
    return found
  },
  words({ measured, limit, grade, data }, say) {
    if (data?.what === 'apart') {
      const apart = `The posts stand ${say.length(measured ?? 0)} apart`
      return grade === 'clear'
        ? `${apart}.`
        : `${apart}; single tuners in a row want ${say.length(limit ?? 0)}.`
    }
    return grade === 'clear'
      ? `The last post hole ends ${say.length(measured ?? 0)} before the end of the head.`
      : `The last post hole lies ${say.length(-(measured ?? 0))} beyond the end of the head. Lengthen the head or move the posts.`
  },
}

export const postsForStrings: Rule = {
  name: 'posts-for-strings',
  title: 'A tuner for every string',
  unit: 'count',
  wants: 'least',
  limits: [],
  mendedBy: ['headstock.bassTuners', 'headstock.trebleTuners'],
  measure(layout) {
    const found: Measurement[] = []
    const posts = layout.posts.length
    const strings = layout.strings.length
    const grade: Grade = gradeLeast(posts, strings, strings)
    found.push({
      about: ['headstock'],
      measured: posts,
      limit: strings,
      grade,
      where: { view: 'plan', from: { x: layout.neck.x0, y: 0 }, to: { x: 0, y: 0 } },
    })
    return found
  },
  words({ measured, limit, grade }) {
    return grade === 'clear'
      ? `${measured} tuners wind ${limit} ${limit === 1 ? 'string' : 'strings'}.`
      : `There are ${limit} strings and only ${measured} ${measured === 1 ? 'tuner' : 'tuners'}. Add a post on one side of the head.`
  },
}
