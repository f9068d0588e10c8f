/** What the builder is told about keeping: what happened, what is safe, what would do. */

const SAFE = 'Save the design as a file to be safe; it is tried again until it works.'

export const NOT_OURS =
  'Another tab has this design open and keeps it. What you change here is kept as a design of its own beside it.'

export const ON_ITS_OWN =
  'Another tab keeps the design this one began with. This tab now keeps its work as a design of its own beside it.'

export const BEGAN_EARLY =
  'You began before what was kept had been read. It is still kept, as a design of its own beside this one.'

export const newerVersion = (sentence: string) =>
  `A kept design was written by a newer Lidwright. It was left untouched and can be downloaded as it is. ${sentence}`

export const unreadable = (at: string, sentence: string, instead: string | null) =>
  `What was kept at ${at} cannot be read and was left where it is. ${sentence} ${
    instead === null
      ? 'Nothing older of it can be read either.'
      : `What was kept at ${instead} was opened instead.`
  }`

export const notLoaded = (error: unknown) =>
  `What is kept in this browser could not be read: ${reason(error)} Load the page again to try once more; until then what you do here is kept apart from it.`

export const invalid = (sentence: string) =>
  `This state of the design is not valid and was not kept: ${sentence} What was kept before is untouched.`

export const notWritten = (error: unknown) => `The design could not be kept: ${reason(error)} ${SAFE}`

/** An error of the browser's store in plain words. */
export function reason(error: unknown): string {
  switch (nameOf(error)) {
    case 'QuotaExceededError':
      return 'there is no room left in the browser’s store on this disk.'
    case 'VersionError':
      return 'a newer Lidwright has used this store. Load the page again.'
    case 'SecurityError':
    case 'InvalidAccessError':
      return 'the browser does not let this page keep anything; private windows and blocked cookies do that.'
    default:
      return `the browser says “${(error as Error | null)?.message || String(error)}”.`
  }
}

/** What sort of error it is, as the standards of the store and the locks call it: `QuotaExceededError`. */
export function nameOf(error: unknown): string {
  // Not every window's DOMException is an Error of this one, so it is judged by what it has.
  return typeof error === 'object' && error !== null && 'name' in error ? String(error.name) : ''
}

/** `hh:mm` by the clock on the wall. */
export function timeOfDay(at: number): string {
  const date = new Date(at)
  const two = (value: number) => String(value).padStart(2, '0')
  return `${two(date.getHours())}:${two(date.getMinutes())}`
}
