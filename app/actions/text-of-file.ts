/** The text of a file that somebody chose or dropped: looked at by its size before a byte of it is read. */

/** No design is larger, its photographs included; bytes. */
export const LARGEST_DESIGN = 50e6

/** No drawing of one curve is larger; bytes. */
export const LARGEST_CURVE = 8e6

export type FileText =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly sentence: string }

/**
 * Reads a file, or says why not: a page that takes 200 MB into its memory to find out that they are no design hangs.
 * Example: `await textOfFile(file, LARGEST_DESIGN)`.
 */
export async function textOfFile(file: Pick<File, 'size' | 'text'>, most: number): Promise<FileText> {
  if (file.size > most)
    return {
      ok: false,
      sentence: `It has ${Math.round(file.size / 1e6)} megabytes; no file of this sort has more than ${most / 1e6}. It was not read.`,
    }
  try {
    return { ok: true, text: await file.text() }
  } catch {
    return { ok: false, sentence: 'The browser could not read it. Choose it from the menu instead.' }
  }
}
