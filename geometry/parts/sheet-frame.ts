/** From the frames of the engine to the sheet a part is drawn on: the one place where hands and faces mirror. */
import type { Face } from '../kinds/kind.ts'
import { type Contour, mirrorX, mirrorY, type Point } from '../plane/index.ts'
import type { Layout } from '../solve/layout.ts'
import type { Note, Operation, Part } from './part.ts'

export type Flip = 'none' | 'x' | 'y'

/**
 * How a panel's frame turns into what a viewer outside sees, right-handed; derived from
 * right = (direction of sight) × (up on the sheet). A left-handed build takes the other one of each pair.
 */
const OUTSIDE: Record<Face, readonly [right: Flip, left: Flip]> = {
  lid: ['none', 'y'],
  base: ['y', 'none'],
  'neck-end-wall': ['x', 'none'],
  'tail-end-wall': ['none', 'x'],
  'bass-wall': ['none', 'x'],
  'treble-wall': ['x', 'none'],
}

/** How the panel's frame is turned over for a sheet seen from outside. */
export const flipOf = (face: Face, up: Layout['up']): Flip => OUTSIDE[face][up === 1 ? 0 : 1]

export function flipPoint(point: Point, flip: Flip): Point {
  if (flip === 'x') return { x: 0 - point.x, y: point.y }
  if (flip === 'y') return { x: point.x, y: 0 - point.y }
  return point
}

export function flipContour(contour: Contour, flip: Flip): Contour {
  if (flip === 'x') return mirrorY(contour)
  return flip === 'y' ? mirrorX(contour) : contour
}

export function flipOperation(operation: Operation, flip: Flip): Operation {
  if (flip === 'none') return operation
  switch (operation.kind) {
    case 'cut':
    case 'recess':
    case 'mark':
      return { ...operation, contour: flipContour(operation.contour, flip) }
    case 'datum':
      return { ...operation, line: flipContour(operation.line, flip) as typeof operation.line }
    case 'drill':
      return { ...operation, centre: flipPoint(operation.centre, flip) }
    case 'slot':
      return { ...operation, from: flipPoint(operation.from, flip), to: flipPoint(operation.to, flip) }
    case 'note':
      return { ...operation, at: flipNote(operation, flip) }
  }
}

/** All of them; the very same list where nothing is turned over. */
export const flipOperations = (operations: readonly Operation[], flip: Flip): readonly Operation[] =>
  flip === 'none' ? operations : operations.map((one) => flipOperation(one, flip))

/** Width of a figure or letter as a share of its height, near enough for a drawing font. */
const LETTER = 0.64

/** Words are not mirrored: the room they take changes sides, and they start at its new lower left corner. */
function flipNote({ at, text, height }: Note, flip: Flip): Point {
  if (flip === 'x') return { x: 0 - at.x - LETTER * height * text.length, y: at.y }
  return flip === 'y' ? { x: at.x, y: 0 - at.y - height } : at
}

/**
 * The same part as its other face shows it; says so. Mirroring twice gives the part back. It is turned over so that
 * `headEnd` still holds: about the length of the neck where the head lies left or right, else left for right.
 */
export function mirrorPart(part: Part): Part {
  const flip: Flip = part.headEnd === 'left' || part.headEnd === 'right' ? 'y' : 'x'
  return {
    ...part,
    mirrored: !part.mirrored,
    outline: flipContour(part.outline, flip),
    operations: flipOperations(part.operations, flip),
  }
}
