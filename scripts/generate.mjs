// Writes everything that is made from the code: the OpenAPI document, the web client, the published schemas, the
// plots and the reference pages. `--check` writes nothing and fails when a committed file differs.
// Needs a build (dist/). Usage: node scripts/generate.mjs [--check]
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { commandPage } from './generate/commands.mjs'
import { errorPage } from './generate/errors.mjs'
import { openApi } from './generate/openapi.mjs'
import { plots } from './generate/plots.mjs'
import { publishedSchemas } from './generate/schemas.mjs'
import { clientsFrom } from './generate-client.mjs'

const root = fileURLToPath(new URL('..', import.meta.url))
const document = await openApi()
const clients = clientsFrom(document)
const json = (value) => `${JSON.stringify(value, null, 2)}\n`

const files = {
  'docs/openapi.json': json(document),
  'src/web/shared/api/client.ts': clients.client,
  'src/web/shared/desk/client.ts': clients.desk,
  'docs/errors.md': await errorPage(),
  'docs/cli.md': await commandPage(),
  ...plots(),
  ...Object.fromEntries(
    (await publishedSchemas()).map(([name, schema]) => [`docs/schemas/${name}.json`, json(schema)]),
  ),
}

const check = process.argv.includes('--check')
let differing = 0
for (const [name, text] of Object.entries(files)) {
  const file = join(root, name)
  const before = existsSync(file) ? readFileSync(file, 'utf8') : null
  if (before === text) continue
  differing++
  if (check) console.error(`${name} is not what the code gives; run npm run generate and commit it.`)
  else {
    mkdirSync(dirname(file), { recursive: true })
    writeFileSync(file, text)
    console.log(`wrote ${name}`)
  }
}
console.log(`${Object.keys(files).length} generated files, ${differing} ${check ? 'differ' : 'written'}.`)
if (check && differing > 0) process.exitCode = 1
