/** The saved document: what it is, how it is read, how it changes. */
export * from './catalogue.ts'
export * from './changes.ts'
export * from './limits.ts'
export { ACROSS_LINES, type Across, ALONG_LINES, type Along, type Place } from './place.ts'
export * from './read.ts'
export { type Design, type Hand, type Thing, VERSION } from './schema.ts'
export { CORES, type Make, makeOf, type Stocked, WRAPS } from './sections/stringing.ts'
export { type Stated, startingDesign } from './starting.ts'
