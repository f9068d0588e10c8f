/** Lengths that stay on one line: “24 37/64 in” broken before its fraction reads as 24. */

/**
 * The text with no place to break between a whole number and its fraction, nor between a number and its unit: the
 * spaces there become U+00A0. For reading only; what is saved or read back keeps its plain spaces.
 *
 * @example unbroken('cut at 24 37/64 in') // 'cut at 24\u00a037/64\u00a0in'
 */
export const unbroken = (text: string): string =>
  text.replace(/(\d) (?=\d+\/\d|(?:mm|in|in³|lb|N|oz|g|Hz)(?![\w]))/g, '$1\u00a0')
