/** A design as the text of a file. */
import { checkDesign, type Design, designText } from '../../geometry/index.ts'
import { committed } from './commit.ts'

export interface DesignFile {
  /** Ends in `.lidwright.json`. */
  readonly name: string
  readonly text: string
}

/** The design on the bench as a file; a running gesture is not in it. Reading the text gives an equal design. */
export function saveFile(): DesignFile {
  const design = committed()
  const written = fileText(design)
  if (!written.ok) throw new Error(`the design on the bench is not valid: ${written.sentence}`)
  return { name: `${slug(design.title)}.lidwright.json`, text: written.text }
}

export type Written =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly sentence: string }

/**
 * JSON with two spaces and a newline at the end. Fields stand in the order of the schema and overruled findings by
 * name, so the same design gives the same text whatever way it was made. An invalid design gives no text.
 */
export function fileText(design: Design): Written {
  const reading = checkDesign(design)
  if (!reading.ok)
    return { ok: false, sentence: reading.faults[0]?.sentence ?? 'This is no complete design.' }
  return { ok: true, text: designText(reading.design) }
}

/** A title as the name of a file: small letters, figures and dashes. Example: `slug('Grün & blau')` is `grun-blau`. */
export function slug(title: string): string {
  const plain = title
    .normalize('NFKD')
    .replace(/\p{Mark}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .slice(0, 60)
    .replace(/^-+|-+$/g, '')
  return plain || 'untitled-box'
}
