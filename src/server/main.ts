import { existsSync } from 'node:fs'
import { writeFile } from 'node:fs/promises'
import { homedir } from 'node:os'
import { dirname } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { FastifyInstance } from 'fastify'
import { type Clock, failed, idsFrom, ok, type Problem, problem, type Result, registry } from '../kernel/index.js'
import { noteCode, type Store } from '../lab/index.js'
import { listeningFile, openStore } from '../store/index.js'
import { createApp } from './app.js'
import { type Config, houseAddresses, readConfig } from './config.js'
import { pairingAddress } from './handlers/people.js'
import { type House, settle } from './house.js'
import { terminalQr } from './qr.js'
import { newPairingCode, sha256, trueRandom } from './secrets.js'

const realClock: Clock = { now: () => Date.now() }
const BUILT_WEB = fileURLToPath(new URL('../web-app', import.meta.url))

interface Running {
  readonly app: FastifyInstance
  readonly house: House
}

/** Opens the data and makes the interface over it, without listening yet. */
export async function openHouse(config: Config, clock: Clock = realClock): Promise<Result<Running>> {
  const ids = idsFrom(clock, trueRandom)
  const opened = await openStore(config.database, { clock, ids })
  if (!opened.ok) return opened
  const store = opened.value
  const zone = Intl.DateTimeFormat().resolvedOptions().timeZone || 'UTC'
  const house: House = {
    store,
    clock,
    ids,
    config,
    homeBench: await settle(store, clock, ids, zone),
    webFolder: existsSync(BUILT_WEB) ? BUILT_WEB : null,
    wrongCodes: [],
    feeds: new Set(),
    port: config.port,
    address: () => `http://${lanName(config)}:${house.port}`,
  }
  return ok({ app: await createApp(house), house })
}

/** The address on this machine itself. */
const ownAddress = ({ config, port }: House): string =>
  `http://${/^(0\.0\.0\.0|::|localhost)$/.test(config.host) ? '127.0.0.1' : config.host}:${port}`

/**
 * Opens the data and listens. The address it found is in the house and, for commands on the same data, in a file
 * beside it.
 */
export async function open(config: Config, clock: Clock = realClock): Promise<Result<Running>> {
  const opened = await openHouse(config, clock)
  if (!opened.ok) return opened
  const { app, house } = opened.value
  const listening = await app.listen({ host: config.host, port: config.port }).then(
    () => null,
    (thrown: NodeJS.ErrnoException) => thrown,
  )
  if (listening !== null) {
    await house.store.close()
    return failed(listenProblem(config, listening))
  }
  const bound = app.server.address()
  if (bound !== null && typeof bound === 'object') house.port = bound.port
  if (config.database.kind === 'sqlite')
    await writeFile(listeningFile(dirname(config.database.file)), `${ownAddress(house)}\n`)
  return opened
}

function listenProblem(config: Config, thrown: NodeJS.ErrnoException): Problem {
  const right =
    thrown.code === 'EADDRINUSE'
      ? 'a port that no other program holds, or 0 for any'
      : `a port that may be opened here (${thrown.code ?? thrown.message})`
  return problem('environment.bad', { name: 'PORT', value: String(config.port), right })
}

/** The name other devices can use: a house address when listening to all, else what was asked for. */
const lanName = (config: Config): string =>
  config.host === '0.0.0.0' || config.host === '::' ? (houseAddresses()[0] ?? '127.0.0.1') : config.host

/** Starts from the environment, says where it is, and stops in good order on a signal. */
export async function start(): Promise<void> {
  const config = readConfig(process.env, homedir())
  if (!config.ok) return refuse(config.problem)
  const running = await open(config.value)
  if (!running.ok) return refuse(running.problem)
  const { app, house } = running.value
  const data = config.value.database
  console.log(`The data is in ${data.kind === 'sqlite' ? data.file : 'the PostgreSQL database given by DATABASE_URL'}.`)
  console.log(`Listening on ${ownAddress(house)}`)
  if (process.stdout.isTTY || process.env.SHOW_QR === 'yes') await showPairing(house)
  stopOnSignal(app, house.store)
}

/** For a phone: the address with a one-time code, as a QR code. */
async function showPairing(house: House): Promise<void> {
  const code = newPairingCode()
  const context = {
    actor: { role: 'owner' as const, id: 'owner' },
    bench: house.homeBench,
    clock: house.clock,
    ids: house.ids,
  }
  await house.store.write(context, null, (rooms) => noteCode(context, rooms, sha256(code)))
  const address = pairingAddress(house.address(), code)
  console.log(`\nFor a phone on the same network, within ten minutes: ${address}\n\n${terminalQr(address)}`)
}

function stopOnSignal(app: FastifyInstance, store: Store): void {
  const stop = async () => {
    await app.close()
    await store.close()
    process.exit(0)
  }
  for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => void stop())
}

function refuse(found: Problem): void {
  console.error(found.sentence)
  process.exitCode = registry[found.code].exit
}
