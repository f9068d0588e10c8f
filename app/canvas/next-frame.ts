/**
 * Work for the next animation frame, once for all drawings of the page: asking the browser costs time, and what one drawing
 * changes in a frame the others show in the same one.
 */
type Work = () => void

const waiting = new Set<Work>()
let asked = false

/** Does it with the next frame, once however often it is asked for; asked for by another's work, in that very frame. */
export function inNextFrame(work: Work): void {
  waiting.add(work)
  ask()
}

/** Does not do it after all. */
export function notInNextFrame(work: Work): void {
  waiting.delete(work)
}

function ask(): void {
  if (asked) return
  asked = true
  requestAnimationFrame(doAll)
}

function doAll(): void {
  const done = new Set<Work>()
  for (const work of waiting) {
    // What was done in this frame and is asked for again waits for another.
    if (done.has(work)) continue
    waiting.delete(work)
    done.add(work)
    try {
      work()
    } catch (fault) {
      // The other drawings are drawn all the same.
      reportError(fault)
    }
  }
  asked = false
  if (waiting.size > 0) ask()
}
