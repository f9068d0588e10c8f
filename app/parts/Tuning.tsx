/** The tuning: a usual one by its name and key, or any pitches typed, bass string first. */
import { type Field, nameOf, tunedTo, tuningsFor } from '../../geometry/index.ts'
import { setField } from '../state/index.ts'
import { ChoiceField } from './ChoiceField.tsx'
import { useDesign } from './calm.ts'
import type { Answer } from './field.ts'
import { TextField } from './TextField.tsx'

const PATH = ['stringing', 'tuning']
const OTHER = 'another'
const NONE = 'not stated'

/** A comma between figures is a decimal one, as in 82,4 Hz. */
const PARTING = /;|,(?!\d)/

interface Offer {
  readonly name: string
  readonly pitches: readonly string[]
}

/** The usual tunings for so many strings, each in its usual keys. */
function offersFor(strings: number): Offer[] {
  return tuningsFor(strings).flatMap((tuning) =>
    tuning.keys.map((key) => {
      const pitches = tunedTo(tuning, key).map((midi) => nameOf(midi))
      return { name: `${pitches.join(' ')}: ${tuning.title.toLowerCase()}`, pitches }
    }),
  )
}

export function Tuning({ field: { label, help, address } }: { readonly field: Field }) {
  const { strings, stringing } = useDesign()
  const offers = offersFor(strings.count)
  const between = stringing.tuning.some((one) => /\s/.test(one)) ? ', ' : ' '
  const stated = stringing.tuning.join(between)
  const usual = offers.find((one) => one.pitches.join(' ') === stated)
  const chosen = stated === '' ? NONE : (usual?.name ?? OTHER)
  const choose = (name: string): Answer => {
    if (name === NONE) return setField(PATH, [], label)
    const offer = offers.find((one) => one.name === name)
    return offer ? setField(PATH, [...offer.pitches], label) : { ok: true }
  }
  const take = (text: string): Answer =>
    setField(
      PATH,
      text
        .split(PARTING.test(text) ? PARTING : /\s+(?!hz)/i)
        .map((one) => one.trim())
        .filter(Boolean),
      label,
    )
  return (
    <div className="field-span">
      <ChoiceField
        label="Usual tunings"
        help="Common practice for this number of strings, bass string first. Choose one, or type the pitches below."
        value={chosen}
        options={[NONE, ...offers.map((one) => one.name), ...(chosen === OTHER ? [OTHER] : [])]}
        onCommit={choose}
      />
      <TextField
        label={label}
        help={`${help} Parted by spaces or commas, as in G2 D3 G3 or 98 Hz, 147 Hz.`}
        address={address}
        placeholder="G2 D3 G3"
        value={stated}
        onCommit={take}
      />
    </div>
  )
}
