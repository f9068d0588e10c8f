/** Wood drier or damper than the tables: any property in any unit, moisture as a share (0.12 is 12 %). */
import { positive } from '../quantity/demand.ts'

const TABLE_MOISTURE = 0.12
/** Moisture at which drying begins to change a property, where the species is not listed (Wood Handbook, Table 5-13). */
export const USUAL_INTERSECTION = 0.25

/**
 * A property at another moisture content from its values at 12 % and green:
 * `P = P12 (P12 / Pg)^((0.12 − M) / (Mp − 0.12))`. Above the intersection it stays at the green value.
 * Source: Wood Handbook, FPL-GTR-282, Eq. 5-3. Example: white ash, 103 and 66 N/mm², at 8 % with Mp = 24 %: 119.5.
 */
export function atMoisture(
  atTwelve: number,
  green: number,
  moisture: number,
  intersection = USUAL_INTERSECTION,
): number {
  const ratio = positive(atTwelve, 'a property at 12 %') / positive(green, 'a property of green wood')
  if (!(moisture >= 0 && moisture < 1))
    throw new RangeError(`moisture must be a share from 0 to 1, not ${moisture}`)
  if (moisture >= intersection) return green
  return atTwelve * ratio ** ((TABLE_MOISTURE - moisture) / (intersection - TABLE_MOISTURE))
}
