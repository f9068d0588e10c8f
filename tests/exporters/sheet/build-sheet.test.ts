/** The sheet says what the report says, for every sample and for designs nobody would draw. */
import { describe, expect, it } from 'vitest'
import { reportOf } from '../../../exporters/report.ts'
import { buildSheet } from '../../../exporters/sheet/build-sheet.ts'
import { sheetFiles } from '../../../exporters/sheet/files.ts'
import { writeSheetHtml } from '../../../exporters/sheet/html/write-html.ts'
import { tablesOf } from '../../../exporters/sheet/model.ts'
import { checkDesign, type Design, readDesign } from '../../../geometry/index.ts'
import { forEveryDesign, PATIENCE } from '../../support/every-design.ts'
import { readCsv } from '../../support/readCsv.ts'
import { samples } from '../../support/samples.ts'

function tableOf(design: Design, id: string) {
  const file = sheetFiles(design).find((one) => one.name.endsWith(`-${id}.csv`))
  if (!file) throw new Error(`the sheet has no table ${id}`)
  return readCsv(file.text)
}

const tea = samples().find(({ name }) => name.startsWith('tea-box'))?.design as Design

function changed(record: object, more: object = {}): Design {
  const reading = checkDesign({ ...tea, ...more, record })
  if (!reading.ok) throw new Error(reading.faults[0]?.sentence)
  return reading.design
}

describe.each(samples().map(({ name, design }) => ({ name, design })))('$name', ({ design }) => {
  const report = reportOf(design)

  it('lists every fret of the report, figure by figure', () => {
    const frets = report.frets.filter((one) => one.number > 0)
    const table = tableOf(design, 'frets')
    expect(table.column('Fret')).toEqual(frets.map((one) => String(one.number)))
    expect(table.column('From the nut (mm)').map(Number)).toEqual(frets.map((one) => one.fromNut))
    expect(table.column('From the fret before (mm)').map(Number)).toEqual(frets.map((one) => one.step))
    expect(table.column('Off by (mm)').map(Number)).toEqual(frets.map((one) => one.onRule.error))
  })

  it('lists the strings of the report, treble first', () => {
    const strings = [...report.strings].reverse()
    const table = tableOf(design, 'strings')
    expect(table.column('Pull (N)').map(Number)).toEqual(strings.map((one) => one.tension))
    expect(table.column('Gauge (mm)').map(Number)).toEqual(strings.map((one) => one.gauge))
    expect(table.column('Of breaking (of 1)').map(Number)).toEqual(strings.map((one) => one.shareOfBreaking))
    const marks = tableOf(design, 'saddle-marks')
    expect(marks.column('At the saddle (mm)').map(Number)).toEqual(strings.map((one) => one.yAtSaddle))
  })

  it('lists every hole that is drilled and every thing that stands on a face', () => {
    const schedule = tableOf(design, 'schedule')
    expect(schedule.column('No.').map(Number)).toEqual(report.schedule.map((one) => one.order))
    const drilled = report.parts
      .filter(({ id }) => !/tail-strip|-side$/.test(id))
      .reduce((sum, one) => sum + (one.operations.drill ?? 0), 0)
    expect(schedule.column('Work').filter((work) => work === 'drill')).toHaveLength(drilled)
    const measured = report.schedule.filter((one) => one.work !== 'saw slots')
    expect(
      schedule
        .column('From the edge (mm)')
        .filter((one) => one !== 'see Frets')
        .map(Number),
    ).toEqual(measured.map((one) => one.edge.distance))
    if (report.things.length > 0)
      expect(tableOf(design, 'places').column('From the edge (mm)').map(Number)).toEqual(
        report.things.map((one) => one.fromEdge),
      )
  })

  it('is the same every time, and its JSON gives the design back', () => {
    const files = sheetFiles(structuredClone(design))
    expect(files).toEqual(sheetFiles(design))
    const everything = files.find(({ name }) => name.endsWith('-everything.json'))
    const held = JSON.parse(everything?.text ?? '')
    expect(readDesign(JSON.stringify(held.design))).toEqual({ ok: true, design })
    expect(held.report).toEqual(JSON.parse(JSON.stringify(report)))
  })

  it('has names that are safe on any disk, each once', () => {
    const names = sheetFiles(design).map((one) => one.name)
    for (const name of names) expect(name).toMatch(/^[a-z0-9-]+\.(html|csv|json)$/)
    expect(new Set(names).size).toBe(names.length)
  })
})

it('never fails for a valid design, however odd', { timeout: PATIENCE }, () => {
  forEveryDesign((design) => {
    const html = writeSheetHtml(buildSheet(design))
    return /NaN|undefined|Infinity/.test(html) ? ['the page shows a number that is none'] : []
  }, 12)
})

describe('as built', () => {
  it('puts a measure beside the plan it names, and says the difference', () => {
    const design = changed({
      built: [
        { planned: 'saddle.fromEdge', built: 188.5, note: 'moved for the tuner' },
        { what: 'Bevel', planned: 'about 2 mm', built: 2.4 },
      ],
    })
    const table = tableOf(design, 'as-built')
    // 0.74 of a lid of 10 in is 187.96 mm.
    expect(table.column('Planned (mm)')).toEqual(['187.96', 'about 2 mm'])
    expect(table.column('Built (mm)')).toEqual(['188.5', '2.4'])
    expect(Number(table.column('More or less (mm)')[0])).toBeCloseTo(0.54, 6)
    expect(table.column('Measure')).toEqual(['Saddle from the lid’s edge at the neck', 'Bevel'])
  })

  it('shows planned and built on the builder’s own rule', () => {
    const design = changed(
      { built: [{ what: 'Box, deep', planned: 'box.depth', built: 11.09375 * 25.4 }] },
      { box: { ...tea.box, depth: 11.0625 * 25.4 } },
    )
    const table = tableOf(design, 'as-built')
    expect(table.column('Planned (on the rule)')).toEqual(['11 1/16 in'])
    expect(table.column('Built (on the rule)')).toEqual(['11 3/32 in'])
  })

  it('keeps the checksum: what is written down afterwards makes no other design', () => {
    const later = changed({ history: [{ who: 'Ann', when: 'May', strings: 'light' }], maker: 'Ann' })
    expect(buildSheet(later).checksum).toBe(buildSheet(tea).checksum)
    expect(buildSheet(changed({}, { scale: { ...tea.scale, length: 640 } })).checksum).not.toBe(
      buildSheet(tea).checksum,
    )
  })
})

it('says each caution once, and only where it belongs', () => {
  const cautions = (design: Design) =>
    buildSheet(design).sections.flatMap(({ blocks }) =>
      blocks.flatMap((block) =>
        block.kind === 'steps' ? block.steps.flatMap((one) => one.caution ?? []) : [],
      ),
    )
  const said = cautions(tea)
  expect(new Set(said).size).toBe(said.length)
  expect(said.join(' ')).toMatch(/protect your eyes/)
  expect(said.join(' ')).toMatch(/lead/)
  expect(said.join(' ')).not.toMatch(/[Ss]older/)
  const wired = samples().find(({ name }) => name.startsWith('cutlery'))?.design as Design
  expect(cautions(wired).join(' ')).toMatch(/[Ss]older.*earthed by a qualified person/)
})

it('lists overruled findings with their reasons, and open ones as open', () => {
  const tight = samples().find(({ name }) => name.includes('tight'))?.design as Design
  const report = reportOf(tight)
  const ids = tablesOf(buildSheet(tight)).map((one) => one.id)
  const open = report.findings.filter((one) => one.overruled === null && /stop|care/.test(one.grade))
  expect(ids.includes('open')).toBe(open.length > 0)
  const key = open[0]?.key ?? ''
  const reading = checkDesign({ ...tight, overruled: { ...tight.overruled, [key]: 'it held on a scrap' } })
  if (!reading.ok) throw new Error(reading.faults[0]?.sentence)
  expect(tableOf(reading.design, 'overruled').column('Why')).toContain('it held on a scrap')
})

it('says where there was no room for every distance, and the tables have them all', () => {
  const holes = (count: number) =>
    Array.from({ length: count }, (_, index) => ({
      kind: 'sound-hole',
      id: `hole-${index}`,
      along: 20 + 9 * index,
      across: 5 * index - 60,
      diameter: 4,
    }))
  const captionOf = (things: object[]) => {
    const design = changed({}, { things })
    const lid = buildSheet(design)
      .sections.flatMap(({ blocks }) => blocks)
      .flatMap((block) => (block.kind === 'picture' ? [block.picture] : []))
      .find((one) => one.id === 'lid')
    expect(tableOf(design, 'places').rows).toHaveLength(things.length)
    return lid?.caption ?? ''
  }
  expect(captionOf(holes(20))).toMatch(/no room for every distance/)
  expect(captionOf(holes(2))).not.toMatch(/no room/)
})
