/** The open chord tuned until it stands still: where each string rests, how it beats before, and how it sounds. */
import { useEffect, useState } from 'react'
import { loadsOf, type PureTuning as Pure, pureTuningOf } from '../../geometry/index.ts'
import { useLayout } from './calm.ts'
import { sayMissing } from './PullTable.tsx'
import { sayCents } from './say-loads.ts'
import { canSound, silence, sound } from './tone.ts'

export function PureTuning() {
  const layout = useLayout()
  const loads = loadsOf(layout)
  const [sounding, setSounding] = useState<string | null>(null)
  useEffect(() => silence, [])
  if (loads.missing) return <p className="soft small">{sayMissing(loads.missing, layout)}</p>
  const pure = pureTuningOf(layout)
  if (!pure)
    return (
      <p className="soft small">
        {loads.strings.length < 2
          ? 'One string alone has nothing to be tuned pure against.'
          : 'These strings make no open major or minor chord, nor bare fifths and octaves; tune them by the tuner.'}
      </p>
    )
  const stated = loads.strings.flatMap((one) => (one.atPitch ? [one.atPitch.pitch] : []))
  const press = (name: string, pitches: readonly number[]) => {
    if (sounding === name) return silence()
    sound(pitches, () => setSounding((now) => (now === name ? null : now)))
    setSounding(name)
  }
  const key = (name: string, words: string, label: string, pitches: readonly number[]) =>
    canSound() && (
      <button
        type="button"
        aria-pressed={sounding === name}
        aria-label={label}
        onClick={() => press(name, pitches)}
      >
        {sounding === name ? 'Stop' : words}
      </button>
    )
  return (
    <section className="fret-table pure-tuning" aria-label="Tuned pure">
      <table>
        <caption className="unseen">The open chord tuned pure, treble string first</caption>
        <thead>
          <tr>
            <th scope="col">String</th>
            <th scope="col">tuned pure, Hz</th>
            <th scope="col" title="How far from the tuner’s mark it rests">
              on the tuner, cents
            </th>
            <th scope="col">to {pure.rootName}</th>
            <th scope="col" title="With the next string towards the treble, as the tuner has them">
              beats a second by the tuner
            </th>
            <th scope="col">
              <span className="unseen">Sound it</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {[...pure.strings.entries()].reverse().map(([index, { hertz, offset, ratio }]) => (
            <tr key={index}>
              <th scope="row">
                {loads.strings[index]?.number} <span className="soft">{stated[index]?.name}</span>
              </th>
              <td>{hertz.toFixed(2)}</td>
              <td>{index === pure.root ? 'root' : sayCents(offset)}</td>
              <td>
                {ratio.above} : {ratio.below}
              </td>
              <td>{sayBeats(pure, index, stated.length)}</td>
              <td>
                {key(`string ${index}`, 'Sound', `Sound string ${loads.strings[index]?.number}`, [hertz])}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="proposal">
        {key(
          'stated',
          'Sound the chord by the tuner',
          'Sound the chord by the tuner',
          stated.map((one) => one.hertz),
        )}
        {key(
          'pure',
          'Sound the chord tuned pure',
          'Sound the chord tuned pure',
          pure.strings.map((one) => one.hertz),
        )}
        <span className="soft small">
          Plain tones, quiet, five seconds. Frets stay tempered: a third tuned pure is low on them.
        </span>
      </p>
    </section>
  )
}

/** Beats of a string with the next one up, `–` where no ear hears them or there is none. */
function sayBeats({ beatsAsStated }: Pure, index: number, strings: number): string {
  const beats = index < strings - 1 ? beatsAsStated[index] : null
  return beats == null ? '–' : beats < 0.005 ? 'none' : beats.toFixed(2)
}
