import { describe, expect, it } from 'vitest'
import { nameStocked, readStock } from '../../../app/parts/stock-words.ts'

const inches = { display: 'inches', fraction: 32 } as const
const mm = { display: 'mm', fraction: 0 } as const

const rowsOf = (text: string, units: Parameters<typeof readStock>[1] = inches) => {
  const reading = readStock(text, units, [])
  if (!reading.ok) throw new Error(reading.sentence)
  return reading.rows
}

describe('the drawer of strings', () => {
  it('takes gauges, wound ones, and what they are of', () => {
    const rows = rowsOf('.010, .026w; .032w phosphor bronze, .028 nylon, .03 fluorocarbon')
    expect(
      rows.map(({ gauge, construction, material, wrap }) => [gauge, construction, material, wrap]),
    ).toEqual([
      [0.254, 'plain', 'music wire', 'nickel-plated steel'],
      [0.6604, 'wound', 'music wire', 'nickel-plated steel'],
      [0.8128, 'wound', 'music wire', 'phosphor bronze'],
      [0.7112, 'plain', 'nylon', 'nickel-plated steel'],
      [0.762, 'plain', 'fluorocarbon', 'nickel-plated steel'],
    ])
  })

  it('takes entries parted by spaces alone, and a nylon core wound with silvered copper', () => {
    expect(rowsOf('0.25 0.33 0.66w', mm).map((row) => row.gauge)).toEqual([0.25, 0.33, 0.66])
    expect(rowsOf('0.8w nylon silvered copper', mm)[0]).toMatchObject({
      construction: 'wound',
      material: 'nylon',
      wrap: 'silvered copper',
    })
  })

  it('names every row so that reading the name gives the row again', () => {
    for (const text of [
      '.010',
      '.026w',
      '.032w phosphor bronze',
      '.028 nylon',
      '.04w nylon silvered copper',
    ]) {
      const row = rowsOf(text)[0]!
      expect(rowsOf(nameStocked(row, inches))[0]).toEqual(row)
    }
  })

  it('keeps a string that is there as it was made', () => {
    const own = { ...rowsOf('.046w')[0]!, core: 0.4 }
    const reading = readStock(nameStocked(own, inches), inches, [own])
    expect(reading).toEqual({ ok: true, rows: [own] })
  })

  it('says which word names no material, and which number is none', () => {
    expect(readStock('.028 catgut', inches, [])).toMatchObject({
      ok: false,
      sentence: expect.stringMatching(/catgut.*nylon/),
    })
    expect(readStock('thick', inches, []).ok).toBe(false)
  })
})
