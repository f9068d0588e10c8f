/** What the tests use of a library that comes without types: closed chains of vertices, offset to the left. */
declare module '@crhio/offset' {
  interface BulgeVertex {
    readonly x: number
    readonly y: number
    readonly bulge: number
  }
  export default function offset(
    chain: { readonly vertexes: readonly BulgeVertex[]; readonly isClosed: boolean },
    by: number,
    sharpCorners: boolean,
  ): { readonly vertexes: BulgeVertex[] }[]
}
