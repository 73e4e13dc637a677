import { keepPreviousData, useQuery } from '@tanstack/react-query'
import type { FindLotsInput } from '../api/index.js'
import * as client from './client.js'

/** Bottles, packages and jugs with what is in them. */
export const useShelf = () => useQuery({ queryKey: ['shelf', 'all'], queryFn: client.shelf })
export const useProducts = () =>
  useQuery({ queryKey: ['products'], queryFn: client.listProducts, select: ({ products }) => products })
export const useStartingProducts = () =>
  useQuery({
    queryKey: ['starting-products'],
    queryFn: client.startingProducts,
    select: ({ products }) => products,
    staleTime: Number.POSITIVE_INFINITY,
  })
export const useLot = (id: string) => useQuery({ queryKey: ['shelf', 'lot', id], queryFn: () => client.getLot(id) })
export const useLotByCode = (code: string) =>
  useQuery({ queryKey: ['shelf', 'code', code], queryFn: () => client.lotByCode({ code }) })
/** Lots of all times as they are looked for, a page at a time. */
export const useLots = (asked: FindLotsInput) =>
  useQuery({
    queryKey: ['shelf', 'lots', asked],
    queryFn: () => client.findLots(asked),
    placeholderData: keepPreviousData,
  })

export const useOrders = () =>
  useQuery({ queryKey: ['orders'], queryFn: client.listOrders, select: ({ orders }) => orders })
export const useOrder = (id: string) => useQuery({ queryKey: ['orders', id], queryFn: () => client.getOrder(id) })
export const useFilms = () => useQuery({ queryKey: ['films'], queryFn: client.listFilms, select: ({ films }) => films })
export const useVessels = () =>
  useQuery({ queryKey: ['vessels'], queryFn: client.listVessels, select: ({ vessels }) => vessels })
