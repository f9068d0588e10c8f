/** The same angle between −180 and 180 degrees, to the thousandth. */
export function aroundOnce(degrees: number): number {
  const plain = ((((degrees + 180) % 360) + 360) % 360) - 180
  return Math.round((plain === -180 ? 180 : plain) * 1000) / 1000 + 0
}
