/**
 * What jsdom lacks and the page needs. Konva's layers and texts ask for a 2D context as soon as they
 * exist; this one draws nothing. What lands on the canvas is tested in a real browser.
 */
const nothing = () => undefined

function context(canvas: HTMLCanvasElement): unknown {
  const state: Record<string | symbol, unknown> = {
    canvas,
    measureText: (text: string) => ({ width: 6 * text.length }),
    getImageData: () => ({ data: new Uint8ClampedArray(4) }),
    createLinearGradient: () => ({ addColorStop: nothing }),
    createRadialGradient: () => ({ addColorStop: nothing }),
  }
  return new Proxy(state, { get: (known, name) => (name in known ? known[name] : nothing) })
}

Object.defineProperty(HTMLCanvasElement.prototype, 'getContext', {
  configurable: true,
  value(this: HTMLCanvasElement) {
    return context(this)
  },
})

// Lets React's `act` work without a testing library.
Object.assign(globalThis, { IS_REACT_ACT_ENVIRONMENT: true })
