/**
 * What strings are made of: density in kg/mm³ (1e-9 of it is one kg/m³), stiffness (Young's modulus) and strength in
 * N/mm² (the same as MPa). Each row names its source; `from memory` stands where no published figure was at hand.
 * A builder's own material is another object of the same shape.
 */
import { wireStrength } from './strength.ts'

export interface StringMaterial {
  readonly title: string
  readonly density: number
  /** Young's modulus. */
  readonly stiffness: number
  /** Tensile strength of a wire or line of this diameter; `null` for what is only ever wound on. */
  readonly strength: ((diameter: number) => number) | null
  readonly source: string
}

export const MATERIALS = {
  'music wire': {
    title: 'Music wire',
    density: 7861e-9,
    stiffness: 206_800,
    strength: wireStrength,
    source:
      'Density 0.284 lb/in³ and 30e6 psi: spring wire data sheet, ASTM A228. Strength: ASTM A228, least by diameter.',
  },
  'nickel-plated steel': {
    title: 'Nickel-plated steel',
    density: 7940e-9,
    stiffness: 200_000,
    strength: null,
    source:
      'Steel with some eight parts in a hundred of nickel: density from memory. Stiffness: University Physics 1, Table 12.1.',
  },
  nickel: {
    title: 'Pure nickel',
    density: 8908e-9,
    stiffness: 200_000,
    strength: null,
    source: 'Density: published figure for the metal. Stiffness from memory.',
  },
  'stainless steel': {
    title: 'Stainless steel',
    density: 7916e-9,
    stiffness: 193_100,
    strength: null,
    source: '0.286 lb/in³ and 28e6 psi: spring wire data sheet, type 302/304, ASTM A313.',
  },
  'phosphor bronze': {
    title: 'Phosphor bronze',
    density: 8860e-9,
    stiffness: 110_000,
    strength: null,
    source: 'Alloy data sheet, C51000 (ASTM B103), physical properties.',
  },
  'brass bronze': {
    title: 'Bronze, 80 copper and 20 zinc',
    density: 8670e-9,
    stiffness: 110_000,
    strength: null,
    source: 'From memory, low brass C24000.',
  },
  'silvered copper': {
    title: 'Silver-plated copper',
    density: 8920e-9,
    stiffness: 110_000,
    strength: null,
    source: 'Copper: University Physics 1, sec. 16.3 (density) and Table 12.1 (stiffness).',
  },
  nylon: {
    title: 'Nylon',
    density: 1140e-9,
    stiffness: 5_000,
    strength: () => 450,
    source:
      'Density 1.14: table of plastics, nylon 6/6. Stiffness: College Physics, Table 5.3 (bulk stock 2 700, drawn line stiffer). Strength from memory.',
  },
  fluorocarbon: {
    title: 'Fluorocarbon',
    density: 1770e-9,
    stiffness: 4_500,
    strength: () => 500,
    source:
      'Density 1.77: table of plastics, PVDF. Stiffness and strength of drawn line from memory (bulk stock 2 200).',
  },
} satisfies Record<string, StringMaterial>

export type MaterialName = keyof typeof MATERIALS

/** Material by name. Throws for a name that is not in the table: files are checked when they are read. */
export function materialOf(name: string): StringMaterial {
  if (!Object.hasOwn(MATERIALS, name)) throw new Error(`there is no string material called "${name}"`)
  return MATERIALS[name as MaterialName]
}
