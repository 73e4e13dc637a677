import { defineConfig } from 'vite'

/** The page is built into dist/web-app; the server serves it from there. */
export default defineConfig({
  root: import.meta.dirname,
  build: { outDir: '../../dist/web-app', emptyOutDir: true, manifest: true, assetsInlineLimit: 0 },
  oxc: { jsx: { runtime: 'automatic' } },
  server: { host: '127.0.0.1', proxy: { '/api': 'http://127.0.0.1:8080' } },
})
