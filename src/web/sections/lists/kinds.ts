import type { ActKind, BathKind, Process } from '../../../score/index.js'
import type { RecipeRecord } from '../../shared/api/index.js'

type Origin = 'measured' | 'sheet' | 'law' | 'practice' | 'assumption'

/** What a step does to the film, as people say it; also the name of a fresh one. */
export const KIND_NAMES: Readonly<Record<BathKind | ActKind, string>> = {
  'pre-wet': 'Water before the developer',
  developer: 'Developer',
  'single-bath': 'Single bath',
  'bath-a': 'Bath A of two',
  'bath-b': 'Bath B of two',
  'first-developer': 'First developer',
  'colour-developer': 'Colour developer',
  'second-developer': 'Second developer',
  stop: 'Stop',
  rinse: 'Rinse',
  reversal: 'Reversal bath',
  'pre-bleach': 'Pre-bleach',
  bleach: 'Bleach',
  clear: 'Clearing bath',
  fix: 'Fix',
  'wash-aid': 'Wash aid',
  wash: 'Wash',
  wetting: 'Wetting agent',
  'lid-off': 'Lid off',
  look: 'Look for clearing',
  squeeze: 'Wipe or let run off',
  're-expose': 'Re-expose',
  'hang-up': 'Hang up',
}

export const PROCESSES: readonly (readonly [Process, string])[] = [
  ['black-and-white', 'black-and-white negative'],
  ['black-and-white-reversal', 'black-and-white slides'],
  ['colour-negative', 'colour negative'],
  ['colour-reversal', 'colour slides'],
]

export const ORIGINS: readonly (readonly [Origin, string])[] = [
  ['measured', 'measured at this bench'],
  ['sheet', 'a sheet or manual'],
  ['law', 'a published law'],
  ['practice', 'common practice'],
  ['assumption', 'an assumption'],
]

export const addressOf = ({ id }: Pick<RecipeRecord, 'id'>): string => `/runs/lists/${id}`
