import { defineConfig } from 'vite'

/** These do nothing by being loaded, so that a page fetches of them only what it uses. */
const PURE = /\/src\/(?:kernel|science|score|planning|words|wire)\//

/** The page is built into dist/web-app; the server serves it from there. */
export default defineConfig({
  root: import.meta.dirname,
  build: {
    outDir: '../../dist/web-app',
    emptyOutDir: true,
    manifest: true,
    assetsInlineLimit: 0,
    rolldownOptions: { treeshake: { moduleSideEffects: (id) => !PURE.test(id) } },
  },
  oxc: { jsx: { runtime: 'automatic' } },
  server: { host: '127.0.0.1', proxy: { '/api': 'http://127.0.0.1:8080' } },
})
