/** The one list of what is tried at random. */
import { designsTrial, exportsTrial, ezdxfTrial } from './designs.ts'
import { editingTrial } from './editing.ts'
import { filesTrial } from './files.ts'
import type { Trial } from './trial.ts'

/** A trial whose subjects nobody outside looks into. */
export type AnyTrial = Trial<unknown>

const whole = <Subject>(trial: Trial<Subject>): AnyTrial => trial as unknown as AnyTrial

export const TRIALS: readonly AnyTrial[] = [
  whole(designsTrial),
  whole(exportsTrial),
  whole(ezdxfTrial),
  whole(filesTrial),
  whole(editingTrial),
]

export function trialNamed(name: string): AnyTrial {
  const trial = TRIALS.find((one) => one.name === name)
  if (!trial)
    throw new Error(`There is no trial "${name}": there are ${TRIALS.map((one) => one.name).join(', ')}.`)
  return trial
}
