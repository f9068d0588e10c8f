/** Makes a design that breaks a law as small as it goes: whatever can be left out without mending it is left out. */
import { checkDesign, type Design } from '../../geometry/index.ts'

type Holder = Record<string, unknown> | unknown[]

/** @param breaks says whether a design still breaks the law; asked at most `most` times */
export async function lessened(
  design: Design,
  breaks: (design: Design) => Promise<boolean>,
  most = 400,
): Promise<Partial<Design>> {
  let least: Holder = structuredClone(design) as unknown as Holder
  let asked = 0
  const without = async (path: readonly string[]): Promise<boolean> => {
    const copy = structuredClone(least)
    const holder = path
      .slice(0, -1)
      .reduce<unknown>((here, key) => (here as Record<string, unknown>)[key], copy)
    const key = path.at(-1) ?? ''
    if (Array.isArray(holder)) holder.splice(Number(key), 1)
    else delete (holder as Record<string, unknown>)[key]
    const reading = checkDesign(copy)
    asked += 1
    if (!reading.ok || !(await breaks(reading.design))) return false
    least = copy
    return true
  }
  const visit = async (path: readonly string[]): Promise<void> => {
    const value = path.reduce<unknown>((here, key) => (here as Record<string, unknown>)[key], least)
    if (value === null || typeof value !== 'object') return
    // The last of a list first: those before keep their places.
    for (const key of Object.keys(value).reverse()) {
      if (asked >= most || (path.length === 0 && (key === 'format' || key === 'version'))) continue
      if (!(await without([...path, key]))) await visit([...path, key])
    }
  }
  await visit([])
  return least as Partial<Design>
}
