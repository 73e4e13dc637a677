// The OpenAPI document, from the routes as the server registers them. Nothing is opened and nothing listens.
import { createApp } from '../../dist/server/app.js'

export async function openApi() {
  const config = {
    host: '127.0.0.1',
    port: 0,
    database: { kind: 'sqlite', file: '' },
    loopbackIsOwner: true,
    extraHosts: [],
  }
  const app = await createApp({ config, webFolder: null })
  await app.ready()
  const document = app.swagger()
  await app.close()
  return document
}
