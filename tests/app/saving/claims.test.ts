import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest'
import { type Channel, channelClaims, lockClaims } from '../../../app/saving/claims.ts'

beforeEach(() => {
  vi.useFakeTimers()
})
afterEach(() => vi.useRealTimers())

/** Channels that hear each other but not themselves, as the standard has it, and a moment later. */
function channels(): () => Channel {
  const all: Channel[] = []
  return () => {
    const own: Channel = {
      onmessage: null,
      postMessage: (data) => {
        for (const other of all) if (other !== own) setTimeout(() => other.onmessage?.({ data }), 1)
      },
    }
    all.push(own)
    return own
  }
}

async function settled<Value>(promise: Promise<Value>): Promise<Value> {
  await vi.advanceTimersByTimeAsync(1000)
  return promise
}

describe('claims by asking the other tabs', () => {
  test('the first tab has a record until it lets go', async () => {
    const open = channels()
    const [one, two] = [channelClaims(open(), 'a'), channelClaims(open(), 'b')]
    const letGo = await settled(one.claim('box'))
    expect(letGo).not.toBeNull()
    expect(await settled(two.claim('box'))).toBeNull()
    expect(await settled(two.claim('another box'))).not.toBeNull()
    letGo?.()
    expect(await settled(two.claim('box'))).not.toBeNull()
    expect(await settled(one.claim('box'))).toBeNull()
  })

  test.each([
    ['a', 'b', 'c'],
    ['c', 'a', 'b'],
  ])('of three tabs %s, %s and %s that ask at once exactly one gets it', async (...names) => {
    const open = channels()
    const tabs = names.map((name) => channelClaims(open(), name))
    const answers = await settled(Promise.all(tabs.map((tab) => tab.claim('box'))))
    expect(names.filter((_, index) => answers[index] !== null)).toEqual(['a'])
  })
})

/** As much of the standard's lock manager as is asked of it (W3C Web Locks API, "request" with ifAvailable and signal). */
class Locks {
  private readonly held = new Set<string>()
  private readonly waiting: { name: string; grant: () => void }[] = []

  request = async (name: string, options: LockOptions, use: (lock: Lock | null) => unknown) => {
    if (this.held.has(name)) {
      if (options.ifAvailable) return use(null)
      await new Promise<void>((grant, refuse) => {
        this.waiting.push({ name, grant })
        options.signal?.addEventListener('abort', () => refuse(options.signal?.reason))
      })
    }
    this.held.add(name)
    await use({ name, mode: 'exclusive' })
    this.held.delete(name)
    this.waiting.find((one) => one.name === name)?.grant()
  }
}

describe('claims by the browser’s locks', () => {
  const claims = (manager: unknown) => lockClaims(manager as LockManager)

  test('the first tab has a record until it lets go', async () => {
    const locks = new Locks()
    const letGo = await claims(locks).claim('box')
    expect(letGo).not.toBeNull()
    expect(await claims(locks).claim('box')).toBeNull()
    expect(await claims(locks).claim('another box')).not.toBeNull()
    letGo?.()
    await vi.advanceTimersByTimeAsync(0)
    expect(await claims(locks).claim('box')).not.toBeNull()
  })

  test('with patience it waits for a page that is just closing', async () => {
    vi.useRealTimers()
    const locks = new Locks()
    const letGo = await claims(locks).claim('box')
    setTimeout(() => letGo?.(), 20)
    expect(await claims(locks).claim('box', 2000)).not.toBeNull()
    expect(await claims(locks).claim('box', 20)).toBeNull()
  })

  test('a browser that refuses all locks does not stop the work', async () => {
    const refusing = { request: () => Promise.reject(new DOMException('not here', 'SecurityError')) }
    expect(await claims(refusing).claim('box')).not.toBeNull()
  })
})
