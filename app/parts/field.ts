/** What the widgets of a form have in common. */

/** Accepted, or the one sentence to show under the field. */
export type Answer = { readonly ok: true } | { readonly ok: false; readonly sentence: string }

export interface FieldProps<Value> {
  readonly label: string
  /** One sentence: what is measured, from where to where. */
  readonly help?: string | undefined
  /** Where the schema has the field, for the small drawing beside its help. */
  readonly address?: string | undefined
  readonly value: Value
  /** Takes the value over, or says why not; then the field keeps what was typed and shows the sentence. */
  readonly onCommit: (value: Value) => Answer
  readonly id?: string | undefined
}

export const ACCEPTED: Answer = { ok: true }
