/** How a key of the report is explained, and short ways to write rows of them. */
export interface ReportKey {
  /** Path from the top; `[]` stands for every entry of a list, `.*` for every name in a group. */
  readonly key: string
  readonly unit: string
  readonly meaning: string
}

export const rows = (unit: string, prefix: string, keys: Readonly<Record<string, string>>): ReportKey[] =>
  Object.entries(keys).map(([key, meaning]) => ({ key: `${prefix}${key}`, unit, meaning }))
export const mm = (prefix: string, keys: Readonly<Record<string, string>>) => rows('mm', prefix, keys)
export const words = (prefix: string, keys: Readonly<Record<string, string>>) => rows('text', prefix, keys)
export const yesNo = (prefix: string, keys: Readonly<Record<string, string>>) =>
  rows('yes or no', prefix, keys)
export const counts = (prefix: string, keys: Readonly<Record<string, string>>) => rows('count', prefix, keys)

export const box4 = (prefix: string, of: string) =>
  mm(prefix, {
    minX: `${of}: least x.`,
    maxX: `${of}: greatest x.`,
    minY: `${of}: least y.`,
    maxY: `${of}: greatest y.`,
  })
