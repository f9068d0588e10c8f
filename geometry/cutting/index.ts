/** What a laser or a router follows, so that the wood comes out as drawn. */
export { type Feature, type Follow, featuresOf, narrowestWeb, type Web, widestFor } from './features.ts'
export { type Tool, toolFor } from './tool.ts'
