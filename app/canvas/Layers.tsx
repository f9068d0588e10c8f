/** Canvas layers over one another and the scene that paints them. React mounts them and then keeps out. */
import type { Layer as KonvaLayer } from 'konva/lib/Layer.js'
import { type Ref, useEffect, useImperativeHandle, useRef, useState } from 'react'
import { Layer, Shape, Stage } from 'react-konva/lib/ReactKonvaCore.js'
import { onPhotoReady } from '../photo/lying.ts'
import { listen } from './pointer.ts'
import { AT_REST, LAYERS, type LayerName, Scene } from './scene.ts'
import { type Still, stillOn } from './still.ts'
import type { Subject } from './subject.ts'

export interface LayersProps {
  readonly subject: Subject
  readonly label: string
  readonly ref?: Ref<Scene | null>
}

export function Layers({ subject, label, ref }: LayersProps) {
  const holder = useRef<HTMLDivElement>(null)
  const layers = useRef<Partial<Record<LayerName, KonvaLayer>>>({})
  const scene = useRef<Scene | null>(null)
  const picture = useRef<HTMLCanvasElement>(null)
  const still = useRef<Still | null>(null)
  const [size, setSize] = useState<{ width: number; height: number } | null>(null)

  useEffect(() => {
    const element = holder.current
    if (!element) return
    if (picture.current) still.current ??= stillOn(picture.current)
    if (still.current) element.dataset.rests = ''
    const made = new Scene(element, subject, {
      draw: (name) => layers.current[name]?.draw(),
      rest: () => still.current?.show(AT_REST.flatMap((name) => layers.current[name] ?? [])),
    })
    scene.current = made
    const watch = new ResizeObserver(() => {
      const { clientWidth: width, clientHeight: height } = element
      setSize({ width, height })
    })
    watch.observe(element)
    const schemes = window.matchMedia('(prefers-color-scheme: dark)')
    const recolour = () => made.refresh()
    schemes.addEventListener('change', recolour)
    const deaf = listen(made)
    const unready = onPhotoReady(() => made.viewMoved())
    return () => {
      deaf()
      unready()
      schemes.removeEventListener('change', recolour)
      watch.disconnect()
      made.dispose()
      scene.current = null
    }
  }, [subject])

  useEffect(() => {
    if (size) scene.current?.resize(size)
  }, [size])

  useImperativeHandle(ref, () => scene.current as Scene)

  const paint = (name: LayerName, pen: CanvasRenderingContext2D) => {
    const made = scene.current
    if (!made?.ready) return
    if (name === 'ground') made.paintGround(pen)
    else if (name === 'resting') made.paintResting(pen)
    else if (name === 'over') made.paintOver(pen)
    else made.paintLive(pen)
  }

  return (
    <div
      className="drawing"
      ref={holder}
      role="application"
      // biome-ignore lint/a11y/noNoninteractiveTabindex: an application takes keys: arrows move what is selected
      tabIndex={0}
      aria-label={label}
      aria-roledescription="drawing"
    >
      <canvas className="still" ref={picture} />
      {size && size.width > 0 && size.height > 0 && (
        <Stage width={size.width} height={size.height} listening={false}>
          {LAYERS.map((name) => (
            <Layer
              key={name}
              listening={false}
              ref={(layer: KonvaLayer | null) => {
                if (layer) layers.current[name] = layer
                else delete layers.current[name]
              }}
            >
              <Shape sceneFunc={(context) => paint(name, context._context as CanvasRenderingContext2D)} />
            </Layer>
          ))}
        </Stage>
      )}
    </div>
  )
}
