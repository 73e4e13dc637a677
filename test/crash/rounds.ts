import type { SeededRandom } from '../../src/kernel/index.js'
import { type Ask, type Sent, send } from './asking.js'
import { halfWrites } from './data.js'
import type { Driver } from './drivers.js'
import type { House } from './house.js'

/** The kill comes at a random moment up to this long after the first answer … */
const LATEST_KILL_MS = 60
/** … or, this often, after the first request went out. */
const BEFORE_ANY_ANSWER = 0.2
/** Of the acknowledged requests so many are sent again; those without an answer all are. */
const SENT_AGAIN = 12

export interface Outcome {
  readonly complaints: string[]
  readonly acknowledged: number
  readonly cutOff: number
}

/** Drives one route into a kill, starts again, and says what is lost, half or double. The house is up before and after. */
export async function killDuring(house: House, driver: Driver, random: SeededRandom): Promise<Outcome> {
  const nextAsk = await driver.prepare(house.url, driver.lanes)
  const sent = await sendUntilKilled(house, driver, nextAsk, random)
  const complaints = sent
    .filter(isRefused)
    .map((one) => `${saying(one)}: ${one.answer?.status} ${one.answer?.text.slice(0, 300)} ${house.complained}`)
  const left = await house.data()
  complaints.push(...halfWrites(left), ...(driver.state?.(left, sent) ?? []))
  for (const one of sent) {
    const effects = driver.effects(left, one)
    const right = one.answer ? effects === 1 : effects === 0 || effects === 1
    if (!right) complaints.push(`${saying(one)}: found ${effects} times after the kill`)
  }
  await house.start()
  if (driver.keyed) complaints.push(...(await sendAgain(house, driver, sent, random)))
  const acknowledged = sent.filter((one) => one.answer).length
  return { complaints, acknowledged, cutOff: sent.length - acknowledged }
}

const isRefused = (one: Sent): boolean => one.answer !== undefined && one.answer.status !== 200
const saying = (one: Sent): string =>
  `${one.method} ${one.path} ${one.marker} (${one.answer ? 'acknowledged' : 'cut off'})`

async function sendUntilKilled(
  house: House,
  driver: Driver,
  nextAsk: (lane: number, n: number) => Ask | null,
  random: SeededRandom,
): Promise<Sent[]> {
  const sent: Sent[] = []
  let answered = () => {}
  const firstAnswer = new Promise<void>((resolve) => {
    answered = resolve
  })
  const lane = async (number: number) => {
    for (let n = 0; ; n++) {
      const asked = nextAsk(number, n)
      if (!asked) return
      const one: Sent = { ...asked }
      sent.push(one)
      const answer = await send(house.url, one)
      if (!answer) return
      one.answer = answer
      answered()
    }
  }
  const lanes = Array.from({ length: driver.lanes }, (_, number) => lane(number))
  if (random.unit() >= BEFORE_ANY_ANSWER) await Promise.race([firstAnswer, ...lanes])
  await new Promise((resolve) => setTimeout(resolve, random.unit() * LATEST_KILL_MS))
  await house.kill()
  await Promise.all(lanes)
  return sent
}

/** The same keys again, as a phone does when it has found its way back: each request is done once in the end. */
async function sendAgain(house: House, driver: Driver, sent: readonly Sent[], random: SeededRandom): Promise<string[]> {
  const complaints: string[] = []
  const acknowledged = sent.filter((one) => one.answer)
  const from = Math.floor(random.unit() * Math.max(1, acknowledged.length - SENT_AGAIN))
  for (const one of acknowledged.slice(from, from + SENT_AGAIN)) {
    const again = await send(house.url, one)
    if (again?.status !== one.answer?.status || again?.text !== one.answer?.text)
      complaints.push(`${saying(one)}: the answer to the same key was ${again?.status} ${again?.text.slice(0, 200)}`)
  }
  for (const one of sent.filter((each) => !each.answer)) {
    const again = await send(house.url, one)
    if (again?.status !== 200)
      complaints.push(`${saying(one)}: sent again it got ${again?.status} ${again?.text.slice(0, 200)}`)
  }
  const data = await house.data()
  for (const one of sent) {
    const effects = driver.effects(data, one)
    if (effects !== 1) complaints.push(`${saying(one)}: found ${effects} times after it was sent again`)
  }
  return [...complaints, ...halfWrites(data)]
}
