import { ok, type Result } from '../../kernel/index.js'
import {
  correctFilm,
  correctVessel,
  keepFilm,
  keepVessel,
  listFilms,
  listVessels,
  removeFilm,
  removeVessel,
  type Stated,
  undoFilm,
  undoVessel,
  viewOfFilm,
  viewOfVessel,
} from '../../lab/index.js'
import type { FilmStatement, VesselStatement } from '../../wire/index.js'
import { type Handlers, read, write } from '../call.js'

type Names =
  | 'listFilms'
  | 'keepFilm'
  | 'correctFilm'
  | 'removeFilm'
  | 'undoFilm'
  | 'listVessels'
  | 'keepVessel'
  | 'correctVessel'
  | 'removeVessel'
  | 'undoVessel'

const film = async (done: Promise<Result<Stated<FilmStatement>>>) => {
  const kept = await done
  return kept.ok ? ok(viewOfFilm(kept.value)) : kept
}
const vessel = async (done: Promise<Result<Stated<VesselStatement>>>) => {
  const kept = await done
  return kept.ok ? ok(viewOfVessel(kept.value)) : kept
}

/** Films, tanks, reels and graduates: all records that are what was stated of them. */
export const filmHandlers: Handlers<Names> = {
  listFilms: async (call) => ok(await read(call, listFilms)),
  keepFilm: (call) => write(call, (context, rooms) => film(keepFilm(context, rooms, call.body))),
  correctFilm: ({ params, body, ...call }) =>
    write(call, (context, rooms) => film(correctFilm(context, rooms, params.id, body.seen_revision, body.statement))),
  removeFilm: ({ params, body, ...call }) =>
    write(call, (context, rooms) => film(removeFilm(context, rooms, params.id, body.seen_revision))),
  undoFilm: ({ params, body, ...call }) =>
    write(call, (context, rooms) => film(undoFilm(context, rooms, params.id, body.seen_revision))),
  listVessels: async (call) => ok(await read(call, listVessels)),
  keepVessel: (call) => write(call, (context, rooms) => vessel(keepVessel(context, rooms, call.body.statement))),
  correctVessel: ({ params, body, ...call }) =>
    write(call, (context, rooms) =>
      vessel(correctVessel(context, rooms, params.id, body.seen_revision, body.statement)),
    ),
  removeVessel: ({ params, body, ...call }) =>
    write(call, (context, rooms) => vessel(removeVessel(context, rooms, params.id, body.seen_revision))),
  undoVessel: ({ params, body, ...call }) =>
    write(call, (context, rooms) => vessel(undoVessel(context, rooms, params.id, body.seen_revision))),
}
