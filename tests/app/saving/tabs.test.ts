import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest'
import { RETRY, WAIT } from '../../../app/saving/keeper.ts'
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

async function edit(tab: Tab, ...titles: string[]): Promise<void> {
  for (const title of titles) {
    tab.edit(title)
    await pass(WAIT)
  }
}

describe('10: a second tab does not overwrite the first', () => {
  beforeEach(() => store.lay('old', 1, NOON - 60_000, textOf(titled('Kept before'))))

  test('it opens the same design and says whose it is; edited, it keeps its work in a record of its own', async () => {
    const first = await loadedTab()
    const second = await loadedTab()
    expect(second.bench.design.title).toBe('Kept before')
    expect(first.now().state).toBe('kept')
    expect(second.now()).toMatchObject({ state: 'not-ours', words: expect.stringContaining('Another tab') })
    expect(store.writes()).toEqual([])
    await edit(second, 'second 1')
    await edit(first, 'first 1', 'first 2')
    await edit(second, 'second 2')
    expect(titlesIn(store, 'old')).toEqual(['Kept before', 'first 1', 'first 2'])
    expect(titlesIn(store, `${second.name}-1`)).toEqual(['second 1', 'second 2'])
    expect(second.now()).toMatchObject({ state: 'kept', words: expect.stringContaining('of its own') })
    expect(first.now()).toMatchObject({ state: 'kept', words: null })
  })

  test('if the first has closed meanwhile and left nothing newer, the second goes on in its record', async () => {
    const first = await loadedTab()
    const second = await loadedTab()
    desk.close(first.name)
    await edit(second, 'taken over')
    expect(titlesIn(store, 'old')).toEqual(['Kept before', 'taken over'])
    expect(second.now()).toMatchObject({ state: 'kept', words: null })
  })

  test('if the first has closed but wrote something the second never saw, both states are kept', async () => {
    const first = await loadedTab()
    const second = await loadedTab()
    await edit(first, 'unseen')
    desk.close(first.name)
    await edit(second, 'from the older state')
    expect(titlesIn(store, 'old')).toEqual(['Kept before', 'unseen'])
    expect(titlesIn(store, `${second.name}-1`)).toEqual(['from the older state'])
    expect(desk.owners.has('old')).toBe(false)
  })

  test('even where every tab believes that it has the record, none overwrites another', async () => {
    const first = openTab(store, new Desk())
    const second = openTab(store, new Desk())
    await Promise.all([first.load(), second.load()])
    await edit(first, 'first 1')
    await edit(second, 'second 1')
    await edit(first, 'first 2')
    expect(titlesIn(store, 'old')).toEqual(['Kept before', 'first 1', 'first 2'])
    expect(titlesIn(store, `${second.name}-1`)).toEqual(['second 1'])
    expect(second.now().words).toContain('of its own')
  })

  test('loaded again, each tab comes back to its own record', async () => {
    const first = await loadedTab()
    const second = await loadedTab()
    await edit(second, 'second')
    await pass(1000)
    await edit(first, 'first')
    desk.close(second.name)
    const again = await loadedTab({ remembered: `${second.name}-1` })
    expect(again.bench.design.title).toBe('second')
    desk.close(first.name)
    expect((await loadedTab()).bench.design.title).toBe('first')
  })

  test('a copy of a tab remembers the record of the one it was copied from, and leaves it alone', async () => {
    const first = await loadedTab()
    await edit(first, 'mine')
    const copy = await loadedTab({ remembered: 'old' })
    expect(copy.now().state).toBe('not-ours')
    await edit(copy, 'copied')
    expect(titlesIn(store, 'old')).toEqual(['Kept before', 'mine'])
  })
})

describe('another design on the bench', () => {
  test('opening one does not take the place of the one that was there', async () => {
    const tab = await loadedTab()
    await edit(tab, 'first box')
    tab.edit('first box, last touch')
    tab.begin('second box')
    expect(desk.owners.has(`${tab.name}-1`), 'while a change of the first one waits').toBe(true)
    await pass(WAIT)
    expect(titlesIn(store, `${tab.name}-1`)).toEqual(['first box', 'first box, last touch'])
    expect(titlesIn(store, `${tab.name}-2`)).toEqual(['second box'])
    expect([...desk.owners.keys()]).toEqual([`${tab.name}-2`])
  })

  test('with nothing waiting, the record left behind is free for another tab at once', async () => {
    const tab = await loadedTab()
    await edit(tab, 'first box')
    tab.begin('second box')
    expect(desk.owners.has(`${tab.name}-1`)).toBe(false)
  })

  test('every design is listed, latest first, and can be opened again where it was left', async () => {
    const tab = await loadedTab()
    await edit(tab, 'first box')
    tab.begin('second box')
    await pass(WAIT)
    const [latest, earlier] = await tab.list()
    expect(latest).toMatchObject({ design: { title: 'second box' }, here: true, at: NOON + 2 * WAIT })
    expect(earlier).toMatchObject({ design: { title: 'first box' }, here: false, at: NOON + WAIT })
    expect(await tab.open(earlier?.record ?? '')).toBe(true)
    expect(tab.bench.design.title).toBe('first box')
    expect(tab.now()).toMatchObject({ state: 'kept', words: null })
    await edit(tab, 'first box, again')
    expect(titlesIn(store, `${tab.name}-1`)).toEqual(['first box', 'first box, again'])
    expect(titlesIn(store, `${tab.name}-2`)).toEqual(['second box'])
  })

  test('opening first keeps what waits, and is refused while that cannot be kept', async () => {
    const tab = await loadedTab()
    await edit(tab, 'first box')
    tab.begin('second box')
    expect(await tab.open(`${tab.name}-1`)).toBe(true)
    expect(titlesIn(store, `${tab.name}-2`)).toEqual(['second box'])
    store.refusing = new Error('no')
    tab.edit('cannot be kept')
    expect(await tab.open(`${tab.name}-2`)).toBe(false)
    expect(tab.bench.design.title).toBe('cannot be kept')
    expect(desk.owners.has(`${tab.name}-2`)).toBe(false)
    store.refusing = null
    await pass(RETRY)
    expect(await tab.open(`${tab.name}-2`)).toBe(true)
  })

  test('one that another tab has open is opened as not ours', async () => {
    store.lay('theirs', 1, NOON - 60_000, textOf(titled('Theirs')))
    await loadedTab()
    const tab = await loadedTab()
    tab.begin('Mine')
    await pass(WAIT)
    expect(await tab.open('theirs')).toBe(true)
    expect(tab.now().state).toBe('not-ours')
    await edit(tab, 'changed')
    expect(titlesIn(store, 'theirs')).toEqual(['Theirs'])
  })

  test('one that cannot be read, or is not there, is not opened', async () => {
    store.lay('bad', 1, NOON - 60_000, 'nothing')
    const tab = await loadedTab()
    await edit(tab, 'mine')
    expect(await tab.open('bad')).toBe(false)
    expect(await tab.open('nowhere')).toBe(false)
    expect(tab.bench.design.title).toBe('mine')
  })

  test('a design is thrown away whole, but never one that is open', async () => {
    const tab = await loadedTab()
    await edit(tab, 'first box', 'first box, later')
    tab.begin('second box')
    await pass(WAIT)
    const other = await loadedTab()
    expect(await tab.forget(`${tab.name}-2`)).toBe(false)
    expect(await other.forget(`${tab.name}-2`)).toBe(false)
    expect(await other.forget(`${tab.name}-1`)).toBe(true)
    expect(store.keys()).toEqual([`${tab.name}-2 1`])
  })
})
