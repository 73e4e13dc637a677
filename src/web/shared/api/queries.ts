import { keepPreviousData, type QueryClient, useMutation, useQuery, useQueryClient } from '@tanstack/react-query'
import * as client from './client.js'

/** What is kept in the page, by the kind that the live feed names. */
export const KINDS = [
  'times',
  'thermometers',
  'bench',
  'devices',
  'runs',
  'recipes',
  'rolls',
  'orders',
  'films',
  'vessels',
  'products',
  'shelf',
] as const
export type Kind = (typeof KINDS)[number]

/** States in which a roll is on the bench. */
export const ROLLS_HERE = ['taken-in', 'loaded', 'developed', 'hung', 'sleeved', 'scanned'] as const

export const useBench = () => useQuery({ queryKey: ['bench'], queryFn: client.getBench })
export const useToday = () => useQuery({ queryKey: ['today'], queryFn: client.today })
export const useTimes = () => useQuery({ queryKey: ['times'], queryFn: client.listTimes, select: ({ times }) => times })
/** One time, also when it was removed and the list has it no more. */
export const useTime = (id: string) => useQuery({ queryKey: ['times', id], queryFn: () => client.getTime(id) })
export const useThermometers = () =>
  useQuery({
    queryKey: ['thermometers'],
    queryFn: client.listThermometers,
    select: ({ thermometers }) => thermometers,
  })
export const useDevices = () =>
  useQuery({ queryKey: ['devices'], queryFn: client.listDevices, select: ({ devices }) => devices })

export const useRecipes = () =>
  useQuery({ queryKey: ['recipes'], queryFn: client.listRecipes, select: ({ recipes }) => recipes })
export const useRuns = (query: client.ListRunsQuery) =>
  useQuery({ queryKey: ['runs', query], queryFn: () => client.listRuns(query) })
export const useRun = (id: string) => useQuery({ queryKey: ['runs', id], queryFn: () => client.getRun(id) })

/** Rolls as they are looked for, a page of the list at a time. */
export const useRolls = (asked: client.FindRollsInput) =>
  useQuery({
    queryKey: ['rolls', 'found', asked],
    queryFn: () => client.findRolls(asked),
    placeholderData: keepPreviousData,
  })
/** How many rolls are on the bench: neither handed back nor gone. */
export const useRollsHere = () =>
  useQuery({
    queryKey: ['rolls', 'here'],
    queryFn: () => client.findRolls({ look: { state: [...ROLLS_HERE] }, most: 1 }),
    select: ({ found }) => found,
  })
export const useRoll = (id: string) => useQuery({ queryKey: ['rolls', id], queryFn: () => client.getRoll(id) })
export const useRollViews = () =>
  useQuery({ queryKey: ['rolls', 'views'], queryFn: client.listViews, select: ({ views }) => views })
/** Rolls that wait for a tank, by any word of theirs; nothing is asked for until there is a word. */
export const useWaitingRolls = (words: string) =>
  useQuery({
    queryKey: ['rolls', 'waiting', words],
    queryFn: () => client.findRolls({ look: { words, state: ['taken-in'] }, most: 20 }),
    enabled: words !== '',
    placeholderData: (before) => before,
  })

/** Makes the page look again at what changed; Today tells of everything. */
export async function refresh(queries: QueryClient, kinds: readonly Kind[]): Promise<void> {
  // What is done to a roll shows on the order that it belongs to, what is said of a product on the bottles.
  const beside = [
    'today',
    ...(kinds.includes('rolls') ? ['orders'] : []),
    ...(kinds.includes('products') ? ['shelf'] : []),
  ]
  const changed = new Set([...(kinds.includes('bench') ? KINDS : kinds), ...beside])
  await Promise.all([...changed].map((kind) => lookAgain(queries, kind)))
}

/**
 * A first look that is under way may have been answered before the change, and the library would take that answer
 * for the new one: it is broken off, so that the look that follows is a fresh one.
 */
async function lookAgain(queries: QueryClient, kind: string): Promise<void> {
  await queries.cancelQueries({ queryKey: [kind], predicate: ({ state }) => state.data === undefined })
  await queries.invalidateQueries({ queryKey: [kind] })
}

interface Afterwards<R> {
  readonly onSuccess?: (answer: R) => unknown
  readonly onError?: (fault: Error) => unknown
}

/** A write, after which the page looks again at what it changed. */
export function useWrite<A, R>(work: (args: A) => Promise<R>, ...kinds: Kind[]) {
  const queries = useQueryClient()
  const { mutateAsync, ...state } = useMutation({
    mutationFn: work,
    onSuccess: () => void refresh(queries, kinds),
  })
  // What is to be done afterwards is done even when the live feed has already taken this part of the page away.
  const mutate = (args: A, { onSuccess, onError }: Afterwards<R> = {}) =>
    void mutateAsync(args).then(onSuccess, onError ?? (() => undefined))
  return { ...state, mutateAsync, mutate }
}
