// @vitest-environment jsdom
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest'
import { WAIT } from '../../../app/saving/keeper.ts'
import { Desk, MemoryStore } from './memory-store.ts'
import { textOf, titled } from './tab.ts'

let store: MemoryStore
let desk: Desk
vi.mock('../../../app/saving/idb-store.ts', () => ({ idbStore: () => store }))
vi.mock('../../../app/saving/claims.ts', () => ({ claimsHere: (name: string) => desk.tab(name) }))

let end = new AbortController()
let state: typeof import('../../../app/state/index.ts')
let saving: typeof import('../../../app/saving/index.ts')

beforeEach(async () => {
  vi.useFakeTimers({ now: new Date(2026, 4, 1, 12, 0) })
  vi.resetModules()
  sessionStorage.clear()
  store = new MemoryStore()
  desk = new Desk()
  end = new AbortController()
  // A page is never torn down, but the next test is another page.
  for (const target of [window, document]) {
    const add = target.addEventListener.bind(target)
    vi.spyOn(target, 'addEventListener').mockImplementation((type: string, listener: unknown) =>
      add(type, listener as EventListener, { signal: end.signal }),
    )
  }
  state = await import('../../../app/state/index.ts')
  saving = await import('../../../app/saving/index.ts')
})
afterEach(() => {
  end.abort()
  vi.restoreAllMocks()
  vi.useRealTimers()
})

const pass = (time: number) => vi.advanceTimersByTimeAsync(time)
const titles = () => [...store.generations.values()].map((one) => JSON.parse(one.text).title)
const bench = () => state.useBench.getState()

describe('starting', () => {
  test('before it, keeping is under way and nothing may be asked', () => {
    expect(bench().keeping.state).toBe('keeping')
    expect(() => saving.keptDesigns()).toThrow('startKeeping')
  })

  test('lays what was kept on the bench, once however often it is asked', async () => {
    store.lay('old', 1, Date.now() - 60_000, textOf(titled('Kept')))
    await Promise.all([saving.startKeeping(), saving.startKeeping()])
    expect(bench()).toMatchObject({ design: { title: 'Kept' }, fresh: false, canUndo: false })
    expect(bench().keeping).toEqual({ state: 'kept', at: '11:59', words: null })
    expect(store.log.filter((one) => one === 'list')).toHaveLength(2)
  })

  test('on a first visit the bench is fresh until something is done', async () => {
    await saving.startKeeping()
    expect(bench().fresh).toBe(true)
    state.startFresh(titled('Mine'))
    expect(bench().fresh).toBe(false)
    await pass(WAIT)
    expect(titles()).toEqual(['Mine'])
  })

  test('a tab loaded again asks for its own record first', async () => {
    store.lay('own', 1, Date.now() - 120_000, textOf(titled('Own')))
    store.lay('latest', 1, Date.now() - 60_000, textOf(titled('Latest')))
    sessionStorage.setItem('lidwright-record', 'own')
    await saving.startKeeping()
    expect(bench().design.title).toBe('Own')
  })
})

describe('keeping', () => {
  beforeEach(() => saving.startKeeping())

  test('every sort of change is kept: a field, an undo, a redo', async () => {
    state.setField(['title'], 'one', 'Title')
    await pass(WAIT)
    state.undo()
    await pass(WAIT)
    state.redo()
    await pass(WAIT)
    expect(titles()).toEqual(['one', 'Untitled box', 'one'])
  })

  test('what a gesture previews is not kept; what it ends with is', async () => {
    const drag = state.beginGesture('Longer')
    drag.preview({ edits: [{ path: ['title'], before: 'Untitled box', after: 'half way' }] })
    await pass(WAIT * 3)
    await saving.flushKeeping()
    expect(titles()).toEqual([])
    drag.preview({ edits: [{ path: ['title'], before: 'Untitled box', after: 'there' }] })
    drag.finish()
    await pass(WAIT)
    expect(titles()).toEqual(['there'])
  })

  test.each([
    ['leaving the window', () => window.dispatchEvent(new Event('blur'))],
    ['leaving the page', () => window.dispatchEvent(new Event('pagehide'))],
    [
      'hiding the page',
      () => {
        vi.spyOn(document, 'visibilityState', 'get').mockReturnValue('hidden')
        document.dispatchEvent(new Event('visibilitychange'))
      },
    ],
  ])('%s writes at once, without waiting for anything but the store', async (_what, leave) => {
    state.setField(['title'], 'in a hurry', 'Title')
    expect(titles()).toEqual([])
    leave()
    await pass(0)
    expect(titles()).toEqual(['in a hurry'])
  })

  test('coming back into sight writes nothing', async () => {
    state.setField(['title'], 'waits', 'Title')
    document.dispatchEvent(new Event('visibilitychange'))
    await pass(0)
    expect(titles()).toEqual([])
  })

  test('closing the page is asked about only while work cannot be kept', async () => {
    const asks = () => !window.dispatchEvent(new Event('beforeunload', { cancelable: true }))
    expect(asks()).toBe(false)
    store.refusing = new Error('no')
    state.setField(['title'], 'at risk', 'Title')
    await pass(WAIT)
    expect(bench().keeping.state).toBe('failed')
    expect(asks()).toBe(true)
    store.refusing = null
    await saving.flushKeeping()
    expect(asks()).toBe(false)
  })

  test('another kept design can be listed, opened and thrown away', async () => {
    state.setField(['title'], 'one', 'Title')
    await pass(WAIT)
    state.openDesign(titled('two'), 'Open')
    await pass(WAIT)
    const [two, one] = await saving.keptDesigns()
    expect([two?.design.title, one?.design.title]).toEqual(['two', 'one'])
    expect(await saving.openKept(one?.record ?? '')).toBe(true)
    expect(bench()).toMatchObject({ design: { title: 'one' }, canUndo: false })
    expect(await saving.forgetKept(two?.record ?? '')).toBe(true)
    expect(titles()).toEqual(['one'])
  })
})
