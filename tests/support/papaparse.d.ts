/** Only what the tests ask of the independent CSV reader. */
declare module 'papaparse' {
  interface Parsed {
    readonly data: string[][]
    readonly errors: readonly { readonly message: string }[]
  }
  const papa: { parse(text: string): Parsed }
  export default papa
}
