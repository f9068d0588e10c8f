/** What a laser or a router cannot cut, shown on the drawing of the face, whichever way its sheet is turned over. */
import { describe, expect, test } from 'vitest'
import type { Stated } from '../../support/designs.ts'
import { hole, merged, pickup, screw, things } from './breaking/case.ts'
import { graded, told } from './told.ts'

const laser = (fields: Stated = {}, ...more: Stated[]) =>
  merged({ cutting: { process: 'laser', ...fields } }, ...more)
const router = (fields: Stated = {}, ...more: Stated[]) =>
  merged({ cutting: { process: 'router', ...fields } }, ...more)
const webs = (stated: Stated, part: string) =>
  told('web-left', stated).filter((line) => line.includes(` part ${part}:`))

describe('the web that is left', () => {
  // A hole of 25, its rim 17.5 from the edge of the lid; the wall 4.5 over it.
  const port = (face: string) => things(hole({ face, along: 20, across: 17 }))

  test.each([
    [17.5, 'clear'],
    [17.6, 'stop'],
  ])('of %d wanted', (web, grade) => {
    const line = `${grade} part lid: 17.5 of ${web}, lid (60, 72.5) to (60, 90)`
    expect(webs(laser({ web }, things(hole())), 'lid')).toEqual([line])
    expect(webs(laser({ web }, { hand: 'left' }, things(hole())), 'lid')).toEqual([line])
    expect(webs(router({ web }, things(hole())), 'lid')).toEqual([line])
  })

  test.each(['treble-wall', 'bass-wall', 'tail-end-wall'])('in a %s, for either hand', (face) => {
    // The tail-end wall has the neck's slot; the hole's rim lies at 7.5, in it, so a hole farther out is taken.
    const stated = face === 'tail-end-wall' ? things(hole({ face, along: 60, across: 17 })) : port(face)
    const x = face === 'tail-end-wall' ? 60 : 20
    for (const hand of ['right', 'left'])
      expect(webs(laser({ web: 1 }, { hand }, stated), face)).toEqual([
        `clear part ${face}: 4.5 of 1, ${face} (${x}, -4.5) to (${x}, 0)`,
      ])
  })

  test('of the base is shown on the base', () => {
    const stated = things(hole({ face: 'base', along: 60, across: 60 }))
    for (const hand of ['right', 'left'])
      expect(webs(laser({}, { hand }, stated), 'base')).toEqual([
        'clear part base: 17.5 of 2, base (60, 72.5) to (60, 90)',
      ])
  })

  test('of the neck is shown on its own side of the plan, for either hand', () => {
    // One post on the bass side, 7 from the middle, its hole 8 wide: 19 - 7 - 4 to the edge of the head.
    const one = { headstock: { bassTuners: 1, trebleTuners: 0 }, tailpiece: { at: 'the lid' } }
    const other = { headstock: { bassTuners: 0, trebleTuners: 1 }, tailpiece: { at: 'the lid' } }
    for (const hand of ['right', 'left']) {
      expect(webs(laser({}, { hand }, one), 'neck-top')).toEqual([
        'clear part neck-top: 8 of 2, plan (-45, -11) to (-45, -19)',
      ])
      expect(webs(laser({}, { hand }, other), 'neck-top')).toEqual([
        'clear part neck-top: 8 of 2, plan (-45, 11) to (-45, 19)',
      ])
    }
  })

  test('of the strip for the string holes is shown on the row', () => {
    // Holes of 2.4 at 13 beside the middle: 19 - 13 - 1.2 to the side of the neck, 14 behind the box's end at 702.2.
    const sides = (hand: string) => webs(laser({}, { hand }), 'tail-strip')[0]
    for (const hand of ['right', 'left'])
      expect(sides(hand)).toMatch(
        /^clear part tail-strip: 4.8 of 2, plan \(716.2, (-?)14.2\) to \(716.2, (-?)19\)$/,
      )
    // In the lid a strip of its own, 12 round the outer holes and from its edge; the middle 10.6 is the least.
    const lid = laser({}, { tailpiece: { at: 'the lid' } })
    expect(webs(lid, 'tail-strip')[0]).toMatch(
      /^clear part tail-strip: 10.6 of 2, plan \(688.2, .*\) to \(688.2, .*\)$/,
    )
    const wall = laser({}, { tailpiece: { at: 'the tail-end wall' } })
    expect(webs(wall, 'tail-strip')[0]).toMatch(
      /^clear part tail-strip: 10.6 of 2, tail-end-wall \(.*, -14\) to \(.*, -14\)$/,
    )
  })

  test('is not asked of what is sawn by hand', () => {
    expect(told('web-left', things(hole()))).toEqual([])
    expect(told('tool-fits', things(screw({ clearance: 1 })))).toEqual([])
  })
})

describe('room for the tool', () => {
  const fits = (stated: Stated) => told('tool-fits', stated)

  test('what the tool is too wide for is a stop, shown across it', () => {
    const line = (fields: Stated) =>
      fits(laser({ kerf: 1.5 }, things(screw({ clearance: 1, along: 30, ...fields }))))
    expect(line({})).toEqual([
      expect.stringMatching(
        /^stop part lid \+ hole Screw: (1|0.999\d) of 1.5, lid \(29.5, 60\) to \(30.5, 60\)$/,
      ),
    ])
    // As wide as the tool, or a little more.
    expect(fits(laser({ kerf: 0.9 }, things(screw({ clearance: 1, along: 30 }))))).toEqual([])
  })

  test('each of several of a name is told, and numbered', () => {
    const peg = (id: string, along: number) => screw({ id, along, clearance: 1 })
    expect(
      fits(laser({ kerf: 1.5 }, things(peg('a', 30), peg('b', 60), peg('c', 90)))).map(
        (line) => line.split(': ')[0],
      ),
    ).toEqual(['stop part lid + hole Screw', 'stop part lid + hole Screw 2', 'stop part lid + hole Screw 3'])
  })

  test('corners that come out rounder than drawn are a care', () => {
    // Corners of 2 want a cutter of 4; what is left of a wider one on the curve is seen.
    const corners = (cutter: number) =>
      graded('tool-fits', router({ cutter }, things(pickup({ cornerRadius: 2 }))))
    expect(corners(6)).toEqual(['care'])
    expect(corners(4)).toEqual([])
  })

  test('a slot narrower than the cutter is shown from end to end', () => {
    const slot = { kind: 'slot', id: 'slot', along: 60, across: 50, sizeAlong: 40, sizeAcross: 4 }
    expect(fits(router({ cutter: 6 }, things(slot)))).toEqual([
      expect.stringMatching(
        /^stop part lid \+ opening Slot: (4|3.99\d*) of 6, lid \(40, 50\) to \(80, 50\)$/,
      ),
    ])
  })

  test('each part by the kerf of its own wood', () => {
    const kerfs = { kerfs: 'for each material', kerfLid: 0.2, kerfBase: 1.5 }
    const peg = (face: string) => things(screw({ clearance: 1, along: 30, face }))
    expect(fits(laser(kerfs, peg('lid')))).toEqual([])
    expect(fits(laser(kerfs, peg('base')))[0]).toMatch(/^stop part base \+ hole Screw/)
    // No kerf at all fits everywhere.
    expect(fits(laser({ kerf: 0 }, peg('lid')))).toEqual([])
  })
})
