/** Files and zips of strangers taken onto the shelf: nothing is written by a name in a zip, and what is refused is told. */
import { strToU8, zipSync } from 'fflate'
import { describe, expect, test } from 'vitest'
import { takeInFiles } from '../../../app/shelf/take-in.ts'
import { makeBundle } from '../../../exporters/index.ts'
import { designText } from '../../../geometry/index.ts'
import { designOf } from '../../support/designs.ts'
import { isSentence } from '../../support/sentences.ts'

const box = designOf({ title: 'Tea box' })
const text = designText(box)
const zip = (files: Record<string, string>) =>
  Uint8Array.from(
    zipSync(Object.fromEntries(Object.entries(files).map(([name, one]) => [name, strToU8(one)]))),
  )
const file = (name: string, content: string | Uint8Array) =>
  Object.assign(new Blob([content as BlobPart]), { name }) as unknown as File

/** A file that says how large it is and may not be read. */
const unread = (name: string, size: number) =>
  ({
    name,
    size,
    text: () => Promise.reject(new Error('it was read')),
    arrayBuffer: () => Promise.reject(new Error('it was read')),
  }) as unknown as File

/** Makes the zip's directory say another size for its one file (APPNOTE 6.3: 24 bytes into the entry). */
function sayUnpacked(bytes: Uint8Array, size: number): void {
  const entry = Buffer.from(bytes.buffer).lastIndexOf('PK\u0001\u0002', undefined, 'latin1')
  new DataView(bytes.buffer).setUint32(entry + 24, size, true)
}

describe('names in a zip that lead out of it', () => {
  // Paths of the kind that Snyk published as "Zip Slip" in 2018.
  test.each([
    '../../../../tmp/evil.lidwright.json',
    '/etc/cron.d/evil.lidwright.json',
    '..\\..\\evil.lidwright.json',
    'C:\\Windows\\evil.lidwright.json',
    '__proto__.lidwright.json',
  ])('%s is only a name: the design is taken, and nothing is called so', async (name) => {
    const taken = await takeInFiles([file('shelf.zip', zip({ [name]: text }))])
    expect(taken).toEqual({ designs: [box], refused: [] })
    expect(({} as { lidwright?: unknown }).lidwright).toBeUndefined()
  })

  test('the name of what is refused is said short and without marks of direction', async () => {
    const name = `${'x'.repeat(300)}.lidwright.json`
    const { refused } = await takeInFiles([
      file('shelf.zip', zip({ 'a\u202enosj.lidwright.json': '{}', [name]: '{}' })),
    ])
    expect(refused).toHaveLength(2)
    expect(refused[0]).toContain('a\ufffdnosj')
    for (const sentence of refused) {
      expect(isSentence(sentence)).toBe(true)
      expect(sentence.length).toBeLessThan(300)
    }
  })
})

test('a bundle that was made here is taken in whole', async () => {
  const { bytes, name } = await makeBundle(box)
  expect(await takeInFiles([file(name, bytes)])).toEqual({ designs: [box], refused: [] })
})

describe('files larger than any design', () => {
  test.each([
    [
      'list.json',
      200e6,
      'list.json: It has 200 megabytes; no file of this sort has more than 50. It was not read.',
    ],
    ['shelf.zip', 2e9, 'shelf.zip has 2000 megabytes, more than a shelf of designs could; it was not read.'],
  ])('%s of %d bytes is refused by its size, before a byte is read', async (name, size, sentence) => {
    expect(await takeInFiles([unread(name, size)])).toEqual({ designs: [], refused: [sentence] })
  })

  test('a zip of a few kilobytes that unpacks to gigabytes is refused before it is unpacked', async () => {
    const small = zip({ 'a.lidwright.json': '0'.repeat(1_000_000) })
    // APPNOTE 6.3: the size once unpacked stands 24 bytes into an entry of the directory at the end.
    sayUnpacked(small, 4e9)
    expect(await takeInFiles([file('bomb.zip', small)])).toEqual({
      designs: [],
      refused: ['bomb.zip holds more than a shelf of designs could; nothing was taken from it.'],
    })
  })

  test('a zip that says less than it holds gives a file that was cut off, not more memory', async () => {
    const small = zip({ 'a.lidwright.json': ' '.repeat(5_000_000) })
    sayUnpacked(small, 10)
    const { designs, refused } = await takeInFiles([file('lies.zip', small)])
    expect(designs).toEqual([])
    expect(refused).toHaveLength(1)
    expect(isSentence(refused[0] ?? '')).toBe(true)
  })
})
