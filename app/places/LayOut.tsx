/** Lay out: everything put on the faces, dragged where it belongs. */
// What arranges things is there as soon as they are seen: no key waits for it.
import '../state/arrange.ts'
import { FaceStrip } from '../canvas/FaceStrip.tsx'
import { Inspector } from '../parts/Inspector.tsx'
import { SheetPanel } from '../parts/SheetPanel.tsx'
import { ThingList } from '../parts/ThingList.tsx'

export function LayOut() {
  return (
    <>
      <div className="column list-column">
        <ThingList />
      </div>
      <div className="middle">
        <SheetPanel place="lay-out" opens="box" />
        <FaceStrip />
      </div>
      <Inspector />
    </>
  )
}
