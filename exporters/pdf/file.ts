/**
 * The frame of a PDF file (ISO 32000-1, 7.3 and 7.5): numbered objects, the table of where each begins, the trailer.
 * Values are text as the file holds it; streams are not compressed. Nothing here knows what the objects mean.
 */

/** A value as it stands in the file: `12`, `/Name`, `[0 0 595 842]`, `<< … >>`. */
export type Value = string

/** The entries of a dictionary, by their names without the stroke. */
export type Entries = Readonly<Record<string, Value>>

/** A dictionary. Example: `dictionary({ Type: '/Page' })` is `<< /Type /Page >>`. */
export const dictionary = (entries: Entries): Value =>
  `<< ${Object.entries(entries)
    .map(([name, value]) => `/${name} ${value}`)
    .join(' ')} >>`

export const array = (values: readonly (Value | number)[]): Value => `[${values.join(' ')}]`

/** Any text as a string of UTF-16 behind its byte order mark, in hexadecimal digits (7.9.2.2 and 7.3.4.3). */
export function textString(text: string): Value {
  let digits = 'feff'
  for (let at = 0; at < text.length; at++) digits += text.charCodeAt(at).toString(16).padStart(4, '0')
  return `<${digits.toUpperCase()}>`
}

/** Four bytes above 127 in the second line tell whoever carries the file that it is not text (7.5.2). */
const HEAD = Uint8Array.of(
  ...[...'%PDF-1.7\n%'].map((sign) => sign.charCodeAt(0)),
  0x81,
  0x81,
  0x81,
  0x81,
  10,
)

const encoder = new TextEncoder()

/** Objects in the order of their numbers, put together to one file at the end. */
export class PdfFile {
  /** Each object between `obj` and `endobj`: pieces of text and of bytes. */
  readonly #objects: (readonly (string | Uint8Array)[] | null)[] = []

  /** Puts an object in, and gives the reference that others name it by: `3 0 R`. */
  add(value: Value): Value {
    this.#objects.push([value])
    return `${this.#objects.length} 0 R`
  }

  /** A number for an object that has to be named before it is known; `fill` puts it in. */
  reserve(): Value {
    this.#objects.push(null)
    return `${this.#objects.length} 0 R`
  }

  /** Puts in what a number was reserved for. */
  fill(reference: Value, value: Value): void {
    this.#objects[Number.parseInt(reference, 10) - 1] = [value]
  }

  /** A stream: its length is written by itself. Text has to be ASCII, as contents of pages are. */
  stream(content: string | Uint8Array, entries: Entries = {}): Value {
    const head = dictionary({ Length: String(content.length), ...entries })
    this.#objects.push([`${head}\nstream\n`, content, '\nendstream'])
    return `${this.#objects.length} 0 R`
  }

  /** The file. Throws where a reserved object was never filled. The same objects give the same bytes. */
  bytes(root: Value, info: Value): Uint8Array {
    const pieces: (string | Uint8Array)[] = [HEAD]
    const starts: number[] = []
    let length = HEAD.length
    const put = (piece: string | Uint8Array) => {
      pieces.push(piece)
      length += piece.length
    }
    for (const [index, object] of this.#objects.entries()) {
      if (object === null) throw new Error(`Object ${index + 1} of the PDF was named but never written.`)
      starts.push(length)
      put(`${index + 1} 0 obj\n`)
      for (const piece of object) put(piece)
      put('\nendobj\n')
    }
    const size = this.#objects.length + 1
    const table = starts.map((start) => `${String(start).padStart(10, '0')} 00000 n \n`).join('')
    const start = length
    put(`xref\n0 ${size}\n0000000000 65535 f \n${table}`)
    put(
      `trailer\n${dictionary({ Size: String(size), Root: root, Info: info })}\nstartxref\n${start}\n%%EOF\n`,
    )
    const file = new Uint8Array(length)
    let at = 0
    for (const piece of pieces) {
      if (typeof piece === 'string') {
        const { read, written } = encoder.encodeInto(piece, file.subarray(at))
        // One byte a sign, or every place in the table behind it would be wrong.
        if (read !== piece.length || written !== piece.length)
          throw new RangeError(`A PDF object holds signs beyond ASCII: ${piece.slice(0, 60)}`)
      } else file.set(piece, at)
      at += piece.length
    }
    return file
  }
}
