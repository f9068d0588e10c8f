/** Measures that stay on the drawing, against places worked out by hand on a plain lid. */
import { describe, expect, test } from 'vitest'
import { checkDesign, type Layout, measuredOn, partsOf, solve } from '../../../geometry/index.ts'

/** A lid of 200 by 120 on the walls, a hole of 30 at 50 along and 40 to the treble, another at 150 and -30. */
function lid(measures: readonly object[]): Layout {
  const reading = checkDesign({
    format: 'lidwright',
    version: 1,
    hand: 'right',
    box: { length: 200, width: 120, lid: { fit: 'on the walls' } },
    neck: { width: 40 },
    things: [
      { kind: 'sound-hole', id: 'a', along: 50, across: 40, diameter: 30 },
      { kind: 'sound-hole', id: 'b', along: 150, across: -30, diameter: 30 },
    ],
    measures,
  })
  if (!reading.ok) throw new Error(reading.faults[0]?.sentence)
  return solve(reading.design)
}

const between = (from: object, to: object, way = 'straight') =>
  measuredOn(lid([{ face: 'lid', from, to, way }]))[0]?.mm

describe('a measure', () => {
  test('is drawn on the sheet with its name before its figure, only where that is asked for', () => {
    const ends = { face: 'lid', from: { of: 'a', at: 'centre' }, to: { of: 'centreline' } }
    const notesOf = (more: object) =>
      partsOf(lid([{ ...ends, ...more }]))
        .filter((part) => part.id === 'lid')
        .flatMap((part) => part.operations)
        .flatMap((one) => (one.kind === 'note' && one.of === 'Measure' ? [one.text] : []))
    expect(notesOf({ name: 'off the middle', onSheets: true })).toEqual(['off the middle 40.0 mm'])
    expect(notesOf({ onSheets: true })).toEqual(['40.0 mm'])
    expect(notesOf({ name: 'off the middle' })).toEqual([])
  })

  test.each([
    ['centre to centre', { of: 'a', at: 'centre' }, { of: 'b', at: 'centre' }, Math.hypot(100, 70)],
    ['edge to edge', { of: 'a', at: 'edge' }, { of: 'b', at: 'edge' }, Math.hypot(100, 70) - 30],
    ['edge to the treble edge', { of: 'a' }, { of: 'treble edge' }, 120 / 2 - 40 - 15],
    ['centre to the centreline', { of: 'a', at: 'centre' }, { of: 'centreline' }, 40],
    ['edge to the side of the neck', { of: 'a' }, { of: 'neck treble side' }, 40 - 15 - 20],
    ['edge to the tail-end edge', { of: 'b' }, { of: 'tail-end edge' }, 200 - 150 - 15],
  ])('%s', (_, from, to, mm) => {
    expect(between(from, to)).toBeCloseTo(mm, 9)
  })

  test('along only and across only run between the edges that face each other', () => {
    expect(between({ of: 'a' }, { of: 'b' }, 'along')).toBeCloseTo(100 - 30, 9)
    expect(between({ of: 'a' }, { of: 'b' }, 'across')).toBeCloseTo(70 - 30, 9)
    expect(between({ of: 'a', at: 'centre' }, { of: 'b', at: 'centre' }, 'along')).toBeCloseTo(100, 9)
  })

  test('to a fret that is over the box: the scale less the string left behind it (18th root rule of the octave)', () => {
    // Equal temperament: the string behind fret n is scale / 2^(n/12); the octave is half the scale.
    const layout = lid([{ face: 'lid', from: { of: 'saddle' }, to: { of: 'fret 12' } }])
    expect(measuredOn(layout)[0]?.mm).toBeCloseTo(layout.design.scale.length / 2, 6)
  })

  test('between what is not there, or lies side by side that way, is left out and does not fail', () => {
    expect(between({ of: 'gone' }, { of: 'b' })).toBeUndefined()
    expect(between({ of: 'a' }, { of: 'centreline' }, 'along')).toBeUndefined()
    expect(measuredOn(lid([]))).toEqual([])
  })

  test('goes on the sheet as a line to measure from, never as a cut, and only if asked', () => {
    const measure = { face: 'lid', from: { of: 'a' }, to: { of: 'treble edge' } }
    const of = (layout: Layout) =>
      partsOf(layout)
        .find((part) => part.id === 'lid')
        ?.operations.filter((one) => one.of === 'Measure')
        .map((one) => one.kind)
    expect(of(lid([measure]))).toEqual([])
    expect(of(lid([{ ...measure, onSheets: true }]))).toEqual(['datum', 'note'])
  })
})

test('a name that is neither a thing nor a line is refused with the lines there are', () => {
  const reading = checkDesign({
    format: 'lidwright',
    version: 1,
    measures: [{ face: 'lid', from: { of: 'the Moon' }, to: { of: 'saddle' } }],
  })
  expect(reading.ok).toBe(false)
  if (!reading.ok) expect(reading.faults[0]?.sentence).toMatch(/"the Moon".*lines are.*saddle/)
})

test('a place so far from another thing follows it, on lid and wall', () => {
  const reading = checkDesign({
    format: 'lidwright',
    version: 1,
    things: [
      { kind: 'screw', id: 'first', along: 40, across: 10 },
      { kind: 'screw', id: 'next', along: { from: 'first', by: 12 }, across: { from: 'first', by: -4 } },
      { kind: 'screw', id: 'wall', face: 'bass-wall', along: 5, across: 20 },
      {
        kind: 'screw',
        id: 'below',
        face: 'bass-wall',
        along: { from: 'wall', by: 8 },
        across: { from: 'wall', by: 6 },
      },
    ],
  })
  if (!reading.ok) throw new Error(reading.faults[0]?.sentence)
  const at = new Map(solve(reading.design).placed.map((one) => [one.thing.id, one.at]))
  expect(at.get('next')).toEqual({ x: 52, y: 6 })
  // Across a wall counts down from the lid side, and the panel's y runs up.
  expect(at.get('below')).toEqual({ x: 13, y: -26 })
})
