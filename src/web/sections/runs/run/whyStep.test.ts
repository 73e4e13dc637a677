import { describe, expect, it } from 'vitest'
import type { FollowedJob } from '../../../../score/index.js'
import { SHIPPED_RECIPES } from '../../../../score/index.js'
import { writerFor } from '../../../../words/index.js'
import { sayOf } from '../names.js'
import { partAt } from './jobWords.js'

describe('why a step is done', () => {
  const kinds = new Set(SHIPPED_RECIPES.flatMap(({ steps }) => steps.map(({ kind }) => kind)))

  it.each([...kinds])('%s says what spoils the film', (kind) => {
    const said = sayOf(`ruins.${kind}`, {}, writerFor('metric'))
    expect(said).toMatch(/^[A-Z].{20,}\.$/)
  })
})

describe('what hands are at within a bath change', () => {
  const job = {
    job: {
      parts: [
        { part: 'drain', start: 0, end: 10 },
        { part: 'pour', start: 10, end: 25 },
      ],
    },
  }

  it.each([
    [0, 'drain'],
    [9.9, 'drain'],
    [10, 'pour'],
    [25, undefined],
  ])('at %s s: %s', (second, part) => {
    expect(partAt(job as unknown as FollowedJob, second)?.part).toBe(part)
  })
})
