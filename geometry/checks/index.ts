export { blocks, check, ruleOf, sentenceOf } from './check.ts'
export type { Finding, Grade, Rule, Where } from './finding.ts'
export { limitOf } from './finding.ts'
export { RULES } from './rules.ts'
