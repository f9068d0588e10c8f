/** The one list of what a user can do. A new action is one entry here. */
import { change, indexOfThing } from '../../geometry/index.ts'
import { drawingAtHand } from '../canvas/at-hand.ts'
import { dragging } from '../canvas/dragging.ts'
import { endMode, toggleMode } from '../canvas/mode.ts'
import { PIECES } from '../parts/structure.ts'
import { commit, goTo, light, type PlaceName, redo, select, undo, useBench } from '../state/index.ts'
import type { Action } from './action.ts'
import { openDialog } from './dialogs.ts'
import { canKeepOnDisk, keepOnDisk } from './disk.ts'
import { chooseFile, saveDesign } from './files.ts'
import { THING_ACTIONS, TOGETHER_ACTIONS } from './together.ts'

export const PLACES: readonly { readonly name: PlaceName; readonly title: string }[] = [
  { name: 'survey', title: 'Survey' },
  { name: 'choose', title: 'Choose' },
  { name: 'lay-out', title: 'Lay out' },
  { name: 'prove', title: 'Prove' },
  { name: 'transfer', title: 'Transfer' },
  { name: 'record', title: 'Record' },
]

const bench = useBench.getState

const selectedThing = (): string | null => {
  const { selection, design } = bench()
  return design.things.some((thing) => thing.id === selection) ? selection : null
}

const onThing = (act: (id: string) => void) => () => {
  const id = selectedThing()
  if (id !== null) act(id)
}

const hasThing = () => selectedThing() !== null

/** Selects the next in the order of the list, round and round. */
function step(by: 1 | -1): void {
  const { selection, design } = bench()
  const ids = [
    ...PIECES.slice(0, 3).map((one) => one.id),
    ...design.things.map((thing) => thing.id),
    ...PIECES.slice(3).map((one) => one.id),
  ]
  const here = ids.indexOf(selection ?? '')
  const to = here < 0 ? (by > 0 ? 0 : ids.length - 1) : (here + by + ids.length) % ids.length
  select(ids[to] ?? null)
}

export const ACTIONS: readonly Action[] = [
  { id: 'new-box', title: 'New box…', group: 'File', run: () => openDialog('new-box') },
  { id: 'open', title: 'Open a file…', group: 'File', keys: ['Ctrl+O'], run: chooseFile },
  { id: 'save', title: 'Save to a file', group: 'File', keys: ['Ctrl+S'], run: saveDesign },
  {
    id: 'from-label',
    title: 'Open from a label…',
    group: 'File',
    run: () => openDialog('from-label'),
  },
  { id: 'samples', title: 'Open a sample…', group: 'File', run: () => openDialog('samples') },
  { id: 'kept', title: 'Designs kept in this browser…', group: 'File', run: () => openDialog('kept') },
  { id: 'link', title: 'Make a link to this design…', group: 'File', run: () => openDialog('link') },
  {
    id: 'save-same',
    title: 'Keep a file on the disk up to date…',
    group: 'File',
    enabled: canKeepOnDisk,
    run: () => void keepOnDisk(),
  },
  { id: 'undo', title: 'Undo', group: 'Edit', keys: ['Ctrl+Z'], enabled: () => bench().canUndo, run: undo },
  {
    id: 'redo',
    title: 'Redo',
    group: 'Edit',
    keys: ['Ctrl+Shift+Z', 'Ctrl+Y'],
    enabled: () => bench().canRedo,
    run: redo,
  },
  ...PLACES.map(
    ({ name, title }, index): Action => ({
      id: `go-${name}`,
      title: `Go to ${title}`,
      group: 'Places',
      keys: [String(index + 1)],
      run: () => goTo(name),
    }),
  ),
  {
    id: 'fit-box',
    title: 'Show the box',
    group: 'Drawing',
    keys: ['B'],
    run: () => drawingAtHand.get()?.fit('box'),
  },
  {
    id: 'fit-all',
    title: 'Show the whole instrument',
    group: 'Drawing',
    keys: ['F'],
    run: () => drawingAtHand.get()?.fit('all'),
  },
  {
    id: 'nearer',
    title: 'Zoom in',
    group: 'Drawing',
    keys: ['+', '='],
    run: () => drawingAtHand.get()?.zoom(1.25),
  },
  {
    id: 'farther',
    title: 'Zoom out',
    group: 'Drawing',
    keys: ['-'],
    run: () => drawingAtHand.get()?.zoom(0.8),
  },
  {
    id: 'next',
    title: 'Select the next thing',
    group: 'Things',
    keys: [']'],
    hidden: true,
    run: () => step(1),
  },
  {
    id: 'previous',
    title: 'Select the thing before',
    group: 'Things',
    keys: ['['],
    hidden: true,
    run: () => step(-1),
  },
  ...THING_ACTIONS,
  {
    id: 'centre',
    title: 'Put the selected thing on the centreline',
    group: 'Things',
    enabled: hasThing,
    run: onThing((id) => {
      const { design } = bench()
      const index = indexOfThing(design, id)
      const face = design.things[index]?.face
      const axis = face === 'lid' || face === 'base' ? 'across' : 'along'
      commit('Put on the centreline', change(design, [['things', index, axis], 0]))
    }),
  },
  ...TOGETHER_ACTIONS,
  {
    id: 'measure-tool',
    title: 'Measure on the drawing, or stop',
    group: 'Drawing',
    keys: ['D'],
    run: () => toggleMode('measure'),
  },
  {
    id: 'measure',
    title: 'Measure between two things or lines…',
    group: 'Drawing',
    run: () => openDialog('measure'),
  },
  {
    id: 'history',
    title: 'History and versions…',
    group: 'Edit',
    keys: ['H'],
    run: () => openDialog('history'),
  },
  {
    id: 'let-go',
    title: 'Cancel the drag, or select nothing',
    group: 'Edit',
    keys: ['Escape'],
    run: () => {
      if (dragging.cancel() || endMode()) return
      select(null)
      light(null)
    },
  },
  {
    id: 'all-actions',
    title: 'All actions…',
    group: 'Edit',
    keys: ['Ctrl+K', '?'],
    run: () => openDialog('all-actions'),
  },
]

export const actionOf = (id: string): Action => {
  const action = ACTIONS.find((one) => one.id === id)
  if (!action) throw new Error(`there is no action called "${id}"`)
  return action
}

/** Does it, if it would do anything now. */
export function act(id: string): void {
  const action = actionOf(id)
  if (action.enabled?.() !== false) action.run()
}
