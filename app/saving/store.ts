/** Where kept designs lie, as narrow as it can be: the browser's own store behind it, or a plain map in a test. */

/** Which generation of which design, and when it was written; milliseconds since 1970. */
export interface Mark {
  /** The name of a record: one design and what became of it. */
  readonly record: string
  /** Counts the generations of a record, rising. */
  readonly number: number
  readonly at: number
}

/** One whole state of a design, as the text of a file. */
export interface Generation extends Mark {
  readonly text: string
}

/** Every answer may be refused with the browser's error; nothing is half done then. */
export interface KeptStore {
  /** All marks there are, in any order. */
  list(): Promise<readonly Mark[]>
  /** The text exactly as it was put; `undefined` where it is gone. */
  read(record: string, number: number): Promise<string | undefined>
  /** Settles when the generation is written whole. `taken`: there is one of that number already, and it stays. */
  put(generation: Generation): Promise<'put' | 'taken'>
  drop(record: string, number: number): Promise<void>
}
