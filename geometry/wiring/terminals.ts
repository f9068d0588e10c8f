/** The sorts of component and where wires are soldered to them. */

export const PARTS = [
  'coil pickup',
  'piezo pickup',
  'pot',
  'switch',
  'jack',
  'capacitor',
  'resistor',
  'metal part',
] as const
export type PartSort = (typeof PARTS)[number]

/** `volume.2`: a component's id and one of its terminals. */
export const TERMINAL = /^[a-z][a-z0-9-]{0,39}\.[a-z0-9]{1,12}$/

export interface Sorted {
  readonly part: PartSort
  readonly ways: 'on and off' | 'two ways' | 'two ways and both'
  readonly bare: boolean
}

/** What a builder calls each terminal. */
export const TERMINAL_NAMES: Readonly<Record<string, string>> = {
  hot: 'hot',
  ground: 'ground',
  cover: 'cover',
  '1': 'lug 1',
  '2': 'lug 2, the wiper',
  '3': 'lug 3',
  case: 'case',
  common: 'common',
  a: 'a',
  b: 'b',
  frame: 'frame',
  tip: 'tip',
  sleeve: 'sleeve',
  metal: 'metal',
}

/**
 * The terminals of a component. Lugs of a pot are counted from the left with the shaft towards you and the lugs
 * down; turned fully clockwise the wiper stands at lug 3 (common practice).
 * Example: `terminalsOf({ part: 'jack', … })` is `['tip', 'sleeve']`.
 */
export function terminalsOf({ part, ways, bare }: Sorted): readonly string[] {
  switch (part) {
    case 'coil pickup':
      return bare ? ['hot', 'ground', 'cover'] : ['hot', 'ground']
    case 'piezo pickup':
      return ['hot', 'ground']
    case 'pot':
      return bare ? ['1', '2', '3', 'case'] : ['1', '2', '3']
    case 'switch':
      return [...(ways === 'on and off' ? ['common', 'a'] : ['a', 'common', 'b']), ...(bare ? ['frame'] : [])]
    case 'jack':
      return ['tip', 'sleeve']
    case 'capacitor':
    case 'resistor':
      return ['a', 'b']
    case 'metal part':
      return ['metal']
  }
}

/** The terminal that is the metal a hand can touch, if the component has such. */
export function bareTerminal({ part, bare }: Sorted): string | null {
  if (part === 'metal part') return 'metal'
  if (!bare) return null
  return part === 'pot' ? 'case' : part === 'switch' ? 'frame' : part === 'coil pickup' ? 'cover' : null
}
