/**
 * SVG as text: elements, attributes and words, each escaped in one place.
 *
 * Nothing else in this room writes an angle bracket, so nothing a user typed can become markup.
 */
import { plainLine } from '../words/plain.ts'

/** Finished markup, told apart from plain strings so that neither is taken for the other. */
export interface Markup {
  readonly markup: string
}

/** Attributes in the order in which they are written; those that are undefined are left out. */
export type Attributes = Readonly<Record<string, string | undefined>>

const ESCAPES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
}

const MARKS = /[&<>"']/g

/** Words of ASCII with single spaces between them and none of the marks: what an attribute mostly is, and stays. */
const SAFE = /^[!#-%(-;=?-~]+(?: [!#-%(-;=?-~]+)*$/

function escaped(text: string): string {
  if (SAFE.test(text)) return text
  return plainLine(text, Number.POSITIVE_INFINITY).replace(MARKS, (sign) => ESCAPES[sign] ?? sign)
}

/** Words between tags: one line without control characters, escaped. */
export function textNode(text: string): Markup {
  return { markup: escaped(text) }
}

/**
 * An element with its attributes and children.
 *
 * @example element('circle', { cx: '5', cy: '5', r: '2' }).markup // '<circle cx="5" cy="5" r="2"/>'
 */
export function element(name: string, attributes: Attributes, children: readonly Markup[] = []): Markup {
  let written = `<${name}`
  for (const key of Object.keys(attributes)) {
    const value = attributes[key]
    if (value !== undefined) written += ` ${key}="${escaped(value)}"`
  }
  const [first, second] = children
  if (first === undefined) return { markup: `${written}/>` }
  const onOneLine = second === undefined && !first.markup.startsWith('<')
  if (onOneLine) return { markup: `${written}>${first.markup}</${name}>` }
  // Not joined: what is put together at every depth would be copied at every depth.
  let body = ''
  for (const { markup } of children) body += `\n${markup}`
  return { markup: `${written}>${body}\n</${name}>` }
}

/** A title, which readers show on hover and read aloud; one must never be empty. */
export function titleElement(text: string, id?: string): Markup {
  const line = plainLine(text)
  return element('title', { id }, [textNode(line === '' ? 'untitled' : line)])
}

/** A name that may stand in an `id`: letters, digits, dots and hyphens, beginning with a letter. */
export function idFrom(...words: string[]): string {
  const name = words.map((word) => word.replace(/[^A-Za-z0-9.-]+/g, '-')).join('-')
  return /^[A-Za-z]/.test(name) ? name : `x${name}`
}
