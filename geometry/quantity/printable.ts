/** What stood in a file, made fit for a sentence about it. */

/**
 * A file may hold what would turn a terminal's words over or clear its screen; a sentence about it may not.
 * Example: `printable('a\u202eb')` is `a\ufffdb`.
 */
export const printable = (text: string): string =>
  text.replace(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/gu, '\ufffd')
