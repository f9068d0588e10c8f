/**
 * What was worked out about a thing, kept with the thing itself and gone with it.
 *
 * A `WeakMap` says the same, but costs: its table grows old, and whatever an old table points to survives every quick
 * collection, though the thing it belongs to is long gone. A drag makes sixty layouts a second, each with all that was
 * worked out about it. So the notes hang on the thing: in a private field, which no reader of the thing sees, nor a copy, nor
 * a comparison, nor JSON.
 */
export interface Notes<K extends object, V> {
  /** What was noted about it, or `undefined`. */
  get(thing: K): V | undefined
  /** Notes it, over what was noted before. */
  set(thing: K, value: V): void
}

/**
 * A new kind of note. Example: `const known = notes<Contour, Pieces>()`, then `known.get(contour)` is `undefined` until
 * `known.set(contour, pieces)`.
 */
export function notes<K extends object, V>(): Notes<K, V> {
  const kind = {}
  return {
    get(thing) {
      for (let note = Noted.first(thing); note; note = note.next)
        if (note.kind === kind) return note.value as V
      return undefined
    },
    set(thing, value) {
      Noted.put(thing, kind, value)
    },
  }
}

interface Note {
  readonly kind: object
  value: unknown
  readonly next: Note | null
}

/** A constructor that gives back what it was given, so that a class built on it puts its field on that. */
class Given {
  constructor(thing: object) {
    // biome-ignore lint/correctness/noConstructorReturn: the thing given is the one that gets the field.
    return thing
  }
}

/** One field for every kind of note: few things have more than two or three. */
class Noted extends Given {
  #first: Note | null = null

  static first(thing: object): Note | null {
    if (#first in thing) return thing.#first
    const beside = elsewhere?.get(thing)
    return beside ? beside.#first : null
  }

  static put(thing: object, kind: object, value: unknown): void {
    const noted = #first in thing ? thing : stamped(thing)
    for (let note = noted.#first; note; note = note.next)
      if (note.kind === kind) {
        note.value = value
        return
      }
    noted.#first = { kind, value, next: noted.#first }
  }
}

/** Of things that take no field; none today, but a browser may come to refuse them on what is frozen. */
// biome-ignore lint/style/noRestrictedGlobals: where nothing can hang on the thing it has to lie beside it.
let elsewhere: WeakMap<object, Noted> | null = null

function stamped(thing: object): Noted {
  const before = elsewhere?.get(thing)
  if (before) return before
  try {
    return new Noted(thing)
  } catch {
    const beside = new Noted({})
    // biome-ignore lint/style/noRestrictedGlobals: as above.
    elsewhere ??= new WeakMap()
    elsewhere.set(thing, beside)
    return beside
  }
}
