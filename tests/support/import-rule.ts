import { isBuiltin } from 'node:module'
import { type Import, packageOf, type Reading, readImports, resolveImport } from './imports.ts'
import { isCommandLine, type Room, roomOf } from './rooms.ts'

/** Longer files hold more than one idea. */
export const longestFile = 400

/** Files that hold code, as opposed to data, styles and pictures. */
export const isCode = (file: string) => /\.(ts|tsx|mts|cts|js|jsx|mjs|cjs)$/.test(file)

/**
 * Everything in which a tree of files breaks the house's rules: imports against the table of rooms, imports
 * of nothing, cycles (of types too), clock or chance or locale where results must be exact, overlong files.
 *
 * @param files texts by path from the top of the project, `/` between folders; code and everything else
 * @returns one sentence per breach, in order of path; empty when the tree keeps the rules
 * @example
 * breaches(new Map([['geometry/a.ts', `import '../app/main.tsx'`], ['app/main.tsx', '']]))
 * // ['geometry/a.ts:1: imports app/main.tsx: geometry is the lowest room …']
 */
export function breaches(files: ReadonlyMap<string, string>): string[] {
  const code = [...files.keys()].filter(isCode).sort()
  const found: string[] = []
  const edges = new Map<string, string[]>()
  for (const file of code) {
    const text = files.get(file) ?? ''
    const room = roomOf(file)
    if (room === undefined) {
      found.push(`${file}: belongs to no room`)
      continue
    }
    const lines = text.split('\n').length - (text.endsWith('\n') ? 1 : 0)
    if (lines > longestFile) found.push(`${file}: ${lines} lines, and ${longestFile} are the most`)
    const reading = readImports(file, text)
    found.push(...importBreaches(file, room, reading, files), ...wobbleBreaches(file, room, reading))
    const inner = reading.imports.flatMap(({ target }) =>
      isRelative(target) ? [resolveImport(file, target)] : [],
    )
    edges.set(
      file,
      inner.filter((other) => files.has(other) && isCode(other)),
    )
  }
  return [
    ...found,
    ...cycles(edges).map((path) => `${path[0]}: imports itself in a circle: ${path.join(' → ')}`),
  ]
}

function isRelative(target: string | undefined): target is string {
  return target?.startsWith('.') ?? false
}

function importBreaches(
  file: string,
  room: Room,
  reading: Reading,
  files: ReadonlyMap<string, string>,
): string[] {
  return reading.imports.flatMap((one) => {
    const wrong = wrongWith(file, room, one, files)
    return wrong === undefined ? [] : [`${file}:${one.line}: ${wrong}`]
  })
}

function wrongWith(file: string, room: Room, { target }: Import, files: ReadonlyMap<string, string>) {
  const free = room.name === 'tests' || room.name === 'launcher'
  if (target === undefined) return free ? undefined : 'imports what is only known when it runs'
  const refused = `imports ${target}: ${room.reason}`
  if (isRelative(target)) {
    const path = resolveImport(file, target)
    if (!path.includes('*') && !files.has(path))
      return free ? undefined : `imports ${path}, which is not there`
    if (isCommandLine(path) && !isCommandLine(file) && !free)
      return `${refused} (the command line reads files)`
    const own = path.split('/')[0] === file.split('/')[0]
    return own || room.doors.some((door) => door.test(path)) ? undefined : refused
  }
  if (isBuiltin(target)) return room.node ? undefined : refused
  return room.packages.includes('*') || room.packages.includes(packageOf(target)) ? undefined : refused
}

function wobbleBreaches(file: string, room: Room, reading: Reading): string[] {
  if (!room.exact) return []
  return reading.wobbles.map(
    ({ word, line }) =>
      `${file}:${line}: uses ${word}: the same design must give the same result always and everywhere`,
  )
}

/** One circle for every group of files that reach each other, each beginning and ending at one file. */
function cycles(edges: ReadonlyMap<string, readonly string[]>): string[][] {
  const done = new Set<string>()
  const found: string[][] = []
  const visit = (file: string, path: readonly string[]) => {
    const start = path.indexOf(file)
    if (start >= 0) found.push([...path.slice(start), file])
    if (done.has(file)) return
    done.add(file)
    for (const next of edges.get(file) ?? []) visit(next, [...path, file])
  }
  for (const file of edges.keys()) visit(file, [])
  return found
}
