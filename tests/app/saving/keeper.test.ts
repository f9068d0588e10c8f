import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest'
import { LOADING, RETRY, WAIT } from '../../../app/saving/keeper.ts'
import { readDesign } from '../../../geometry/index.ts'
import { Desk, MemoryStore } from './memory-store.ts'
import { openTab, type Tab, textOf, titled, titlesIn } from './tab.ts'

const NOON = new Date(2026, 4, 1, 12, 0).getTime()
let store: MemoryStore
let desk: Desk

beforeEach(() => {
  vi.useFakeTimers({ now: NOON })
  store = new MemoryStore()
  desk = new Desk()
})
afterEach(() => vi.useRealTimers())

const pass = (time: number) => vi.advanceTimersByTimeAsync(time)

async function loadedTab(options = {}): Promise<Tab> {
  const tab = openTab(store, desk, options)
  await tab.load()
  return tab
}

describe('1: nothing is written before loading has finished', () => {
  test('an edit while loading waits, and gets a record of its own beside what was kept', async () => {
    store.lay('old', 1, NOON - 60_000, textOf(titled('Kept before')))
    store.hold('list')
    const tab = openTab(store, desk)
    const loading = tab.load()
    tab.edit('Too early')
    await tab.flush()
    await pass(WAIT * 5)
    expect(store.writes()).toEqual([])
    expect(tab.now().state).toBe('keeping')
    store.release()
    await loading
    await pass(WAIT)
    expect(tab.bench.design.title).toBe('Too early')
    expect(titlesIn(store, 'old')).toEqual(['Kept before'])
    expect(titlesIn(store, `${tab.name}-1`)).toEqual(['Too early'])
    expect(tab.now()).toMatchObject({ state: 'kept', words: expect.stringContaining('still kept') })
  })

  test('closing the page before loading has finished writes nothing', async () => {
    store.hold('list')
    const tab = openTab(store, desk)
    void tab.load()
    tab.edit('Too early')
    await tab.flush()
    expect(store.writes()).toEqual([])
  })

  test('loading alone writes nothing, on a first visit and later', async () => {
    const first = await loadedTab()
    expect(first.bench.fresh).toBe(true)
    expect(first.now()).toEqual({ state: 'kept', at: null, words: null })
    store.lay('old', 1, NOON - 60_000, textOf(titled('Kept before')))
    const later = await loadedTab()
    await pass(WAIT * 5)
    expect(later.bench).toMatchObject({ fresh: false, design: titled('Kept before') })
    expect(later.now()).toEqual({ state: 'kept', at: '11:59', words: null })
    expect(store.writes()).toEqual([])
  })

  test('a store that cannot be read, or does not answer, is said, and nothing in it is touched', async () => {
    store.lay('old', 1, NOON - 60_000, textOf(titled('Kept before')))
    store.hold('list')
    const tab = openTab(store, desk)
    const loading = tab.load()
    await pass(LOADING)
    await loading
    expect(tab.now()).toMatchObject({ state: 'failed', words: expect.stringContaining('could not be read') })
    expect(tab.atRisk()).toBe(false)
    tab.edit('Carried on')
    await pass(WAIT)
    expect(tab.now().state).toBe('kept')
    expect(titlesIn(store, 'old')).toEqual(['Kept before'])
    store.release()
    await pass(0)
    expect(tab.bench.design.title).toBe('Carried on')
    expect(tab.now().state).toBe('kept')
    expect(desk.owners.has('old')).toBe(false)
    tab.edit('Carried on again')
    await pass(WAIT)
    expect(titlesIn(store, `${tab.name}-1`)).toEqual(['Carried on', 'Carried on again'])
  })
})

describe('2: a generation is written whole before the old one is dropped, and the last three are kept', () => {
  test('each write adds a generation; the oldest goes once there are more than three', async () => {
    const tab = await loadedTab()
    for (const title of ['a', 'b', 'c', 'd', 'e']) {
      tab.edit(title)
      await pass(WAIT)
    }
    expect(titlesIn(store, `${tab.name}-1`)).toEqual(['c', 'd', 'e'])
  })

  test('nothing is dropped while the new one is being written, nor if it is refused', async () => {
    const tab = await loadedTab()
    for (const title of ['a', 'b', 'c']) {
      tab.edit(title)
      await pass(WAIT)
    }
    store.hold('put')
    tab.edit('d')
    await pass(WAIT * 4)
    expect(titlesIn(store, `${tab.name}-1`)).toEqual(['a', 'b', 'c'])
    store.refusing = new Error('disk on fire')
    store.release()
    await pass(0)
    expect(titlesIn(store, `${tab.name}-1`)).toEqual(['a', 'b', 'c'])
    store.refusing = null
    await pass(RETRY)
    expect(titlesIn(store, `${tab.name}-1`)).toEqual(['b', 'c', 'd'])
    const order = store.log.filter((one) => one.startsWith('whole') || one.startsWith('drop'))
    expect(order.slice(-2)).toEqual([`whole ${tab.name}-1 4`, `drop ${tab.name}-1 1`])
  })

  test('a page that died before dropping leaves four; the next one drops down to three again', async () => {
    for (const number of [4, 5, 6, 7]) store.lay('old', number, NOON - 60_000, textOf(titled(`n${number}`)))
    const tab = await loadedTab()
    tab.edit('next')
    await pass(WAIT)
    expect(titlesIn(store, 'old')).toEqual(['n6', 'n7', 'next'])
  })
})

describe('3: edits made during a write are written after it', () => {
  test('the later edit is a generation of its own, and until it is whole nothing is called kept', async () => {
    const tab = await loadedTab()
    tab.edit('first')
    store.hold('put')
    await pass(WAIT)
    tab.edit('second')
    tab.edit('third')
    await pass(WAIT * 2)
    expect(store.writes()).toHaveLength(1)
    store.release()
    await pass(0)
    expect(titlesIn(store, `${tab.name}-1`)).toEqual(['first', 'third'])
    expect(tab.now().state).toBe('kept')
    const kept = tab.said.findIndex((one) => one.state === 'kept' && one.at !== null)
    expect(kept).toBe(tab.said.length - 1)
  })

  test('an edit just before the write ends still waits for its own turn, and gets it', async () => {
    const tab = await loadedTab()
    tab.edit('first')
    store.hold('put')
    await pass(WAIT)
    tab.edit('second')
    store.release()
    await pass(0)
    expect(titlesIn(store, `${tab.name}-1`)).toEqual(['first'])
    expect(tab.now().state).toBe('keeping')
    await pass(WAIT)
    expect(titlesIn(store, `${tab.name}-1`)).toEqual(['first', 'second'])
  })
})

test('3, at every moment of a write: a change made then is written, flushed or not', async () => {
  for (let moment = 0; moment < 30; moment++) {
    const tab = await loadedTab()
    for (const title of ['a', 'b', 'c', 'd']) {
      tab.edit(title)
      const flushed = tab.flush()
      for (let step = 0; step < moment; step++) await null
      tab.edit(`${title} and more`)
      if (moment % 2) void tab.flush()
      await flushed
      await pass(WAIT)
      expect(titlesIn(store, `${tab.name}-1`).at(-1), `${moment} steps later`).toBe(`${title} and more`)
      expect(tab.now().state).toBe('kept')
    }
    desk.close(tab.name)
    store.generations.clear()
  }
})

describe('4: hiding, leaving and closing the page flush', () => {
  test('what waits is written at once', async () => {
    const tab = await loadedTab()
    tab.edit('in a hurry')
    await tab.flush()
    expect(titlesIn(store, `${tab.name}-1`)).toEqual(['in a hurry'])
    await pass(WAIT * 5)
    expect(store.writes()).toHaveLength(1)
  })

  test('during a write the later edit follows it without waiting', async () => {
    const tab = await loadedTab()
    tab.edit('first')
    store.hold('put')
    await pass(WAIT)
    tab.edit('second')
    const flushed = tab.flush()
    store.release()
    await flushed
    expect(titlesIn(store, `${tab.name}-1`)).toEqual(['first', 'second'])
  })

  test('with nothing to write it does nothing', async () => {
    const tab = await loadedTab()
    await tab.flush()
    expect(store.writes()).toEqual([])
  })
})

describe('5: a change waits at most 300 ms, however fast others follow', () => {
  test('a stream of edits is written ten times a second, not once at its end', async () => {
    expect(WAIT).toBeLessThanOrEqual(300)
    const tab = await loadedTab()
    for (let time = 0; time < 2000; time += 20) {
      tab.edit(`at ${time}`)
      await pass(20)
      const newest = titlesIn(store, `${tab.name}-1`).at(-1)
      if (time > WAIT) expect(time - Number(newest?.slice(3))).toBeLessThanOrEqual(WAIT)
    }
    expect(store.writes().filter((one) => one.startsWith('put')).length).toBeLessThanOrEqual(20)
  })
})

describe('6: a kept design of a newer version is refused untouched and can be downloaded as it is', () => {
  const newer = '{ "format": "lidwright",  "version": 999, "wonders": [1, 2] }'

  test('its record is left alone, the builder is told, and work goes into a record of its own', async () => {
    store.lay('old', 1, NOON - 120_000, textOf(titled('Before the newer one')))
    store.lay('old', 2, NOON - 60_000, newer)
    const tab = await loadedTab()
    expect(tab.now().words).toContain('newer Lidwright')
    expect(tab.now().words).toContain('999')
    expect(tab.untouched()).toEqual([{ name: 'kept-old-2.lidwright.json', text: newer }])
    expect(desk.owners.has('old')).toBe(false)
    expect(tab.bench.fresh).toBe(false)
    for (const title of ['a', 'b', 'c', 'd', 'e']) {
      tab.edit(title)
      await pass(WAIT)
    }
    expect(store.generations.get('old 2')?.text).toBe(newer)
    expect(titlesIn(store, 'old')).toHaveLength(2)
    expect(tab.now()).toMatchObject({ state: 'kept', words: expect.stringContaining('newer Lidwright') })
  })

  test('another design that can be read is opened instead', async () => {
    store.lay('new', 1, NOON - 60_000, newer)
    store.lay('old', 1, NOON - 120_000, textOf(titled('Readable')))
    const tab = await loadedTab()
    expect(tab.bench.design.title).toBe('Readable')
    expect(tab.now().words).toContain('newer Lidwright')
  })
})

describe('7: a generation that cannot be read stays, the one before is used, and the builder is told', () => {
  test.each([
    ['cut off', textOf(titled('x')).slice(0, 100), 'not JSON'],
    ['empty', '', 'not JSON'],
    ['something else', '{"format":"recipe"}', 'Is it the right file?'],
    ['out of limits', textOf(titled('x')).replace('"length": 240', '"length": 24000'), 'at most 1500'],
  ])('%s', async (_what, text, why) => {
    store.lay('old', 1, NOON - 180_000, textOf(titled('one')))
    store.lay('old', 2, NOON - 120_000, textOf(titled('two')))
    store.lay('old', 3, NOON - 60_000, text)
    const tab = await loadedTab()
    expect(tab.bench.design.title).toBe('two')
    expect(tab.now().words).toContain('What was kept at 11:59 cannot be read')
    expect(tab.now().words).toContain('What was kept at 11:58 was opened instead.')
    expect(tab.now().words).toContain(why)
    expect(tab.untouched().map((one) => one.text)).toEqual([text])
    for (const title of ['a', 'b', 'c', 'd']) {
      tab.edit(title)
      await pass(WAIT)
    }
    expect(store.keys()).toEqual(['old 3', 'old 5', 'old 6', 'old 7'])
    expect(store.generations.get('old 3')?.text).toBe(text)
  })

  test('a record of which nothing can be read stays whole, and the page does not call itself fresh', async () => {
    store.lay('old', 1, NOON - 60_000, 'gone')
    const tab = await loadedTab()
    expect(tab.bench.fresh).toBe(false)
    expect(tab.now().words).toContain('Nothing older of it can be read either.')
    tab.edit('new work')
    await pass(WAIT)
    expect(store.generations.get('old 1')?.text).toBe('gone')
    expect(titlesIn(store, `${tab.name}-1`)).toEqual(['new work'])
  })
})

describe('8: an invalid document is never saved', () => {
  test('it is said, what was kept stays, and the next valid one is kept', async () => {
    const tab = await loadedTab()
    tab.edit('good')
    await pass(WAIT)
    const { design } = tab.bench
    tab.changed({ ...design, box: { ...design.box, length: -1 } }, 'the same')
    await pass(RETRY * 2)
    expect(tab.now()).toMatchObject({ state: 'failed', words: expect.stringContaining('at least 40') })
    expect(tab.atRisk()).toBe(true)
    expect(titlesIn(store, `${tab.name}-1`)).toEqual(['good'])
    tab.edit('good again')
    await pass(WAIT)
    expect(tab.now()).toMatchObject({ state: 'kept', words: null })
    expect(tab.atRisk()).toBe(false)
    for (const { text } of store.generations.values()) expect(readDesign(text).ok).toBe(true)
  })
})

describe('9: a full store is said until a save succeeds, and tried again', () => {
  test('words stay through every failed try and go with the first success', async () => {
    const tab = await loadedTab()
    store.refusing = new DOMException('nope', 'QuotaExceededError')
    tab.edit('no room')
    await pass(WAIT)
    expect(tab.now()).toMatchObject({ state: 'failed', words: expect.stringContaining('no room left') })
    const tries = store.writes().length
    const from = tab.said.length - 1
    tab.edit('still none')
    await pass(RETRY * 3)
    // Every two seconds, which does not wear out the disk.
    expect(store.writes().length).toBe(tries + 3)
    expect(tab.said.slice(from).every((one) => one.state === 'failed')).toBe(true)
    expect(tab.atRisk()).toBe(true)
    store.refusing = null
    await pass(RETRY)
    expect(tab.now()).toEqual({ state: 'kept', at: '12:00', words: null })
    expect(titlesIn(store, `${tab.name}-1`)).toEqual(['still none'])
    expect(tab.atRisk()).toBe(false)
    await pass(RETRY * 3)
    expect(titlesIn(store, `${tab.name}-1`)).toEqual(['still none'])
  })

  test('an old generation that cannot be dropped is no failure', async () => {
    const tab = await loadedTab()
    const drop = vi.spyOn(store, 'drop').mockRejectedValue(new Error('busy'))
    for (const title of ['a', 'b', 'c', 'd']) {
      tab.edit(title)
      await pass(WAIT)
    }
    expect(tab.now().state).toBe('kept')
    expect(store.keys()).toHaveLength(4)
    drop.mockRestore()
    tab.edit('e')
    await pass(WAIT)
    expect(titlesIn(store, `${tab.name}-1`)).toEqual(['c', 'd', 'e'])
  })
})
