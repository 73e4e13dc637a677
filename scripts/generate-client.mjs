// The typed client of the web pages from the OpenAPI document: one function per operation. Written by generate.mjs.

const HEAD = `// Written by scripts/generate-client.mjs from docs/openapi.json; changes made here are lost.
import { address, send } from './transport.js'
`
const WIDTH = 120

/** Paths whose functions stand in a file of their own, so that a phone at the sink does not load them. */
const OF_THE_DESK =
  /^\/api\/(products|containers|lots|shelf|shelf-entries|shared-graduate|vessels|films|orders|wash\w*|checks|class-sets)(\/|$)/
/** These are read everywhere and changed at a desk. */
const CHANGED_AT_THE_DESK = /^\/api\/(times|thermometers|recipes)(\/|$)/
const isOfTheDesk = ({ path, method }) => OF_THE_DESK.test(path) || (method !== 'GET' && CHANGED_AT_THE_DESK.test(path))

/**
 * The client's texts for an OpenAPI 3.1 document: all types with the functions of most pages, and the functions of
 * pages for a desk alone. The same document always gives the same texts.
 */
export function clientsFrom(document) {
  const operations = Object.entries(document.paths).flatMap(([path, methods]) =>
    Object.entries(methods).map(([method, operation]) => ({ path, method: method.toUpperCase(), ...operation })),
  )
  const wanted = operations.filter((operation) => jsonAnswer(operation) !== null || isFile(operation))
  const used = namesUsed(wanted, document)
  const types = Object.entries(document.components?.schemas ?? {})
    .filter(([name]) => used.has(name))
    .sort(([a], [b]) => a.localeCompare(b, 'en'))
    .map(([name, schema]) => `${comment(schema.description)}export type ${name} = ${typeOf(schema, 0)}\n`)
  const [desk, most] = [true, false].map((ofDesk) =>
    wanted.filter((operation) => isOfTheDesk(operation) === ofDesk).map(functionOf),
  )
  return {
    client: [HEAD, ...types, ...wanted.flatMap(ownTypes), ...most].join('\n'),
    desk: [deskHead(desk.join('\n')), ...desk].join('\n'),
  }
}

const functionOf = (operation) => (isFile(operation) ? addressFunction(operation) : sendFunction(operation))

/** Letter by letter, a capital before its small one: the order in which imports are kept here. */
const inOrder = (name) => [...name].map((one) => one.toLowerCase() + (one === one.toLowerCase() ? 1 : 0)).join('')

/** What the functions of the desk import: exactly the types and helpers that they name. */
function deskHead(text) {
  const named = [...new Set(text.replace(/\/\*\*.*?\*\//g, '').match(/(?<=[:<] ?)[A-Z]\w+/g) ?? [])].filter(
    (name) => name !== 'Blob',
  )
  const helpers = ['address', 'send'].filter((name) => text.includes(`${name}(`) || text.includes(`${name}<`))
  const names = [...helpers, ...named].sort((a, b) => (inOrder(a) < inOrder(b) ? -1 : 1))
  return `// Written by scripts/generate-client.mjs from docs/openapi.json; changes made here are lost.
import {
${names.map((name) => `  ${helpers.includes(name) ? name : `type ${name}`},`).join('\n')}
} from '../api/index.js'
`
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
