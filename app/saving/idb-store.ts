/** Kept designs in the browser's IndexedDB. */
import { type DBSchema, type IDBPDatabase, openDB } from 'idb'
import type { Generation, KeptStore, Mark } from './store.ts'
import { nameOf } from './words.ts'

interface Shelves extends DBSchema {
  generations: { key: [string, number]; value: Generation; indexes: { marks: [string, number, number] } }
}

/**
 * Opens the database when it is first asked, and again after the browser closed it. A generation is added in a
 * transaction of its own, and `put` settles when that is complete and handed to the disk. Adding never replaces, so
 * of two writers of one number the second is told.
 */
export function idbStore(name = 'lidwright'): KeptStore {
  let opened: Promise<IDBPDatabase<Shelves>> | null = null

  function database(): Promise<IDBPDatabase<Shelves>> {
    opened ??= openDB<Shelves>(name, 1, {
      upgrade(fresh) {
        const shelf = fresh.createObjectStore('generations', { keyPath: ['record', 'number'] })
        // Marks without texts: a list of many long designs is read in no time.
        shelf.createIndex('marks', ['record', 'number', 'at'])
      },
      // A newer page in another tab wants to change the shelves: let it. Writing then fails here and is told.
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
    async list() {
      const marks: Mark[] = []
      const index = (await database()).transaction('generations').store.index('marks')
      for (let cursor = await index.openKeyCursor(); cursor; cursor = await cursor.continue()) {
        const [record, number, at] = cursor.key
        marks.push({ record, number, at })
      }
      return marks
    },
    async read(record, number) {
      return (await (await database()).get('generations', [record, number]))?.text
    },
    async put(generation) {
      const transaction = (await database()).transaction('generations', 'readwrite', { durability: 'strict' })
      try {
        const added = transaction.store.add(generation)
        // Said at once: a page that is just closing is not there any more when the answer to `add` comes back, and
        // the browser would give up what it has not been told to commit.
        transaction.commit()
        await Promise.all([added, transaction.done])
        return 'put'
      } catch (error) {
        if (nameOf(error) === 'ConstraintError') return 'taken'
        throw error
      }
    },
    async drop(record, number) {
      await (await database()).delete('generations', [record, number])
    },
  }
}
