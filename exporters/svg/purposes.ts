/**
 * What an SVG is for, as plain named settings: which layers it holds, in which inks and widths, and how it writes
 * words. They follow no machine's habits; a program that maps colours to work can map these.
 */
import { LAYER_TABLE, type LayerKind } from '../drawing/layers.ts'

export type SvgPurpose = 'print' | 'laser' | 'plotter'
export type SvgWords = 'text' | 'single lines'

export const SVG_PURPOSES: readonly SvgPurpose[] = ['print', 'laser', 'plotter']

export interface Purpose {
  /** What it is for, a few words. */
  readonly meaning: string
  /** Check bars, legend and title block beside the drawing. */
  readonly furniture: boolean
  /** Layers that are left out. */
  readonly without: readonly LayerKind[]
  readonly ink: Readonly<Record<LayerKind, string>>
  /** Width of every line, mm; those of the table of layers where it is `null`. */
  readonly width: number | null
  /** Dashed as the table of layers says; else every line is drawn through. */
  readonly dashes: boolean
  /** Crosses on drilled holes. */
  readonly crosses: boolean
  readonly words: SvgWords
}

const OF_TABLE = Object.fromEntries(LAYER_TABLE.map(({ kind, ink }) => [kind, ink])) as Record<
  LayerKind,
  string
>

/** Pure colours, one to each kind of work, as machines tell work apart by colour. */
const PURE: Readonly<Record<LayerKind, string>> = {
  notes: '#000000',
  datum: '#808080',
  mark: '#00ff00',
  slot: '#ff00ff',
  recess: '#0000ff',
  drill: '#00ffff',
  'cut-inside': '#ff0000',
  tab: '#ff8000',
  'cut-outside': '#000000',
}

/** Pens of a plotter: one for what is cut, one for what is done to the wood else, one for what is only read. */
const PENS: Readonly<Record<LayerKind, string>> = {
  notes: '#0000ff',
  datum: '#0000ff',
  mark: '#ff0000',
  slot: '#ff0000',
  recess: '#ff0000',
  drill: '#ff0000',
  'cut-inside': '#000000',
  tab: '#ff0000',
  'cut-outside': '#000000',
}

export const PURPOSES: Readonly<Record<SvgPurpose, Purpose>> = {
  print: {
    meaning: 'paper to glue on or read: line types, legend and title block',
    furniture: true,
    without: [],
    ink: OF_TABLE,
    width: null,
    dashes: true,
    crosses: true,
    words: 'text',
  },
  laser: {
    meaning:
      'only what the beam follows or scribes: no legend, no lines to measure from, a pure colour for each work',
    furniture: false,
    without: ['notes', 'datum'],
    ink: PURE,
    width: 0.01,
    dashes: false,
    crosses: false,
    words: 'single lines',
  },
  plotter: {
    meaning: 'three pens, every line drawn through, words in single strokes',
    furniture: true,
    without: [],
    ink: PENS,
    width: 0.3,
    dashes: false,
    crosses: true,
    words: 'single lines',
  },
}
