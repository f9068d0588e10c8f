/** Small mistakes put into source text: a sign turned, a limit moved, a condition dropped, a number changed. */
import { parseSync } from 'vite'

export interface Mutant {
  readonly start: number
  readonly end: number
  /** What stands there instead. */
  readonly text: string
  /** It is a whole statement: without semicolons a parenthesis there would call what the line before ends in. */
  readonly whole: boolean
  readonly sort: 'arithmetic' | 'comparison' | 'limit' | 'boolean' | 'constant' | 'function'
}

type Node = Readonly<Record<string, unknown>> & {
  readonly type: string
  readonly start: number
  readonly end: number
}

const ARITHMETIC: Readonly<Record<string, string>> = {
  '+': '-',
  '-': '+',
  '*': '/',
  '/': '*',
  '%': '*',
  '**': '*',
}
/** A limit that counts, or just does not. */
const LIMIT: Readonly<Record<string, string>> = { '<': '<=', '<=': '<', '>': '>=', '>=': '>' }
const COMPARISON: Readonly<Record<string, string>> = {
  ...{ '<': '>=', '<=': '>', '>': '<=', '>=': '<' },
  ...{ '===': '!==', '!==': '===', '==': '!=', '!=': '==' },
}
const LOGICAL: Readonly<Record<string, string>> = { '&&': '||', '||': '&&' }
const ASSIGNED: Readonly<Record<string, string>> = { '+=': '-=', '-=': '+=', '*=': '/=', '/=': '*=' }
const FUNCTIONS: Readonly<Record<string, string>> = {
  ...{ min: 'max', max: 'min', floor: 'ceil', ceil: 'floor', round: 'floor' },
  ...{ sin: 'cos', cos: 'sin', tan: 'sin', sqrt: 'abs', abs: 'floor', hypot: 'max' },
}

/** Parts of the syntax that only the compiler sees; of these what is inside runs. */
const SEEN_THROUGH = new Set(['TSAsExpression', 'TSNonNullExpression', 'TSSatisfiesExpression'])

/**
 * Every mutant of a TypeScript file, in order of place.
 * Example: `mutantsOf('a.ts', 'const a = b + 1')` has `b - 1`, and `2` in place of the 1.
 */
export function mutantsOf(file: string, source: string): Mutant[] {
  const { program, errors } = parseSync(file, source, { lang: 'ts', sourceType: 'module' })
  if (errors.length > 0) throw new Error(`${file} cannot be parsed: ${errors[0]?.message}`)
  const found: Mutant[] = []
  const text = ({ start, end }: Node) => source.slice(start, end)
  const visit = (node: Node, parent: Node | undefined): void => {
    if (node.type.startsWith('TS') && !SEEN_THROUGH.has(node.type)) return
    if (node.type === 'ImportDeclaration' || node.type === 'ExportAllDeclaration') return
    const put = (sort: Mutant['sort'], words: string) =>
      found.push({
        start: node.start,
        end: node.end,
        text: words,
        sort,
        whole: parent?.type === 'ExpressionStatement',
      })
    mutate(node, parent, text, put)
    for (const [key, value] of Object.entries(node)) {
      // Names of fields are no values, and what throws is not reckoned with.
      if (key === 'key' && node.computed !== true) continue
      if (node.type === 'ThrowStatement' || isSentence(node)) continue
      for (const child of Array.isArray(value) ? value : [value]) if (isNode(child)) visit(child, node)
    }
  }
  visit(program as unknown as Node, undefined)
  return found.sort((a, b) => a.start - b.start || b.end - a.end)
}

/** What a rule says of its measure: words are read by people, and only measures are tried here. */
const isSentence = ({ type, key }: Node): boolean =>
  type === 'Property' && isNode(key) && key.name === 'words'

const isNode = (value: unknown): value is Node =>
  typeof value === 'object' && value !== null && 'type' in value && typeof value.type === 'string'

function mutate(
  node: Node,
  parent: Node | undefined,
  text: (node: Node) => string,
  put: (sort: Mutant['sort'], words: string) => void,
): void {
  const operator = String(node.operator ?? '')
  const [left, right] = [node.left, node.right]
  switch (node.type) {
    case 'BinaryExpression': {
      if (!isNode(left) || !isNode(right)) return
      const words = isWords(left) || isWords(right)
      const as = (other: string) => `(${text(left)}) ${other} (${text(right)})`
      if (ARITHMETIC[operator] && !words) put('arithmetic', as(ARITHMETIC[operator]))
      if (LIMIT[operator]) put('limit', as(LIMIT[operator]))
      if (COMPARISON[operator]) put('comparison', as(COMPARISON[operator]))
      return
    }
    case 'LogicalExpression':
      if (isNode(left) && isNode(right) && LOGICAL[operator])
        put('boolean', `(${text(left)}) ${LOGICAL[operator]} (${text(right)})`)
      return
    case 'AssignmentExpression':
      if (isNode(left) && isNode(right) && ASSIGNED[operator])
        put('arithmetic', `${text(left)} ${ASSIGNED[operator]} (${text(right)})`)
      return
    case 'UnaryExpression':
      if (isNode(node.argument) && operator === '-') put('arithmetic', `(${text(node.argument)})`)
      if (isNode(node.argument) && operator === '!') put('boolean', `!!(${text(node.argument)})`)
      return
    case 'IfStatement':
    case 'ConditionalExpression':
      return
    case 'Literal':
      if (node.value === true || node.value === false) put('boolean', String(!node.value))
      if (typeof node.value === 'number' && parent?.type !== 'MemberExpression')
        put('constant', other(node.value))
      return
    case 'CallExpression': {
      const callee = node.callee
      if (!isNode(callee) || callee.type !== 'MemberExpression' || !isNode(callee.object)) return
      const [object, property] = [callee.object, callee.property]
      if (object.name !== 'Math' || !isNode(property)) return
      const swapped = FUNCTIONS[String(property.name)]
      if (swapped) put('function', `Math.${swapped}${text(node).slice(text(callee).length)}`)
      return
    }
    default:
  }
}

/**
 * A number that is another: one more where it is whole, a tenth more where it is not. How near is near enough is a
 * thousand times as much: a tenth more of a millionth changes nothing that anybody could measure.
 */
function other(value: number): string {
  if (Number.isInteger(value) && value < 1000) return String(value + 1)
  return String(value * (Math.abs(value) < 1e-3 ? 1000 : 1.1))
}

const isWords = (node: Node): boolean => typeof node.value === 'string' || node.type === 'TemplateLiteral'

/** Text with some mutants put in, each behind a switch: `__mutant(7) ? b - 1 : b + 1`. None is on unless it is asked for. */
export function withSwitches(source: string, mutants: readonly (Mutant & { readonly id: number })[]): string {
  const sorted = [...mutants].sort((a, b) => a.start - b.start || b.end - a.end || a.id - b.id)
  const written = (
    from: number,
    to: number,
    inner: readonly (Mutant & { readonly id: number })[],
  ): string => {
    let text = ''
    let at = from
    for (let index = 0; index < inner.length; ) {
      const first = inner[index] as Mutant & { readonly id: number }
      let next = index + 1
      while (next < inner.length && (inner[next] as Mutant).start < first.end) next++
      const within = inner.slice(index + 1, next)
      text += `${source.slice(at, first.start)}${first.whole ? '!' : ''}(__mutant(${first.id}) ? (${first.text}) : (${written(first.start, first.end, within)}))`
      at = first.end
      index = next
    }
    return text + source.slice(at, to)
  }
  return written(0, source.length, sorted)
}
