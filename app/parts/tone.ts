/** Quiet sine tones on request. They end by themselves; nothing sounds that nobody pressed for. */

/** Seconds a tone lasts, the time in which it comes and goes, and its loudness of at most 1. */
const LASTS = 5
const FADE = 0.08
const LOUD = 0.12

let context: AudioContext | null = null
let stopNow: (() => void) | null = null

/** Can this browser sound anything at all? */
export const canSound = (): boolean => typeof AudioContext !== 'undefined'

/** Ends what sounds. */
export function silence(): void {
  stopNow?.()
  stopNow = null
}

/** Sounds these pitches together, in hertz, in place of whatever sounded. `ended` is told when the last one is over. */
export function sound(pitches: readonly number[], ended: () => void): void {
  silence()
  context ??= new AudioContext()
  const audio = context
  void audio.resume()
  const start = audio.currentTime
  const gain = audio.createGain()
  gain.connect(audio.destination)
  const loud = LOUD / Math.sqrt(Math.max(1, pitches.length))
  gain.gain.setValueAtTime(0, start)
  gain.gain.linearRampToValueAtTime(loud, start + FADE)
  gain.gain.setValueAtTime(loud, start + LASTS - 5 * FADE)
  gain.gain.linearRampToValueAtTime(0, start + LASTS)
  const tones = pitches.map((hertz) => {
    const tone = audio.createOscillator()
    tone.type = 'sine'
    tone.frequency.value = hertz
    tone.connect(gain)
    tone.start(start)
    tone.stop(start + LASTS)
    return tone
  })
  let over = false
  const end = () => {
    if (over) return
    over = true
    gain.disconnect()
    ended()
  }
  tones.at(-1)?.addEventListener('ended', end)
  stopNow = () => {
    for (const tone of tones) tone.stop()
    end()
  }
}
