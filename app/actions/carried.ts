/** A design that the page's own address carries is opened, beside what was kept. */
import { forgetViews } from '../canvas/lookings.ts'
import { LINK_MARK } from '../shelf/mark.ts'
import { openDesign } from '../state/index.ts'
import { openDialog, sayTrouble } from './dialogs.ts'

/** Opens what stands behind the `#`, now and whenever it changes; the address is then plain again. Returns how to stop. */
export function openCarried(): () => void {
  const look = () => {
    const { hash } = location
    // The rest of the work is fetched only for an address that carries something.
    if (hash.startsWith(LINK_MARK)) void open(hash)
  }
  look()
  addEventListener('hashchange', look)
  return () => removeEventListener('hashchange', look)
}

async function open(hash: string): Promise<void> {
  const { designIn } = await import('../shelf/link.ts')
  const carried = designIn(hash)
  history.replaceState(null, '', location.pathname + location.search)
  if (!carried.ok) return sayTrouble('The link could not be opened', carried.sentences.slice(0, 8))
  const outcome = openDesign(carried.design, 'Open a link')
  if (!outcome.ok) return sayTrouble('The link could not be opened', [outcome.sentence])
  forgetViews()
  openDialog(null)
}
