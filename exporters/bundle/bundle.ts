/**
 * Everything of an instrument in one zip (APPNOTE 6.3): design, templates, build sheet, tables, label. The same design
 * gives the same bytes: no date but the first that the format knows, no order but ours, one compressor everywhere.
 */
import { type Design, designText, type Part, partsOf, solve } from '../../geometry/index.ts'
import { followed } from '../cutting/cut-part.ts'
import { sheetTemplates } from '../cutting/sheets.ts'
import type { LengthUnit } from '../drawing/layers.ts'
import { labelPicture, writeLabelSvg } from '../label/label.ts'
import { type PaperName, paperFor, planPrint, printFileName, STANDARD_SETUP } from '../pdf/index.ts'
import { buildSheet } from '../sheet/build-sheet.ts'
import { everythingText, tableFiles } from '../sheet/files.ts'
import { writeSheetHtml } from '../sheet/html/write-html.ts'
import type { Sheet } from '../sheet/model.ts'
import { TEMPLATE_FORMATS, type TemplateFormat, type TemplatesOptions, templates } from '../templates.ts'
import { slug } from '../words/plain.ts'
import { contentsText } from './contents.ts'
import { type Print, type Printed, printed } from './print.ts'
import { type BundleFile, type Packed, packed, zipOf } from './zip.ts'

export interface BundleOptions {
  /** Paper of what is printed; that of the design’s unit unless stated: A4 for millimetres, Letter for inches. */
  readonly paper?: PaperName | undefined
  /** Unit of the numbers in DXF files; millimetres unless stated. */
  readonly dxfUnits?: LengthUnit | undefined
  /** Called before each group of files is made: how many groups are done, of how many, and what comes now. */
  readonly onStep?: ((done: number, of: number, what: string) => void) | undefined
  /** Prints somewhere else while other files are written; here and at once unless stated. */
  readonly print?: ((print: Print) => Promise<Printed>) | undefined
}

export interface Bundle {
  /** `tea-box-everything.zip` */
  readonly name: string
  readonly bytes: Uint8Array
  /** Paths inside, in their order. */
  readonly paths: readonly string[]
  /** Sentences about what is on paper otherwise than written. */
  readonly cautions: readonly string[]
}

interface Group {
  readonly what: string
  make(): Promise<readonly Entry[]> | readonly Entry[]
}

/** A file, or what is to be printed to one. */
type Entry = BundleFile | Print

/** Names that Windows keeps for its devices, whatever follows the dot: no file and no folder may be called so. */
const DEVICES = /^(con|prn|aux|nul|com[0-9]|lpt[0-9])$/

function nameOf({ title }: Design): string {
  const name = slug(title, 'instrument')
  return DEVICES.test(name) ? `${name}-instrument` : name
}

const encoder = new TextEncoder()
const text = (path: string, words: string): BundleFile => ({ path, bytes: encoder.encode(words) })

/**
 * Makes the bundle of a design. Rejects where a part cannot be drawn, as `templates` does: then nothing is made.
 * Example: `const { name, bytes } = await makeBundle(design)`.
 */
export async function makeBundle(design: Design, options: BundleOptions = {}): Promise<Bundle> {
  const start = nameOf(design)
  const cautions: string[] = []
  const said: string[] = []
  const groups = groupsOf(design, start, options, { cautions, said })
  const paths: string[] = []
  const within = (path: string) => `${start}/${path}`
  const pack = ({ path, bytes }: BundleFile) => packed({ path: within(path), bytes })
  const print = async (one: Print): Promise<Packed> => {
    const { packed: file, cautions: more } = await (options.print ?? printed)({
      ...one,
      path: within(one.path),
    })
    cautions.push(...more)
    return file
  }
  const files: (Packed | Promise<Packed>)[] = []
  for (const [index, group] of groups.entries()) {
    options.onStep?.(index, groups.length, group.what)
    for (const entry of await group.make()) {
      paths.push(entry.path)
      if ('bytes' in entry) files.push(pack(entry))
      else files.push(options.print ? settled(print(entry)) : await print(entry))
    }
  }
  const readMe = text('read-me.txt', contentsText(design, paths, said))
  const bytes = zipOf(await Promise.all([pack(readMe), ...files]))
  options.onStep?.(groups.length, groups.length, 'done')
  return {
    name: `${start}-everything.zip`,
    bytes,
    paths: [readMe.path, ...paths].map(within),
    // Several of the files say the same of the same title.
    cautions: [...new Set(cautions)],
  }
}

/** A promise that may fail before anybody waits for it: it fails then, not as a fault of the process. */
function settled<T>(promise: Promise<T>): Promise<T> {
  promise.catch(() => {})
  return promise
}

/** What groups have to say besides their files. */
interface Sentences {
  /** To whoever makes the bundle. */
  readonly cautions: string[]
  /** To whoever unpacks it. */
  readonly said: string[]
}

/** What the design's laser or router follows: every part by itself, and sheets of stock. Nothing where it is cut by hand. */
function machineGroups(
  parts: readonly Part[],
  design: Design,
  { dxfUnits = 'mm' }: BundleOptions,
  { cautions, said }: Sentences,
): Group[] {
  const { process } = design.cutting
  if (process === 'by hand') return []
  const writing: TemplatesOptions = {
    title: design.title,
    formats: TEMPLATE_FORMATS,
    dxfUnits,
    // Only what the tool follows or scribes, for a router too.
    svgPurpose: 'laser',
  }
  return [
    {
      what: `paths for the ${process}`,
      make: () => {
        const { parts: cut, byHand, wrong } = followed(parts, design)
        cautions.push(...byHand, ...wrong.map((one) => `${one} Its path is not in the bundle.`))
        return templates(cut, writing).map((one) => text(`paths-${process}/${one.name}`, one.text))
      },
    },
    {
      what: 'sheets of stock',
      make: async () => {
        const { parts: cut } = followed(parts, design)
        const sheets = await sheetTemplates(cut, design, writing)
        if (sheets.ok) {
          said.push(...sheets.said)
          return sheets.files.map((one) => text(`sheets-of-stock/${one.name}`, one.text))
        }
        cautions.push(...sheets.sentences.map((one) => `${one} The bundle holds no sheets of stock.`))
        return []
      },
    },
  ]
}

function groupsOf(design: Design, start: string, options: BundleOptions, sentences: Sentences): Group[] {
  const parts = partsOf(solve(design))
  const { title } = design
  const paper = options.paper ?? paperFor(design)
  let made: Sheet | undefined
  const sheet = () => {
    made ??= buildSheet(design)
    return made
  }
  const cut = (format: TemplateFormat): Group => ({
    what: `templates, ${format.toUpperCase()}`,
    make: () =>
      templates(parts, { title, formats: [format], dxfUnits: options.dxfUnits ?? 'mm' }).map((one) =>
        text(`templates-${format}/${one.name}`, one.text),
      ),
  })
  return [
    { what: 'design', make: () => [text(`${start}.lidwright.json`, designText(design))] },
    // What is printed goes first: it may be done beside all that follows.
    {
      what: 'build sheet',
      make: () => [{ kind: 'sheet', path: `${start}-build-sheet-${paper}.pdf`, sheet: sheet(), paper }],
    },
    {
      what: 'label',
      make: () => [
        { kind: 'label', path: `${start}-label.pdf`, picture: labelPicture(design) },
        text(`${start}-label.svg`, writeLabelSvg(design)),
      ],
    },
    {
      what: 'templates to print',
      make: () => {
        const reading = planPrint(parts, { ...STANDARD_SETUP, paper })
        if (!reading.ok) throw new Error(reading.sentence)
        const path = `templates-pdf/${printFileName(title, parts, paper)}`
        return [{ kind: 'templates', path, plan: reading.plan, title }]
      },
    },
    {
      what: 'tables',
      make: () => [
        text(`${start}-build-sheet.html`, writeSheetHtml(sheet())),
        ...tableFiles(sheet()).map((one) => text(`tables/${one.name}`, one.text)),
        text(`${start}-everything.json`, everythingText(design, sheet())),
      ],
    },
    cut('svg'),
    cut('dxf'),
    ...machineGroups(parts, design, options, sentences),
  ]
}
