import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { plainLine, slug } from '../../../exporters/words/plain.ts'

describe('plainLine', () => {
  test.each([
    ['Lid\nof\r\n\ttea', 'Lid of tea'],
    ['a\u0000b\u0007c\u001bd\u0085e', 'abcde'],
    ['\u202egnp.lid\u202c', 'gnp.lid'],
    ['a\u2066b\u2069\u200f\u200e\ufeffc\u200bd', 'ab cd'],
    ['half \ud800 pair', 'half pair'],
    ['\ufffe\uffff', ''],
    ['  Söhne’s  box ⌀6 🎸 ', 'Söhne’s box ⌀6 🎸'],
  ])('%j becomes %j', (text, line) => {
    expect(plainLine(text)).toBe(line)
  })

  test('a line longer than asked for ends in three dots and cuts no character in two', () => {
    const line = plainLine('🎸'.repeat(300))
    expect([...line]).toHaveLength(250)
    expect(line.endsWith('🎸...')).toBe(true)
  })

  test('what is not a string is refused with its value', () => {
    expect(() => plainLine(undefined as unknown as string)).toThrow('undefined')
  })

  test('of any string a line remains that XML 1.0 can hold, with no break and no mark of direction', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        const line = plainLine(text)
        // XML 1.0 fifth edition, production 2: Char.
        expect(line).toMatch(/^[\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]*$/u)
        expect(line).not.toMatch(/[\u202a-\u202e\u2066-\u2069\u200e\u200f\u2028\u2029]/u)
        expect(plainLine(line)).toBe(line)
      }),
    )
  })
})

describe('slug', () => {
  test.each([
    ['Söhne’s tea box #2', 'sohne-s-tea-box-2'],
    ['../../etc/passwd', 'etc-passwd'],
    ['<script>', 'script'],
    ['茶箱', 'template'],
    ['', 'template'],
    ['a'.repeat(100), 'a'.repeat(60)],
  ])('%j becomes %j', (title, name) => {
    expect(slug(title, 'template')).toBe(name)
  })
})
