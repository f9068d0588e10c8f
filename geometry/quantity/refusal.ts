/** Why a text is no length: what is wrong and what would do, turned into the one sentence the user sees. */
export class Refusal extends Error {
  readonly remedy: string

  constructor(wrong: string, remedy: string) {
    super(wrong)
    this.name = 'Refusal'
    this.remedy = remedy
  }
}

export const EXAMPLES = '281 mm or 11 1/16 in'

/** What was read, what is wrong, what would do. */
export function sentenceOf(text: string, refusal: Refusal): string {
  const read = `“${quotable(text)}”`
  // What is wrong with the whole of it names it already.
  const said = refusal.message.startsWith(`${read} `) ? '' : `${read}: `
  return `${said}${refusal.message}. ${refusal.remedy}.`
}

/** A text cut where it would run on inside a sentence. */
export function quotable(text: string, longest = 40): string {
  const letters = [...text]
  return letters.length > longest ? `${letters.slice(0, longest).join('')}…` : text
}
