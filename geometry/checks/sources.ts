/**
 * Where the reckoned numbers come from, in the words a builder reads beside them. Each module's docstring says more, and
 * what it leaves out; this is the one list that rules and screens quote.
 */
export const SOURCES = {
  pull: 'Pull: the stretched string, T = µ (2 L f)² (Mersenne 1636; any university physics text).',
  strength:
    'Breaking load: least strength of music wire by diameter, ASTM A228; nylon and fluorocarbon from memory.',
  neck: 'Neck: beams with an end moment, Roark’s Formulas for Stress and Strain, ch. 8; layers of several woods as one transformed section. What is left of the strength under a standing load: after the Wood Handbook’s curve of load duration, from memory.',
  lid: 'Lid: simply supported plate under a patch load, Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, arts. 33, 34 and 85.',
  setback:
    'Setback and cents: stretch of the pressed string after Varieschi and Gower, Am. J. Phys. 78 (2010); its stiffness after Fletcher, J. Acoust. Soc. Am. 36 (1964).',
  heights: 'Heights and bends: geometry of the strings as drawn; no formula but similar triangles.',
  pure: 'Pure ratios: Helmholtz and Ellis, On the Sensations of Tone (1885), App. XX.',
} as const

export type SourceName = keyof typeof SOURCES
