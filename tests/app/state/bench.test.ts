import { beforeEach, describe, expect, test } from 'vitest'
import {
  adopt,
  beginGesture,
  commit,
  committed,
  goTo,
  light,
  onCommit,
  openDesign,
  openText,
  redo,
  saveFile,
  select,
  setField,
  startFresh,
  undo,
  useBench,
} from '../../../app/state/index.ts'
import { change, checkDesign, type Design, readDesign, solve } from '../../../geometry/index.ts'

const bench = () => useBench.getState()

function designOf(fields: object = {}): Design {
  const reading = checkDesign({ format: 'lidwright', version: 1, ...fields })
  if (!reading.ok) throw new Error(reading.faults[0]?.sentence)
  return reading.design
}

const eye = { kind: 'sound-hole', id: 'eye', along: 60, across: 55 }
const along = (mm: number) => change(bench().design, [['things', 0, 'along'], mm])

let heard: [string, string][]
let deaf: () => void = () => {}
beforeEach(() => {
  deaf()
  adopt(designOf({ things: [eye] }))
  heard = []
  deaf = onCommit((design, document) => heard.push([design.title, document]))
})

describe('committing', () => {
  test('undo with nothing to undo is a no-op that says so, and so is redo', () => {
    const before = bench()
    expect([undo(), redo()]).toEqual([false, false])
    expect(bench().design).toBe(before.design)
    expect(bench()).toMatchObject({ canUndo: false, canRedo: false, undoLabel: null, redoLabel: null })
  })

  test('an entry is named after what was done', () => {
    setField(['box', 'length'], 250, 'Longer box')
    setField(['box', 'width'], 150, 'Narrower box')
    undo()
    expect(bench()).toMatchObject({ undoLabel: 'Longer box', redoLabel: 'Narrower box' })
  })

  test('a new change clears redo; selecting, going elsewhere and lighting do not', () => {
    setField(['box', 'length'], 250, 'Length')
    undo()
    select('eye')
    goTo('prove')
    light('opening-to-edge eye')
    expect(bench().canRedo).toBe(true)
    setField(['box', 'width'], 150, 'Width')
    expect(bench().canRedo).toBe(false)
    expect(redo()).toBe(false)
  })

  test('undo brings back the selection that went with the change, redo the one after it', () => {
    select('eye')
    setField(['things', 0, 'along'], 80, 'Move')
    select('saddle')
    undo()
    expect(bench().selection).toBe('eye')
    select(null)
    redo()
    expect(bench().selection).toBe('eye')
  })

  test('a selected thing that vanishes is selected no more; structure stays selected', () => {
    select('eye')
    commit('Empty', change(bench().design, [['things'], []]))
    expect(bench().selection).toBeNull()
    undo()
    expect(bench().selection).toBe('eye')
    select('saddle')
    redo()
    undo()
    select('saddle')
    commit('Empty', change(bench().design, [['things'], []]))
    expect(bench().selection).toBe('saddle')
  })

  test('a change to something invalid is refused with the sentence of its fault, without a trace', () => {
    const before = bench()
    expect(setField(['box', 'length'], 5000, 'Length')).toEqual({
      ok: false,
      sentence: 'Read 5000; at most 1500 is wanted.',
    })
    expect(setField(['box', 'length'], 'long', 'Length').ok).toBe(false)
    expect(setField(['box', 'colour'], 'green', 'Colour').ok).toBe(false)
    expect(bench()).toEqual(before)
    expect(bench().design).toBe(before.design)
    expect(heard).toEqual([])
  })

  test('a path that leads nowhere is misuse and throws, and the bench stays as it was', () => {
    const before = bench().design
    expect(() => setField(['title', 'length'], 5, 'x')).toThrow('"length"')
    expect(() => setField(['__proto__', 'x'], 5, 'x')).toThrow('__proto__')
    expect(bench().design).toBe(before)
  })

  test('what changes nothing makes no entry and tells nobody', () => {
    expect(setField(['box', 'length'], 240, 'Length')).toEqual({ ok: true })
    expect(setField(['things'], [structuredClone(bench().design.things[0])], 'Things')).toEqual({ ok: true })
    expect(setField(['saddle', 'setback'], -0, 'Setback')).toEqual({ ok: true })
    expect(bench().canUndo).toBe(false)
    expect(heard).toEqual([])
  })

  test('a field taken away goes back to its default, so the design stays complete', () => {
    setField(['box', 'length'], 300, 'Length')
    setField(['box', 'length'], undefined, 'Length')
    expect(bench().design.box.length).toBe(240)
    expect(solve(bench().design).box.x1 - solve(bench().design).box.x0).toBeCloseTo(240, 9)
  })

  test('what was not touched stays the same object, so what is derived of it stays known', () => {
    const before = bench().design
    setField(['box', 'length'], 300, 'Length')
    expect(bench().design.things).toBe(before.things)
    expect(bench().design.box.walls).toBe(before.box.walls)
  })

  test('overruled findings may have any name, even one that every object has', () => {
    const before = bench().design
    for (const name of ['constructor', 'toString', 'opening-to-edge eye']) {
      const reasons = { [name]: 'so it is' }
      expect(commit('Overrule', change(before, [['overruled'], reasons]))).toEqual({ ok: true })
      expect(Object.entries(bench().design.overruled)).toEqual([[name, 'so it is']])
      undo()
      expect(Object.keys(bench().design.overruled)).toEqual([])
      redo()
      expect(Object.entries(bench().design.overruled)).toEqual([[name, 'so it is']])
      undo()
    }
  })

  test('a design is frozen through and through: altering one in place throws', () => {
    setField(['box', 'length'], 250, 'Length')
    const { design } = bench()
    expect(() => Object.assign(design, { title: 'x' })).toThrow(TypeError)
    expect(() => Object.assign(design.box.walls, { bass: 1 })).toThrow(TypeError)
    expect(() => (design.things as unknown[]).push(1)).toThrow(TypeError)
  })

  test('whoever listens hears of every committed design once', () => {
    setField(['title'], 'one', 'Title')
    undo()
    redo()
    openDesign(designOf({ title: 'two' }), 'Open')
    expect(heard).toEqual([
      ['one', 'the same'],
      ['Untitled box', 'the same'],
      ['one', 'the same'],
      ['two', 'another'],
    ])
  })
})

describe('a gesture', () => {
  test('is one entry, however many frames it has, and is told once', () => {
    const drag = beginGesture('Move the eye')
    for (const mm of [61, 62, 63]) drag.preview(change(drag.start, [['things', 0, 'along'], mm]))
    expect(committed()).toBe(drag.start)
    expect(heard).toEqual([])
    drag.finish()
    expect(bench().design.things[0]?.along).toBe(63)
    expect(bench().undoLabel).toBe('Move the eye')
    undo()
    expect(bench().design.things[0]?.along).toBe(60)
    expect(bench().canUndo).toBe(false)
    expect(heard).toHaveLength(2)
  })

  test('each frame is computed from the start: what an earlier frame changed and this one does not is back', () => {
    const drag = beginGesture('Move')
    drag.preview(change(drag.start, [['things', 0, 'along'], 70]))
    drag.preview(change(drag.start, [['things', 0, 'across'], 40]))
    expect(bench().design.things[0]).toMatchObject({ along: 60, across: 40 })
    drag.cancel()
  })

  test('cancelled it leaves no trace: design, selection, redo and history are as they were', () => {
    setField(['box', 'length'], 250, 'Length')
    undo()
    select('eye')
    const before = bench()
    const drag = beginGesture('Move')
    drag.preview(along(70))
    select('saddle')
    drag.cancel()
    expect(bench()).toEqual(before)
    expect(bench().design).toBe(before.design)
    expect(redo()).toBe(true)
  })

  test('back where it began it makes no entry and keeps redo', () => {
    setField(['box', 'length'], 250, 'Length')
    undo()
    const drag = beginGesture('Move')
    drag.preview(along(70))
    drag.preview(change(drag.start, [['things', 0, 'along'], 60]))
    expect(bench().design).toBe(drag.start)
    drag.finish()
    expect(bench()).toMatchObject({ canUndo: false, canRedo: true })
  })

  test('passes over frames that would be invalid: the last good one stays', () => {
    const drag = beginGesture('Stretch')
    drag.preview(change(drag.start, [['things', 0, 'diameter'], 30]))
    drag.preview(change(drag.start, [['things', 0, 'diameter'], 3000]))
    drag.finish()
    expect(bench().design.things[0]).toMatchObject({ diameter: 30 })
  })

  test('may bring a thing in or take it away', () => {
    const drag = beginGesture('Put down a screw')
    const screw = { kind: 'screw', id: 'screw', along: 10 }
    drag.preview(change(drag.start, [['things', 1], screw]))
    expect(bench().design.things).toHaveLength(2)
    drag.preview(change(drag.start, [['things', 1], { ...screw, id: 'eye' }]))
    expect(bench().design.things[1]?.id).toBe('screw')
    drag.finish()
    expect(checkDesign(bench().design)).toEqual({ ok: true, design: bench().design })
    undo()
    expect(bench().design).toEqual(drag.start)
  })

  test('may not give a thing the id of another', () => {
    adopt(designOf({ things: [eye, { kind: 'screw', id: 'screw' }] }))
    const drag = beginGesture('Rename')
    drag.preview(change(drag.start, [['things', 1, 'id'], 'eye']))
    expect(bench().design).toBe(drag.start)
    drag.preview(change(drag.start, [['things', 1, 'id'], 'bolt']))
    expect(bench().design.things[1]?.id).toBe('bolt')
    drag.cancel()
  })

  test('is finished by a change that is committed while it runs', () => {
    const drag = beginGesture('Move')
    drag.preview(along(70))
    commit('Longer box', change(bench().design, [['box', 'length'], 250]))
    drag.preview(along(90))
    expect(bench().design).toMatchObject({ box: { length: 250 }, things: [{ along: 70 }] })
    undo()
    expect(bench()).toMatchObject({ undoLabel: 'Move', design: { box: { length: 240 } } })
  })

  test('is finished by the next one, and by any other change', () => {
    const first = beginGesture('First')
    first.preview(along(70))
    const second = beginGesture('Second')
    second.preview(change(second.start, [['things', 0, 'across'], 40]))
    setField(['box', 'length'], 250, 'Third')
    expect(bench().design.things[0]).toMatchObject({ along: 70, across: 40 })
    const labels = [bench().undoLabel]
    while (undo()) labels.push(bench().undoLabel)
    expect(labels).toEqual(['Third', 'Second', 'First', null])
  })

  test('undone while it runs it is cancelled; redo has to wait', () => {
    setField(['box', 'length'], 250, 'Length')
    undo()
    const drag = beginGesture('Move')
    drag.preview(along(70))
    expect(redo()).toBe(false)
    expect(bench()).toMatchObject({ canUndo: true, undoLabel: 'Move', canRedo: false })
    expect(undo()).toBe(true)
    expect(bench().design).toBe(drag.start)
    expect(redo()).toBe(true)
  })

  test('does nothing once it has ended', () => {
    const drag = beginGesture('Move')
    drag.preview(along(70))
    drag.finish()
    const after = bench().design
    drag.preview(along(90))
    drag.cancel()
    drag.finish()
    expect(bench().design).toBe(after)
    const next = beginGesture('Next')
    drag.cancel()
    next.preview(along(75))
    expect(bench().design.things[0]?.along).toBe(75)
    next.cancel()
  })
})

describe('opening', () => {
  test('is one entry that can be taken back, with nothing selected', () => {
    select('eye')
    light('opening-to-edge eye')
    const before = bench().design
    openDesign(designOf({ title: 'Another' }), 'Open')
    expect(bench()).toMatchObject({ selection: null, litFinding: null, undoLabel: 'Open' })
    undo()
    expect(bench().design).toEqual(before)
    expect(bench().selection).toBe('eye')
  })

  test('a file that cannot be read changes nothing and tells what is wrong with it', () => {
    const before = bench()
    expect(openText('{"format":"lidwright","version":1,"box":{"length":-3}}')).toEqual([
      { path: 'box.length', sentence: 'Read -3; at least 40 is wanted.' },
    ])
    expect(openText('')).toHaveLength(1)
    expect(bench()).toEqual(before)
  })

  test('an invalid design is refused like any other change', () => {
    const { design } = bench()
    expect(openDesign({ ...design, box: { ...design.box, length: 0 } }, 'Open').ok).toBe(false)
    expect(bench().design).toBe(design)
  })

  test('a fresh page stays fresh until a design is begun, even one of all defaults, which is then told', () => {
    adopt(designOf(), { fresh: true })
    setField(['box', 'length'], 240, 'Length')
    expect(bench().fresh).toBe(true)
    startFresh(designOf())
    expect(bench()).toMatchObject({ fresh: false, canUndo: false })
    expect(heard).toEqual([['Untitled box', 'another']])
  })

  test('a design that was kept is laid down without history, and nobody is told', () => {
    setField(['box', 'length'], 250, 'Length')
    heard = []
    adopt(designOf({ title: 'Kept' }))
    expect(bench()).toMatchObject({ canUndo: false, canRedo: false, selection: null, fresh: false })
    expect(heard).toEqual([])
  })
})

describe('the file', () => {
  test('read again it gives an equal design, and saved again the same text', () => {
    setField(['things', 0, 'along'], { share: 0.25 }, 'Move')
    setField(['title'], 'Grün & blau: 3/4', 'Title')
    const { name, text } = saveFile()
    expect(name).toBe('grun-blau-3-4.lidwright.json')
    expect(text.endsWith('}\n')).toBe(true)
    expect(text).toContain('\n  "title"')
    const reading = readDesign(text)
    expect(reading).toEqual({ ok: true, design: bench().design })
    expect(openText(text)).toBeNull()
    expect(bench().design).toEqual(committed())
    expect(saveFile().text).toBe(text)
  })

  test.each([
    ['', 'untitled-box'],
    ['…', 'untitled-box'],
    ['../../etc', 'etc'],
    ['x'.repeat(120), 'x'.repeat(60)],
  ])('a title of %j is called %j', (title, name) => {
    setField(['title'], title, 'Title')
    expect(saveFile().name).toBe(`${name}.lidwright.json`)
  })

  test('the same design gives the same text, in whatever order it was made', () => {
    const overrule = (...names: string[]) => {
      adopt(designOf({ things: [eye] }))
      for (const name of names) setField(['overruled', name], 'so it is', 'Overrule')
      return saveFile().text
    }
    expect(overrule('b', 'a')).toBe(overrule('a', 'b'))
    const shuffled = Object.fromEntries(Object.entries(designOf({ things: [eye] })).reverse())
    openText(JSON.stringify(shuffled))
    const turned = saveFile().text
    adopt(designOf({ things: [eye] }))
    expect(saveFile().text).toBe(turned)
  })

  test('what a running gesture previews is not in it', () => {
    const text = saveFile().text
    const drag = beginGesture('Move')
    drag.preview(along(99))
    expect(saveFile().text).toBe(text)
    drag.cancel()
  })
})
