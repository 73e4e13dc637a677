import type { FastifyInstance } from 'fastify'

interface Operation {
  readonly summary?: string
  readonly operationId?: string
}

const asHtml = (text: string): string => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;')

const STYLE = `body{margin:0 auto;max-width:60rem;padding:2rem 1.25rem;background:#f5f4f0;color:#1c1f20;font:16px/1.5 system-ui,sans-serif}
h1{font-size:1.75rem;line-height:1.2;margin:0 0 .5rem}table{border-collapse:collapse;width:100%;margin-top:1.5rem}
td,th{padding:.6rem 1rem .6rem 0;border-bottom:1px solid #d8d6ce;text-align:left;vertical-align:top}th{font-weight:400;color:#565c5e}
code{font-family:ui-monospace,monospace;font-size:.9em}a{color:#0d6a63}`

function page(paths: Record<string, Record<string, Operation>>): string {
  const rows = Object.entries(paths).flatMap(([path, methods]) =>
    Object.entries(methods).map(
      ([method, operation]) =>
        `<tr><td><code>${method.toUpperCase()} ${asHtml(path)}</code></td><td>${asHtml(operation.summary ?? '')}</td></tr>`,
    ),
  )
  return `<!doctype html><html lang="en"><meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>HTTP interface, Wetside</title><style>${STYLE}</style>
<main><h1>HTTP interface</h1><p>Everything the screens do goes through these addresses, and any other program of yours may use them too.
The full description, with every field, is <a href="/api/openapi.json">OpenAPI 3.1</a>. Send an <code>Idempotency-Key</code> header with a write and it can be sent twice without harm.</p>
<table><thead><tr><th scope="col">Address</th><th scope="col">What it does</th></tr></thead><tbody>${rows.join('')}</tbody></table></main></html>`
}

/** The interface described for machines (/api/openapi.json) and for people (/api/docs). */
export async function registerInterfacePage(app: FastifyInstance): Promise<void> {
  app.get('/api/openapi.json', { schema: { hide: true } }, async () => app.swagger())
  app.get('/api/docs', { schema: { hide: true } }, async (_request, reply) =>
    reply
      .type('text/html; charset=utf-8')
      .send(page((app.swagger().paths ?? {}) as Record<string, Record<string, Operation>>)),
  )
}
