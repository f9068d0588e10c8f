/** Work that the first screen does without is fetched after it. Once it is here, a key does its work at once. */

interface Fetched<Module> {
  /** Fetches it, once. */
  fetch(): Promise<Module>
  /** Does it now, or as soon as it can be; calls keep their order. */
  with(work: (module: Module) => void): void
}

function fetched<Module>(get: () => Promise<Module>): Fetched<Module> {
  let here: Module | null = null
  const fetch = async () => {
    here = await get()
    return here
  }
  return {
    fetch,
    with(work) {
      if (here) work(here)
      else void fetch().then(work)
    },
  }
}

/** Moving by keys. */
export const nudging = fetched(() => import('./nudge.ts'))

/** What arranges several things: it comes with the places that show them. */
export const arranging = fetched(() => import('../state/arrange.ts'))
