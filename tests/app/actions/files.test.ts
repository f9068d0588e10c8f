/** Files chosen and dropped: refused by their size before they are read, in a sentence, and the design stays. */
// @vitest-environment jsdom
import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { openDialog, useDialogs } from '../../../app/actions/dialogs.ts'
import { listenForDrops } from '../../../app/actions/dropping.ts'
import { openDesignFile } from '../../../app/actions/files.ts'
import { useBench } from '../../../app/state/index.ts'
import { designText } from '../../../geometry/index.ts'
import { designOf } from '../../support/designs.ts'

beforeEach(() => openDialog(null))
afterEach(() => vi.restoreAllMocks())

function large(name: string): { readonly file: File; readonly read: () => number } {
  const text = vi.fn(() => Promise.resolve(''))
  const file = new File(['{}'], name)
  Object.defineProperties(file, { size: { value: 200e6 }, text: { value: text } })
  return { file, read: () => text.mock.calls.length }
}

const told = () => useDialogs.getState().trouble
const SAID = {
  title: '“box.lidwright.json” could not be opened',
  sentences: ['It has 200 megabytes; no file of this sort has more than 50. It was not read.'],
}

test('200 megabytes that were chosen', async () => {
  const before = useBench.getState().design
  const { file, read } = large('box.lidwright.json')
  expect(await openDesignFile(file)).toBe(false)
  expect(told()).toEqual(SAID)
  expect(read()).toBe(0)
  expect(useBench.getState().design).toBe(before)
})

test('200 megabytes that were dropped', async () => {
  const stop = listenForDrops()
  const { file, read } = large('box.lidwright.json')
  const drop = Object.assign(new Event('drop', { cancelable: true }), { dataTransfer: { files: [file] } })
  window.dispatchEvent(drop)
  await vi.waitFor(() => expect(told()).toEqual(SAID))
  expect(read()).toBe(0)
  stop()
})

test('a file that the browser cannot read', async () => {
  const file = new File(['{}'], 'gone.json')
  Object.defineProperty(file, 'text', {
    value: () => Promise.reject(new DOMException('gone', 'NotFoundError')),
  })
  expect(await openDesignFile(file)).toBe(false)
  expect(told()?.sentences).toEqual(['The browser could not read it. Choose it from the menu instead.'])
})

test('a design of any usual size is opened', async () => {
  const file = new File([], 'box.json')
  // The File of the test's page has no text() of its own.
  Object.defineProperty(file, 'text', { value: async () => designText(designOf({ title: 'Chosen' })) })
  expect(await openDesignFile(file)).toBe(true)
  expect(useBench.getState().design.title).toBe('Chosen')
})
