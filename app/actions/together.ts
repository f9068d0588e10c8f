/** What can be done with one thing or several that are selected. */
import { thingCalled } from '../../geometry/index.ts'
import { toggleMode } from '../canvas/mode.ts'
import { announce } from '../parts/Announcer.tsx'
import { focusThingField } from '../parts/focus-field.ts'
import type * as Arranging from '../state/arrange.ts'
import type { Edge } from '../state/arrange.ts'
import {
  duplicateThing,
  mirrorThing,
  type Outcome,
  removeThings,
  selectAll,
  selectedThings,
  useBench,
} from '../state/index.ts'
import type { Action } from './action.ts'
import { openDialog } from './dialogs.ts'
import { arranging, nudging } from './fetched.ts'

type Nudging = typeof import('./nudge.ts')

const chosen = (): number => selectedThings().length
const some = () => chosen() > 0
const two = () => chosen() > 1
const three = () => chosen() > 2

/** Does it, and says why not where it cannot be done. */
const told = (words: string, work: (arrange: typeof Arranging) => Outcome) => () =>
  arranging.with((arrange) => {
    const outcome = work(arrange)
    announce(outcome.ok ? words : outcome.sentence)
  })

const leading = (): string => selectedThings().at(-1) ?? ''

function duplicate(): void {
  const ids = selectedThings()
  if (ids.length > 1) arranging.with(({ duplicateAll }) => duplicateAll(ids))
  else if (ids[0]) duplicateThing(ids[0])
}

function remove(): void {
  removeThings(selectedThings())
  announce('Removed. Undo brings it back.')
}

function mirror(): void {
  if (mirrorThing(leading()) === null) announce('Its mirror place is taken already, or is its own place.')
}

const hasGroup = () => {
  const ids = selectedThings()
  return useBench.getState().design.things.some((thing) => ids.includes(thing.id) && thing.group !== '')
}

const follows = () => {
  const ids = selectedThings()
  return useBench
    .getState()
    .design.things.some(
      ({ id, along, across }) =>
        ids.includes(id) &&
        [along, across].some((place) => typeof place === 'object' && ('mirror' in place || 'from' in place)),
    )
}

const EDGES: readonly (readonly [Edge, string])[] = [
  ['centres along', 'Line the centres up along the face'],
  ['centres across', 'Line the centres up across the face'],
  ['minX', 'Line the neck-end edges up'],
  ['maxX', 'Line the tail-end edges up'],
  ['maxY', 'Line the treble-side edges up'],
  ['minY', 'Line the bass-side edges up'],
]

export const THING_ACTIONS: readonly Action[] = [
  {
    id: 'remove',
    title: 'Remove',
    group: 'Things',
    keys: ['Delete', 'Backspace'],
    enabled: some,
    run: remove,
  },
  { id: 'duplicate', title: 'Duplicate', group: 'Things', keys: ['Ctrl+D'], enabled: some, run: duplicate },
  {
    id: 'mirror',
    title: 'Mirror: a partner that follows',
    group: 'Things',
    keys: ['M'],
    enabled: () => chosen() === 1,
    run: mirror,
  },
  {
    id: 'row',
    title: 'Row or ring…',
    group: 'Things',
    keys: ['R'],
    enabled: () => chosen() === 1,
    run: () => openDialog('row'),
  },
  {
    id: 'part',
    title: 'Part from its partner',
    group: 'Things',
    enabled: follows,
    run: told('It goes its own way now.', ({ partThings }) => partThings()),
  },
  {
    id: 'lock',
    title: 'Lock, or let go',
    group: 'Things',
    keys: ['L'],
    enabled: some,
    run: () =>
      arranging.with(({ toggleLocked }) => {
        const outcome = toggleLocked()
        const { design } = useBench.getState()
        const locked = thingCalled(design, leading())?.locked
        announce(outcome.ok ? (locked ? 'Locked.' : 'Unlocked.') : outcome.sentence)
      }),
  },
  {
    id: 'earlier',
    title: 'Earlier in the list',
    group: 'Things',
    keys: ['Alt+['],
    enabled: () => chosen() === 1,
    run: told('Earlier in the list.', ({ reorder }) => reorder(leading(), -1)),
  },
  {
    id: 'later',
    title: 'Later in the list',
    group: 'Things',
    keys: ['Alt+]'],
    enabled: () => chosen() === 1,
    run: told('Later in the list.', ({ reorder }) => reorder(leading(), 1)),
  },
  ...(
    [
      ['type-place', 'Type where it stands', 'place', 'P'],
      ['type-along', 'Type its size along', 'along', 'S'],
      ['type-across', 'Type its size across', 'across', 'W'],
      ['type-turn', 'Type how far it is turned', 'turn', 'T'],
    ] as const
  ).map(
    ([id, title, what, key]): Action => ({
      id,
      title,
      group: 'Things',
      keys: [key],
      enabled: () => chosen() === 1,
      run: () => {
        if (!focusThingField(leading(), what)) announce('It has no such size to type.')
      },
    }),
  ),
  ...(
    [
      [
        'longer',
        'Longer by a step of the rule',
        'Alt+ArrowRight',
        (nudge: Nudging) => nudge.growBy('along', 1),
      ],
      [
        'shorter',
        'Shorter by a step of the rule',
        'Alt+ArrowLeft',
        (nudge: Nudging) => nudge.growBy('along', -1),
      ],
      ['wider', 'Wider by a step of the rule', 'Alt+ArrowUp', (nudge: Nudging) => nudge.growBy('across', 1)],
      [
        'narrower',
        'Narrower by a step of the rule',
        'Alt+ArrowDown',
        (nudge: Nudging) => nudge.growBy('across', -1),
      ],
      ['turn-on', 'Turn by a degree', '.', (nudge: Nudging) => nudge.turnBy(1)],
      ['turn-back', 'Turn back by a degree', ',', (nudge: Nudging) => nudge.turnBy(-1)],
      ['turn-on-far', 'Turn by fifteen degrees', '>', (nudge: Nudging) => nudge.turnBy(15)],
      ['turn-back-far', 'Turn back by fifteen degrees', '<', (nudge: Nudging) => nudge.turnBy(-15)],
    ] as const
  ).map(
    ([id, title, key, run]): Action => ({
      id,
      title,
      group: 'Things',
      keys: [key],
      hidden: true,
      enabled: () => chosen() === 1,
      run: () => nudging.with(run),
    }),
  ),
]

export const TOGETHER_ACTIONS: readonly Action[] = [
  {
    id: 'select-face',
    title: 'Select everything on this face',
    group: 'Together',
    keys: ['Ctrl+A'],
    hidden: true,
    run: () => {
      const { design } = useBench.getState()
      const face = thingCalled(design, leading())?.face ?? 'lid'
      const ids = design.things.filter((thing) => thing.face === face).map((thing) => thing.id)
      selectAll(ids)
      announce(`${ids.length} things selected.`)
    },
  },
  {
    id: 'frame',
    title: 'Select with a frame, or stop',
    group: 'Together',
    keys: ['C'],
    hidden: true,
    run: () => toggleMode('frame'),
  },
  {
    id: 'group',
    title: 'Group: move them together from now on',
    group: 'Together',
    keys: ['Ctrl+G'],
    enabled: two,
    run: told('Grouped.', ({ groupThings }) => groupThings()),
  },
  {
    id: 'ungroup',
    title: 'Ungroup',
    group: 'Together',
    keys: ['Ctrl+Shift+G'],
    enabled: hasGroup,
    run: told('No group any more.', ({ ungroupThings }) => ungroupThings()),
  },
  ...EDGES.map(
    ([edge, title]): Action => ({
      id: `align ${edge}`,
      title,
      group: 'Together',
      enabled: two,
      run: told(`${title}: done.`, ({ alignThings }) => alignThings(edge)),
    }),
  ),
  {
    id: 'space-along',
    title: 'Space evenly along the face',
    group: 'Together',
    enabled: three,
    run: told('Spaced evenly.', ({ spaceEvenly }) => spaceEvenly('x')),
  },
  {
    id: 'space-across',
    title: 'Space evenly across the face',
    group: 'Together',
    enabled: three,
    run: told('Spaced evenly.', ({ spaceEvenly }) => spaceEvenly('y')),
  },
]
