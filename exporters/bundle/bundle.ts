/**
 * Everything of an instrument in one zip (APPNOTE 6.3): design, templates, build sheet, tables, label. The same design
 * gives the same bytes: no date but the first that the format knows, no order but ours, one compressor everywhere.
 */
import { type Design, designText, type Part, partsOf, solve } from '../../geometry/index.ts'
import { followed } from '../cutting/cut-part.ts'
import { sheetTemplates } from '../cutting/sheets.ts'
import type { LengthUnit } from '../drawing/layers.ts'
import { writeLabelSvg } from '../label/label.ts'
import { type PaperName, paperFor, planPrint, printFileName, printPdf, STANDARD_SETUP } from '../pdf/index.ts'
import { buildSheet } from '../sheet/build-sheet.ts'
import { everythingText, tableFiles } from '../sheet/files.ts'
import { writeSheetHtml } from '../sheet/html/write-html.ts'
import { printLabel, printSheet } from '../sheet/printing.ts'
import { TEMPLATE_FORMATS, type TemplateFormat, type TemplatesOptions, templates } from '../templates.ts'
import { slug } from '../words/plain.ts'
import { contentsText } from './contents.ts'
import { type BundleFile, type Packed, packed, zipOf } from './zip.ts'

export interface BundleOptions {
  /** Paper of what is printed; that of the design’s unit unless stated: A4 for millimetres, Letter for inches. */
  readonly paper?: PaperName | undefined
  /** Unit of the numbers in DXF files; millimetres unless stated. */
  readonly dxfUnits?: LengthUnit | undefined
  /** Called before each group of files is made: how many groups are done, of how many, and what comes now. */
  readonly onStep?: ((done: number, of: number, what: string) => void) | undefined
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
  make(): Promise<readonly BundleFile[]> | readonly BundleFile[]
}

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
  const files: Packed[] = []
  for (const [index, group] of groups.entries()) {
    options.onStep?.(index, groups.length, group.what)
    for (const file of await group.make()) {
      paths.push(file.path)
      files.push(pack(file))
    }
  }
  const readMe = text('read-me.txt', contentsText(design, paths, said))
  const bytes = zipOf([pack(readMe), ...files])
  options.onStep?.(groups.length, groups.length, 'done')
  return {
    name: `${start}-everything.zip`,
    bytes,
    paths: [readMe.path, ...paths].map(within),
    // Several of the files say the same of the same title.
    cautions: [...new Set(cautions)],
  }
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
  const { cautions } = sentences
  const parts = partsOf(solve(design))
  const { title } = design
  const paper = options.paper ?? paperFor(design)
  const cut = (format: TemplateFormat): Group => ({
    what: `templates, ${format.toUpperCase()}`,
    make: () =>
      templates(parts, { title, formats: [format], dxfUnits: options.dxfUnits ?? 'mm' }).map((one) =>
        text(`templates-${format}/${one.name}`, one.text),
      ),
  })
  return [
    { what: 'design', make: () => [text(`${start}.lidwright.json`, designText(design))] },
    {
      what: 'build sheet',
      make: async () => {
        const sheet = buildSheet(design)
        const { bytes, cautions: more } = await printSheet(sheet, paper)
        cautions.push(...more)
        return [
          text(`${start}-build-sheet.html`, writeSheetHtml(sheet)),
          { path: `${start}-build-sheet-${paper}.pdf`, bytes },
          ...tableFiles(sheet).map((one) => text(`tables/${one.name}`, one.text)),
          text(`${start}-everything.json`, everythingText(design, sheet)),
        ]
      },
    },
    {
      what: 'label',
      make: async () => [
        text(`${start}-label.svg`, writeLabelSvg(design)),
        { path: `${start}-label.pdf`, bytes: (await printLabel(design)).bytes },
      ],
    },
    {
      what: 'templates to print',
      make: async () => {
        const reading = planPrint(parts, { ...STANDARD_SETUP, paper })
        if (!reading.ok) throw new Error(reading.sentence)
        const { bytes, cautions: more } = await printPdf(reading.plan, { title })
        cautions.push(...more)
        return [{ path: `templates-pdf/${printFileName(title, parts, paper)}`, bytes }]
      },
    },
    cut('svg'),
    cut('dxf'),
    ...machineGroups(parts, design, options, sentences),
  ]
}
