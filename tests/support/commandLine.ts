/** The command line inside the test's own process, in a folder of its own. */
import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join, resolve } from 'node:path'
import { afterEach } from 'vitest'
import { run } from '../../exporters/cli.ts'
import { type Design, startingDesign } from '../../geometry/index.ts'

export interface Answer {
  readonly code: number
  readonly out: string
  readonly err: string
}

/** A folder that lasts for one test. Call inside a test. */
export class Bench {
  readonly folder = mkdtempSync(join(tmpdir(), 'lidwright-cli-'))

  constructor() {
    benches.push(this)
  }

  /** Runs a command here. Example: `await bench.run('check', 'box.lidwright.json')`. */
  async run(...argv: string[]): Promise<Answer> {
    let out = ''
    let err = ''
    const io = {
      out: (text: string) => {
        out += text
      },
      err: (text: string) => {
        err += text
      },
      cwd: this.folder,
    }
    const code = await run(argv, io)
    return { code, out, err }
  }

  put(name: string, content: string | Design): string {
    const path = resolve(this.folder, name)
    mkdirSync(dirname(path), { recursive: true })
    writeFileSync(path, typeof content === 'string' ? content : JSON.stringify(content))
    return name
  }

  read(name: string): string {
    return readFileSync(resolve(this.folder, name), 'utf8')
  }

  has(name: string): boolean {
    return existsSync(resolve(this.folder, name))
  }

  /** Everything here, hidden files too, as paths from the bench, in order. */
  files(below = ''): string[] {
    return readdirSync(resolve(this.folder, below), { withFileTypes: true })
      .flatMap((entry) => {
        const path = below ? `${below}/${entry.name}` : entry.name
        return entry.isDirectory() ? this.files(path) : [path]
      })
      .sort()
  }
}

const benches: Bench[] = []

afterEach(() => {
  for (const bench of benches.splice(0)) rmSync(bench.folder, { recursive: true, force: true })
})

/**
 * A sound design, a risky one (the saddle beside the wall) and one that cannot be built (too thin a neck). The last has no
 * tuning, so that its neck is not stopped twice.
 */
export const sound = () => startingDesign({ title: 'Tea box', hand: 'right' })
export const risky = (): Design => ({ ...sound(), saddle: { ...sound().saddle, place: { share: 0.9 } } })
export const broken = (): Design => ({
  ...sound(),
  neck: { ...sound().neck, thickness: 8 },
  stringing: { ...sound().stringing, tuning: [] },
})
