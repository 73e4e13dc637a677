import { useQuery } from '@tanstack/react-query'
import { type Known, knownOf } from '../../../../planning/index.js'
import { useTodayHere } from '../../../shared/api/index.js'
import { listFilms } from '../../../shared/desk/index.js'

/** What the bench knows beside what is typed: the day, and the chemistry of the films it keeps. */
export function useKnown(): Known & { films: readonly string[] } {
  const today = useTodayHere()
  const films = useQuery({ queryKey: ['rolls', 'films'], queryFn: listFilms }).data?.films ?? []
  const standing = films.filter(({ removed }) => !removed)
  return {
    ...knownOf(today, standing),
    films: standing.map(({ name }) => name),
  }
}
