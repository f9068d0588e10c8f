/** Run by itself: the most memory held on the way from a design of so many holes to its templates. Writes it in kB. */
import { readFileSync } from 'node:fs'
import { writeSvg } from '../../exporters/index.ts'
import { check, partsOf, solve } from '../../geometry/index.ts'
import { manyHoles } from './lids.ts'

const layout = solve(manyHoles(Number(process.argv[2])))
const findings = check(layout)
const written = partsOf(layout).map((part) => writeSvg(part, { title: 'Many holes' }))
if (findings.length === 0 || written.length === 0) throw new Error('nothing was made')
console.log(mostHeld())

/** Linux counts what the process itself held; what resource usage says there includes who started it. */
function mostHeld(): number {
  try {
    const told = /^VmHWM:\s+(\d+) kB$/m.exec(readFileSync('/proc/self/status', 'utf8'))
    if (told) return Number(told[1])
  } catch {
    // Another system: there the resource usage is the process's own.
  }
  return process.resourceUsage().maxRSS
}
