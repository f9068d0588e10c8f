/** A part of dxf-writer that its own types leave out. */
declare module 'dxf-writer/src/TagsManager.js' {
  export default class TagsManager {
    /** Codes and values by turns. */
    readonly lines: (string | number)[]
    push(code: number, value: string | number): void
    /** Begins a section. */
    start(name: string): void
    /** Ends a section. */
    end(): void
    toDxfString(): string
  }
}
