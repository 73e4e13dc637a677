import { instantText } from '../../../src/kernel/index.js'
import {
  addOrder,
  type Context,
  correctRoll,
  handBack,
  moveRolls,
  type RollState,
  type Rooms,
  removeOrder,
  takeInRolls,
  undoBatch,
  undoRoll,
} from '../../../src/lab/index.js'
import type { RollStatement } from '../../../src/wire/index.js'
import { DAYS, evening } from '../calendar.js'
import { Chance } from '../chance.js'
import type { Darkroom, Episode } from '../darkroom.js'
import { GROUPS, IN_A_GROUP, planGroups, type RollGroup } from '../roll-groups.js'
import { WRONG_ROLLS } from '../roll-mistakes.js'

/**
 * Six hundred rolls in a hundred groups of six, half of them of other people with an order for each. What goes wrong:
 *
 * - every fifth group, typing it in: frames of roll film, cassettes as sheets, a push to its own index, chromogenic
 *   film as black-and-white; refused, and none of the six is taken in;
 * - every tenth, a film's name misread: noticed and corrected days later on groups 10, 30, …, never on 0, 20, …;
 * - every twelfth, a step noted for the wrong group and taken back, once too late, when one of the rolls had gone on;
 * - group 3, 23, …: a roll ruined, at first without a reason; then somebody notes one more step for it;
 * - group 6, 26, …: a step backwards, one tomorrow, and one before the last;
 * - group 7, 27, …: an order counted out while rolls of it are in a tank, then with one roll too few, then rightly, and
 *   then once more; and somebody tries to remove an order that has rolls;
 * - group 8, 28, …: two people correct one roll at once, and an Undo where nothing was corrected;
 * - group 9, 29, …: a roll lost for good.
 *
 * The last two groups stay as they were taken in, the two before in their tanks.
 */
export function handingOver(seed: number): readonly Episode[] {
  const groups = planGroups(new Chance(seed, 4))
  return groups.flatMap((group) => {
    const day = 2 + Math.floor(((DAYS - 40) * group.number) / GROUPS)
    const rolls = new Rolls(group)
    const after = (days: number, happens: (darkroom: Darkroom) => Promise<void>): Episode => ({
      at: evening(day + days, 30),
      happens,
    })
    const left = GROUPS - group.number
    return [
      after(0, (darkroom) => rolls.comeIn(darkroom)),
      ...(left > 2 ? [after(3, (darkroom) => rolls.areLoaded(darkroom))] : []),
      ...(left > 4
        ? [after(4, (darkroom) => rolls.areDone(darkroom)), after(9, (darkroom) => rolls.leave(darkroom))]
        : []),
    ]
  })
}

/** One group on its way, as those who work with it know it. */
class Rolls {
  private ids: string[] = []
  private orderId: string | null = null
  /** Rolls that went astray: not moved with the others any more. */
  private readonly gone = new Set<string>()
  /** The one that went on before the others. */
  private early: string | null = null

  constructor(private readonly group: RollGroup) {}

  private turn(every: number, at: number): boolean {
    return this.group.number % every === at
  }
  private get first(): string {
    return this.ids[0] as string
  }
  private get here(): string[] {
    return this.ids.filter((id) => !this.gone.has(id))
  }

  async comeIn(darkroom: Darkroom): Promise<void> {
    const { person, number, statements } = this.group
    if (person !== null) {
      const order = {
        person,
        contact: '',
        counted_in: IN_A_GROUP,
        due: null,
        deposit: '',
        agreed_on_loss: '',
        note: '',
      }
      const kept = await darkroom.does(`notes an order of ${person}`, (context, rooms) =>
        addOrder(context, rooms, order),
      )
      this.orderId = kept.id
    }
    const typed = this.turn(10, 0)
      ? statements.map((one, place) => (place === 0 ? { ...one, film: 'Tam 100' } : one))
      : statements
    if (this.turn(5, 4)) {
      const { what, code, of } = WRONG_ROLLS[
        Math.floor(number / 5) % WRONG_ROLLS.length
      ] as (typeof WRONG_ROLLS)[number]
      const wrong = typed.map((one, place) => (place === IN_A_GROUP - 1 ? of(one) : one))
      await darkroom.isRefused(what, code, this.takingIn(wrong))
    }
    const { rolls } = await darkroom.does(
      `takes in ${IN_A_GROUP} rolls of ${person ?? 'the house'}`,
      this.takingIn(typed),
    )
    this.ids = rolls.map(({ id }) => id)
  }

  private takingIn(statements: readonly RollStatement[]) {
    const rolls = statements.map((statement) => ({ statement, number: null }))
    return (context: Context, rooms: Rooms) => takeInRolls(context, rooms, { order_id: this.orderId, rolls })
  }

  private moving(ids: readonly string[], state: RollState, more: { reason?: string; at?: string } = {}) {
    const asked = { roll_ids: [...ids], state, run_id: null, hook: '', reason: more.reason ?? '', at: more.at ?? null }
    return (context: Context, rooms: Rooms) => moveRolls(context, rooms, asked)
  }

  async areLoaded(darkroom: Darkroom): Promise<void> {
    const { batch_id } = await darkroom.does('loads a group', this.moving(this.here, 'loaded'))
    if (this.turn(12, 5)) {
      await darkroom.does('takes the loading back: it was another group', (context, rooms) =>
        undoBatch(context, rooms, batch_id),
      )
      await darkroom.does('loads the group after all', this.moving(this.here, 'loaded'))
    }
    if (this.turn(20, 7) && this.orderId !== null) {
      const id = this.orderId
      await darkroom.isRefused('hands an order back that is in a tank', 'order.not-developed', (context, rooms) =>
        handBack(context, rooms, id, IN_A_GROUP),
      )
      await darkroom.isRefused('removes an order with its rolls', 'order.has-rolls', (context, rooms) =>
        removeOrder(context, rooms, id, 1),
      )
    }
  }

  async areDone(darkroom: Darkroom): Promise<void> {
    if (this.turn(20, 9)) {
      await darkroom.does(
        'cannot find a roll any more',
        this.moving([this.first], 'lost', { reason: 'Not in the drawer.' }),
      )
      this.gone.add(this.first)
    }
    if (this.turn(20, 3)) await this.oneIsRuined(darkroom)
    const { batch_id } = await darkroom.does('develops a group', this.moving(this.here, 'developed'))
    if (this.turn(20, 6)) await this.stepsThatCannotBe(darkroom)
    if (this.turn(12, 11)) {
      this.early = this.here[0] as string
      await darkroom.does('sleeves one roll of a group', this.moving([this.early], 'sleeved'))
      await darkroom.isRefused('takes the developing back, too late', 'roll.went-on', (context, rooms) =>
        undoBatch(context, rooms, batch_id),
      )
    }
    if (this.turn(20, 8)) await this.twoCorrectAtOnce(darkroom)
    if (this.turn(20, 10)) await this.corrects(darkroom, 1)
  }

  private async oneIsRuined(darkroom: Darkroom): Promise<void> {
    const ruined = [this.first]
    await darkroom.isRefused('ruins a roll without a word', 'roll.reason-missing', this.moving(ruined, 'ruined'))
    await darkroom.does(
      'says why a roll is ruined',
      this.moving(ruined, 'ruined', { reason: 'Fixer before developer.' }),
    )
    await darkroom.isRefused('hangs a ruined roll', 'roll.ended', this.moving(ruined, 'hung'))
    this.gone.add(this.first)
  }

  private async stepsThatCannotBe(darkroom: Darkroom): Promise<void> {
    const at = (days: number) => instantText(darkroom.clock.now() + days * 86_400_000)
    await darkroom.isRefused('loads a developed roll', 'roll.not-forwards', this.moving([this.first], 'loaded'))
    await darkroom.isRefused(
      'hangs a roll tomorrow',
      'roll.step-in-future',
      this.moving([this.first], 'hung', { at: at(1) }),
    )
    await darkroom.isRefused(
      'hangs a roll last month',
      'roll.step-before-last',
      this.moving([this.first], 'hung', { at: at(-30) }),
    )
  }

  private async twoCorrectAtOnce(darkroom: Darkroom): Promise<void> {
    const id = this.ids[1] as string
    await darkroom.isRefused('takes a correction back that nobody made', 'roll.nothing-to-undo', (context, rooms) =>
      undoRoll(context, rooms, id, 1),
    )
    await this.corrects(darkroom, 1, 1)
    const again = this.corrected(1)
    await darkroom.isRefused(
      'corrects a roll that a colleague just corrected',
      'record.changed-meanwhile',
      (context, rooms) => correctRoll(context, rooms, id, 1, again),
    )
  }

  private corrected(place: number): RollStatement {
    return { ...(this.group.statements[place] as RollStatement), note: 'Read once more from the cassette.' }
  }

  private async corrects(darkroom: Darkroom, seen: number, place = 0): Promise<void> {
    const id = this.ids[place] as string
    await darkroom.does('corrects what was misread on a cassette', (context, rooms) =>
      correctRoll(context, rooms, id, seen, this.corrected(place)),
    )
  }

  async leave(darkroom: Darkroom): Promise<void> {
    const waiting = this.here.filter((id) => id !== this.early)
    await darkroom.does('sleeves a group', this.moving(waiting, 'sleeved'))
    const id = this.orderId
    if (id === null) return
    const count = this.here.length
    if (this.turn(20, 7))
      await darkroom.isRefused('counts one roll too few', 'order.count-mismatch', (context, rooms) =>
        handBack(context, rooms, id, count - 1),
      )
    await darkroom.does('hands an order back', (context, rooms) => handBack(context, rooms, id, count))
    if (this.turn(20, 7))
      await darkroom.isRefused('hands it back again', 'order.nothing-here', (context, rooms) =>
        handBack(context, rooms, id, count),
      )
  }
}
