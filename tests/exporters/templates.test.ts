import { describe, expect, test } from 'vitest'
import { templates } from '../../exporters/index.ts'
import { allParts, lid, neck } from '../support/sampleParts.ts'

const names = (...args: Parameters<typeof templates>) => templates(...args).map((file) => file.name)

describe('templates', () => {
  test('a file for each part and one for all, in each format', () => {
    expect(names([lid, neck], { title: 'Söhne’s Tea Box', formats: ['svg', 'dxf'] })).toEqual([
      'sohne-s-tea-box-lid.svg',
      'sohne-s-tea-box-neck-top.svg',
      'sohne-s-tea-box-all-parts.svg',
      'sohne-s-tea-box-lid.dxf',
      'sohne-s-tea-box-neck-top.dxf',
      'sohne-s-tea-box-all-parts.dxf',
    ])
  })

  test('only the parts asked for, and no sheet of a single one', () => {
    expect(names(allParts, { title: 'x', formats: ['dxf'], only: ['neck-top'] })).toEqual(['x-neck-top.dxf'])
    expect(names(allParts, { title: 'x', formats: ['svg'], only: ['nut', 'lid'] })).toEqual([
      'x-lid.svg',
      'x-nut.svg',
      'x-all-parts.svg',
    ])
  })

  test('a title without a letter still gives a name, and no name leads out of its folder', () => {
    const odd = { ...lid, id: '../lid' }
    expect(names([odd], { title: '茶', formats: ['svg'] })).toEqual(['template-lid.svg'])
  })

  test('the unit reaches every DXF', () => {
    for (const { text } of templates([lid, neck], { title: 'x', formats: ['dxf'], dxfUnits: 'inches' })) {
      expect(text).toContain('\n$INSUNITS\n70\n1\n')
    }
  })

  test('the same parts give the same bytes', () => {
    const once = () => templates(allParts, { title: 'Tea box', formats: ['svg', 'dxf'] })
    expect(once()).toEqual(once())
  })

  test('what is not there is refused with what there is', () => {
    expect(() => templates([lid], { title: 'x', formats: ['svg'], only: ['lip'] })).toThrow(
      'There is no part "lip": the parts are lid.',
    )
    expect(() => templates([lid, lid], { title: 'x', formats: ['svg'] })).toThrow('lid, lid')
    expect(() => templates([lid], { title: 'x', formats: ['pdf' as 'svg'] })).toThrow('"pdf"')
  })
})
