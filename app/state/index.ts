/** The door of the bench: what is on it, and everything that can be done with it. */
export {
  type Bench,
  goTo,
  type Keeping,
  light,
  type PlaceName,
  sayKeeping,
  select,
  standardDesign,
  useBench,
} from './bench.ts'
export {
  adopt,
  beginGesture,
  commit,
  committed,
  type Gesture,
  type Outcome,
  onCommit,
  redo,
  undo,
} from './commit.ts'
export { type DesignFile, fileText, saveFile, slug } from './file.ts'
export { openDesign, openText, startFresh } from './open.ts'
export { addThing, duplicateThing, mirrorThing, removeThing, setField, takeSizes } from './things.ts'
