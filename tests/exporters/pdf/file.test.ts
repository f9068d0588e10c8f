/** The frame of a PDF: read back by a library that repairs nothing when it is told so (@cantoo/pdf-lib). */
import { PDFDict, PDFDocument, PDFName, PDFRawStream } from '@cantoo/pdf-lib'
import { expect, test } from 'vitest'
import { PdfFile } from '../../../exporters/pdf/file.ts'
import { planPrint, printPdf, STANDARD_SETUP } from '../../../exporters/pdf/index.ts'
import { type Design, partsOf, solve } from '../../../geometry/index.ts'
import { samples } from '../../support/samples.ts'

const design = samples().find(({ name }) => name.startsWith('tea-box'))?.design as Design

async function printed(title: string) {
  const plan = planPrint(partsOf(solve(design)), { ...STANDARD_SETUP, paper: 'letter' })
  if (!plan.ok) throw new Error(plan.sentence)
  return printPdf(plan.plan, { title })
}

test('another library reads every object, the title in any script, and the paper', async () => {
  const { bytes, pages } = await printed('Kästchen Ж “½”')
  const document = await PDFDocument.load(bytes, { throwOnInvalidObject: true, updateMetadata: false })
  expect(document.getPageCount()).toBe(pages)
  expect(document.getTitle()).toBe('Kästchen Ж “½”')
  for (const page of document.getPages()) {
    const { width, height } = page.getSize()
    // ANSI Letter: 8 1/2 by 11 inches of 72 points.
    expect([Math.min(width, height), Math.max(width, height)]).toEqual([612, 792])
  }
  const preferences = document.catalog.lookup(PDFName.of('ViewerPreferences'), PDFDict)
  expect(preferences.get(PDFName.of('PrintScaling'))).toBe(PDFName.of('None'))
})

test('every object begins where the table says, and every stream is as long as it says', async () => {
  const { bytes } = await printed('Box')
  const text = Buffer.from(bytes).toString('latin1')
  const table = Number(/startxref\n(\d+)\n%%EOF\n$/.exec(text)?.[1])
  const rows = [...text.slice(table).matchAll(/^(\d{10}) (\d{5}) ([nf]) \n/gm)]
  expect(rows.length).toBeGreaterThan(20)
  for (const [number, [row, place, , kind]] of rows.entries()) {
    // ISO 32000-1, 7.5.4: each entry is exactly 20 bytes long.
    expect(row).toHaveLength(20)
    if (kind === 'n') expect(text.startsWith(`${number} 0 obj\n`, Number(place))).toBe(true)
  }
  const document = await PDFDocument.load(bytes, { throwOnInvalidObject: true, updateMetadata: false })
  const streams = document.context
    .enumerateIndirectObjects()
    .flatMap(([, one]) => (one instanceof PDFRawStream ? [one] : []))
  expect(streams.length).toBeGreaterThan(10)
  for (const stream of streams)
    expect(String(stream.dict.get(PDFName.of('Length')))).toBe(String(stream.contents.length))
})

test('an object that was named has to be written, and signs beyond ASCII are refused', () => {
  const file = new PdfFile()
  const named = file.reserve()
  expect(() => file.bytes(named, named)).toThrow('never written')
  file.fill(named, '<< /Title (é) >>')
  expect(() => file.bytes(named, named)).toThrow('beyond ASCII')
})
