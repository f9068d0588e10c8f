/** What several commands say and take alike. */
import { Option } from 'commander'

export const EXIT_CODES = `Exit codes: 0 fine; 1 a stop is open (cannot be built, or will fail); 2 bad input, with the reason on stderr.
Of several files the worst counts.`

/** Gathers every `--set`. */
export const settingOption = (): Option =>
  new Option(
    '--set <path=value>',
    'set a field first, such as box.length="9 1/2in" or hand=left; may be repeated',
  )
    .argParser((text: string, before: readonly string[]) => [...before, text])
    .default([], 'nothing')
