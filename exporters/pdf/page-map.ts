/** The map on every sheet: the part's outline over its tiles, the sheet in hand filled. */
import type { Bounds, Point } from '../../geometry/index.ts'
import { move } from '../../geometry/index.ts'
import { FAINT, INK, type Ink } from './ink.ts'
import type { PartSheets, Tile } from './plan.ts'

const LINE = { colour: FAINT, width: 0.12 }
const OUTLINE = { colour: INK, width: 0.18 }
const HERE = '#c9ddd6'

/** How places of a part lie on its map: as large as the box allows, in the middle of it. */
function mapIn({ tiles }: PartSheets, box: Bounds) {
  const shown = tiles.map((one) => one.shown)
  const minX = Math.min(...shown.map((one) => one.minX))
  const maxX = Math.max(...shown.map((one) => one.maxX))
  const minY = Math.min(...shown.map((one) => one.minY))
  const maxY = Math.max(...shown.map((one) => one.maxY))
  const scale = Math.min((box.maxX - box.minX) / (maxX - minX), (box.maxY - box.minY) / (maxY - minY))
  const corner: Point = {
    x: (box.minX + box.maxX - (maxX - minX) * scale) / 2,
    y: (box.minY + box.maxY - (maxY - minY) * scale) / 2,
  }
  const onMap = (part: Bounds): Bounds => ({
    minX: corner.x + (part.minX - minX) * scale,
    maxX: corner.x + (part.maxX - minX) * scale,
    minY: corner.y + (part.minY - minY) * scale,
    maxY: corner.y + (part.maxY - minY) * scale,
  })
  return { scale, shift: { x: corner.x / scale - minX, y: corner.y / scale - minY }, onMap }
}

/** Fills the sheet in hand; the map is drawn over it. */
export function fillOnMap(ink: Ink, sheets: PartSheets, tile: Tile, box: Bounds): void {
  ink.fill(mapIn(sheets, box).onMap(tile.shown), HERE)
}

/**
 * Draws the map, which is the same on every sheet of a part.
 *
 * @param box on the paper, mm
 */
export function drawMap(ink: Ink, sheets: PartSheets, box: Bounds): void {
  const { scale, shift, onMap } = mapIn(sheets, box)
  for (const one of sheets.tiles) {
    // Tiles are drawn without their flaps, so that neighbours share an edge.
    const right = sheets.columns[one.column + 1]?.from ?? one.shown.maxX
    const top = sheets.rows[one.row - 1]?.from ?? one.shown.maxY
    const cell = onMap({ ...one.shown, maxX: right, maxY: top })
    ink.rectangle(cell, LINE)
    // A name that finds no room in a low cell stands under it.
    const low = cell.maxY - cell.minY < 3
    const size = Math.min(2.6, (cell.maxX - cell.minX) / 2)
    const y = low ? cell.minY - 1 - 0.73 * size : (cell.minY + cell.maxY) / 2 - 0.36 * size
    ink.words({ x: (cell.minX + cell.maxX) / 2, y }, size, one.name, { anchor: 'middle' })
  }
  const moved = move(sheets.part.outline, shift.x, shift.y)
  ink.within({ scale: { x: scale, y: scale } }, () =>
    ink.contours([moved], { ...OUTLINE, width: OUTLINE.width / scale }),
  )
}
