import { posix } from 'node:path'
import { parseSync } from 'vite'

/** One thing a file reaches for. */
export interface Import {
  /** As written: `./points.ts`, `zod`, `node:fs`. Undefined when it is only known when the code runs. */
  readonly target: string | undefined
  /** From 1. */
  readonly line: number
}

/** One use of something that differs between runs, machines or countries. */
export interface Wobble {
  readonly word: string
  readonly line: number
}

/** What one file imports, and where it leans on clock, chance or locale. */
export interface Reading {
  readonly imports: readonly Import[]
  readonly wobbles: readonly Wobble[]
}

type Node = Readonly<Record<string, unknown>> & { readonly type: string; readonly start: number }

const wobblyGlobals = ['Date', 'Intl', 'performance', 'crypto']
const wobblyMembers = [
  ...['toLocaleString', 'toLocaleDateString', 'toLocaleTimeString'],
  ...['toLocaleUpperCase', 'toLocaleLowerCase', 'localeCompare'],
]

/**
 * Reads what a TypeScript or JavaScript file imports: import and export statements with and without
 * `type`, `import('…')` as value and as type, `import x = require()`, `require()`, `import.meta.glob`, and
 * `new URL('…', import.meta.url)` as workers are named.
 *
 * @throws Error when the file cannot be parsed
 * @example readImports('a.ts', `import type { Point } from './point.ts'`).imports // [{ target: './point.ts', line: 1 }]
 */
export function readImports(file: string, text: string): Reading {
  const lang = file.endsWith('x') ? 'tsx' : 'ts'
  const { program, errors } = parseSync(file, text, { lang, sourceType: 'module' })
  if (errors.length > 0) throw new Error(`${file} cannot be parsed: ${errors[0]?.message}`)
  const imports: Import[] = []
  const wobbles: Wobble[] = []
  const lineAt = (offset: number) => text.slice(0, offset).split('\n').length
  walk(program as unknown as Node, undefined, (node, parent) => {
    for (const target of targetsOf(node)) imports.push({ target, line: lineAt(node.start) })
    const word = wobbleOf(node, parent)
    if (word !== undefined) wobbles.push({ word, line: lineAt(node.start) })
  })
  return { imports, wobbles }
}

/** The file a relative import means, from the top of the project; `?raw` and the like are dropped. */
export function resolveImport(from: string, target: string): string {
  return posix.join(posix.dirname(from), target.replace(/[?#].*$/, ''))
}

/** The package of a bare import: `zod` of `zod/mini`, `@scope/name` of `@scope/name/deep`. */
export function packageOf(target: string): string {
  return target
    .split('/')
    .slice(0, target.startsWith('@') ? 2 : 1)
    .join('/')
}

function walk(
  node: Node,
  parent: Node | undefined,
  visit: (node: Node, parent: Node | undefined) => void,
): void {
  visit(node, parent)
  for (const value of Object.values(node)) {
    for (const child of Array.isArray(value) ? value : [value]) {
      if (isNode(child)) walk(child, node, visit)
    }
  }
}

function isNode(value: unknown): value is Node {
  return typeof value === 'object' && value !== null && 'type' in value && typeof value.type === 'string'
}

/** What a node imports; an empty list when it imports nothing. */
function targetsOf(node: Node): (string | undefined)[] {
  switch (node.type) {
    case 'ImportDeclaration':
    case 'ExportAllDeclaration':
    case 'ExportNamedDeclaration':
      return isNode(node.source) ? [words(node.source)] : []
    case 'ImportExpression':
    case 'TSImportType':
      return [words(node.source)]
    case 'TSExternalModuleReference':
      return [words(node.expression)]
    case 'CallExpression': {
      const list = node.arguments as readonly unknown[]
      if (named(node.callee) === 'require') return [words(list[0])]
      return isMetaMember(node.callee, 'glob') ? globbed(list[0]) : []
    }
    case 'NewExpression': {
      const [path, base] = node.arguments as readonly unknown[]
      return named(node.callee) === 'URL' && isMetaMember(base, 'url') ? [words(path)] : []
    }
    default:
      return []
  }
}

function globbed(pattern: unknown): (string | undefined)[] {
  if (!isNode(pattern) || pattern.type !== 'ArrayExpression') return [words(pattern)]
  return (pattern.elements as readonly unknown[]).map(words).filter((one) => !one?.startsWith('!'))
}

function words(node: unknown): string | undefined {
  if (!isNode(node)) return undefined
  if (node.type === 'Literal' && typeof node.value === 'string') return node.value
  if (node.type === 'TSLiteralType') return words(node.literal)
  return undefined
}

function named(node: unknown): string | undefined {
  return isNode(node) && node.type === 'Identifier' ? String(node.name) : undefined
}

function isMetaMember(node: unknown, property: string): boolean {
  return (
    isNode(node) &&
    node.type === 'MemberExpression' &&
    isNode(node.object) &&
    node.object.type === 'MetaProperty' &&
    named(node.property) === property
  )
}

/** The word with which a node leans on clock, chance or locale. */
function wobbleOf(node: Node, parent: Node | undefined): string | undefined {
  if (node.type === 'MemberExpression' && !node.computed) {
    const property = named(node.property) ?? ''
    if (named(node.object) === 'Math' && property === 'random') return 'Math.random'
    return wobblyMembers.includes(property) ? property : undefined
  }
  if (node.type === 'VariableDeclarator' && named(node.init) === 'Math' && isNode(node.id)) {
    const parts = (node.id.properties ?? []) as readonly Node[]
    return parts.some((part) => named(part.key) === 'random') ? 'Math.random' : undefined
  }
  const name = named(node)
  if (name === undefined || !wobblyGlobals.includes(name)) return undefined
  // `layout.Date` and `{ Date: 1 }` only share the name.
  const isName =
    (parent?.type === 'MemberExpression' && parent.property === node && !parent.computed) ||
    (parent !== undefined && 'key' in parent && parent.key === node && !parent.shorthand && !parent.computed)
  return isName ? undefined : name
}
