/** The door of saving: the work on the bench is kept in this browser, by itself. */
import type { Design } from '../../geometry/index.ts'
import { adopt, committed, onCommit, sayKeeping } from '../state/index.ts'
import { claimsHere } from './claims.ts'
import { idbStore } from './idb-store.ts'
import { type Keeper, keeperOf } from './keeper.ts'
import type { Version, Versions } from './versions.ts'

export type { KeptDesign } from './keeper.ts'
export type { Untouched } from './records.ts'

let keeper: Keeper | null = null
let started: Promise<void> | null = null

/**
 * Begins to keep the work of this tab. Settles when what was kept lies on the bench, or when that proves impossible;
 * how it went is in `useBench`'s `keeping` and `fresh`. Asked again it gives the same promise.
 */
export function startKeeping(): Promise<void> {
  started ??= begin()
  return started
}

/** Writes at once what waits to be written; settles when it is written or refused. */
export const flushKeeping = (): Promise<void> => running().flush()

/** The designs kept in this browser, latest first. */
export const keptDesigns = () => running().list()

/** Lays a kept design on the bench; `false` where the present one is not kept or the other cannot be read. */
export const openKept = (record: string) => running().open(record)

/** Keeps a design beside the others; the one on the bench stays there. */
export const addKept = (design: Design) => running().add(design)

/** Throws a kept design away for good; `false` where it is open in this tab or another. */
export const forgetKept = (record: string) => running().forget(record)

/** Kept texts that this page could not open or must not alter, to be offered for download as they are. */
export const untouchedFiles = () => running().untouched()

let shelf: Promise<Versions> | null = null

/** Fetched when versions are first asked for. */
function versions(): Promise<Versions> {
  shelf ??= import('./versions.ts').then(({ versionsIn }) => versionsIn())
  return shelf
}

/** Versions of the design on the bench, kept under names; the newest first. */
export async function versionsHere(): Promise<readonly Version[]> {
  // What was kept may still be on its way to the bench.
  await started
  const record = running().record()
  return record === null ? [] : (await versions()).of(record)
}

/** Keeps what lies on the bench under a name. Refused with the browser's error where it cannot be written. */
export async function keepVersion(name: string): Promise<Version> {
  await started
  const design = committed()
  // A design that was never changed has no record yet.
  if (running().record() === null) running().changed(design, 'another')
  await running().flush()
  const record = running().record()
  if (record === null) throw new Error('the design on the bench has no record')
  return (await versions()).keep(record, name, design, Date.now())
}

export const dropVersion = async (version: Version): Promise<void> => (await versions()).drop(version)

function running(): Keeper {
  if (!keeper) throw new Error('startKeeping() has to be called first')
  return keeper
}

function begin(): Promise<void> {
  keeper = keeperOf({
    store: idbStore(),
    claims: claimsHere(newName()),
    memory: tabMemory,
    bench: { committed, adopt, say: sayKeeping },
    now: () => Date.now(),
    newName,
  })
  const { changed, flush, atRisk, load } = keeper
  onCommit(changed)
  const flushNow = () => void flush()
  // A field takes its words over when it is left. A page that goes away leaves none, so it is done here.
  const leaveField = () => {
    if (document.activeElement instanceof HTMLElement) document.activeElement.blur()
    flushNow()
  }
  addEventListener('blur', flushNow)
  addEventListener('pagehide', leaveField)
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden') flushNow()
  })
  addEventListener('beforeunload', (event) => {
    leaveField()
    if (atRisk()) event.preventDefault()
  })
  return load()
}

/** Survives loading the page again, but not the tab. A browser that refuses it forgets which of several records this was. */
const tabMemory = {
  get(): string | null {
    try {
      return sessionStorage.getItem('lidwright-record')
    } catch {
      return null
    }
  },
  set(record: string): void {
    try {
      sessionStorage.setItem('lidwright-record', record)
    } catch {
      // The latest record is opened instead of this tab's own.
    }
  },
}

/** A name that no other record has: 128 random bits. */
function newName(): string {
  return Array.from(crypto.getRandomValues(new Uint8Array(16)), (byte) =>
    byte.toString(16).padStart(2, '0'),
  ).join('')
}
