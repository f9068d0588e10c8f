/** Named versions of a design, kept in this browser beside the design itself, under the same record. */
import { type DBSchema, type IDBPDatabase, openDB } from 'idb'
import { type Design, readDesign } from '../../geometry/index.ts'
import { fileText } from '../state/index.ts'

export interface Version {
  readonly record: string
  /** Counts the versions of a record, rising; 1 is the first. */
  readonly number: number
  readonly name: string
  /** Milliseconds since 1970. */
  readonly at: number
  /** The design as the text of a file. */
  readonly text: string
}

interface Shelf extends DBSchema {
  versions: { key: [string, number]; value: Version; indexes: { record: string } }
}

export interface Versions {
  /** The versions of a record, the newest first. */
  of(record: string): Promise<readonly Version[]>
  /** Keeps a design under a name. Refused with the browser's error where nothing can be written. */
  keep(record: string, name: string, design: Design, at: number): Promise<Version>
  drop(version: Version): Promise<void>
}

/** Versions in the browser's IndexedDB. */
export function versionsIn(name = 'lidwright-versions'): Versions {
  let opened: Promise<IDBPDatabase<Shelf>> | null = null
  const database = () => {
    opened ??= openDB<Shelf>(name, 1, {
      upgrade(fresh) {
        const shelf = fresh.createObjectStore('versions', { keyPath: ['record', 'number'] })
        shelf.createIndex('record', 'record')
      },
      blocking: (_current, _wanted, event) => {
        ;(event.target as IDBDatabase).close()
        opened = null
      },
      terminated: () => {
        opened = null
      },
    }).catch((error: unknown) => {
      opened = null
      throw error
    })
    return opened
  }
  return {
    async of(record) {
      const all = await (await database()).getAllFromIndex('versions', 'record', record)
      return all.sort((a, b) => b.number - a.number)
    },
    async keep(record, title, design, at) {
      const written = fileText(design)
      if (!written.ok) throw new Error(written.sentence)
      const transaction = (await database()).transaction('versions', 'readwrite')
      const before = await transaction.store.index('record').getAll(record)
      const number = 1 + before.reduce((most, one) => Math.max(most, one.number), 0)
      const version = { record, number, name: title, at, text: written.text }
      await Promise.all([transaction.store.add(version), transaction.done])
      return version
    },
    async drop({ record, number }) {
      await (await database()).delete('versions', [record, number])
    },
  }
}

/** The design of a version, `null` where its text cannot be read any more. */
export function designOf(version: Version): Design | null {
  const reading = readDesign(version.text)
  return reading.ok ? reading.design : null
}
