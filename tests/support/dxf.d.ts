/** The reader `dxf` brings no types: here is what the tests use of it. */
declare module 'dxf' {
  export interface Entity {
    type: string
    layer: string
    handle: string
    closed?: boolean
    x?: number
    y?: number
    r?: number
    string?: string
    textHeight?: number
    rotation?: number
    start?: { x: number; y: number }
    end?: { x: number; y: number }
    vertices?: { x: number; y: number; bulge?: number }[]
  }
  export interface Layer {
    name: string
    colorNumber: number
    lineTypeName: string
  }
  export interface Parsed {
    header: Record<string, unknown>
    entities: Entity[]
    tables: { layers: Record<string, Layer> }
  }
  export function parseString(text: string): Parsed
  /** RGB for each index of the AutoCAD Colour Index. */
  export const colors: [number, number, number][]
}
