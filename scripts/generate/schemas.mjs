// The published JSON schemas of everything that commands print with --json.
import { z } from 'zod'
import { published } from '../../dist/wire/index.js'

export async function publishedSchemas() {
  return Object.entries(published).map(([name, schema]) => [
    name,
    { title: name, ...z.toJSONSchema(schema, { io: name.endsWith('-question') ? 'input' : 'output' }) },
  ])
}
