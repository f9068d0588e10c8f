/** The library's main file is of a form that Node does not find its names in; this one is read alike everywhere. */
declare module 'maxrects-packer/dist/maxrects-packer.mjs' {
  export * from 'maxrects-packer'
}
