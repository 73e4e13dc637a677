import { type Millilitres, ok, type Result } from '../../kernel/index.js'
import { afterRolls, balanceOf, plateau, type Replenished, rollsToPlateau } from '../../science/index.js'
import type { ReplenishAnswer, ReplenishQuestion } from '../../wire/index.js'
import { say, type WorkingLine, type Writer } from '../../words/index.js'

type Bath = NonNullable<ReplenishQuestion['bath']>
type BathBody = NonNullable<ReplenishAnswer['bath']>
type BookBody = NonNullable<ReplenishAnswer['book']>

/** Where a replenished bath settles and what its book says, with sentences and working. */
export function replenishView({ bath, book }: ReplenishQuestion, writer: Writer): Result<ReplenishAnswer> {
  const settled = bath === undefined ? ok(null) : bathBody(bath)
  if (!settled.ok) return settled
  const held = book === undefined ? ok(null) : bookBody(book)
  if (!held.ok) return held
  return ok({
    bath: settled.value,
    book: held.value,
    sentences: [
      ...(bath && settled.value ? bathSentences(bath, settled.value, writer) : []),
      ...(held.value ? [bookSentence(held.value, writer)] : []),
    ],
    working: bath ? bathWorking(bath, writer) : [],
  })
}

const replenished = (bath: Bath): Replenished => ({
  volume: bath.volume_ml as Millilitres,
  rate: bath.rate_ml as Millilitres,
  perRoll: bath.per_roll_g,
  replenisher: bath.replenisher_g_per_l,
  start: bath.start_g_per_l,
})

function bathBody(asked: Bath): Result<BathBody> {
  const bath = replenished(asked)
  const end = plateau(bath)
  if (!end.ok) return end
  const way = rollsToPlateau(bath, asked.within)
  if (!way.ok) return way
  const after = asked.rolls === undefined ? ok(null) : afterRolls(bath, asked.rolls)
  if (!after.ok) return after
  return ok({
    before_topping_g_per_l: end.value.beforeTopping,
    after_topping_g_per_l: end.value.afterTopping,
    rolls_to_plateau: way.value,
    after_rolls_g_per_l: after.value,
  })
}

function bookBody({ start_ml, entries }: NonNullable<ReplenishQuestion['book']>): Result<BookBody> {
  const found = balanceOf(
    start_ml as Millilitres,
    entries.map(({ added_ml, discarded_ml, carried_out_ml }) => ({
      added: added_ml as Millilitres,
      discarded: discarded_ml as Millilitres,
      carriedOut: carried_out_ml as Millilitres,
    })),
  )
  if (!found.ok) return found
  const { volume, added, discarded, carriedOut } = found.value
  return ok({ volume_ml: volume, added_ml: added, discarded_ml: discarded, carried_out_ml: carriedOut })
}

function bathSentences({ rolls, within }: Bath, body: BathBody, writer: Writer): string[] {
  const { before_topping_g_per_l: before, after_topping_g_per_l: after, after_rolls_g_per_l: strength } = body
  return [
    say('replenish.settles', { before, after }, writer),
    say('replenish.way', { rolls: body.rolls_to_plateau, part: within }, writer),
    ...(rolls === undefined || strength === null ? [] : [say('replenish.after', { rolls, strength }, writer)]),
  ]
}

const bookSentence = (book: BookBody, writer: Writer): string =>
  say(
    'replenish.book',
    {
      volume: book.volume_ml as Millilitres,
      added: book.added_ml as Millilitres,
      discarded: book.discarded_ml as Millilitres,
      carriedOut: book.carried_out_ml as Millilitres,
    },
    writer,
  )

function bathWorking(bath: Bath, writer: Writer): WorkingLine[] {
  const { per_roll_g: perRoll, volume_ml: volume, rate_ml: rate, replenisher_g_per_l: replenisher } = bath
  const share = (perRoll * 1000) / rate
  return [
    {
      line: say('replenish.working.step', { perRoll, strength: (Math.abs(perRoll) * 1000) / volume }, writer),
      source: say('replenish.source.step', {}, writer),
    },
    {
      line: say('replenish.working.kept', { kept: 1 - rate / volume }, writer),
      source: say('replenish.source.kept', {}, writer),
    },
    {
      line: say('replenish.working.plateau', { replenisher, share, before: replenisher + share }, writer),
      source: say('replenish.source.plateau', {}, writer),
    },
  ]
}
