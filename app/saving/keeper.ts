/**
 * Keeps the work of one tab. It is told of every committed design and sees to it that the newest is written soon,
 * whole, and to a record that no other tab writes; it tells the builder how that goes.
 */
import type { Design } from '../../geometry/index.ts'
import { fileText, type Keeping } from '../state/index.ts'
import type { Claims, LetGo } from './claims.ts'
import { readRecord, recordsOf, type Untouched } from './records.ts'
import type { KeptStore } from './store.ts'
import { BEGAN_EARLY, invalid, NOT_OURS, notLoaded, notWritten, ON_ITS_OWN, timeOfDay } from './words.ts'

/**
 * A change waits at most this long before it is written. A write that is under way and its own take their time on a busy machine
 * (two hundred kills found more than 300 ms), and a killed page may lose half a second: so the wait is short.
 */
export const WAIT = 100
/** After a refused write it is tried again this much later. */
export const RETRY = 2000
/** A store that does not answer in this time is taken as one that cannot be read. */
export const LOADING = 4000
/** The page before a reload may still have its record for a moment; milliseconds. */
const PATIENCE = 400
/** Generations of a record that are left lying. */
const GENERATIONS = 3

/** A design that is kept, for a list to choose from. */
export interface KeptDesign {
  readonly record: string
  readonly design: Design
  /** When it was last written; milliseconds since 1970. */
  readonly at: number
  /** Is it the one on the bench? */
  readonly here: boolean
}

export interface Keeper {
  /** Reads what was kept and lays it on the bench. Settles in any case, and nothing is written before. */
  load(): Promise<void>
  /** Takes note of a committed design. `another`: it gets a record of its own. */
  changed(design: Design, document: 'the same' | 'another'): void
  /** Writes what waits at once; settles when it is written or refused. */
  flush(): Promise<void>
  /** Everything that can be opened, latest first. */
  list(): Promise<readonly KeptDesign[]>
  /** Lays a kept design on the bench once the one that lies there is kept; `false` where either cannot be done. */
  open(record: string): Promise<boolean>
  /** Keeps a design beside the others, in a record of its own; what lies on the bench stays there. */
  add(design: Design): Promise<void>
  /** Throws a kept design away; `false` where it is open, here or in another tab. */
  forget(record: string): Promise<boolean>
  /** The record of the design on the bench, `null` before anything is kept. */
  record(): string | null
  /** Texts that could not or must not be opened, as they lie in the store. */
  untouched(): readonly Untouched[]
  /** Would closing the page now lose work? */
  atRisk(): boolean
}

/** What a keeper needs of the page. */
export interface Surroundings {
  readonly store: KeptStore
  readonly claims: Claims
  /** The record this tab had before it was loaded again. */
  readonly memory: { get(): string | null; set(record: string): void }
  readonly bench: {
    committed(): Design
    adopt(design: Design, options?: { readonly fresh?: boolean }): void
    say(keeping: Keeping): void
  }
  now(): number
  newName(): string
}

/** The record that a design is written to. */
interface Berth {
  record: string
  number: number
  /** Numbers that are known to be readable, rising: the oldest may be dropped once there are more than enough. */
  good: number[]
  /** Set while the record is claimed. */
  letGo: LetGo | null
}

interface Job {
  readonly berth: Berth
  design: Design
}

export function keeperOf(around: Surroundings): Keeper {
  const { store, claims, bench } = around
  let berth: Berth | null = null
  let loaded = false
  /** What has to be written, in order; a later design of the same berth takes the earlier one's place. */
  const jobs: Job[] = []
  let timer: ReturnType<typeof setTimeout> | null = null
  let writing: Promise<void> | null = null
  let writeAgain = false
  let failure: string | null = null
  /** Has anything been changed since everything was kept? */
  let unsaved = false
  let lastKept: number | null = null
  let notices: readonly string[] = []
  const untouched: Untouched[] = []

  function say(): void {
    const busy = !loaded || jobs.length > 0
    const strange = berth !== null && berth.number > 0 && berth.letGo === null
    bench.say({
      state: failure !== null ? 'failed' : busy ? 'keeping' : strange ? 'not-ours' : 'kept',
      at: lastKept === null ? null : timeOfDay(lastKept),
      words: failure ?? (notices.length > 0 ? notices.join(' ') : null),
    })
  }

  async function load(): Promise<void> {
    say()
    let late = false
    try {
      await Promise.race([
        find(() => late),
        new Promise((_, refuse) => setTimeout(() => refuse(new Error('no answer')), LOADING)),
      ])
    } catch (error) {
      late = true
      failure = notLoaded(error)
    }
    loaded = true
    say()
    if (jobs.length > 0) schedule(WAIT)
  }

  async function find(late: () => boolean): Promise<void> {
    const marks = await store.list()
    for (const record of recordsOf(marks, around.memory.get())) {
      const letGo = await claims.claim(record, PATIENCE)
      const reading = await readRecord(store, record)
      // Whoever gave up waiting may have begun something else.
      if (late()) return letGo?.()
      untouched.push(...reading.untouched)
      notices = [...notices, ...reading.words]
      if (!reading.newest) {
        letGo?.()
        continue
      }
      if (jobs.length > 0) {
        letGo?.()
        notices = [...notices, BEGAN_EARLY]
        return
      }
      take({ record, number: reading.number, good: [...reading.good], letGo }, reading.newest.mark.at)
      bench.adopt(reading.newest.design)
      return
    }
    if (late() || jobs.length > 0) return
    bench.adopt(bench.committed(), { fresh: marks.length === 0 })
  }

  function take(other: Berth, at: number): void {
    berth = other
    lastKept = at
    if (other.letGo) around.memory.set(other.record)
    else notices = [...notices, NOT_OURS]
  }

  function changed(design: Design, document: 'the same' | 'another'): void {
    unsaved = true
    if (document === 'another' || !berth) {
      const left = berth
      berth = { record: around.newName(), number: 0, good: [], letGo: null }
      leave(left)
    }
    const last = jobs.at(-1)
    if (last?.berth === berth) last.design = design
    else jobs.push({ berth, design })
    say()
    if (loaded) schedule(WAIT)
  }

  /** Lets a record go that is not written any more, so that another tab may have it. */
  function leave(left: Berth | null): void {
    if (!left || left === berth || jobs.some((job) => job.berth === left)) return
    left.letGo?.()
    left.letGo = null
  }

  function schedule(wait: number): void {
    timer ??= setTimeout(() => void write(), wait)
  }

  function flush(): Promise<void> {
    return loaded && (jobs.length > 0 || writing) ? write() : Promise.resolve()
  }

  function write(): Promise<void> {
    if (timer !== null) clearTimeout(timer)
    timer = null
    if (writing) writeAgain = true
    writing ??= writeJobs()
      .catch((error: unknown) => {
        failure = notWritten(error)
        schedule(RETRY)
      })
      .finally(() => {
        writing = null
        writeAgain = false
        if (jobs.length > 0) schedule(WAIT)
        else if (failure === null) unsaved = false
        say()
      })
    return writing
  }

  async function writeJobs(): Promise<void> {
    for (let job = jobs[0]; job; job = jobs[0]) {
      const { design } = job
      await writeWhole(job.berth, design)
      if (job.design === design) {
        jobs.shift()
        leave(job.berth)
        continue
      }
      // A change came while this was written. Its own time has come already, or its timer runs.
      if (!writeAgain) return
      writeAgain = false
    }
  }

  async function writeWhole(into: Berth, design: Design): Promise<void> {
    const written = fileText(design)
    if (!written.ok) {
      failure = invalid(written.sentence)
      return
    }
    into.letGo ??= await claims.claim(into.record)
    if (!into.letGo) await moveOut(into)
    const at = around.now()
    const answer = await store.put({ record: into.record, number: into.number + 1, at, text: written.text })
    if (answer === 'taken') {
      into.letGo?.()
      await moveOut(into)
      return writeWhole(into, design)
    }
    into.number++
    into.good.push(into.number)
    failure = null
    lastKept = at
    notices = notices.filter((words) => words !== NOT_OURS)
    around.memory.set(into.record)
    await dropOldest(into)
  }

  /** Another tab has the record: this one goes on in one of its own. */
  async function moveOut(from: Berth): Promise<void> {
    from.record = around.newName()
    from.number = 0
    from.good = []
    from.letGo = await claims.claim(from.record)
    notices = [...notices.filter((words) => words !== NOT_OURS && words !== ON_ITS_OWN), ON_ITS_OWN]
  }

  /** One generation too many does no harm, so one that cannot be dropped now is left for the next time. */
  async function dropOldest({ record, good }: Berth): Promise<void> {
    while (good.length > GENERATIONS) {
      try {
        await store.drop(record, good[0]!)
      } catch {
        return
      }
      good.shift()
    }
  }

  async function list(): Promise<readonly KeptDesign[]> {
    const designs: KeptDesign[] = []
    for (const record of recordsOf(await store.list(), null)) {
      const { newest } = await readRecord(store, record)
      if (newest)
        designs.push({
          record,
          design: newest.design,
          at: newest.mark.at,
          here: record === berth?.record,
        })
    }
    return designs
  }

  async function open(record: string): Promise<boolean> {
    if (record === berth?.record) return true
    await flush()
    const letGo = await claims.claim(record)
    const reading = await readRecord(store, record)
    if (!reading.newest || jobs.length > 0 || !loaded) {
      letGo?.()
      return false
    }
    const left = berth
    notices = reading.words
    take({ record, number: reading.number, good: [...reading.good], letGo }, reading.newest.mark.at)
    leave(left)
    bench.adopt(reading.newest.design)
    say()
    return true
  }

  async function add(design: Design): Promise<void> {
    const written = fileText(design)
    if (!written.ok) throw new Error(written.sentence)
    await store.put({ record: around.newName(), number: 1, at: around.now(), text: written.text })
  }

  async function forget(record: string): Promise<boolean> {
    if (record === berth?.record) return false
    const letGo = await claims.claim(record)
    if (!letGo) return false
    for (const mark of await store.list()) if (mark.record === record) await store.drop(record, mark.number)
    letGo()
    return true
  }

  return {
    load,
    changed,
    flush,
    list,
    open,
    add,
    forget,
    record: () => berth?.record ?? null,
    untouched: () => untouched,
    atRisk: () => failure !== null && unsaved,
  }
}
