/** A store in memory that does what it is told: it can be held open, made to refuse, and asked what happened. */
import type { Claims } from '../../../app/saving/claims.ts'
import type { Generation, KeptStore } from '../../../app/saving/store.ts'

export class MemoryStore implements KeptStore {
  readonly generations = new Map<string, Generation>()
  /** Everything that was asked for, in order: `list`, `put a 1`, `drop a 1`. */
  readonly log: string[] = []
  /** Set, and every `put` fails with it. */
  refusing: Error | null = null
  private gates: (() => void)[] = []
  private held: string | null = null

  /** From now on requests that begin with this word wait until `release`. */
  hold(word: 'list' | 'put' | 'drop'): void {
    this.held = word
  }

  release(): void {
    this.held = null
    for (const open of this.gates.splice(0)) open()
  }

  private async asked(what: string): Promise<void> {
    this.log.push(what)
    if (this.held !== null && what.startsWith(this.held))
      await new Promise<void>((open) => this.gates.push(open))
  }

  async list() {
    await this.asked('list')
    return [...this.generations.values()].map(({ record, number, at }) => ({ record, number, at }))
  }

  async read(record: string, number: number) {
    return this.generations.get(`${record} ${number}`)?.text
  }

  async put(generation: Generation) {
    const key = `${generation.record} ${generation.number}`
    await this.asked(`put ${key}`)
    if (this.refusing) throw this.refusing
    if (this.generations.has(key)) return 'taken' as const
    this.generations.set(key, generation)
    this.log.push(`whole ${key}`)
    return 'put' as const
  }

  async drop(record: string, number: number) {
    await this.asked(`drop ${record} ${number}`)
    this.generations.delete(`${record} ${number}`)
  }

  /** Lays a generation there as an earlier visit left it. */
  lay(record: string, number: number, at: number, text: string): void {
    this.generations.set(`${record} ${number}`, { record, number, at, text })
  }

  keys(): string[] {
    return [...this.generations.keys()].sort()
  }

  readonly writes = (): string[] => this.log.filter((one) => one.startsWith('put') || one.startsWith('drop'))
}

/** The claims of all tabs of one browser; each tab gets its own door to them. */
export class Desk {
  readonly owners = new Map<string, string>()

  tab(name: string): Claims {
    return {
      claim: async (record) => {
        if (this.owners.has(record)) return null
        this.owners.set(record, name)
        return () => void this.owners.delete(record)
      },
    }
  }

  /** The tab closes: what it had is free. */
  close(name: string): void {
    for (const [record, owner] of this.owners) if (owner === name) this.owners.delete(record)
  }
}
