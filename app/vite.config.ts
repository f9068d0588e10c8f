import react from '@vitejs/plugin-react'
import { defineConfig } from 'vite'
import { published } from './vite.published.ts'

export default defineConfig({
  root: import.meta.dirname,
  // Relative addresses, so the built page works from any folder of any host.
  base: './',
  build: {
    outDir: '../dist',
    emptyOutDir: true,
    // The licences of what is bundled travel with the page.
    license: { fileName: 'licenses.md' },
  },
  worker: {
    format: 'es',
  },
  // The page is made of the rooms beside it too.
  server: { fs: { allow: ['..'] } },
  plugins: [react(), published()],
})
