/** The letters kept for the sheets, held against the whole font. */
import { expect, test } from 'vitest'
import { advanceOf, outlinesBySign, tablesOf } from '../../../exporters/pdf/font/sfnt.ts'
import { openTypeface } from '../../../exporters/pdf/font/typeface.ts'
import { keptFont, wholeFont } from '../../support/font.ts'

test('what is kept in the module is what its script makes of the font', async () => {
  const { tables } = await openTypeface()
  const made = tablesOf(keptFont())
  expect([...tables.keys()].sort()).toEqual([...made.keys()].sort())
  for (const [tag, bytes] of tables)
    expect(Buffer.compare(Buffer.from(bytes), Buffer.from(made.get(tag) ?? [])), tag).toBe(0)
})

test('every letter kept is as wide as in the whole font', async () => {
  const { tables } = await openTypeface()
  const whole = tablesOf(wholeFont())
  const wholeSigns = outlinesBySign(whole)
  const kept = outlinesBySign(tables)
  expect(kept.size).toBeGreaterThan(1200)
  for (const [sign, outline] of kept) {
    expect(advanceOf(tables, outline)).toBe(advanceOf(whole, wholeSigns.get(sign) ?? -1))
  }
})

test('accents are joined to their letters, what is lacking is named once', async () => {
  const typeface = await openTypeface()
  expect(typeface.writable('Cafe\u0301')).toEqual({ text: 'Café', missing: [] })
  expect(typeface.writable('a 茶 b 茶 \u{1f3b8}')).toEqual({ text: 'a b', missing: ['茶', '\u{1f3b8}'] })
  expect(() => typeface.set('茶')).toThrow('U+8336')
})

test('not a font, no font', () => {
  expect(() => tablesOf(new Uint8Array(20))).toThrow('not a TrueType font')
})
