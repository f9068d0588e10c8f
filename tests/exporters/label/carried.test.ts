/** A design on a label: the published codings, and back again to the same design. */
import { createHash } from 'node:crypto'
import { deflateRawSync as deflated } from 'node:zlib'
import { describe, expect, it } from 'vitest'
import { fromBase45, toBase45 } from '../../../exporters/label/base45.ts'
import { carry, readCarried } from '../../../exporters/label/carried.ts'
import { checksumOf } from '../../../exporters/label/checksum.ts'
import { checkDesign, type Design, designText } from '../../../geometry/index.ts'
import { forEveryDesign, PATIENCE } from '../../support/every-design.ts'
import { samples } from '../../support/samples.ts'

const tea = samples().find(({ name }) => name.startsWith('tea-box'))?.design as Design
const bytes = (text: string) => new TextEncoder().encode(text)

describe('Base45', () => {
  // RFC 9285, section 4.3 and 4.4.
  it.each([
    ['AB', 'BB8'],
    ['Hello!!', '%69 VD92EX0'],
    ['base-45', 'UJCLQE7W581'],
    ['ietf!', 'QED8WEX0'],
  ])('writes %j as %j, and reads it back', (plain, coded) => {
    expect(toBase45(bytes(plain))).toBe(coded)
    expect(fromBase45(coded)).toEqual(bytes(plain))
  })

  // RFC 9285, section 6: a receiver rejects what is no Base45, such as GGW (65536) and what holds another sign.
  it.each(['GGW', 'bb8', 'BB', '::', 'BB8B', 'B?8'])('refuses %j', (text) => {
    expect(fromBase45(text)).toBeNull()
  })
})

describe('a carried design', () => {
  it.each(samples().map(({ name, design }) => ({ name, design })))('$name comes back whole', ({ design }) => {
    expect(readCarried(carry(design))).toEqual({ ok: true, design })
  })

  it('comes back whole whatever the design', { timeout: PATIENCE }, () => {
    forEveryDesign((design) => {
      const read = readCarried(carry(design))
      if (!read.ok) return read.faults.map((one) => one.sentence)
      return designText(read.design) === designText(design) ? [] : ['another design came back']
    }, 6)
  })

  it('takes no notice of spaces around it and of line breaks in it', () => {
    const text = carry(tea)
    expect(readCarried(` ${text.slice(0, 40)}\r\n${text.slice(40)}\n`)).toEqual({ ok: true, design: tea })
  })

  it.each([
    ['another text', 'hello', /begins with LIDWRIGHT1:/],
    ['a newer one', 'LIDWRIGHT2:00:AA', /newer/],
    ['one cut off', carry(tea).slice(0, 200), /cut off|changed/],
    [
      'one with a sign changed',
      carry(tea).replace(/.$/, (sign) => (sign === '0' ? '1' : '0')),
      /changed|cut off/,
    ],
    [
      'a design under a foreign checksum',
      carry(tea).replace(/:[0-9A-F]{16}:/, ':0000000000000000:'),
      /checksum/,
    ],
  ])('refuses %s with a sentence', (_, text, sentence) => {
    const read = readCarried(text)
    expect(read.ok).toBe(false)
    if (!read.ok) expect(read.faults.map((one) => one.sentence).join()).toMatch(sentence)
  })

  it('stops unpacking what would fill the memory', () => {
    const read = readCarried(`LIDWRIGHT1:0000000000000000:${toBase45(bomb())}`)
    expect(read.ok).toBe(false)
  })
})

const checked = (design: Design): Design => {
  const read = checkDesign(design)
  if (!read.ok) throw new Error(read.faults[0]?.sentence)
  return read.design
}

/** Forty million noughts, deflated by Node's own library. */
const bomb = () => new Uint8Array(deflated(Buffer.alloc(40_000_000)))

it('the checksum is the beginning of the SHA-256 that Node reckons', () => {
  const { record: _left, ...planned } = checked(tea)
  const hex = createHash('sha256').update(JSON.stringify(planned)).digest('hex')
  expect(checksumOf(tea).replaceAll(' ', '')).toBe(hex.slice(0, 16).toUpperCase())
})
