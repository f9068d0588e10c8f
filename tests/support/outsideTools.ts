/** Programs not ours that tests read our files with; installed where that is possible, else said how. */
import { spawnSync } from 'node:child_process'
import { aptInstall } from './apt.ts'

const works = (command: string, ...words: string[]) => spawnSync(command, words).status === 0

/** The system's Python, for which Debian's python3-ezdxf is built. */
export const PYTHON = works('/usr/bin/python3', '--version') ? '/usr/bin/python3' : 'python3'

function need(isThere: () => boolean, packageName: string, elsewhere: string): void {
  if (isThere()) return
  if (aptInstall(packageName) && isThere()) return
  throw new Error(
    `This test needs ${elsewhere}: on Debian "apt-get install ${packageName}" as root brings it.`,
  )
}

/** @throws with one line that says how to get it */
export function needEzdxf(): void {
  need(() => works(PYTHON, '-c', 'import ezdxf'), 'python3-ezdxf', 'ezdxf for python3 ("pip install ezdxf")')
}

/** @throws with one line that says how to get it */
export function needRsvgConvert(): void {
  need(() => works('rsvg-convert', '--version'), 'librsvg2-bin', 'rsvg-convert from librsvg')
}

/** @throws with one line that says how to get it */
export function needPoppler(): void {
  need(() => works('pdftotext', '-v') && works('pdfinfo', '-v'), 'poppler-utils', 'pdftotext and pdfinfo')
}
