/** A DXF file as what it is: pairs of a group code and a value, grouped into records that start with code 0. */

export type Tag = readonly [code: number, value: string]

/** A record: its type (`LAYER`, `CIRCLE`, `SECTION` …) and the tags that follow it up to the next code 0. */
export interface DxfRecord {
  readonly type: string
  readonly tags: readonly Tag[]
}

/**
 * The records of a DXF text.
 *
 * @throws when a group code is not a number or a value is missing: then some string held a line break
 */
export function readRecords(text: string): DxfRecord[] {
  const lines = text.split('\n')
  const records: { type: string; tags: Tag[] }[] = []
  for (let index = 0; index < lines.length; index += 2) {
    const code = Number(lines[index])
    const value = lines[index + 1]
    if (!Number.isInteger(code) || value === undefined) {
      throw new Error(
        `Line ${index + 1} of the DXF is "${lines[index]}", not a group code with a value behind it.`,
      )
    }
    if (code === 0) records.push({ type: value, tags: [] })
    else records.at(-1)?.tags.push([code, value])
  }
  return records
}

/** The text of a DXF: comments first, then the records, and a line break at the very end. */
export function writeRecords(comments: readonly string[], records: readonly DxfRecord[]): string {
  const lines: string[] = comments.flatMap((comment) => ['999', comment])
  for (const record of records) {
    lines.push('0', record.type)
    for (const [code, value] of record.tags) lines.push(String(code), value)
  }
  return `${lines.join('\n')}\n`
}

/** The value of the first tag with a code, or nothing. */
export function firstValue(record: DxfRecord, code: number): string | undefined {
  return record.tags.find(([each]) => each === code)?.[1]
}

/** A record with every tag of one code set to a new value. */
export function withValue(record: DxfRecord, code: number, value: string): DxfRecord {
  return { ...record, tags: record.tags.map((tag) => (tag[0] === code ? [code, value] : tag)) }
}

/** A record with some codes taken out. */
export function without(record: DxfRecord, ...codes: number[]): DxfRecord {
  return { ...record, tags: record.tags.filter(([code]) => !codes.includes(code)) }
}

/** The name of the section that each record stands in; `SECTION` and `ENDSEC` belong to it. */
export function sectionsOf(records: readonly DxfRecord[]): string[] {
  let section = ''
  return records.map((record) => {
    if (record.type === 'SECTION') section = firstValue(record, 2) ?? ''
    return section
  })
}
