/** A limit that a finding is held against. */
export interface Limit {
  readonly value: number
  readonly unit: 'mm' | 'degrees' | 'share' | 'newtons'
  readonly label: string
  readonly why: string
}
