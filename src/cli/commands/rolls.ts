import { all, ok, type Result } from '../../kernel/index.js'
import { pieceOf } from '../../lab/index.js'
import { type CountedPiece, type FilmCount, rollsOf } from '../../science/index.js'
import type { RollsAnswer, RollsQuestion } from '../../wire/index.js'
import { say, type Writer, writerFor } from '../../words/index.js'
import { tellWorked } from '../answer.js'
import { isJson, jsonIn } from '../asked.js'
import { filmIn, filmName } from '../baths/film.js'
import { cellsOf, listText, rowsOf } from '../lists.js'
import { type Common, type Output, refuse, unitsOf } from '../output.js'

/** Prints what film comes to in rolls, as a bath counts it. Film not named comes from standard input. */
export async function rolls(film: readonly string[], options: Common, output: Output): Promise<number> {
  const question = await asked(film)
  if (!question.ok) return refuse(output, question.problem, options)
  const count = rollsOf(question.value.film.map(pieceOf))
  if (!count.ok) return refuse(output, count.problem, options)
  const view = viewOf(count.value, writerFor(unitsOf(options)))
  return tellWorked(ok(view), options, output)
}

async function asked(film: readonly string[]): Promise<Result<RollsQuestion>> {
  if (film.length > 0 && film[0] !== '-') return listed(film)
  const text = await listText('-')
  if (!text.ok) return text
  return isJson(text.value)
    ? await jsonIn(text.value, 'the question', 'rolls-question')
    : listed(rowsOf(text.value).rows.flatMap(cellsOf))
}

function listed(texts: readonly string[]): Result<RollsQuestion> {
  const film = all(texts.map(filmIn))
  return film.ok ? ok({ film: film.value }) : film
}

function viewOf(count: FilmCount, writer: Writer): RollsAnswer {
  return {
    exact: count.exact,
    tally: count.tally,
    area_cm2: count.areaCm2,
    rolls_by_area: count.byArea,
    pieces: count.pieces.map(({ piece, each, rolls: whole, by, areaCm2 }) => ({
      name: filmName(piece),
      count: piece.count,
      rolls_each: each,
      rolls: whole,
      by,
      area_cm2: areaCm2,
    })),
    sentences: [say('film.count', count, writer)],
    working: [
      ...count.pieces.map((piece) => pieceLine(piece, writer)),
      { line: say('film.by-area', count, writer), source: say('film.source.sizes', {}, writer) },
    ],
  }
}

const pieceLine = ({ piece, each, rolls: whole, by }: CountedPiece, writer: Writer) => ({
  line: say('film.piece', { count: piece.count, name: filmName(piece), each, rolls: whole }, writer),
  source: say(`film.source.${by}`, {}, writer),
})
