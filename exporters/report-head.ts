/** The head and its tuners, for the report. */
import { headOf, type Layout, scarfOf } from '../geometry/index.ts'
import { counts, mm, type ReportKey, rows, words } from './report-key.ts'

export function headReport(layout: Layout) {
  const { headstock } = layout.design
  const scarf = scarfOf(layout.design, layout.nut.x0)
  const { tuners, paths } = headOf(layout)
  return {
    form: headstock.form,
    tilt: headstock.form === 'scarfed' ? (headstock.tiltDegrees * Math.PI) / 180 : 0,
    step: headstock.form === 'stepped' ? headstock.step : 0,
    scarf: scarf && { glued: scarf.glued, top: scarf.top.x, bottom: scarf.bottom.x },
    tuners: tuners.map(({ side, post, hole, screws }, index) => ({
      number: index + 1,
      side,
      along: -post.x,
      fromCentreline: post.y,
      hole: 2 * hole.radius,
      screws: screws.map((at) => ({ along: -at.x, fromCentreline: at.y })),
    })),
    paths: paths.map(({ number, tuner, to }) => ({
      string: number,
      tuner: tuner + 1,
      along: -to.x,
      fromCentreline: to.y,
    })),
  }
}

export const HEAD_KEYS: readonly ReportKey[] = [
  ...words('headstock.', { form: '`straight`, `stepped` or `scarfed`.' }),
  ...rows('radians', 'headstock.', { tilt: 'How far its face falls away; 0 unless it is scarfed.' }),
  ...mm('headstock.', {
    step: 'How much lower its face lies than the neck’s; 0 unless it is stepped.',
    'scarf.glued': 'Length of the glued slope. `scarf` is null for a head that is not scarfed.',
    'scarf.top': 'Where the slope leaves the top of the neck, from the nut.',
    'scarf.bottom': 'Where it comes out at the bottom.',
  }),
  ...counts('headstock.tuners[].', { number: 'Bass row first, nearest the nut first.' }),
  ...words('headstock.tuners[].', { side: '`bass` or `treble`.' }),
  ...mm('headstock.tuners[].', {
    along: 'From the front of the nut to the middle of its post, along the face of the head.',
    fromCentreline: 'From the centreline, treble positive.',
    hole: 'Diameter of the widest hole drilled for it.',
    'screws[].along': 'The same as `along`, of a screw drilled from behind.',
    'screws[].fromCentreline': 'Its distance from the centreline.',
  }),
  ...counts('headstock.paths[].', {
    string: 'Number of the string.',
    tuner: 'Number of the tuner that it winds on.',
  }),
  ...mm('headstock.paths[].', {
    along: 'From the front of the nut to where it touches its post, along the face.',
    fromCentreline: 'The same, from the centreline.',
  }),
]
