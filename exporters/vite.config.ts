import { defineConfig, type Plugin } from 'vite'

/**
 * Makes the program one function of what CommonJS gives a module, as `launcher/compiled.cjs` reads it. Signs beyond ASCII become
 * escapes, which say the same in any text of a program: then a letter is a byte, in the file and in memory.
 */
const oneFunction: Plugin = {
  name: 'one-function',
  generateBundle(_, files) {
    for (const file of Object.values(files)) {
      if (file.type !== 'chunk') continue
      const ascii = file.code.replace(
        /[\u0080-\uffff]/g,
        (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`,
      )
      file.code = `(function (exports, require, module) {${ascii}\n})\n`
    }
  },
}

/**
 * Bundles the command line into one file that needs nothing but Node, so the package installs without a
 * network and starts at once. Made when the package is packed.
 */
export default defineConfig({
  root: import.meta.dirname,
  plugins: [oneFunction],
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
      output: { format: 'cjs', codeSplitting: false, entryFileNames: '[name].js' },
    },
  },
  ssr: { noExternal: true },
})
