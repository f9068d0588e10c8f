/**
 * Base45 after RFC 9285: bytes as the 45 signs of a QR code's alphanumeric mode, which takes them in 5.5 bits each, so
 * that carried bytes cost a sixteenth more and no more.
 */

const SIGNS = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:'

/** Two bytes become three signs, a last single byte two. Example: `toBase45(bytes of 'AB')` is `BB8`. */
export function toBase45(bytes: Uint8Array): string {
  let text = ''
  const sign = (value: number) => SIGNS.charAt(value)
  for (let at = 0; at < bytes.length; at += 2) {
    const first = bytes[at] ?? 0
    const second = bytes[at + 1]
    if (second === undefined) return `${text}${sign(first % 45)}${sign(Math.floor(first / 45))}`
    const pair = first * 256 + second
    text += sign(pair % 45) + sign(Math.floor(pair / 45) % 45) + sign(Math.floor(pair / 2025))
  }
  return text
}

/** The bytes of a text in Base45; `null` for a text that is none. */
export function fromBase45(text: string): Uint8Array | null {
  if (text.length % 3 === 1) return null
  const bytes: number[] = []
  for (let at = 0; at < text.length; at += 3) {
    const values = [...text.slice(at, at + 3)].map((sign) => SIGNS.indexOf(sign))
    if (values.includes(-1)) return null
    const [a = 0, b = 0, c] = values
    const value = a + b * 45 + (c ?? 0) * 2025
    if (value > (c === undefined ? 0xff : 0xffff)) return null
    if (c !== undefined) bytes.push(value >> 8)
    bytes.push(value & 0xff)
  }
  return Uint8Array.from(bytes)
}
