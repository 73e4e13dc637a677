import './shared/ui/fonts.css'
import './shared/ui/tokens.css'
import './shared/ui/base.css'
import './shared/ui/controls.css'
import './app/shell.css'
import { QueryClient, QueryClientProvider } from '@tanstack/react-query'
import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import { App } from './app/App.js'
import { ApiProblem } from './shared/api/index.js'
import { groundChosen, showGround } from './shared/platform/index.js'
import { Toasts } from './shared/ui/index.js'

showGround(groundChosen())

/** An answer that says what is wrong is not asked for again; a network that failed is, twice. */
const again = (count: number, fault: Error) => count < 2 && (!(fault instanceof ApiProblem) || fault.status === 0)
const queries = new QueryClient({
  defaultOptions: {
    queries: { staleTime: 30_000, retry: again, retryDelay: 500, networkMode: 'always' },
    mutations: { networkMode: 'always' },
  },
})

const root = document.getElementById('root')
if (root)
  createRoot(root).render(
    <StrictMode>
      <QueryClientProvider client={queries}>
        <Toasts>
          <App />
        </Toasts>
      </QueryClientProvider>
    </StrictMode>,
  )
