/**
 * The build sheet as one HTML page: no script, no request, nothing but itself; what a user wrote is text and never
 * markup. Tables break between rows and repeat their headings; pictures and steps stay whole.
 */
import { unbroken } from '../../../geometry/index.ts'
import { element, type Markup, textNode } from '../../svg/element.ts'
import { cellText, headingOf, isFigure } from '../../tables/cells.ts'
import type { Block, Cell, Column, Section, Sheet, Table } from '../model.ts'
import { pictureSvg } from './picture-svg.ts'
import { sheetStyle } from './style.ts'

/** Lines for a pencil in a table that has no rows yet. */
const EMPTY_ROWS = 6

/** Tables of so many rows or fewer are kept on one page; of those that are to be kept, so many. */
const SHORT = 14
const KEPT = 36

/** Tables of more columns than this are set smaller. */
const MANY_COLUMNS = 8

const text = (words: string): Markup[] => [textNode(unbroken(words))]

/** An element that may be empty: HTML knows no short form for `td` or `p`. */
const full = (name: string, attributes: Parameters<typeof element>[1], children: readonly Markup[]): Markup =>
  element(name, attributes, children.length > 0 ? children : [{ markup: '' }])

function tableMarkup(table: Table, sheet: Sheet): Markup {
  const align = (column: Column) => (isFigure(column) ? 'figure' : column.whole ? 'whole' : undefined)
  const row = (cells: readonly Cell[]): Markup =>
    full(
      'tr',
      {},
      table.columns.map((column, index) =>
        full('td', { class: align(column) }, text(cellText(cells[index] ?? null, column, sheet.units))),
      ),
    )
  const empty = table.rows.length === 0
  const rows = empty
    ? Array.from({ length: EMPTY_ROWS }, () =>
        full(
          'tr',
          {},
          table.columns.map(() => full('td', {}, [])),
        ),
      )
    : table.rows.map(row)
  const short = table.rows.length <= (table.keep ? KEPT : SHORT)
  const classes = ['table', short ? 'short' : '', table.columns.length > MANY_COLUMNS ? 'wide' : '']
  return element('div', { class: classes.filter(Boolean).join(' ') }, [
    element('table', { id: `table-${table.id}`, class: empty ? 'empty' : undefined }, [
      element('caption', {}, text(table.title)),
      element('thead', {}, [
        full(
          'tr',
          {},
          table.columns.map((column) =>
            full('th', { scope: 'col', class: align(column) }, text(headingOf(column, sheet.units))),
          ),
        ),
      ]),
      full('tbody', {}, rows),
    ]),
    ...(table.note === undefined ? [] : [element('p', { class: 'note' }, text(table.note))]),
  ])
}

function blockMarkup(block: Block, sheet: Sheet): Markup[] {
  switch (block.kind) {
    case 'table':
      return [tableMarkup(block.table, sheet)]
    case 'picture': {
      const { picture } = block
      return [
        element('figure', { id: `figure-${picture.id}` }, [
          pictureSvg(picture),
          element('figcaption', {}, text(`${picture.title}. ${picture.caption}`)),
        ]),
        ...(picture.table ? [tableMarkup(picture.table, sheet)] : []),
      ]
    }
    case 'words':
      return block.lines.map((line) => element('p', { dir: 'auto' }, text(line)))
    case 'steps':
      return [
        element(
          'ol',
          { class: 'steps' },
          block.steps.map((step) =>
            element('li', {}, [
              element('h3', {}, text(step.title)),
              element('p', {}, text(step.words)),
              ...(step.caution === undefined
                ? []
                : [
                    element('p', { class: 'caution' }, [
                      element('b', {}, text('Mind:')),
                      textNode(` ${step.caution}`),
                    ]),
                  ]),
            ]),
          ),
        ),
      ]
  }
}

const sectionMarkup = (section: Section, sheet: Sheet): Markup =>
  element('section', { id: section.id }, [
    element('h2', {}, text(section.title)),
    ...section.blocks.flatMap((block) => blockMarkup(block, sheet)),
  ])

/**
 * The whole page as text (UTF-8). The same sheet gives the same bytes.
 * Throws a RangeError for a number that is not finite. Example: `writeSheetHtml(buildSheet(design))`.
 */
export function writeSheetHtml(sheet: Sheet): string {
  const head = element('head', {}, [
    { markup: '<meta charset="utf-8">' },
    {
      markup:
        '<meta http-equiv="Content-Security-Policy" content="default-src \'none\'; style-src \'unsafe-inline\'">',
    },
    { markup: '<meta name="viewport" content="width=device-width, initial-scale=1">' },
    element('title', {}, text(`${sheet.title}: build sheet`)),
    { markup: `<style>${sheetStyle(`${sheet.title} · build sheet`)}</style>` },
  ])
  const body = element('body', {}, [
    element('h1', { dir: 'auto' }, text(sheet.title)),
    element(
      'dl',
      { class: 'head' },
      sheet.head.map(([label, value]) =>
        element('div', {}, [element('dt', {}, text(label)), element('dd', { dir: 'auto' }, text(value))]),
      ),
    ),
    ...sheet.sections.map((section) => sectionMarkup(section, sheet)),
    element(
      'p',
      { class: 'checksum' },
      text(
        `Design ${sheet.checksum}: the label in the box carries the same figures. All loads are estimates.`,
      ),
    ),
  ])
  return `<!doctype html>\n${element('html', { lang: 'en' }, [head, body]).markup}\n`
}
