/**
 * The lengths below which this room stops telling things apart. Every comparison that allows for rounding
 * names one of these.
 */

/**
 * Points and lines closer than this, in millimetres, are the same point, or touch: a nanometre, far below any
 * tool and far above the rounding of coordinates a metre long (about 1e-13 mm).
 */
export const SAME_POINT = 1e-6

/**
 * A bulge smaller than this is drawn as a straight line. Its rise is under 5e-9 of its chord, and below it the
 * radius grows so long that measuring from the centre loses more than the rise itself.
 */
export const STRAIGHT_BULGE = 1e-8

/**
 * Nearer to a centre than this, in millimetres, a direction from it means nothing any more: all of the circle is
 * as near, to less than rounding.
 */
export const AT_CENTRE = 1e-12

/** How closely a depth found by search is found, in millimetres. See `farthest`. */
export const SEARCH = 0.001
