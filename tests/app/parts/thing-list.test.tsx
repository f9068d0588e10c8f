/** The list of things: a row for each, with its tightest margin, light enough for thousands. */
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { act } from 'react'
import { createRoot, type Root } from 'react-dom/client'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { GRADE_WORDS } from '../../../app/parts/say.ts'
import { ThingList } from '../../../app/parts/ThingList.tsx'
import { adopt } from '../../../app/state/index.ts'
import { readDesign } from '../../../geometry/index.ts'
import { project } from '../../support/project-files.ts'

let root: Root
let page: HTMLElement

const read = readDesign(readFileSync(join(project, 'sample-boxes', 'watch-box-tight.lidwright.json'), 'utf8'))
if (!read.ok) throw new Error(read.faults[0]?.sentence)
const { design } = read

beforeEach(() => {
  page = document.body.appendChild(document.createElement('div'))
  root = createRoot(page)
  adopt(design)
  act(() => root.render(<ThingList />))
})
afterEach(() => {
  act(() => root.unmount())
  page.remove()
})

const rowOf = (title: string) =>
  [...page.querySelectorAll('.thing-row')].find((one) => one.textContent?.startsWith(title))

test('a thing too near to something has the sign and the word of its grade, and its margin', () => {
  for (const title of ['Treble hole', 'Bass hole', 'Small hole']) {
    const row = rowOf(title)
    expect(row?.querySelector('[role="img"]')?.getAttribute('aria-label')).toBe(GRADE_WORDS.care)
    expect(row?.querySelector('.thing-margin')?.textContent).toMatch(/^\d+\.\d/)
  }
  expect(rowOf('Saddle')?.querySelector('[role="img"]')).toBeNull()
})

test('no row holds a picture that the browser would have to look after in every frame', () => {
  expect(page.querySelectorAll('.thing-row').length).toBeGreaterThan(10)
  expect(page.querySelectorAll('.thing-row :is(svg, img, canvas)')).toHaveLength(0)
})
