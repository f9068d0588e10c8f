/** Walks a value to the bottom, for laws that hold of every number or contour in it. */
import type { Contour } from '../../geometry/index.ts'

/** Where a value was found, as in `neck.cuts.0.x1`. */
type Visit = (value: unknown, path: string) => void

/** Calls `visit` for every value below `root`, itself included; functions and classes' insides are left out. */
export function walk(root: unknown, visit: Visit, path = ''): void {
  visit(root, path)
  if (root === null || typeof root !== 'object') return
  const plain = Array.isArray(root) || Object.getPrototypeOf(root) === Object.prototype
  if (!plain) return
  for (const [key, value] of Object.entries(root)) {
    // A kind is code, not data.
    if (key === 'kind' && typeof value === 'object') continue
    walk(value, visit, path === '' ? key : `${path}.${key}`)
  }
}

/** Paths of all numbers below `root` that are not finite, and how many numbers there were at all. */
export function numbersOf(root: unknown): { readonly count: number; readonly unsound: string[] } {
  const unsound: string[] = []
  let count = 0
  walk(root, (value, path) => {
    if (typeof value !== 'number') return
    count += 1
    if (!Number.isFinite(value)) unsound.push(`${path} is ${value}`)
  })
  return { count, unsound }
}

/** Every contour below `root`, with its path. */
export function contoursOf(root: unknown): { readonly contour: Contour; readonly path: string }[] {
  const found: { contour: Contour; path: string }[] = []
  walk(root, (value, path) => {
    const shape = (value as { shape?: unknown } | null)?.shape
    if (shape === 'circle' || shape === 'chain') found.push({ contour: value as Contour, path })
  })
  return found
}
