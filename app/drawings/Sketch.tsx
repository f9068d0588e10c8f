/** Tiny drawings beside fields: what is measured, from where to where. The measured stretch is in the accent. */

const BOX = 'M6 10h52v26H6z'
const END = 'M12 10h40v26H12z'

const SKETCHES: Readonly<Record<string, { base: string; measure: string }>> = {
  length: { base: BOX, measure: 'M6 5h52M6 2v6M58 2v6' },
  width: { base: BOX, measure: 'M2 10v26M0 10h5M0 36h5' },
  depth: { base: `${END}M12 15h40`, measure: 'M8 10v26M5 10h6M5 36h6' },
  lid: { base: END, measure: 'M12 10h40v6H12z' },
  lidFit: { base: 'M12 18v18h40V18', measure: 'M10 11h44v6H10z' },
  walls: { base: 'M12 10h40v26H12z', measure: 'M12 16h5v15h-5zM47 16h5v15h-5z' },
  base: { base: END, measure: 'M12 30h40v6H12z' },
  corner: { base: 'M6 36V20M16 10h42v26H6', measure: 'M6 20A10 10 0 0 1 16 10M16 20 9 13' },
  scale: { base: 'M4 22h56M10 18v8M50 14v16', measure: 'M10 11h40M10 8v6M50 8v6' },
  strings: { base: 'M8 8v30M56 8v30', measure: 'M8 14h48M8 23h48M8 32h48' },
  hand: { base: 'M4 20h30v8H4zM34 10h26v28H34z', measure: 'M44 34l4-8 4 8M48 26v14' },
  neckLong: { base: 'M4 18h56v10H4z', measure: 'M4 12h56M4 9v6M60 9v6' },
  neckWide: { base: 'M14 14h36v20H14z', measure: 'M14 9h36M14 6v6M50 6v6' },
  neckThick: { base: 'M14 14h36v20H14z', measure: 'M9 14v20M6 14h6M6 34h6' },
}

export function Sketch({ of }: { readonly of: string }) {
  const sketch = SKETCHES[of]
  if (!sketch) return null
  return (
    <svg className="sketch" width="64" height="44" viewBox="0 0 64 44" aria-hidden="true">
      <path className="sketch-base" d={sketch.base} />
      <path className="sketch-measure" d={sketch.measure} />
    </svg>
  )
}
