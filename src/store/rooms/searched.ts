import { type RawBuilder, sql } from 'kysely'
import { nameKey } from '../../kernel/index.js'

/** That the column of what is searched holds each of these words as it stands, signs that LIKE knows and all. */
export const searchedFor = (words: string): RawBuilder<boolean>[] =>
  nameKey(words)
    .split(/\s+/)
    .filter(Boolean)
    .map((word) => sql<boolean>`searched like ${containing(word)} escape '\\'`)

const containing = (word: string): string => `%${word.replaceAll(/[\\%_]/g, (sign) => `\\${sign}`)}%`
