/** jsdom brings no types: here is what the tests use of it outside its own environment. */
declare module 'jsdom' {
  export class JSDOM {
    readonly window: { readonly DOMParser: typeof DOMParser }
  }
}
