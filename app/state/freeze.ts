/**
 * Freezes a design through and through while the page is being developed or tested, so that whoever alters one in
 * place is stopped there. What is shared with an earlier design is frozen already and costs one look.
 */
export function freeze<Value>(value: Value): Value {
  if (import.meta.env?.DEV) freezeThrough(value)
  return value
}

function freezeThrough(value: unknown): void {
  if (typeof value !== 'object' || value === null || Object.isFrozen(value)) return
  Object.freeze(value)
  for (const inner of Object.values(value)) freezeThrough(inner)
}
