/** What only the published page has: the files kept for use without a network, and the rule that it asks no other host. */
import { createHash } from 'node:crypto'
import { readdirSync, readFileSync } from 'node:fs'
import { join, relative } from 'node:path'
import { build, type Plugin } from 'vite'

/**
 * Scripts, data and connections come from the page's own host or from nowhere. Styles may stand inside a page, because
 * the sheets that are printed carry their own; images and frames may be made on the spot.
 */
const POLICY = [
  "default-src 'self'",
  "script-src 'self'",
  "connect-src 'self'",
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' data: blob:",
  "font-src 'self' data:",
  "worker-src 'self' blob:",
  "frame-src 'self' blob:",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ')

/** Not part of the page: nobody opens it there. */
const LEFT_OUT = new Set(['offline.js', 'licenses.md'])

const filesIn = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true }).flatMap((one) =>
    one.isFile() ? [relative(folder, join(one.parentPath, one.name)).replaceAll('\\', '/')] : [],
  )

/** A file whose name changes with its content needs no other mark. */
const markOf = (folder: string, url: string) =>
  /^assets\/.+-[\w-]{8}\.\w+$/.test(url)
    ? null
    : createHash('sha256')
        .update(readFileSync(join(folder, url)))
        .digest('hex')
        .slice(0, 16)

/** Vite plugin: the policy in the page's head, and `offline.js` with the list of files beside it. */
export const published = (): Plugin => ({
  name: 'lidwright:published',
  apply: 'build',
  transformIndexHtml: () => [
    {
      tag: 'meta',
      attrs: { 'http-equiv': 'Content-Security-Policy', content: POLICY },
      injectTo: 'head-prepend',
    },
  ],
  async writeBundle({ dir }) {
    if (!dir) return
    const files = filesIn(dir)
      .filter((url) => !LEFT_OUT.has(url))
      .sort()
      .map((url) => ({ url, revision: markOf(dir, url) }))
    await build({
      configFile: false,
      logLevel: 'warn',
      publicDir: false,
      define: { FILES_OF_THE_PAGE: JSON.stringify(files) },
      build: {
        outDir: dir,
        emptyOutDir: false,
        rolldownOptions: {
          input: join(import.meta.dirname, 'offline/worker.ts'),
          output: { format: 'iife', entryFileNames: 'offline.js' },
        },
      },
    })
  },
})
