/** What the finished instrument measures, each beside what was planned. */
import { useState } from 'react'
import { builtRows, cellText, plannedMeasures, sourceOf } from '../../exporters/index.ts'
import {
  type AsBuilt as Built,
  fieldsOfEntry,
  formatLength,
  readLength,
  unitName,
} from '../../geometry/index.ts'
import { useDesign } from '../parts/calm.ts'
import type { Answer } from '../parts/field.ts'
import { setField } from '../state/index.ts'
import { Written } from './Written.tsx'

/** The choice that is no planned measure. */
const OWN = ''

export function AsBuilt() {
  const design = useDesign()
  const { built } = design.record
  const source = sourceOf(design)
  const rows = builtRows(source)
  const measures = plannedMeasures(source)
  const named = new Set(measures.map((one) => one.name))
  const [labels] = useState(() => new Map(fieldsOfEntry('record.built').map((one) => [one.name, one.label])))
  const title = (name: keyof Built) => labels.get(name) ?? name
  const set = (index: number, name: keyof Built, value: unknown): Answer =>
    setField(['record', 'built', index, name], value, title(name))
  const add = (name: string) => {
    const measure = measures.find((one) => one.name === name)
    const row: Built = { what: '', planned: name, built: measure?.mm ?? 0, note: '' }
    setField(['record', 'built'], [...built, row], 'Measure as built')
  }
  const left = measures.filter((one) => built.every((row) => row.planned !== one.name))
  return (
    <section className="sheet-table" aria-label="As built, beside the plan">
      <table className="written-table">
        <caption>As built, beside the plan</caption>
        <thead>
          <tr>
            <th scope="col">{title('what')}</th>
            <th scope="col" className="figure">
              {title('planned')}, {unitName(design.units)}
            </th>
            <th scope="col" className="figure">
              {title('built')}, {unitName(design.units)}
            </th>
            <th scope="col" className="figure">
              More or less, {unitName(design.units)}
            </th>
            <th scope="col">{title('note')}</th>
            <th scope="col">
              <span className="unseen">Take away</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {built.map((row, index) => {
            const shown = rows[index]
            const ours = named.has(row.planned)
            const what = shown?.what || `measure ${index + 1}`
            return (
              <tr key={index}>
                <th scope="row">
                  {ours ? (
                    what
                  ) : (
                    <Written
                      label={`${title('what')}, row ${index + 1}`}
                      value={row.what}
                      placeholder="what you measured"
                      take={(text) => set(index, 'what', text)}
                    />
                  )}
                </th>
                <td className="figure">
                  {ours ? (
                    formatLength(Number(shown?.planned), design.units)
                  ) : (
                    <Written
                      label={`${title('planned')}: ${what}`}
                      value={row.planned}
                      figure
                      placeholder="in words"
                      take={(text) => set(index, 'planned', text)}
                    />
                  )}
                </td>
                <td className="figure">
                  <Written
                    label={`${title('built')}: ${what}`}
                    value={formatLength(row.built, design.units)}
                    figure
                    take={(text) => {
                      const reading = readLength(text, design.units.display)
                      if (!reading.ok) return reading
                      if (ours && reading.mm < 0 && Number(shown?.planned) >= 0)
                        return { ok: false, sentence: `Read ${text.trim()}; no size is less than nothing.` }
                      return set(index, 'built', reading.mm)
                    }}
                  />
                </td>
                <td className="figure">
                  {shown && cellText(shown.difference, { as: 'exact', signed: true }, design.units)}
                </td>
                <td>
                  <Written
                    label={`${title('note')}: ${what}`}
                    value={row.note}
                    take={(text) => set(index, 'note', text)}
                  />
                </td>
                <td>
                  <button
                    type="button"
                    className="quiet take-away"
                    aria-label={`Take away: ${what}`}
                    onClick={() =>
                      setField(
                        ['record', 'built'],
                        built.filter((_, at) => at !== index),
                        'Take a measure away',
                      )
                    }
                  >
                    ×
                  </button>
                </td>
              </tr>
            )
          })}
        </tbody>
      </table>
      <p className="write-more">
        <label>
          <span className="unseen">Measure again</span>
          <select
            value="choose"
            onChange={(event) => event.target.value !== 'choose' && add(event.target.value)}
          >
            <option value="choose">Measure again…</option>
            {left.map((one) => (
              <option key={one.name} value={one.name}>
                {one.title}
              </option>
            ))}
            <option value={OWN}>Something else</option>
          </select>
        </label>
      </p>
    </section>
  )
}
