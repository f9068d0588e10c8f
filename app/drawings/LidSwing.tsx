/** The lid as it opens, cut across its hinge: turned by hand, or once by itself where motion is welcome. */
import { useEffect, useId, useMemo, useState } from 'react'
import {
  formatAngle,
  type Layout,
  type LidCure,
  type LidSection,
  lidCuresOf,
  lidMotionOf,
  type Moving,
  type Point,
  runsAlong,
  type Standing,
  swung,
} from '../../geometry/index.ts'
import { sayLength } from '../parts/say.ts'
import { setField } from '../state/index.ts'

/** Nothing where the lid lifts off or is glued. */
export function LidSwing({ layout }: { readonly layout: Layout }) {
  const motion = lidMotionOf(layout)
  if (!motion) return null
  const [reached, wanted] =
    motion.by === 'hinge'
      ? [motion.swing.reached, motion.swing.wanted]
      : [motion.slide.reached, motion.slide.wanted]
  return (
    <Opening
      key={`${motion.by} ${motion.section.edge}`}
      by={motion.by}
      moving={motion.section.moving}
      standing={cutPieces(motion.section)}
      reached={reached}
      wanted={wanted}
      layout={layout}
    />
  )
}

/** What the cut goes through: not the walls behind it, nor what lies beyond the ends of the lid. */
function cutPieces({ edge, moving, standing }: LidSection): readonly Standing[] {
  const behind = runsAlong(edge) ? ['neck-end wall', 'tail-end wall'] : ['bass wall', 'treble wall']
  const lid = moving[0]
  if (!lid) return standing
  return standing.filter((one) => !behind.includes(one.what) && one.s1 > lid.s0 + 1 && one.s0 < lid.s1 - 1)
}

interface OpeningProps {
  readonly by: 'hinge' | 'slide'
  readonly moving: readonly Moving[]
  readonly standing: readonly Standing[]
  readonly reached: number
  readonly wanted: number
  readonly layout: Layout
}

const WAYS = {
  hinge: { title: 'Cut across the hinge, which lies to the left', label: 'Opened' },
  slide: { title: 'Cut along the way the lid slides, out to the left', label: 'Slid out' },
} as const

function Opening({ by, moving, standing, reached, wanted, layout }: OpeningProps) {
  const own = useId()
  const [share, setShare] = useState(0)
  const [play, setPlay] = useMotion(share, setShare)
  const open = share * wanted
  const bites = open > reached + 1e-6
  const moved = (points: readonly Point[]) =>
    by === 'hinge' ? swung(points, open) : points.map(({ x, y }) => ({ x: x - open, y }))
  const frame = useMemo(() => frameOf(by, moving, standing, wanted), [by, moving, standing, wanted])
  const say = (value: number) => (by === 'hinge' ? formatAngle(value) : sayLength(value, layout.design.units))
  return (
    <section className="lid-swing" aria-label="The lid as it opens">
      <svg viewBox={frame.join(' ')} role="img" aria-label={`${WAYS[by].title}: opened ${say(open)}`}>
        {standing.map((piece, index) => (
          <rect
            key={index}
            className={piece.what.endsWith('wall') || piece.what === 'base' ? 'wood wall' : 'wood neck'}
            x={piece.u0}
            y={-piece.z1}
            width={Math.max(0, piece.u1 - piece.u0)}
            height={Math.max(0, piece.z1 - piece.z0)}
          />
        ))}
        {moving.map((piece, index) => (
          <polygon
            key={index}
            className={bites ? 'opening bites' : 'opening'}
            points={moved(piece.section)
              .map(({ x, y }) => `${x},${-y}`)
              .join(' ')}
          />
        ))}
        {by === 'hinge' && <circle className="pin" r={2.2} />}
      </svg>
      <div className="lid-swing-words">
        <p className="soft small">{WAYS[by].title}</p>
        <p>
          {reached >= wanted - 1e-6
            ? `It opens ${say(wanted)}, as far as is wanted.`
            : `It opens ${say(reached)} and then bites; ${say(wanted)} are wanted.`}
        </p>
        <label htmlFor={own} className="small">
          {WAYS[by].label} {say(open)}
          {bites ? ', in the wood' : ''}
        </label>
        <input
          id={own}
          type="range"
          min={0}
          max={1}
          step={0.005}
          value={share}
          aria-valuetext={`${say(open)}${bites ? ', in the wood' : ''}`}
          onChange={(event) => {
            setPlay(null)
            setShare(Number(event.target.value))
          }}
        />
        {by === 'hinge' && reached < wanted - 1e-6 && <Cures layout={layout} />}
        <button type="button" onClick={() => setPlay(share > 0.5 || play === 1 ? 0 : 1)}>
          {share > 0.5 || play === 1 ? 'Close the lid' : 'Open the lid'}
        </button>
      </div>
    </section>
  )
}

const CURES: Readonly<Record<LidCure['field'], string>> = {
  bevelAtHinge: 'Bevel at the hinge',
  bevelOpposite: 'Bevel opposite the hinge',
  gap: 'Gap at the neck',
  play: 'Play round the lid',
}

/** What would let it open, each taken over by one press; looked for when asked, since it takes many swings. */
function Cures({ layout }: { readonly layout: Layout }) {
  const [asked, ask] = useState<Layout | null>(null)
  if (asked !== layout)
    return (
      <button type="button" onClick={() => ask(layout)}>
        What would cure it
      </button>
    )
  const cures = lidCuresOf(layout)
  if (cures.length === 0)
    return (
      <p className="small">
        No bevel or gap alone: move the hinge pin, hinge it on another edge, or move what hangs under it.
      </p>
    )
  return cures.map(({ field, value }) => (
    <button key={field} type="button" onClick={() => setField(['box', 'lid', field], value, CURES[field])}>
      {CURES[field]}: {sayLength(value, layout.design.units)}
    </button>
  ))
}

/** Milliseconds from shut to open. */
const LASTS = 1400

/** Moves a share towards where it is sent; at once where the system asks for less motion. */
function useMotion(share: number, set: (share: number) => void) {
  const [to, send] = useState<0 | 1 | null>(null)
  useEffect(() => {
    if (to === null) return
    if (share === to || window.matchMedia('(prefers-reduced-motion: reduce)').matches) {
      set(to)
      send(null)
      return
    }
    const began = performance.now()
    const frame = requestAnimationFrame((now) => {
      const step = Math.max(now - began, 8) / LASTS
      set(to === 1 ? Math.min(1, share + step) : Math.max(0, share - step))
    })
    return () => cancelAnimationFrame(frame)
  }, [to, share, set])
  return [to, send] as const
}

/** Room for the box and for the lid wherever it goes, with a margin: minX, minY, width, height of the view. */
function frameOf(
  by: 'hinge' | 'slide',
  moving: readonly Moving[],
  standing: readonly Standing[],
  wanted: number,
) {
  const points = [
    ...standing.flatMap(({ u0, u1, z0, z1 }) => [
      // Of the neck only what lies near the box is looked at.
      { x: Math.max(u0, -40), y: z0 },
      { x: Math.min(u1, 1600), y: z1 },
    ]),
    ...moving.flatMap(({ section }) =>
      by === 'hinge'
        ? [0, 0.25, 0.5, 0.75, 1].flatMap((share) => swung(section, share * wanted))
        : [...section, ...section.map(({ x, y }) => ({ x: x - wanted / 3, y }))],
    ),
  ]
  const box = points.reduce(
    (all, { x, y }) => ({
      minX: Math.min(all.minX, x),
      maxX: Math.max(all.maxX, x),
      minY: Math.min(all.minY, -y),
      maxY: Math.max(all.maxY, -y),
    }),
    { minX: 0, maxX: 0, minY: 0, maxY: 0 },
  )
  const lid = moving[0]?.section.reduce((most, { x }) => Math.max(most, x), 0) ?? 0
  const right = Math.min(box.maxX, lid + 40)
  const margin = 8
  return [
    box.minX - margin,
    box.minY - margin,
    right - box.minX + 2 * margin,
    box.maxY - box.minY + 2 * margin,
  ]
}
