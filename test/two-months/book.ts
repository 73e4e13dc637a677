// The second book: see README.md. It shares no code with the program.

export interface Film {
  readonly format: string
  readonly frames?: number
  readonly count?: number
  readonly family?: 'ordinary' | 'tabular' | 'high-iodide'
}

const SQUARE_INCHES: Readonly<Record<string, number>> = {
  '135': 80,
  '120': 80,
  '220': 160,
  '4x5': 20,
  '5x7': 35,
  '8x10': 80,
}

export function rollsIn(film: readonly Film[], fast = 1): number {
  let inches = 0
  for (const { format, frames = 36, count = 1, family = 'ordinary' } of film) {
    const one = (SQUARE_INCHES[format] as number) * (format === '135' ? frames / 36 : 1)
    inches += (one * count) / (family === 'ordinary' ? 1 : fast)
  }
  return inches / 80
}

export interface Kind {
  readonly rollsPerLitre?: number
  readonly silverLimit?: number
  readonly keeps: { readonly full: number; readonly half: number }
  readonly replenish?: number
}

/** 20 mL a roll of a first bath that holds the silver of 10 rolls a litre on the average. */
const SECOND = 0.02 * 10

interface Tank {
  readonly day: number
  readonly rolls: number
  readonly poured: number
  readonly lost: number
}

/** A bath in a stoppered bottle. */
export class Bath {
  rolls = 0
  counted = 0
  added = 0
  aged = 0
  readonly tanks: Tank[] = []
  readonly tests: { rolls: number; seconds: number }[] = []
  filled: number
  station: 'first' | 'second' = 'first'
  readonly since: number
  private seen: number

  constructor(
    readonly kind: Kind,
    readonly holds: number,
    public ml: number,
    day: number,
  ) {
    this.filled = ml
    this.since = day
    this.seen = day
  }

  /** Lets it stand until that day. */
  stand(day: number): void {
    const { full, half } = this.kind.keeps
    this.aged += (day - this.seen) / (this.isFull ? full : half)
    this.seen = day
  }

  get isFull(): boolean {
    return this.ml >= 0.9 * this.holds
  }

  develop(day: number, film: readonly Film[], poured: number, fast = 1): void {
    this.stand(day)
    const rolls = rollsIn(film)
    const lost = Math.min(poured, 20 * rolls)
    this.tanks.push({ day, rolls, poured, lost })
    const part = this.station === 'second' ? SECOND : 1
    this.rolls += rolls * part
    this.counted += rollsIn(film, fast) * part
    this.ml -= lost
  }

  topUp(day: number, ml: number): void {
    this.stand(day)
    this.ml += ml
    this.filled += ml
    this.added += ml
  }

  takeOut(day: number, ml: number): { ml: number; rolls: number } {
    this.stand(day)
    const part = ml / this.ml
    const out = { ml, rolls: this.rolls * part }
    this.ml -= ml
    this.rolls -= out.rolls
    this.filled -= this.filled * part
    this.counted -= this.counted * part
    return out
  }

  test(seconds: number): void {
    this.tests.push({ rolls: this.rolls, seconds })
  }

  get due(): number | null {
    if (this.kind.replenish === undefined) return null
    const met = this.tanks.reduce((sum, { rolls }) => sum + rolls, 0)
    return Math.max(0, this.kind.replenish * met - this.added)
  }

  get byCount(): number | null {
    return this.kind.rollsPerLitre === undefined
      ? null
      : Math.max(0, (this.kind.rollsPerLitre * this.filled) / 1000 - this.counted)
  }

  get silver(): number {
    return (silverOf(this.rolls).usual * 1000) / this.filled
  }

  get bySilver(): number | null {
    if (this.kind.silverLimit === undefined) return null
    return Math.max(0, ((this.kind.silverLimit * this.filled) / 1000 - silverOf(this.rolls).usual) / silverOf(1).usual)
  }

  /** Where the line through the tests comes to twice the first of them. */
  get byTests(): number | null {
    const [fresh] = this.tests
    if (fresh === undefined || this.tests.length < 2) return null
    const n = this.tests.length
    const meanX = this.tests.reduce((sum, { rolls }) => sum + rolls, 0) / n
    const meanY = this.tests.reduce((sum, { seconds }) => sum + seconds, 0) / n
    let [up, across] = [0, 0]
    for (const { rolls, seconds } of this.tests) {
      up += (rolls - meanX) * (seconds - meanY)
      across += (rolls - meanX) ** 2
    }
    if (across === 0 || up <= 0) return null
    const crossing = meanX + (2 * fresh.seconds - meanY) / (up / across)
    const last = this.tests[n - 1] as { rolls: number; seconds: number }
    const end = last.seconds >= 2 * fresh.seconds ? Math.min(last.rolls, crossing) : crossing
    return Math.max(0, end - this.rolls)
  }

  /** Tanks as the last one are filled until the bottle no longer fills one. */
  get byVolume(): number | null {
    const last = this.tanks.findLast(({ rolls }) => rolls >= 1)
    if (last === undefined) return null
    let [ml, rolls] = [this.ml, 0]
    while (ml >= last.poured - 1e-9 && rolls < 10_000) {
      rolls += Math.floor(last.rolls)
      ml -= last.lost
    }
    return rolls
  }

  get daysLeft(): number {
    const { full, half } = this.kind.keeps
    return Math.max(0, (1 - this.aged) * (this.isFull ? full : half))
  }

  /** Rolls a week. */
  pace(day: number): number | null {
    const rolls = this.tanks.reduce((sum, tank) => sum + tank.rolls, 0)
    return rolls === 0 ? null : (rolls / Math.max(7, day - this.since)) * 7
  }
}

const ROLL_M2 = 80 * 0.0254 * 0.0254
export const silverOf = (rolls: number) => ({
  low: rolls * ROLL_M2 * 3 * 0.5,
  usual: rolls * ROLL_M2 * 5 * 0.6,
  high: rolls * ROLL_M2 * 8 * 0.8,
})
