/** The door of the bench: what is on it, and everything that can be done with it. */
export {
  type Bench,
  goTo,
  type Keeping,
  light,
  type PlaceName,
  sayKeeping,
  select,
  selectAll,
  selectedThings,
  standardDesign,
  toggleSelected,
  useBench,
  withGroups,
} from './bench.ts'
export {
  adopt,
  beginGesture,
  commit,
  committed,
  type Gesture,
  historyNow,
  type Outcome,
  onCommit,
  redo,
  travel,
  undo,
} from './commit.ts'
export { type DesignFile, fileText, saveFile, slug } from './file.ts'
export { layVersion, openDesign, openText, startFresh } from './open.ts'
export {
  addThing,
  duplicateThing,
  mirrorThing,
  removeThing,
  removeThings,
  setField,
  takeSizes,
} from './things.ts'
