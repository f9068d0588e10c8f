/**
 * The three ways a head is made from a stick, as heights and lengths: straight and carved down, lowered by a step, or
 * sawn off at an angle and glued back on.
 *
 * Lengths of the head are taken along its face: from the front of the nut along the neck to the back of the nut, where
 * the head begins, and on along the face. On a head that is not tilted that is the distance from the nut.
 */
import type { Design } from '../design/schema.ts'

type Head = Design['headstock']

/** Lost to the saw where a scarf is cut. Millimetres; common practice, no source. */
const SAW_CUT = 2

/** Millimetres: far below what any saw can show. */
const HANGS_ON = 0.02

/** Radians by which the head's face falls away from the neck's. */
export const tiltOf = ({ form, tiltDegrees }: Pick<Head, 'form' | 'tiltDegrees'>): number =>
  form === 'scarfed' ? (tiltDegrees * Math.PI) / 180 : 0

/**
 * Where a length along the head's face falls on the plan; `nutBack` is the back of the nut. Plane geometry.
 * Example: on a head tilted 60 degrees right behind a nut that has no thickness, 100 along the face is 50 behind the nut.
 */
export function onPlan(head: Head, nutBack: number, along: number): number {
  const behind = along + nutBack
  return behind <= 0 || head.form !== 'scarfed' ? -along : nutBack - behind * Math.cos(tiltOf(head))
}

/** The other way: the length along the face of a place on the plan. */
export function alongFace(head: Head, nutBack: number, x: number): number {
  const behind = nutBack - x
  return behind <= 0 || head.form !== 'scarfed' ? -x : behind / Math.cos(tiltOf(head)) - nutBack
}

/** Height of the head's face at x behind the nut, the slope of a straight one left out. */
export function faceHeight({ neck, headstock }: Design, nutBack: number, x: number): number {
  switch (headstock.form) {
    case 'straight':
      return neck.rise - Math.max(0, neck.thickness - headstock.thickness)
    case 'stepped':
      // A step below the neck itself would leave nothing to hold the head; it is drawn as if it just hung on.
      return neck.rise - Math.min(headstock.step, neck.thickness - HANGS_ON)
    case 'scarfed':
      return neck.rise - Math.max(0, nutBack - x) * Math.tan(tiltOf(headstock))
  }
}

/** Wood from face to back of the head, measured straight down. */
export function headDepth({ neck, headstock }: Design): number {
  if (headstock.form === 'straight') return Math.min(neck.thickness, headstock.thickness)
  return headstock.thickness / Math.cos(tiltOf(headstock))
}

/** Where a string leaves the post that stands at x: so far over the face as strings wind. Seen from the side, x and z. */
export function windingAt(
  design: Design,
  nutBack: number,
  x: number,
): { readonly x: number; readonly z: number } {
  const { postHeight } = design.headstock
  const tilt = tiltOf(design.headstock)
  return {
    x: x - postHeight * Math.sin(tilt),
    z: faceHeight(design, nutBack, x) + postHeight * Math.cos(tilt),
  }
}

/**
 * How much of the blank's length lies before the front of the nut. A scarfed head is sawn from the same stick: of its
 * length along the face it gives back what the bevel of its end saves, and the saw takes its own.
 */
export function headOfBlank({ headstock }: Design, nutBack: number): number {
  const { length } = headstock
  if (headstock.form !== 'scarfed' || length + nutBack <= 0) return length
  return length - headstock.thickness * Math.tan(tiltOf(headstock) / 2) + SAW_CUT
}
