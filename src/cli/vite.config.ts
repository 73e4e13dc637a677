import { defineConfig } from 'vite'

/**
 * Commands are put together into few files in dist/cli-app, since most of their waiting was Node finding and reading
 * some 150 small modules. What opens databases, draws paper or starts threads stays where it was built (dist/store and
 * so on), because it looks for its own files beside itself.
 */
const APART = /^(?:\.\.\/)+(store|solver|print)\/index\.js$/

/**
 * These do nothing by being loaded, so that a command reads of them only what it uses. The kernel and the words are not
 * among them: their doors teach the sentences of every problem.
 */
const PURE = /\/src\/(?:science|score|planning|wire|lab)\//

export default defineConfig({
  root: import.meta.dirname,
  plugins: [
    {
      name: 'rooms-apart',
      enforce: 'pre',
      resolveId: (id) => {
        const room = APART.exec(id)?.[1]
        return room === undefined ? null : { id: `../${room}/index.js`, external: true }
      },
    },
  ],
  build: {
    ssr: 'main.ts',
    outDir: '../../dist/cli-app',
    emptyOutDir: true,
    target: 'node20',
    rolldownOptions: {
      treeshake: { moduleSideEffects: (id) => !PURE.test(id) },
      output: { entryFileNames: '[name].js', chunkFileNames: '[name].js' },
    },
  },
})
