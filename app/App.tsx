/** The page: the bar, the place where the work is, the tightest margins, and whatever dialog is open. */
import { useEffect } from 'react'
import { listenForKeys } from './actions/shortcuts.ts'
import { Dialogs } from './dialogs/Dialogs.tsx'
import { KeptNotice } from './frame/KeptNotice.tsx'
import { TopBar } from './frame/TopBar.tsx'
import { Announcer } from './parts/Announcer.tsx'
import { Hatchings, TightestStrip } from './parts/TightestStrip.tsx'
import { Choose } from './places/Choose.tsx'
import { LayOut } from './places/LayOut.tsx'
import { Prove } from './places/Prove.tsx'
import { Survey } from './places/Survey.tsx'
import { Transfer } from './places/Transfer.tsx'
import { type PlaceName, standardDesign, useBench } from './state/index.ts'

const PLACE_PAGES: Readonly<Record<PlaceName, () => React.JSX.Element>> = {
  survey: Survey,
  choose: Choose,
  'lay-out': LayOut,
  prove: Prove,
  transfer: Transfer,
}

export function App() {
  const place = useBench((bench) => bench.place)
  const title = useBench((bench) => bench.design.title)
  useEffect(listenForKeys, [])
  useEffect(() => {
    document.title = title && title !== standardDesign().title ? `${title} · Lidwright` : 'Lidwright'
  }, [title])
  const Page = PLACE_PAGES[place]
  return (
    <div className="page">
      <div>
        <TopBar />
        <KeptNotice />
      </div>
      <main className={`place place-${place}`}>
        <Page />
      </main>
      {place !== 'prove' && place !== 'transfer' && <TightestStrip />}
      <Dialogs />
      <Announcer />
      <Hatchings />
    </div>
  )
}
