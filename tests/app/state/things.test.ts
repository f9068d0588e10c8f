import { beforeEach, describe, expect, test } from 'vitest'
import {
  addThing,
  adopt,
  beginGesture,
  duplicateThing,
  mirrorThing,
  removeThing,
  select,
  setField,
  undo,
  useBench,
} from '../../../app/state/index.ts'
import {
  change,
  checkDesign,
  type Design,
  FACES,
  KINDS,
  kindOf,
  type Placed,
  solve,
} from '../../../geometry/index.ts'

const bench = () => useBench.getState()

function lay(fields: object): Design {
  const reading = checkDesign({ format: 'lidwright', version: 1, ...fields })
  if (!reading.ok) throw new Error(reading.faults[0]?.sentence)
  adopt(reading.design)
  return bench().design
}

const placed = (id: string): Placed => {
  const one = solve(bench().design).placed.find((other) => other.thing.id === id)
  if (!one) throw new Error(`there is no thing called "${id}"`)
  return one
}

const overlap = (a: Placed, b: Placed): boolean =>
  a.face === b.face &&
  a.bounds.minX < b.bounds.maxX &&
  b.bounds.minX < a.bounds.maxX &&
  a.bounds.minY < b.bounds.maxY &&
  b.bounds.minY < a.bounds.maxY

beforeEach(() => {
  lay({})
})

describe('adding', () => {
  const everywhere = Object.values(KINDS).flatMap((kind) =>
    FACES.map((face) => ({ kind: kind.kind, face, may: (kind.faces as readonly string[]).includes(face) })),
  )

  test.each(everywhere)('a $kind on the $face: $may', ({ kind, face, may }) => {
    const id = addThing(kind, face)
    if (!may) {
      expect(id).toBeNull()
      expect(bench().canUndo).toBe(false)
      return
    }
    expect(id).toBe(kind)
    expect(bench()).toMatchObject({ selection: id, canUndo: true })
    const one = placed(kind)
    const panel = solve(bench().design).panels[face].bounds
    expect(one.face).toBe(face)
    // The head of a screw may be wider than the wall whose middle it stands on.
    const { minX, maxX, minY, maxY } =
      kindOf(kind).overWall === 'meant'
        ? { minX: one.at.x, maxX: one.at.x, minY: one.at.y, maxY: one.at.y }
        : one.bounds
    expect(minX > panel.minX && maxX < panel.maxX && minY > panel.minY && maxY < panel.maxY).toBe(true)
    undo()
    expect(bench().design.things).toEqual([])
    expect(bench().selection).toBeNull()
  })

  test('several of them keep clear of each other and of the neck while there is room', () => {
    const ids = Array.from({ length: 6 }, () => addThing('sound-hole') ?? '')
    expect(ids).toEqual([
      'sound-hole',
      'sound-hole-2',
      'sound-hole-3',
      'sound-hole-4',
      'sound-hole-5',
      'sound-hole-6',
    ])
    const all = ids.map(placed)
    const half = bench().design.neck.width / 2
    for (const one of all) {
      expect(Math.min(Math.abs(one.bounds.minY), Math.abs(one.bounds.maxY))).toBeGreaterThan(half)
      for (const other of all) if (one !== other) expect(overlap(one, other)).toBe(false)
    }
  })

  test('a pickup goes on the centreline, clear of the saddle', () => {
    addThing('pickup')
    const { saddle, panels } = solve(bench().design)
    expect(placed('pickup').at.y).toBe(0)
    const foot = { min: saddle.foot.minX - panels.lid.originX, max: saddle.foot.maxX - panels.lid.originX }
    const { minX, maxX } = placed('pickup').bounds
    expect(maxX < foot.min || minX > foot.max).toBe(true)
  })

  test('a screw in the lid stands over the middle of a wall', () => {
    addThing('screw')
    const { box, panels } = solve(bench().design)
    const { walls } = bench().design.box
    const { at } = placed('screw')
    const x = at.x + panels.lid.originX
    const fromMiddles = [
      Math.abs(at.y - (walls.bass / 2 - box.halfWidth)),
      Math.abs(at.y - (box.halfWidth - walls.treble / 2)),
      Math.abs(x - (box.x0 + walls.neckEnd / 2)),
      Math.abs(x - (box.x1 - walls.tailEnd / 2)),
    ]
    // Rounded to a line of the rule: half a step of it at most.
    expect(Math.min(...fromMiddles)).toBeLessThanOrEqual(0.5)
  })

  test('it stands on a line of the builder’s rule', () => {
    lay({ units: { display: 'inches', fraction: 16 } })
    addThing('sound-hole')
    const { at } = placed('sound-hole')
    for (const value of [at.x, at.y])
      expect((value * 16) / 25.4).toBeCloseTo(Math.round((value * 16) / 25.4), 6)
  })

  test('its id is new to the whole design, also to places and overruled findings that name a lost thing', () => {
    lay({
      things: [{ kind: 'screw', id: 'one', along: { mirror: 'sound-hole' } }],
      overruled: { 'between-openings one sound-hole-2': 'meant' },
    })
    expect(addThing('sound-hole')).toBe('sound-hole-3')
  })

  test('a kind that does not exist is misuse', () => {
    expect(() => addThing('trapdoor')).toThrow('trapdoor')
  })

  test('a gesture that is running is finished first', () => {
    const drag = beginGesture('Longer')
    drag.preview(change(drag.start, [['box', 'length'], 300]))
    addThing('sound-hole')
    undo()
    expect(bench()).toMatchObject({ undoLabel: 'Longer', design: { box: { length: 300 } } })
  })
})

describe('removing', () => {
  const things = [
    { kind: 'sound-hole', id: 'eye', along: 60, across: 55 },
    { kind: 'sound-hole', id: 'twin', along: { mirror: 'eye' }, across: { mirror: 'eye' } },
    {
      kind: 'screw',
      id: 'between',
      along: { midway: ['eye', 'tail-end edge'] },
      across: { midway: ['eye', 'treble edge'] },
    },
    { kind: 'screw', id: 'of-twin', along: 200, across: { mirror: 'twin' } },
  ]

  test('places that follow it become measures, and nothing else moves', () => {
    lay({ things, saddle: { place: { midway: ['eye', 'tail-end edge'] } } })
    const before = solve(bench().design)
    removeThing('eye')
    const after = solve(bench().design)
    expect(after.problems).toEqual([])
    expect(after.saddle.along).toBeCloseTo(before.saddle.along, 9)
    for (const id of ['twin', 'between', 'of-twin']) {
      const was = before.placed.find((one) => one.thing.id === id)
      expect(placed(id).at.x).toBeCloseTo(was?.at.x ?? Number.NaN, 9)
      expect(placed(id).at.y).toBeCloseTo(was?.at.y ?? Number.NaN, 9)
    }
    const [twin, between, ofTwin] = bench().design.things
    expect(twin).toMatchObject({ along: 60, across: -55 })
    expect(between).toMatchObject({ along: 150, across: 72.5 })
    expect(ofTwin?.across, 'who follows another stays with that').toEqual({ mirror: 'twin' })
    expect(bench().design.saddle.place).toBe(150)
  })

  test('is one entry, and undo brings everything back as it was', () => {
    const design = lay({ things })
    select('eye')
    removeThing('eye')
    expect(bench().selection).toBeNull()
    undo()
    expect(bench().design).toEqual(design)
    expect(bench()).toMatchObject({ selection: 'eye', canUndo: false })
  })

  test('on a wall too, where places count down from the lid-side edge', () => {
    lay({
      things: [
        { kind: 'sound-hole', id: 'a', face: 'bass-wall', along: 12, across: 25 },
        { kind: 'sound-hole', id: 'b', face: 'treble-wall', along: { mirror: 'a' }, across: { mirror: 'a' } },
      ],
    })
    removeThing('a')
    expect(bench().design.things[0]).toMatchObject({ along: 12, across: 25 })
  })

  test('findings overruled for it are forgotten with it, others are not', () => {
    lay({
      things,
      overruled: {
        'opening-to-edge eye': 'x',
        'between-openings eye twin': 'y',
        'opening-to-edge twin': 'z',
      },
    })
    removeThing('eye')
    expect(bench().design.overruled).toEqual({ 'opening-to-edge twin': 'z' })
  })

  const soldered = {
    things: [
      { kind: 'pot', id: 'volume', along: 100, across: 40 },
      { kind: 'jack', id: 'output', face: 'treble-wall', along: 40, across: 20 },
    ],
    wiring: {
      components: [
        { id: 'knob', part: 'pot', thing: 'volume' },
        { id: 'disc', part: 'piezo pickup' },
        { id: 'socket', part: 'jack', thing: 'output' },
      ],
      wires: [
        { from: 'disc.hot', to: 'knob.3' },
        { from: 'disc.ground', to: 'socket.sleeve' },
        { from: 'knob.2', to: 'socket.tip' },
      ],
    },
  }

  test('what is soldered to it goes with its wires, and one undo brings all of it back', () => {
    const design = lay(soldered)
    removeThing('volume')
    const { components, wires } = bench().design.wiring
    expect(components.map(({ id }) => id)).toEqual(['disc', 'socket'])
    expect(wires.map(({ from, to }) => `${from} ${to}`)).toEqual(['disc.ground socket.sleeve'])
    undo()
    expect(bench().design).toEqual(design)
    expect(bench().canUndo).toBe(false)
  })

  test('a component stays at a thing that gets another id, and no new thing takes an id that one waits for', () => {
    lay(soldered)
    expect(setField(['things', 0, 'id'], 'tone', 'Id').ok).toBe(true)
    expect(bench().design.wiring.components[0]).toMatchObject({ id: 'knob', thing: 'tone' })
    undo()
    expect(bench().design.wiring.components[0]?.thing).toBe('volume')
    lay({ wiring: { components: [{ id: 'knob', part: 'pot', thing: 'pot' }] } })
    expect(addThing('pot')).toBe('pot-2')
  })

  test('a thing that is not there is left alone', () => {
    removeThing('nobody')
    expect(bench().canUndo).toBe(false)
  })
})

describe('duplicating', () => {
  test('puts an equal one beside it, clear of it and on the face, and selects it', () => {
    lay({
      things: [
        {
          kind: 'sound-hole',
          id: 'eye',
          along: { share: 0.8 },
          across: { share: 0.6 },
          diameter: 30,
          name: 'Eye',
        },
      ],
    })
    expect(duplicateThing('eye')).toBe('sound-hole')
    expect(bench().selection).toBe('sound-hole')
    const copy = placed('sound-hole')
    expect(copy.thing).toMatchObject({ diameter: 30, name: 'Eye', across: { share: 0.6 } })
    expect(overlap(copy, placed('eye'))).toBe(false)
    const panel = solve(bench().design).panels.lid.bounds
    expect(copy.bounds.minX).toBeGreaterThanOrEqual(panel.minX)
    expect(copy.bounds.maxX).toBeLessThanOrEqual(panel.maxX)
  })

  test('gives null where there is nothing to duplicate', () => {
    expect(duplicateThing('nobody')).toBeNull()
    expect(bench().canUndo).toBe(false)
  })
})

describe('mirroring', () => {
  test('on the lid the partner follows on the other side, turned the other way', () => {
    lay({
      things: [{ kind: 'sound-hole', id: 'eye', along: 60, across: 55, shape: 'oval', turnDegrees: 30 }],
    })
    expect(mirrorThing('eye')).toBe('sound-hole')
    const partner = placed('sound-hole')
    expect(partner.thing).toMatchObject({
      along: { mirror: 'eye' },
      across: { mirror: 'eye' },
      turnDegrees: -30,
    })
    setField(['things', 0, 'across'], 40, 'Move')
    setField(['things', 0, 'along'], 90, 'Move')
    expect(placed('sound-hole').at).toEqual({ x: 90, y: -40 })
    const eye = placed('eye').bounds
    const twin = placed('sound-hole').bounds
    expect([twin.minY, twin.maxY]).toEqual([expect.closeTo(-eye.maxY, 6), expect.closeTo(-eye.minY, 6)])
  })

  test.each([
    ['bass-wall', 'treble-wall'],
    ['treble-wall', 'bass-wall'],
  ] as const)('on the %s the partner goes on the %s, at the same height', (face, other) => {
    lay({ things: [{ kind: 'sound-hole', id: 'a', face, along: 12, across: 25 }] })
    expect(mirrorThing('a')).toBe('sound-hole')
    expect(placed('sound-hole')).toMatchObject({ face: other, at: { x: 12, y: -25 } })
  })

  test('on an end wall the partner stands on the other side of the neck', () => {
    lay({ things: [{ kind: 'sound-hole', id: 'a', face: 'tail-end-wall', along: 50, across: 25 }] })
    mirrorThing('a')
    expect(placed('sound-hole')).toMatchObject({ face: 'tail-end-wall', at: { x: -50, y: -25 } })
    setField(['things', 0, 'across'], 30, 'Lower')
    expect(placed('sound-hole').at.y).toBe(-30)
  })

  test('gives null where the partner would stand on the thing itself or on one that is there', () => {
    lay({ things: [{ kind: 'sound-hole', id: 'middle', along: 60, across: 0 }] })
    expect(mirrorThing('middle')).toBeNull()
    lay({ things: [{ kind: 'sound-hole', id: 'eye', along: 60, across: 55 }] })
    mirrorThing('eye')
    expect(mirrorThing('eye')).toBeNull()
    expect(mirrorThing('sound-hole')).toBeNull()
    expect(mirrorThing('nobody')).toBeNull()
    expect(bench().design.things).toHaveLength(2)
  })
})

describe('another id', () => {
  const fields = {
    things: [
      { kind: 'sound-hole', id: 'eye', along: 60, across: 55 },
      { kind: 'sound-hole', id: 'twin', along: { mirror: 'eye' }, across: { midway: ['eye', 'bass edge'] } },
    ],
    saddle: { place: { midway: ['eye', 'tail-end edge'] } },
    overruled: { 'opening-to-edge eye': 'meant' },
  }

  test('takes along what points at the thing, and the selection', () => {
    lay(fields)
    select('eye')
    expect(setField(['things', 0, 'id'], 'big-eye', 'Id')).toEqual({ ok: true })
    const { design } = bench()
    expect(design.things[1]).toMatchObject({
      along: { mirror: 'big-eye' },
      across: { midway: ['big-eye', 'bass edge'] },
    })
    expect(design.saddle.place).toEqual({ midway: ['big-eye', 'tail-end edge'] })
    expect(design.overruled).toEqual({ 'opening-to-edge big-eye': 'meant' })
    expect(bench().selection).toBe('big-eye')
    expect(solve(design).problems).toEqual([])
    undo()
    expect(bench()).toMatchObject({ selection: 'eye', design: fields })
  })

  test.each([
    ['twin', 'already'],
    ['Big Eye', 'small letters'],
    ['saddle', 'name of a line'],
  ])('%j is refused with its reason', (id, why) => {
    lay(fields)
    expect(setField(['things', 0, 'id'], id, 'Id')).toEqual({
      ok: false,
      sentence: expect.stringContaining(why),
    })
    expect(bench().canUndo).toBe(false)
  })
})
