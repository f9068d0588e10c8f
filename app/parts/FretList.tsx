/** Which frets there are: a count of equal steps, or a list of steps, cents or ratios. */
import type { Design, Field } from '../../geometry/index.ts'
import { setField } from '../state/index.ts'
import { ChoiceField } from './ChoiceField.tsx'
import { useLayout } from './calm.ts'
import type { Answer } from './field.ts'
import { NumberField } from './NumberField.tsx'
import { TextField } from './TextField.tsx'

type Frets = Design['scale']['frets']
type By = Frets['by']

const BY_WORDS: Readonly<Record<By, string>> = {
  equal: 'equal temperament, by count',
  steps: 'some of the twelve, by steps',
  cents: 'a list of cents',
  ratios: 'a list of ratios',
}

const EXAMPLES: Readonly<Record<Exclude<By, 'equal'>, string>> = {
  steps: 'Semitones above the open string, as in 2, 4, 5, 7, 9, 10, 12.',
  cents: 'Cents above the open string, rising, as in 204, 386, 498, 702.',
  ratios: 'Ratios to the open string, rising, as in 9/8, 5/4, 4/3, 3/2, 2.',
}

/** A just major scale: each ratio is a plain interval over the open string (common practice). */
const FIRST_RATIOS = ['9/8', '5/4', '4/3', '3/2', '5/3', '15/8', '2']

const PATH = ['scale', 'frets']

export function FretList({ field: { label, help, address } }: { readonly field: Field }) {
  const layout = useLayout()
  const { frets } = layout.design.scale
  const take = (next: Frets): Answer => setField(PATH, next, label)
  const turn = (by: By): Answer => {
    // What is there now, said in the other way, as far as it can be.
    const cents = layout.frets
      .filter((fret) => fret.number > 0)
      .map((fret) => Math.round(fret.cents * 100) / 100)
    const some = cents.length > 0 ? cents : [1200]
    if (by === 'equal')
      return take({ by, count: Math.max(1, Math.min(36, Math.ceil((some.at(-1) ?? 1200) / 100))) })
    if (by === 'steps') return take({ by, list: some.map((one) => Math.round(one) / 100) })
    return take(by === 'cents' ? { by, list: some } : { by, list: FIRST_RATIOS })
  }
  return (
    <div className="field-span">
      <ChoiceField
        label={label}
        help={help}
        address={address}
        value={frets.by}
        options={Object.keys(BY_WORDS)}
        name={(by) => BY_WORDS[by as By]}
        onCommit={(by) => turn(by as By)}
      />
      {frets.by === 'equal' ? (
        <NumberField
          label="How many"
          whole
          min={0}
          max={36}
          value={frets.count}
          onCommit={(count) => take({ by: 'equal', count })}
        />
      ) : (
        <TextField
          label={EXAMPLES[frets.by]}
          value={frets.list.join(', ')}
          onCommit={(text) => readList(frets.by as Exclude<By, 'equal'>, text, take)}
        />
      )}
    </div>
  )
}

/** A list as it is typed: numbers or ratios, parted by commas or spaces. */
function readList(by: Exclude<By, 'equal'>, text: string, take: (frets: Frets) => Answer): Answer {
  const words = text.split(/[,;\s]+/).filter(Boolean)
  if (words.length === 0) return { ok: false, sentence: `Nothing is written here. ${EXAMPLES[by]}` }
  if (by === 'ratios') return take({ by, list: words })
  const list = words.map((word) => Number(word.replace('−', '-')))
  const wrong = words[list.findIndex((one) => !Number.isFinite(one))]
  if (wrong !== undefined) return { ok: false, sentence: `“${wrong}” is no number. ${EXAMPLES[by]}` }
  return take({ by, list })
}
