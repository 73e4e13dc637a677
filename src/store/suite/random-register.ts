import { type SeededRandom, seconds } from '../../kernel/index.js'
import type { RollRegister } from '../../wire/index.js'

type Film = RollRegister['films'][number]
type Order = RollRegister['orders'][number]
type Roll = RollRegister['rolls'][number]
type Step = Roll['steps'][number]

/**
 * A register as docs/guide/rolls.md describes one, drawn at random: written from that page alone, before and apart from
 * what writes and reads registers. Its texts are what people and their programs put into fields, and worse.
 */
export function randomRegister(random: SeededRandom): RollRegister {
  const draw = new Draw(random)
  const films = draw.some(3, (i) => draw.film(i))
  const orders = draw.some(3, () => draw.order()).sort(byId)
  // Only films that a roll names belong to a register.
  const rolls = [...films.map((film) => film.statement.name), ...draw.some(3, () => draw.name())].map((name, i) =>
    draw.roll(name, i + 1, orders),
  )
  const counters = draw.counters(rolls)
  return {
    register: 'rolls',
    version: 1,
    pattern: draw.chance(0.5) ? null : draw.of(['{year}-{n4}', '{yy}/{n}', 'K{n6}']),
    counters,
    films: films.sort(byId),
    orders,
    rolls: rolls.sort((a, b) => a.year - b.year || a.n - b.n),
  }
}

const byId = (a: { id: string }, b: { id: string }) => (a.id < b.id ? -1 : 1)

const PIECES = [
  ',',
  ';',
  '"',
  '""',
  "'",
  "''",
  '\n',
  '\r\n',
  '\r',
  '\t',
  ' ',
  '  ',
  '=',
  '=1+1',
  '+',
  '-',
  '@',
  '＝',
  '|',
  '\\',
  '\\n',
  'null',
  'normal',
  '0',
  '007',
  '1e5',
  'TRUE',
  '2026-01-02',
  'film',
  'Zoë',
  'пленка',
  'שלום',
  'مرحبا',
  '現像',
  'ไทย',
  '🎞️',
  '\u200f',
  '\u00a0',
  '\u2028',
  '\ufeff',
  '{n}',
  '%',
  '_',
  '<b>',
  '--',
  '/*',
  "');",
]
const STATES = ['loaded', 'developed', 'hung', 'sleeved', 'scanned', 'handed-back', 'lost', 'ruined'] as const
const FORMATS = ['135', '120', '220', '127', '110', '4x5', '5x7', '8x10', '11x14', '9x12cm', '13x18cm'] as const
const PROCESSES = ['black-and-white', 'colour-negative', 'colour-reversal'] as const
const REMARKS = ['found', 'expired', 'infrared', 'carbon-backing', 'chromogenic'] as const
const DAYS = ['2026-01-31', '2024-02-29', '1999-12-31'] as const
const PARTIAL = ['1998', '2026-07', '2026-22', '2024-02-29'] as const

class Draw {
  constructor(private readonly random: SeededRandom) {}

  /** From 0 up to 1. */
  unit(): number {
    return [...this.random.bytes(6)].reduce((sum, byte) => sum * 256 + byte, 0) / 2 ** 48
  }
  upTo(most: number): number {
    return Math.floor(this.unit() * (most + 1))
  }
  chance(part: number): boolean {
    return this.unit() < part
  }
  of<T>(list: readonly T[]): T {
    return list[this.upTo(list.length - 1)] as T
  }
  some<T>(most: number, make: (i: number) => T): T[] {
    return Array.from({ length: this.upTo(most) }, (_, i) => make(i))
  }
  orNull<T>(make: () => T): T | null {
    return this.chance(0.4) ? null : make()
  }
  text(most: number): string {
    return this.some(6, () => this.of(PIECES)).reduce((text, piece) => {
      return text.length + piece.length > most ? text : text + piece
    }, '')
  }
  /** A name has no blanks around it and is never empty. */
  name(): string {
    return this.text(100).trim() || this.of(['Tarn 100', '=Tarn', "'Tarn'"])
  }
  id(): string {
    const hex = [...this.random.bytes(16)].map((byte) => byte.toString(16).padStart(2, '0')).join('')
    return `${hex.slice(0, 8)}-${hex.slice(8, 12)}-7${hex.slice(13, 16)}-a${hex.slice(17, 20)}-${hex.slice(20)}`
  }
  instant(): string {
    return new Date(
      Date.UTC(1990 + this.upTo(60), this.upTo(11), 1 + this.upTo(27)) + this.upTo(86_399_999),
    ).toISOString()
  }
  by(): string {
    return this.chance(0.5) ? 'owner' : this.id()
  }

  film(i: number): Film {
    return {
      id: this.id(),
      saved_at: this.instant(),
      saved_by: this.by(),
      statement: {
        // Names of films are all different, whatever their capitals.
        name: `${this.name()} ${i}`,
        process: this.of(PROCESSES),
        tolerance: this.chance(0.5)
          ? { in: 'percent', down: this.unit() * 50, up: this.upTo(100) }
          : { in: 'contrast', down: this.unit() / 2, up: 0 },
        ...(this.chance(0.5) ? {} : { strips: this.some(4, () => this.strip()) }),
        fixing: this.of(['ordinary', 'fast-using'] as const),
        remarks: this.remarks(),
        drying_s: this.orNull(() => 600 + this.unit() * 1000),
        keeping: this.text(300),
        note: this.text(300),
      },
    }
  }

  strip(): NonNullable<Film['statement']['strips']>[number] {
    return { time_s: seconds(60 + this.unit() * 1000), contrast: 0.1 + this.unit() }
  }

  order(): Order {
    return {
      id: this.id(),
      saved_at: this.instant(),
      saved_by: this.by(),
      statement: {
        person: this.name(),
        contact: this.text(200),
        counted_in: 1 + this.upTo(40),
        due: this.orNull(() => this.of(DAYS)),
        deposit: this.text(60),
        agreed_on_loss: this.text(300),
        note: this.text(300),
      },
      counted_out: this.orNull(() => ({ count: this.upTo(40), at: this.instant(), by: this.by() })),
    }
  }

  remarks(): (typeof REMARKS)[number][] {
    return REMARKS.filter(() => this.chance(0.3))
  }

  roll(film: string, n: number, orders: readonly Order[]): Roll {
    const year = this.of([0, 2025, 2026])
    const taken_in_at = this.instant()
    return {
      id: this.id(),
      // Told apart by its end, whatever the pattern before it was.
      number: `${this.text(20)}${year}/${n}`,
      year,
      n,
      twin: this.orNull(() => 1 + this.upTo(500)),
      order_id: orders.length === 0 ? null : this.orNull(() => this.of(orders).id),
      taken_in_at,
      taken_in_by: this.by(),
      statement: this.statement(film),
      steps: this.steps(Date.parse(taken_in_at)),
    }
  }

  statement(film: string): Roll['statement'] {
    return {
      film,
      process: this.of(PROCESSES),
      format: this.of(FORMATS),
      frames: this.orNull(() => this.of([1, 12, 24, 36, 37, 72])),
      sheets: 1 + this.upTo(30),
      whose: this.orNull(() => this.name()),
      exposure_index: this.orNull(() => this.of([1, 25, 400, 25_600])),
      treatment: this.of([
        { as: 'normal' } as const,
        { as: 'index', index: this.of([1, 800, 3200]) } as const,
        { as: 'contrast', contrast: 0.2 + this.unit() } as const,
      ]),
      exposed: this.orNull(() => this.of(PARTIAL)),
      expired_since: this.orNull(() => this.of(PARTIAL)),
      remarks: this.remarks(),
      due: this.orNull(() => this.of(DAYS)),
      note: this.text(300),
    }
  }

  /** Steps in the order of their instants, now and then one that takes an earlier one back. */
  steps(from: number): Step[] {
    const steps: Step[] = []
    let at = from
    for (let left = this.upTo(4); left > 0; left--) {
      at += 1 + this.upTo(9_999_999)
      const earlier = steps.filter((step) => step.state !== null && !steps.some(({ retracts }) => retracts === step.id))
      const back = earlier.length > 0 && this.chance(0.25)
      steps.push({
        id: this.id(),
        at: new Date(at).toISOString(),
        by: this.by(),
        state: back ? null : this.of(STATES),
        run_id: this.orNull(() => this.id()),
        hook: this.text(60),
        reason: this.text(200),
        batch_id: this.orNull(() => this.id()),
        retracts: back ? (earlier.at(-1)?.id ?? null) : null,
      })
    }
    return steps
  }

  /** Numbers that were given, and some that were only reserved. */
  counters(rolls: readonly Roll[]): RollRegister['counters'] {
    const years = [...new Set(rolls.map(({ year }) => year))].sort((a, b) => a - b)
    const last = (numbers: readonly number[]) => Math.max(...numbers) + this.upTo(3)
    const twins = rolls.flatMap(({ twin }) => twin ?? [])
    return [
      ...years.map((year) => ({
        kind: 'roll' as const,
        year,
        last: last(rolls.filter((roll) => roll.year === year).map(({ n }) => n)),
      })),
      ...(twins.length === 0 ? [] : [{ kind: 'twin' as const, year: 0, last: last(twins) }]),
    ]
  }
}
