// Writes the typed client of the web pages from the OpenAPI document: one function per operation.
// node scripts/generate-client.mjs [openapi.json] [client.ts]
import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'

const HEAD = `// Written by scripts/generate-client.mjs from docs/openapi.json; changes made here are lost.
import { address, send } from './transport.js'
`
const WIDTH = 120

/** The client's text for an OpenAPI 3.1 document. The same document always gives the same text. */
export function clientFrom(document) {
  const operations = Object.entries(document.paths).flatMap(([path, methods]) =>
    Object.entries(methods).map(([method, operation]) => ({ path, method: method.toUpperCase(), ...operation })),
  )
  const wanted = operations.filter((operation) => jsonAnswer(operation) !== null || isFile(operation))
  const used = namesUsed(wanted, document)
  const types = Object.entries(document.components?.schemas ?? {})
    .filter(([name]) => used.has(name))
    .sort(([a], [b]) => a.localeCompare(b, 'en'))
    .map(([name, schema]) => `${comment(schema.description)}export type ${name} = ${typeOf(schema, 0)}\n`)
  const functions = wanted.map((operation) =>
    isFile(operation) ? addressFunction(operation) : sendFunction(operation),
  )
  return [HEAD, ...types, ...wanted.flatMap(ownTypes), ...functions].join('\n')
}

const contents = (operation) =>
  Object.entries(operation.responses ?? {}).find(([status]) => /^2/.test(status))?.[1].content ?? {}
const jsonAnswer = (operation) => contents(operation)['application/json']?.schema ?? null
/** Files and feeds are opened by their address, not fetched into a value. */
const isFile = (operation) => Object.keys(contents(operation)).some((type) => type !== 'application/json')
const comment = (text) => (text ? `/** ${text} */\n` : '')
const parametersIn = (operation, place) => (operation.parameters ?? []).filter((parameter) => parameter.in === place)

function namesUsed(operations, document) {
  const used = new Set()
  const visit = (node) => {
    if (node === null || typeof node !== 'object') return
    const name = typeof node.$ref === 'string' ? node.$ref.split('/').at(-1) : null
    if (name !== null && !used.has(name)) {
      used.add(name)
      visit(document.components.schemas[name])
    }
    for (const value of Object.values(node)) visit(value)
  }
  for (const operation of operations) {
    visit(jsonAnswer(operation))
    visit(operation.requestBody)
    visit(operation.parameters)
  }
  if (document.components?.schemas?.Problem) visit({ $ref: '#/components/schemas/Problem' })
  return used
}

function sendFunction(operation) {
  const body = operation.requestBody?.content?.['application/json']?.schema
  const file = !body && operation.requestBody ? 'Blob | string' : null
  const args = pathArguments(operation)
  if (body) args.push(`body: ${body.$ref ? typeOf(body, 0) : bodyName(operation)}`)
  else if (file) args.push(`body: ${file}`)
  args.push(...queryArgument(operation))
  const query = parametersIn(operation, 'query').length > 0 ? ', query' : ''
  const parts = [`'${operation.method}'`, target(operation, query)]
  const writes = parametersIn(operation, 'header').some((header) => header.name.toLowerCase() === 'idempotency-key')
  const options = [body || file ? 'body' : null, writes ? 'writes: true' : null].filter(Boolean)
  if (options.length > 0) parts.push(`{ ${options.join(', ')} }`)
  return functionText(operation, operation.operationId, args, `send<${typeOf(jsonAnswer(operation), 0)}>`, parts)
}

function addressFunction(operation) {
  const args = [...pathArguments(operation), ...queryArgument(operation)]
  const query = parametersIn(operation, 'query').length > 0 ? ', query' : ''
  const text = `export const ${operation.operationId}Address = (${args.join(', ')}): string => ${target(operation, query)}`
  const fitted = text.length <= WIDTH ? text : text.replace(': string => ', ': string =>\n  ')
  return `${comment(`Where to open: ${operation.summary}`)}${fitted}\n`
}

function functionText(operation, name, args, callee, parts) {
  const head = `export const ${name} = (${args.join(', ')}) =>`
  const call = `${callee}(${parts.join(', ')})`
  const line = `${head} ${call}`
  const broken = `${head}\n  ${call}`
  return `${comment(operation.summary)}${line.length <= WIDTH ? line : broken}\n`
}

const pathArguments = (operation) => parametersIn(operation, 'path').map((parameter) => `${parameter.name}: string`)

function queryArgument(operation) {
  const parameters = parametersIn(operation, 'query')
  if (parameters.length === 0) return []
  const optional = parameters.every((one) => !one.required)
  return [`query: ${queryName(operation)}${optional ? ' = {}' : ''}`]
}

const capital = (name) => name[0].toUpperCase() + name.slice(1)
const bodyName = (operation) => `${capital(operation.operationId)}Body`
const queryName = (operation) => `${capital(operation.operationId)}Query`

/** Bodies and queries that the document leaves nameless get a name from their operation. */
function ownTypes(operation) {
  const body = operation.requestBody?.content?.['application/json']?.schema
  const query = parametersIn(operation, 'query')
  const types = []
  if (body && !body.$ref) types.push(`export type ${bodyName(operation)} = ${typeOf(body, 0)}\n`)
  if (query.length > 0) {
    const fields = query.map((one) => `  ${key(one.name)}${one.required ? '' : '?'}: ${typeOf(one.schema, 1)}`)
    types.push(`export type ${queryName(operation)} = {\n${fields.join('\n')}\n}\n`)
  }
  return types
}

function target(operation, query) {
  const path = operation.path.replace(/\{(\w+)\}/g, (_, name) => `\${encodeURIComponent(${name})}`)
  const quoted = path === operation.path ? `'${path}'` : `\`${path}\``
  return query || isFile(operation) ? `address(${quoted}${query})` : quoted
}

const key = (name) => (/^[A-Za-z_$][\w$]*$/.test(name) ? name : `'${name}'`)

/** A JSON schema as a TypeScript type. */
function typeOf(schema, depth) {
  if (schema === true || schema === undefined || Object.keys(schema).length === 0) return 'unknown'
  if (schema.$ref) return schema.$ref.split('/').at(-1)
  if ('const' in schema) return literal(schema.const)
  if (schema.enum) return schema.enum.map(literal).join(' | ')
  if (schema.allOf) return schema.allOf.map((part) => typeOf(part, depth)).join(' & ')
  const union = schema.anyOf ?? schema.oneOf
  if (union) return [...new Set(union.map((part) => typeOf(part, depth)))].join(' | ')
  if (Array.isArray(schema.type)) return schema.type.map((type) => typeOf({ ...schema, type }, depth)).join(' | ')
  if (schema.type === 'array') return arrayOf(schema, depth)
  if (schema.type === 'object') return objectOf(schema, depth)
  return (
    { string: 'string', number: 'number', integer: 'number', boolean: 'boolean', null: 'null' }[schema.type] ??
    'unknown'
  )
}

/** A type after its label; a union too long for the line stands one alternative a line. */
function inWidth(type, taken, depth) {
  if (type.includes('\n') || !type.includes(' | ') || taken + 1 + type.length <= WIDTH) return ` ${type}`
  const inside = `\n${'  '.repeat(depth)}| `
  return inside + type.split(' | ').join(inside)
}

const literal = (value) => (typeof value === 'string' ? `'${value}'` : String(value))

function arrayOf(schema, depth) {
  const item = typeOf(schema.items, depth)
  return item.includes(' | ') || item.startsWith('{') ? `Array<${item}>` : `${item}[]`
}

function objectOf(schema, depth) {
  const entries = Object.entries(schema.properties ?? {})
  if (entries.length === 0) {
    const rest = schema.additionalProperties
    return rest === false ? 'Record<string, never>' : `Record<string, ${typeOf(rest ?? true, depth)}>`
  }
  const required = new Set(schema.required ?? [])
  const inside = '  '.repeat(depth + 1)
  const fields = entries.map(([name, value]) => {
    const label = `${inside}${key(name)}${required.has(name) ? '' : '?'}:`
    const type = typeOf(value, depth + 1)
    return label + inWidth(type, label.length, depth + 2)
  })
  return `{\n${fields.join('\n')}\n${'  '.repeat(depth)}}`
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) {
  const root = join(import.meta.dirname, '..')
  const [from = join(root, 'docs/openapi.json'), to = join(root, 'src/web/shared/api/client.ts')] =
    process.argv.slice(2)
  writeFileSync(to, clientFrom(JSON.parse(readFileSync(from, 'utf8'))))
}
