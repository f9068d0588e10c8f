/**
 * A design whose every word means harm, through every writer: what comes out is read by readers that are not ours, and
 * must hold nothing but what a harmless design would have put there.
 */
import { PDFDocument } from '@cantoo/pdf-lib'
import { unzipSync } from 'fflate'
import { SaxesParser } from 'saxes'
import { describe, expect, test } from 'vitest'
import {
  makeBundle,
  planPrint,
  printPdf,
  STANDARD_SETUP,
  sheetFiles,
  templates,
  writeLabelSvg,
} from '../../exporters/index.ts'
import { partsOf, solve } from '../../geometry/index.ts'
import { designOf } from '../support/designs.ts'
import { readCsv } from '../support/readCsv.ts'
import { rawRecords, readWithDxf, readWithDxfParser } from '../support/readDxf.ts'

/** Ends a DXF string and begins a section, an element, a formula and a script; turns the reading; leaves a folder. */
const EVIL =
  '=HYPERLINK("x")\n0\nENDSEC\n0\nEOF\n8\nCUT-OUTSIDE\n</text><script>steal()</script>"><a href="javascript:steal()">&lol; \u202egnp.lid ../../etc'

const wordy = (words: string) =>
  designOf({
    title: words.slice(0, 120),
    notes: words,
    cutting: { process: 'by hand' },
    stringing: { tuning: ['G2', 'D3', 'G3'] },
    things: [
      {
        kind: 'sound-hole',
        id: 'eye',
        name: words.slice(0, 80),
        along: 60,
        across: 50,
        group: words.slice(0, 40),
      },
      { kind: 'pickup', id: 'ear', name: words.slice(0, 80), along: { ofScale: 0.15 } },
    ],
    overruled: { 'opening-to-edge eye': words },
    measures: [],
    record: {
      maker: words.slice(0, 80),
      built: [{ what: words.slice(0, 120), planned: 'box.depth', built: 50, note: words }],
      history: [{ who: words.slice(0, 60), when: words.slice(0, 40), strings: words, note: words }],
    },
  })

const evil = wordy(EVIL)
const plain = wordy('A harmless word')
const filesOf = (design: typeof evil, dxfRelease: '2000' | '12') =>
  templates(partsOf(solve(design)), {
    title: design.title,
    line: design.notes,
    formats: ['svg', 'dxf'],
    dxfRelease,
  })

describe('a DXF', () => {
  test.each(['2000', '12'] as const)(
    'of release %s has the same entities, layers and sections as ever',
    (release) => {
      const [one, other] = [evil, plain].map((design) =>
        filesOf(design, release).filter(({ name }) => name.endsWith('.dxf')),
      )
      expect(one).toHaveLength(other?.length ?? 0)
      one?.forEach(({ text, name }, index) => {
        const wanted = other?.[index]?.text ?? ''
        for (const read of [readWithDxf, readWithDxfParser]) {
          expect([...read(text).types], name).toEqual([...read(wanted).types])
          expect([...read(text).layers.keys()]).toEqual([...read(wanted).layers.keys()])
        }
        const sections = (file: string) =>
          rawRecords(file).flatMap(({ type, section }) =>
            /^(SECTION|ENDSEC|EOF)$/.test(type) ? [`${type} ${section}`] : [],
          )
        expect(sections(text)).toEqual(sections(wanted))
        expect(text).toMatch(/^[\r\n\x20-\x7e]*$/)
      })
    },
  )
})

/** Names of elements and attributes of a well-formed text; throws for any other. */
function markup(text: string): { readonly elements: Set<string>; readonly attributes: Set<string> } {
  const [elements, attributes] = [new Set<string>(), new Set<string>()]
  const parser = new SaxesParser()
  parser.on('error', (error) => {
    throw error
  })
  parser.on('doctype', () => elements.add('!DOCTYPE'))
  parser.on('opentag', (tag) => {
    elements.add(tag.name)
    for (const name of Object.keys(tag.attributes)) attributes.add(name)
  })
  parser.write(text).close()
  return { elements, attributes }
}

describe('an SVG', () => {
  test('has the same elements and attributes as ever, no script, no link, no entity', () => {
    const [one, other] = [evil, plain].map((design) =>
      filesOf(design, '2000').filter(({ name }) => name.endsWith('.svg')),
    )
    one?.forEach(({ text }, index) => {
      const { elements, attributes } = markup(text)
      expect({ elements, attributes }).toEqual(markup(other?.[index]?.text ?? ''))
      for (const bad of ['script', 'a', 'foreignObject', 'image', 'use', 'style', '!DOCTYPE'])
        expect(elements).not.toContain(bad)
      expect([...attributes].filter((name) => /^on|href/.test(name))).toEqual([])
      expect(text).not.toMatch(/\u202e|&lol;/)
    })
    expect(markup(writeLabelSvg(evil)).elements).toEqual(markup(writeLabelSvg(plain)).elements)
  })
})

describe('a sheet', () => {
  const page = (design: typeof evil) =>
    sheetFiles(design).find(({ name }) => name.endsWith('.html'))?.text ?? ''

  test('as a page has no more scripts, links and handlers than ever', () => {
    const count = (text: string, what: RegExp) => [...text.matchAll(what)].length
    // As words the address of a script may stand there; as an attribute it may not.
    for (const what of [/<script/g, /<a[ >]/g, /\son[a-z]+=/g, /javascript:/g, /<img/g, /<iframe/g])
      expect(count(page(evil).replace(/>[^<]*</g, '><'), what), String(what)).toBe(count(page(plain), what))
    expect(page(evil)).not.toContain('\u202e')
  })

  test('as CSV has no cell that a spreadsheet would run', () => {
    const tables = sheetFiles(evil).filter(({ name }) => name.endsWith('.csv'))
    expect(tables.length).toBeGreaterThan(3)
    const cells = tables.flatMap(({ text }) => {
      const { headings, rows } = readCsv(text)
      return [...headings, ...rows.flat()]
    })
    expect(cells.some((cell) => cell.includes('HYPERLINK'))).toBe(true)
    // The signs that begin a formula: OWASP, "CSV Injection". A plain figure may be less than nothing.
    for (const cell of cells) expect(cell).not.toMatch(/^(?!-?\d+(\.\d+)?$)[=+\-@\t\r]/)
  })
})

test('a PDF is read by another library, and has neither script nor link', async () => {
  const plan = planPrint(partsOf(solve(evil)), STANDARD_SETUP)
  if (!plan.ok) throw new Error(plan.sentence)
  const { bytes } = await printPdf(plan.plan, { title: evil.title, line: evil.notes })
  const file = await PDFDocument.load(bytes, { throwOnInvalidObject: true, updateMetadata: false })
  expect(file.getPageCount()).toBeGreaterThan(1)
  expect(file.getTitle()).not.toMatch(/[\n\u202e]/)
  expect(Buffer.from(bytes).toString('latin1')).not.toMatch(/\/(JavaScript|JS|URI|Launch|OpenAction)\b/)
})

test('a bundle holds no name that leads out of its folder, or that a disk would choke on', async () => {
  const { bytes, name } = await makeBundle(evil)
  const names = Object.keys(unzipSync(bytes))
  expect(names.length).toBeGreaterThan(20)
  for (const one of [name, ...names]) expect(one).toMatch(/^(?!.*\.\.)[a-z0-9][\w./-]*$/)
  expect(new Set(names.map((one) => one.split('/')[0])).size).toBe(1)
})
