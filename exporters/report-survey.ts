/** What the report says of a surveyed box: readings, adjusted dimensions with their certainty, corners, twist. */
import {
  CORNERS,
  DISTANCES,
  graduationOf,
  heightsOf,
  type Layout,
  squarenessOf,
  surveyOf,
} from '../geometry/index.ts'

/** `null` of a box that was measured once; what readings that make no box leave unknown is `null` too. */
export function surveyReport({ design, real, box }: Layout) {
  if (!design.box.survey) return null
  const graduation = graduationOf(design)
  const result = surveyOf(design.box, graduation)
  if (!result) return null
  const heights = heightsOf(design.box, graduation / 2)
  const shared = {
    makesBox: result.ok,
    twist: heights?.twist?.by ?? null,
    twistError: heights?.twist?.standardError ?? null,
  }
  if (!result.ok)
    return {
      ...shared,
      redundancy: null,
      oneReading: graduation / 2,
      scatter: null,
      outOfSquare: null,
      outOfSquareError: null,
      distances: [],
      readings: [],
      assumed: [],
      corners: [],
    }
  const { survey } = result
  const { angles, overLength, overLengthError } = squarenessOf(survey)
  const suspects = new Set(survey.disagreement?.suspects ?? [])
  return {
    ...shared,
    redundancy: survey.redundancy,
    oneReading: survey.sigma,
    scatter: survey.scatter,
    outOfSquare: overLength,
    outOfSquareError: overLengthError,
    distances: DISTANCES.map((name) => ({ name, ...survey.distances[name] })),
    readings: survey.readings.map((one) => ({
      of: one.of,
      number: one.index + 1,
      value: one.value,
      residual: one.residual,
      standardized: one.standardized,
      redundancy: one.redundancy,
      disagrees: suspects.has(one),
    })),
    assumed: survey.assumptions.map(({ of, as }) => ({ of, as })),
    corners: CORNERS.map((name, index) => ({
      name,
      fromNut: box.x0 + (real?.outside.corners[index]?.x ?? 0),
      fromCentreline: real?.outside.corners[index]?.y ?? 0,
      angle: angles[index]?.angle ?? 0,
      angleError: angles[index]?.standardError ?? 0,
      wallHeight: heights?.at[index] ?? null,
    })),
  }
}
