/** The page: the bar, the place where the work is, the tightest margins, and whatever dialog is open. */
import { type ComponentType, lazy, Suspense, useEffect } from 'react'
import { openCarried } from './actions/carried.ts'
import { listenForDrops } from './actions/dropping.ts'
import { arranging, nudging } from './actions/fetched.ts'
import { listenForKeys } from './actions/shortcuts.ts'
import { Dialogs } from './dialogs/Dialogs.tsx'
import { KeptNotice } from './frame/KeptNotice.tsx'
import { NewerNotice } from './frame/NewerNotice.tsx'
import { TopBar } from './frame/TopBar.tsx'
import { Announcer } from './parts/Announcer.tsx'
import { Hatchings } from './parts/Hatchings.tsx'
import { Survey } from './places/Survey.tsx'
import { type PlaceName, standardDesign, useBench } from './state/index.ts'

/** Places with the canvas in them come after the first screen, which does without; see `fetchPlaces`. */
const later = {
  choose: () => import('./places/Choose.tsx').then((page) => ({ default: page.Choose })),
  'lay-out': () => import('./places/LayOut.tsx').then((page) => ({ default: page.LayOut })),
  prove: () => import('./places/Prove.tsx').then((page) => ({ default: page.Prove })),
  transfer: () => import('./places/Transfer.tsx').then((page) => ({ default: page.Transfer })),
  record: () => import('./places/Record.tsx').then((page) => ({ default: page.Record })),
}

const PLACE_PAGES: Readonly<Record<PlaceName, ComponentType>> = {
  survey: Survey,
  choose: lazy(later.choose),
  'lay-out': lazy(later['lay-out']),
  prove: lazy(later.prove),
  transfer: lazy(later.transfer),
  record: lazy(later.record),
}

/** Judging takes every rule, and the first screen stands without: the margins come a moment after it. */
const TightestStrip = lazy(() =>
  import('./parts/TightestStrip.tsx').then((strip) => ({ default: strip.TightestStrip })),
)

const HereMenu = lazy(() => import('./frame/HereMenu.tsx').then((page) => ({ default: page.HereMenu })))

/** Fetches the other places as soon as the first screen stands, so that none has to be waited for, nor a network. */
function fetchPlaces(): void {
  // One that cannot be fetched now is asked for again when it is opened.
  for (const fetchPlace of [...Object.values(later), arranging.fetch, nudging.fetch])
    fetchPlace().catch(() => undefined)
}

export function App() {
  const place = useBench((bench) => bench.place)
  const title = useBench((bench) => bench.design.title)
  const opened = useBench((bench) => bench.opened)
  useEffect(listenForKeys, [])
  useEffect(listenForDrops, [])
  useEffect(openCarried, [])
  useEffect(fetchPlaces, [])
  useEffect(() => {
    document.title = title && title !== standardDesign().title ? `${title} · Lidwright` : 'Lidwright'
  }, [title])
  const Page = PLACE_PAGES[place]
  return (
    <div className="page">
      <div>
        <TopBar />
        <KeptNotice />
        <NewerNotice />
      </div>
      <main className={`place place-${place}`}>
        <Suspense fallback={null}>
          <Page key={opened} />
        </Suspense>
        <Suspense fallback={null}>
          <HereMenu />
        </Suspense>
      </main>
      {place !== 'prove' && place !== 'transfer' && place !== 'record' && (
        <Suspense fallback={<section className="tightest" />}>
          <TightestStrip />
        </Suspense>
      )}
      <Dialogs />
      <Announcer />
      <Hatchings />
    </div>
  )
}
