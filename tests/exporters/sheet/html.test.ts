/** The page as a reader of HTML has it: built of what it should be, and nothing a user wrote is markup. */
import { JSDOM } from 'jsdom'
import { describe, expect, it } from 'vitest'
import { buildSheet } from '../../../exporters/sheet/build-sheet.ts'
import { writeSheetHtml } from '../../../exporters/sheet/html/write-html.ts'
import { tablesOf } from '../../../exporters/sheet/model.ts'
import { checkDesign, type Design } from '../../../geometry/index.ts'
import { samples } from '../../support/samples.ts'

const cutlery = samples().find(({ name }) => name.startsWith('cutlery'))?.design as Design

const HOSTILE = '<img src=x onerror=alert(1)>"\'&</style><script>alert(2)</script>\u202egnp.exe'

function hostile(): Design {
  const reading = checkDesign({
    ...cutlery,
    title: HOSTILE.slice(0, 120),
    notes: HOSTILE,
    things: cutlery.things.map((thing) => ({ ...thing, name: HOSTILE.slice(0, 80) })),
    record: {
      maker: HOSTILE.slice(0, 120),
      notes: HOSTILE,
      built: [{ what: HOSTILE.slice(0, 100), planned: '=cmd()', built: 3, note: HOSTILE }],
      history: [{ who: '@SUM(1)', when: HOSTILE.slice(0, 60), strings: HOSTILE, note: '' }],
    },
  })
  if (!reading.ok) throw new Error(reading.faults[0]?.sentence)
  return reading.design
}

const read = (design: Design) =>
  new new JSDOM().window.DOMParser().parseFromString(writeSheetHtml(buildSheet(design)), 'text/html')

describe('the page', () => {
  const document = read(cutlery)

  it('has no script and asks for nothing from outside', () => {
    expect(document.querySelectorAll('script, link, img, iframe, object, embed, base, form')).toHaveLength(0)
    for (const one of document.querySelectorAll('*'))
      for (const { name, value } of one.attributes) {
        expect(name).not.toMatch(/^on/)
        if (name !== 'xmlns') expect(value).not.toMatch(/https?:|data:|javascript:/)
      }
    expect(document.querySelector('style')?.textContent).not.toMatch(/url\(|@import/)
    expect(document.querySelector('meta[http-equiv]')?.getAttribute('content')).toContain(
      "default-src 'none'",
    )
  })

  it('has one heading of the first rank, and a section with a heading for each part of the sheet', () => {
    expect([...document.querySelectorAll('h1')].map((one) => one.textContent)).toEqual([cutlery.title])
    const sections = buildSheet(cutlery).sections
    expect([...document.querySelectorAll('section')].map((one) => one.id)).toEqual(
      sections.map((one) => one.id),
    )
    for (const one of document.querySelectorAll('section')) expect(one.querySelector('h2')).not.toBeNull()
  })

  it('names every table and every column', () => {
    const tables = [...document.querySelectorAll('table')]
    expect(tables).toHaveLength(tablesOf(buildSheet(cutlery)).length)
    for (const table of tables) {
      expect(table.caption?.textContent).toMatch(/\S/)
      const columns = table.tHead?.rows[0]?.cells.length
      for (const row of table.tBodies[0]?.rows ?? []) expect(row.cells).toHaveLength(columns ?? 0)
      for (const head of table.tHead?.rows[0]?.cells ?? []) expect(head.getAttribute('scope')).toBe('col')
    }
  })

  it('gives every picture its size in millimetres, a name and words below', () => {
    const pictures = [...document.querySelectorAll('figure')]
    expect(pictures.length).toBeGreaterThan(4)
    for (const figure of pictures) {
      const svg = figure.querySelector('svg')
      // An A4 page of 210 mm less margins of 15 mm each side: ISO 216.
      expect(Number.parseFloat(svg?.getAttribute('width') ?? '')).toBeLessThanOrEqual(180)
      expect(Number.parseFloat(svg?.getAttribute('height') ?? '')).toBeLessThanOrEqual(240)
      expect(svg?.querySelector('title')?.textContent).toMatch(/\S/)
      expect(figure.querySelector('figcaption')?.textContent).toMatch(/\S/)
    }
  })
})

describe('what a hostile file says', () => {
  const document = read(hostile())

  it('is text on the page and never markup', () => {
    expect(document.querySelectorAll('script, img')).toHaveLength(0)
    expect(document.querySelector('h1')?.textContent).toContain('<img src=x')
    expect(document.querySelectorAll('style')).toHaveLength(1)
  })

  it('turns no reading direction', () => {
    expect(document.documentElement.outerHTML).not.toMatch(/[\u202a-\u202e\u2066-\u2069]/u)
  })
})
