/** The size of an element in pixels, followed as it changes. */
import { type RefObject, useEffect, useRef, useState } from 'react'

export interface PixelSize {
  readonly width: number
  readonly height: number
}

export function useSize<E extends Element>(): [RefObject<E | null>, PixelSize | null] {
  const ref = useRef<E>(null)
  const [size, setSize] = useState<PixelSize | null>(null)
  useEffect(() => {
    const element = ref.current
    if (!element) return
    const watch = new ResizeObserver(([entry]) => {
      if (entry) setSize({ width: entry.contentRect.width, height: entry.contentRect.height })
    })
    watch.observe(element)
    return () => watch.disconnect()
  }, [])
  return [ref, size]
}
