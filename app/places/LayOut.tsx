/** Lay out: everything put on the faces, dragged where it belongs. */
import { Drawing } from '../canvas/Drawing.tsx'
import { FaceStrip } from '../canvas/FaceStrip.tsx'
import { Inspector } from '../parts/Inspector.tsx'
import { ThingList } from '../parts/ThingList.tsx'
import { ViewButtons } from '../parts/ViewButtons.tsx'

export function LayOut() {
  return (
    <>
      <div className="column list-column">
        <ThingList />
      </div>
      <div className="middle">
        <section className="sheet" aria-label="Plan, rule and section">
          <Drawing place="lay-out" opens="box" />
          <ViewButtons />
        </section>
        <FaceStrip />
      </div>
      <Inspector />
    </>
  )
}
