/** What happens to files: letters lost, doubled, swapped, other ones put in; and within JSON, values put in place of others. */
import fc from 'fast-check'

export type Mutation =
  | { readonly do: 'cut off' | 'lose' | 'double' | 'swap'; readonly at: number; readonly length: number }
  | { readonly do: 'put in'; readonly at: number; readonly text: string }
  | { readonly do: 'number'; readonly which: number; readonly text: string }
  | { readonly do: 'value' | 'key'; readonly which: number; readonly value: unknown }

/** Values that readers have stumbled over. */
const ODD_TEXT = [
  ...[
    '\0',
    '"',
    '{',
    '}',
    ']',
    '\u202e',
    '\ufeff',
    '\\u0000',
    '\\ud800',
    '\n',
    '__proto__',
    'NaN',
    '-0',
    '1e999',
  ],
  ...[
    '<script>',
    '<!DOCTYPE a [<!ENTITY b "c">]>',
    '&b;',
    'Infinity',
    '-',
    '.',
    'e',
    ',,',
    'null',
    '%',
    '\ud800',
  ],
] as const

const ODD_NUMBERS = [
  '-0',
  '0',
  '1e308',
  '-1e308',
  '1e-320',
  '0.1e-9',
  '9007199254740993',
  '-1',
  '1e400',
  '.5',
  '0x1F',
] as const

const oddValue = fc.oneof(
  fc.constantFrom<unknown>(null, true, -0, 1e308, -1, 0.5, '', 'eye', '__proto__', [], {}, [[]], {
    share: 1e308,
  }),
  fc.constantFrom<unknown>(
    { mirror: 'a' },
    { midway: ['saddle', 'saddle'] },
    '\u202e',
    'x'.repeat(5000),
    '2/1',
  ),
  fc.double(),
  fc.jsonValue({ maxDepth: 3 }),
)

const share = fc.double({ min: 0, max: 1, noNaN: true })

export const mutation: fc.Arbitrary<Mutation> = fc.oneof(
  fc.record({
    do: fc.constantFrom('cut off', 'lose', 'double', 'swap'),
    at: share,
    length: fc.integer({ min: 1, max: 40 }),
  }),
  fc.record({ do: fc.constant('put in' as const), at: share, text: fc.constantFrom(...ODD_TEXT) }),
  fc.record({ do: fc.constant('number' as const), which: fc.nat(), text: fc.constantFrom(...ODD_NUMBERS) }),
  {
    weight: 4,
    arbitrary: fc.record({ do: fc.constantFrom('value', 'key'), which: fc.nat(), value: oddValue }),
  },
)

/** The text with one thing done to it. What needs JSON leaves other texts as they are. */
export function mutated(text: string, change: Mutation): string {
  switch (change.do) {
    case 'number': {
      const numbers = [...text.matchAll(/-?\d+(?:\.\d+)?/g)]
      const found = numbers[change.which % Math.max(1, numbers.length)]
      if (!found) return text
      return text.slice(0, found.index) + change.text + text.slice(found.index + found[0].length)
    }
    case 'value':
    case 'key':
      return withinJson(text, change)
    default: {
      const at = Math.floor(change.at * text.length)
      if (change.do === 'put in') return text.slice(0, at) + change.text + text.slice(at)
      const [before, piece, after] = [
        text.slice(0, at),
        text.slice(at, at + change.length),
        text.slice(at + change.length),
      ]
      if (change.do === 'cut off') return before
      if (change.do === 'lose') return before + after
      if (change.do === 'double') return before + piece + piece + after
      return before + after.slice(0, change.length) + piece + after.slice(change.length)
    }
  }
}

function withinJson(
  text: string,
  { do: what, which, value }: Extract<Mutation, { which: number; value: unknown }>,
): string {
  let root: unknown
  try {
    root = JSON.parse(text)
  } catch {
    return text
  }
  const places: [Record<string, unknown>, string][] = []
  const visit = (one: unknown) => {
    if (one === null || typeof one !== 'object') return
    for (const [key, child] of Object.entries(one)) {
      places.push([one as Record<string, unknown>, key])
      visit(child)
    }
  }
  visit(root)
  const [holder, key] = places[which % Math.max(1, places.length)] ?? []
  if (!holder || key === undefined) return text
  if (what === 'value') holder[key] = value
  else if (which % 3 === 0) delete holder[key]
  else
    Object.defineProperty(holder, which % 2 ? '__proto__' : `${key}x`, {
      value,
      enumerable: true,
      configurable: true,
    })
  return JSON.stringify(root)
}
