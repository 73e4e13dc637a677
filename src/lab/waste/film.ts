import type { FilmFormat, FilmPiece } from '../../science/index.js'
import type { RollsQuestion } from '../../wire/index.js'

/** Asked film as the science takes it; a format that it does not know is its to refuse. */
export const pieceOf = ({ format, frames, count }: RollsQuestion['film'][number]): FilmPiece => ({
  format: format as FilmFormat,
  count,
  ...(frames === undefined ? {} : { frames }),
})
