/**
 * The contents of a PDF handed straight to @cantoo/pdf-lib: what a library's own work costs for the same pages.
 *
 * They are read from our own file once and before any time is taken, so the library gets the same operators with the
 * same numbers, already rounded, and the same words. It embeds no letters and compresses nothing, as a standard font
 * and its own streams let it.
 */
import {
  PDFArray,
  PDFCatalog,
  PDFContentStream,
  PDFContext,
  PDFDict,
  PDFDocument,
  PDFHexString,
  PDFName,
  PDFNumber,
  type PDFObject,
  PDFOperator,
  PDFPageLeaf,
  PDFPageTree,
  PDFRawStream,
  type PDFRef,
  PDFWriter,
} from '@cantoo/pdf-lib'

type Word = number | string
type Operation = readonly [operator: string, words: readonly Word[]]

interface BarePage {
  readonly box: readonly number[]
  readonly content: readonly Operation[]
}

export interface BareSheets {
  readonly pages: readonly BarePage[]
  readonly forms: readonly {
    readonly name: string
    readonly box: readonly number[]
    readonly content: readonly Operation[]
  }[]
}

const wordOf = (text: string): Word => (/^[-.\d]/.test(text) ? Number(text) : text)

/** Operators with what stands before them: numbers, names, strings in hexadecimal digits, dashes in brackets. */
function operationsOf(content: string): Operation[] {
  const operations: Operation[] = []
  let words: Word[] = []
  for (const [text] of content.matchAll(/\[[^\]]*\]|<[^>]*>|[^\s[<]+/g)) {
    if (/^[A-Za-z*]/.test(text)) {
      operations.push([text, words])
      words = []
    } else words.push(wordOf(text))
  }
  return operations
}

const numbersOf = (box: PDFArray) => box.asArray().map((one) => (one as PDFNumber).asNumber())

/** Reads what a file of ours draws. Throws for a file that is none of ours. */
export async function bareSheets(bytes: Uint8Array): Promise<BareSheets> {
  const document = await PDFDocument.load(bytes, { updateMetadata: false })
  const textOf = (stream: PDFRawStream) => Buffer.from(stream.contents).toString('latin1')
  const streamAt = (reference: PDFObject | undefined): PDFRawStream => {
    const stream = document.context.lookup(reference)
    if (!(stream instanceof PDFRawStream)) throw new Error('a drawing of the PDF is no stream')
    return stream
  }
  const pages = document.getPages().map(({ node }) => ({
    box: numbersOf(node.MediaBox()),
    content: operationsOf(textOf(streamAt(node.get(PDFName.of('Contents'))))),
  }))
  const resources = document.getPage(0).node.Resources()
  const drawings = resources?.lookup(PDFName.of('XObject'), PDFDict).entries() ?? []
  const forms = drawings.map(([name, reference]) => {
    const stream = streamAt(reference)
    return {
      name: name.decodeText(),
      box: numbersOf(stream.dict.lookup(PDFName.of('BBox'), PDFArray)),
      content: operationsOf(textOf(stream)),
    }
  })
  return { pages, forms }
}

function operatorOf([name, words]: Operation): PDFOperator {
  const given = words.map((word) =>
    typeof word === 'number'
      ? PDFNumber.of(word)
      : word.startsWith('/')
        ? PDFName.of(word.slice(1))
        : word.startsWith('<')
          ? PDFHexString.of(word.slice(1, -1))
          : word,
  )
  return PDFOperator.of(name as Parameters<typeof PDFOperator.of>[0], given)
}

/** Writes the same with nothing but the library. */
export function barePdf({ pages, forms }: BareSheets): Promise<Uint8Array> {
  const context = PDFContext.create()
  const tree = PDFPageTree.withContext(context)
  const treeRef = context.register(tree)
  context.trailerInfo.Root = context.register(PDFCatalog.withContextAndPages(context, treeRef))
  const font = context.register(context.obj({ Type: 'Font', Subtype: 'Type1', BaseFont: 'Helvetica' }))
  const streamOf = (content: readonly Operation[], entries: PDFDict) =>
    context.register(PDFContentStream.of(entries, content.map(operatorOf), false))
  const drawings: Record<string, PDFRef> = {}
  for (const { name, box, content } of forms)
    drawings[name] = streamOf(content, context.obj({ Type: 'XObject', Subtype: 'Form', BBox: [...box] }))
  const resources = context.register(context.obj({ Font: { F0: font }, XObject: drawings }))
  for (const { box, content } of pages) {
    const leaf = PDFPageLeaf.withContextAndParent(context, treeRef)
    leaf.set(PDFName.of('MediaBox'), context.obj([...box]))
    leaf.set(PDFName.of('Resources'), resources)
    leaf.set(PDFName.of('Contents'), streamOf(content, context.obj({})))
    tree.pushLeafNode(context.register(leaf))
  }
  return PDFWriter.forContext(context, Number.POSITIVE_INFINITY).serializeToBuffer()
}
