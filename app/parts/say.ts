/** Numbers as the screen says them: lengths in the builder's unit, everything else in its own. */
import {
  type Face,
  type Finding,
  formatLength,
  type Layout,
  namelessPiece,
  type Placed,
  placedCalled,
  stepOf,
  unbroken,
} from '../../geometry/index.ts'

type Units = Layout['design']['units']

export const FACE_TITLES: Readonly<Record<Face, string>> = {
  lid: 'Lid',
  base: 'Base',
  'neck-end-wall': 'Neck-end wall',
  'tail-end-wall': 'Tail-end wall',
  'bass-wall': 'Bass wall',
  'treble-wall': 'Treble wall',
}

/** A length with its unit, whole on one line. */
export const sayLength = (mm: number, units: Units): string =>
  unbroken(formatLength(mm, units, { unit: true }))

/** A length to the hundredth of a millimetre, whatever the unit shown. */
export const exactly = (mm: number): string =>
  `${formatLength(mm, { display: 'mm', fraction: 0 }, { decimals: 2 })} mm`

/** A thing by the name its builder gave it, by its kind and id where he gave none; anything else as it is called. */
export function nameOf(id: string, layout: Layout): string {
  const placed = placedCalled(layout, id)
  if (placed) return nameOfPlaced(placed)
  return Object.hasOwn(FACE_TITLES, id)
    ? FACE_TITLES[id as Face].toLowerCase()
    : (pieceName(id, layout) ?? id)
}

/** The same for a thing that is at hand. */
export function nameOfPlaced({ thing: { id, name, kind }, kind: { title } }: Placed): string {
  if (name) return name
  const rest = id === kind ? '' : id.startsWith(`${kind}-`) ? id.slice(kind.length + 1) : id
  return rest ? `${title} ${rest.replaceAll('-', ' ')}` : title
}

/** A piece inside or a picture, by its name or by what it is. */
function pieceName(id: string, { design }: Layout): string | null {
  const piece = design.box.inside.find((one) => one.id === id)
  if (piece) return piece.name || namelessPiece(piece.sort, id)
  const art = design.artwork.find((one) => one.id === id)
  return art ? art.name || namelessPiece('artwork', id) : null
}

/** One step of the user's rule, in words: `1/32 in`. */
export const sayStep = (units: Units): string => sayLength(stepOf(units), units)

export const GRADE_WORDS: Readonly<Record<Finding['grade'], string>> = {
  stop: 'Stop',
  care: 'Care',
  note: 'Note',
  clear: 'Clear',
}
