/**
 * Woods and panels for necks, boards and lids, at 12 % moisture content: density in kg/mm³ (1e-9 of it is one kg/m³),
 * stiffness and strength along the grain in N/mm² (the same as MPa).
 *
 * `stiffness` is the tabulated modulus of elasticity from bending tests, which shear of the test piece makes about a
 * tenth too low (Wood Handbook, note to the table): on the safe side here. `strength` is the modulus of rupture, a mean
 * of clear straight-grained pieces in a test of some minutes; see `LONG_TERM` for a load that stays. A builder's own
 * wood is another object of the same shape.
 */
export interface Wood {
  readonly title: string
  readonly density: number
  readonly stiffness: number
  /** Modulus of rupture. */
  readonly strength: number
  readonly source: string
}

const HANDBOOK = 'Wood Handbook, FPL-GTR-190 (2010), Table 5-3a'

/** Density at 12 % from specific gravity on the volume at 12 %: `1000 SG · 1.12` kg/m³ (Wood Handbook, ch. 4). */
const AT_TWELVE = 1120e-9

const row = (title: string, gravity: number, stiffness: number, strength: number): Wood => ({
  title,
  density: gravity * AT_TWELVE,
  stiffness,
  strength,
  source: HANDBOOK,
})

/** N/mm² in one psi. */
const PER_PSI = 0.006894757293

/**
 * An imported wood, whose gravity the handbook prints on the green volume: `G12 = Gg / (1 − 0.265 · 0.6 Gg)` (Wood
 * Handbook, ch. 4, shrinkage estimated from gravity; from memory).
 */
const imported = (
  title: string,
  green: number,
  stiffnessPsi: number,
  strengthPsi: number,
  table: string,
): Wood => ({
  title,
  density: (green / (1 - 0.265 * 0.6 * green)) * AT_TWELVE,
  stiffness: stiffnessPsi * PER_PSI,
  strength: strengthPsi * PER_PSI,
  source: `${table}; density worked out from the green gravity`,
})

export const WOODS = {
  'ash, white': row('White ash', 0.6, 12_000, 103),
  basswood: row('Basswood', 0.37, 10_100, 60),
  beech: row('American beech', 0.64, 11_900, 103),
  'birch, yellow': row('Yellow birch', 0.62, 13_900, 114),
  cherry: row('Black cherry', 0.5, 10_300, 85),
  'hickory, shagbark': row('Shagbark hickory', 0.72, 14_900, 139),
  'hickory, mockernut': row('Mockernut hickory', 0.72, 15_300, 132),
  'maple, sugar': row('Sugar maple', 0.63, 12_600, 109),
  'maple, red': row('Red maple', 0.54, 11_300, 92),
  'oak, red': row('Northern red oak', 0.63, 12_500, 99),
  'oak, white': row('White oak', 0.68, 12_300, 105),
  sweetgum: row('Sweetgum', 0.52, 11_300, 86),
  walnut: row('Black walnut', 0.55, 11_600, 101),
  poplar: row('Yellow-poplar', 0.42, 10_900, 70),
  'cedar, western red': row('Western redcedar', 0.32, 7_700, 51.7),
  'douglas fir': row('Douglas-fir, coast', 0.48, 13_400, 85),
  'pine, white': row('Eastern white pine', 0.35, 8_500, 59),
  'pine, ponderosa': row('Ponderosa pine', 0.4, 8_900, 65),
  'pine, loblolly': row('Loblolly pine', 0.51, 12_300, 88),
  'pine, longleaf': row('Longleaf pine', 0.59, 13_700, 100),
  redwood: row('Redwood, old growth', 0.4, 9_200, 69),
  'spruce, sitka': row('Sitka spruce', 0.4, 10_800, 70),
  'spruce, engelmann': row('Engelmann spruce', 0.35, 8_900, 64),
  mahogany: imported('True mahogany', 0.45, 1.5e6, 11_500, 'Wood Handbook, FPL-GTR-113 (1999), Table 4-5b'),
  'mahogany, african': imported(
    'African mahogany',
    0.42,
    1.4e6,
    10_700,
    'Wood Handbook, FPL-GTR-113 (1999), Table 4-5b',
  ),
  'cedar, spanish': imported(
    'Spanish cedar',
    0.41,
    1.44e6,
    11_500,
    'Wood Handbook, FPL-GTR-190 (2010), Table 5-5b',
  ),
} satisfies Record<string, Wood>

export type WoodName = keyof typeof WOODS

/** Sheet stuff for lids. The lower end where the handbook gives a range; densities from memory within its range. */
export const PANELS = {
  plywood: {
    title: 'Plywood',
    density: 600e-9,
    stiffness: 6_960,
    strength: 33.72,
    source: 'Wood Handbook, FPL-GTR-190 (2010), Table 12-1; density from memory',
  },
  hardboard: {
    title: 'Hardboard, pressed board',
    density: 950e-9,
    stiffness: 3_100,
    strength: 31,
    source: 'Wood Handbook, FPL-GTR-190 (2010), Table 12-1; strength and density from memory',
  },
  'fibreboard, medium density': {
    title: 'Medium-density fibreboard',
    density: 750e-9,
    stiffness: 3_590,
    strength: 35.85,
    source: 'Wood Handbook, FPL-GTR-190 (2010), Table 12-1; density: database average',
  },
} satisfies Record<string, Wood>

/** Bars and rods let into a neck. `strength` is where metal begins to yield. */
export const BARS = {
  steel: {
    title: 'Steel',
    density: 7850e-9,
    stiffness: 200_000,
    strength: 250,
    source: 'Stiffness: University Physics 1, Table 12.1; density and yield of mild steel from memory',
  },
  aluminium: {
    title: 'Aluminium',
    density: 2700e-9,
    stiffness: 70_000,
    strength: 150,
    source: 'Stiffness: University Physics 1, Table 12.1; density and yield from memory',
  },
  carbon: {
    title: 'Carbon fibre, pulled rod',
    density: 1550e-9,
    stiffness: 120_000,
    strength: 800,
    source: 'From memory, low end of pultruded rod',
  },
} satisfies Record<string, Wood>

/**
 * What is left of a short test's strength under a load that never goes away: 0.56, the 0.9 of a permanent load over
 * the 1.6 of some minutes in timber design practice (after the Wood Handbook's curve of load duration; from memory).
 */
export const LONG_TERM = 0.56

/** By how much a bow grows in the first years of standing load, as a factor. Common practice, from memory. */
export const CREEP = 2

/** True modulus over the tabulated one, bending tests at a span of 14 depths (Wood Handbook, note to the table). */
export const TRUE_STIFFNESS = 1.1

/** A wood under a load that never goes away: its strength times `LONG_TERM`. Metal bears its load as long as one likes. */
export function standing(wood: Pick<Wood, 'stiffness' | 'strength'>): {
  stiffness: number
  strength: number
} {
  return { stiffness: wood.stiffness, strength: wood.strength * LONG_TERM }
}
