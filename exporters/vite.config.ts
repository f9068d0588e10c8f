import { defineConfig } from 'vite'

/**
 * Bundles the command line into one file that needs nothing but Node, so the package installs without a
 * network and starts at once. Made when the package is packed.
 */
export default defineConfig({
  root: import.meta.dirname,
  build: {
    ssr: true,
    target: 'node20',
    outDir: '../dist-cli',
    emptyOutDir: true,
    // A command starts as fast as its code is read: half the text, half the time.
    minify: true,
    // The licences of what is bundled travel with it.
    license: { fileName: 'licenses.md' },
    rolldownOptions: {
      input: { lidwright: 'cli.ts' },
      output: { entryFileNames: '[name].mjs', chunkFileNames: '[name]-[hash].mjs' },
    },
  },
  ssr: { noExternal: true },
})
