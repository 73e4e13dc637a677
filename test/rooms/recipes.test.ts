import { describe, expect, it } from 'vitest'
import { expectOk } from '../../src/kernel/index.js'
import { correctRecipe, keepRecipe, listRecipes, removeRecipe, undoRecipe } from '../../src/lab/index.js'
import { SHIPPED_RECIPES } from '../../src/score/index.js'
import { benches, problemOf } from '../support/bench.js'
import { eventId, listOfBaths, THREE_BATHS } from '../support/runs.js'

const open = benches()
const UNKNOWN = eventId(999)

describe('lists of baths', () => {
  it('shows those of the program first, then one’s own; copies, changes, removes and brings back', async () => {
    const bench = await open(31)
    const before = await bench.read(listRecipes)
    expect(before.recipes.map(({ recipe }) => recipe)).toEqual(SHIPPED_RECIPES)
    expect(before.recipes.every(({ shipped, revision }) => shipped && revision === null)).toBe(true)
    const copy = expectOk(
      await bench.write((context, rooms) => keepRecipe(context, rooms, listOfBaths(), THREE_BATHS.id)),
    )
    expect(copy).toMatchObject({ shipped: false, revision: 1, copied_from: THREE_BATHS.id, recipe: { id: copy.id } })
    const renamed = listOfBaths({ name: 'Sunday list' })
    const corrected = expectOk(
      await bench.write((context, rooms) => correctRecipe(context, rooms, copy.id, 1, renamed)),
    )
    expect(corrected).toMatchObject({ revision: 2, copied_from: THREE_BATHS.id, recipe: { name: 'Sunday list' } })
    expectOk(await bench.write((context, rooms) => removeRecipe(context, rooms, copy.id, 2)))
    expect((await bench.read(listRecipes)).recipes).toHaveLength(SHIPPED_RECIPES.length)
    expectOk(await bench.write((context, rooms) => undoRecipe(context, rooms, copy.id, 3)))
    expect((await bench.read(listRecipes)).recipes.at(-1)).toMatchObject({
      revision: 4,
      recipe: { name: 'Sunday list' },
    })
  })

  it('refuses a list that cannot be run, a name that is taken, and any change of the program’s own', async () => {
    const bench = await open(32)
    const keep = (statement = listOfBaths()) =>
      bench.write((context, rooms) => keepRecipe(context, rooms, statement, null))
    const { steps } = listOfBaths()
    const bare = problemOf(await keep(listOfBaths({ steps: steps.filter((step) => step.step === 'act') })))
    expect(bare).toMatchObject({ code: 'recipe.no-bath', field: 'statement.steps' })
    const shipped = problemOf(await keep(listOfBaths({ name: ` ${THREE_BATHS.name.toUpperCase()} ` })))
    expect(shipped).toMatchObject({ code: 'record.name-taken', field: 'statement.name' })
    const own = expectOk(await keep())
    expect(problemOf(await keep())).toMatchObject({ code: 'record.name-taken' })
    for (const change of [removeRecipe, undoRecipe]) {
      const answer = await bench.write((context, rooms) => change(context, rooms, THREE_BATHS.id, 1))
      expect(problemOf(answer)).toMatchObject({ code: 'recipe.comes-with-program' })
    }
    const stale = await bench.write((context, rooms) => correctRecipe(context, rooms, own.id, 7, listOfBaths()))
    expect(problemOf(stale).code).toBe('record.changed-meanwhile')
    expect(problemOf(await bench.write((c, rooms) => removeRecipe(c, rooms, UNKNOWN, 1))).code).toBe('record.not-found')
  })
})
