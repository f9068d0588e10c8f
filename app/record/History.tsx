/** Who strung it or worked on it, when, and with which strings. */
import { fieldsOfEntry, type HistoryRow } from '../../geometry/index.ts'
import { useDesign } from '../parts/calm.ts'
import { setField } from '../state/index.ts'
import { Written } from './Written.tsx'

const EMPTY: HistoryRow = { who: '', when: '', strings: '', note: '' }

export function History() {
  const { history } = useDesign().record
  const fields = fieldsOfEntry('record.history')
  return (
    <section className="sheet-table" aria-label="Strung and looked after">
      <table className="written-table">
        <caption>Strung and looked after</caption>
        <thead>
          <tr>
            {fields.map((field) => (
              <th key={field.name} scope="col" title={field.help}>
                {field.label}
              </th>
            ))}
            <th scope="col">
              <span className="unseen">Take away</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {history.map((row, index) => (
            <tr key={index}>
              {fields.map(({ name, label }) => (
                <td key={name}>
                  <Written
                    label={`${label}, row ${index + 1}`}
                    value={String(row[name as keyof HistoryRow])}
                    take={(text) => setField(['record', 'history', index, name], text, label)}
                  />
                </td>
              ))}
              <td>
                <button
                  type="button"
                  className="quiet take-away"
                  aria-label={`Take away row ${index + 1}`}
                  onClick={() =>
                    setField(
                      ['record', 'history'],
                      history.filter((_, at) => at !== index),
                      'Take a row away',
                    )
                  }
                >
                  ×
                </button>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="write-more">
        <button
          type="button"
          onClick={() => setField(['record', 'history'], [...history, EMPTY], 'Add a row')}
        >
          Write a row
        </button>
      </p>
    </section>
  )
}
