import { sees } from '../steps.js'
import { at, NO_ANSWER, type Row } from './kinds.js'

const NOT_HERE = 'It may have been removed, or the link is an old one.'

const products: Row = {
  empty: { 'as it comes': at('/shelf/products', 'No product is kept yet.') },
  full: { 'as it comes': at('/shelf/products', 'To start from') },
  away: { 'as it comes': at('/shelf/products', NO_ANSWER) },
  trouble: 'nothing is typed or sent here',
  opened: 'links and nothing else',
}

const productNew: Row = {
  empty: { 'begun with one that comes by composition': at('/shelf/products/new?from=Plain hypo fixer', 'from memory') },
  full: { 'as it comes': at('/shelf/products/new') },
  away: { 'as it comes': at('/shelf/products/new', NO_ANSWER) },
  trouble: {
    'a ratio with two readings, a number that is none, a name missing': async ({ page, go }) => {
      await go('/shelf/products/new')
      await page.getByRole('textbox', { name: 'Dilutions' }).fill('1:4')
      await page.getByText('What a litre carries').click()
      await page.getByRole('textbox', { name: 'Rolls a litre' }).fill('many')
      await page.getByRole('button', { name: 'Keep this product' }).click()
      await sees(page, '“many” is no number.')
    },
  },
  opened: 'a form and nothing else; its choices are the browser’s own lists',
}

const product: Row = {
  empty: { 'none of this name': at('/shelf/products/:product', NOT_HERE) },
  full: { 'as it comes': at('/shelf/products/:product', 'This is no safety data sheet.') },
  away: { 'as it comes': at('/shelf/products/:product', NO_ANSWER) },
  trouble: 'nothing is typed here',
  opened: {
    'the way back after a removal': async ({ page, go }) => {
      await go('/shelf/products/:product')
      await page.getByRole('button', { name: 'Remove', exact: true }).click()
      await page.getByRole('button', { name: 'Undo' }).click()
      await sees(page, / is back\.$/)
    },
  },
}

const productEdit: Row = {
  empty: { 'none of this name': at('/shelf/products/:product/edit', NOT_HERE) },
  full: { 'as it comes': at('/shelf/products/:product/edit', /^Correct /) },
  away: { 'as it comes': at('/shelf/products/:product/edit', NO_ANSWER) },
  trouble: 'the same form as for a new one, which is looked at in trouble',
  opened: 'a form and nothing else; its choices are the browser’s own lists',
}

const mix: Row = {
  empty: { 'before there is a product': at('/shelf/mix', 'No product is kept yet.') },
  full: { 'as it comes': at('/shelf/mix', 'Begin the sheet') },
  away: { 'as it comes': at('/shelf/mix', NO_ANSWER) },
  trouble: {
    'more than there is, and than the bottle holds': async ({ page, go }) => {
      await go('/shelf/mix')
      await page.getByRole('textbox', { name: 'How much' }).fill('90 L')
      await sees(page, 'are to go in. Choose another as well.')
    },
  },
  opened: {
    'the sheet with its first step ticked': async ({ page, go }) => {
      await go('/shelf/mix')
      await page.getByRole('textbox', { name: 'How much' }).fill('400 mL')
      await page.getByRole('textbox', { name: 'Hot tap' }).fill('50 C')
      await page.getByRole('textbox', { name: 'Cold tap' }).fill('12 C')
      await page.getByRole('button', { name: 'Begin the sheet' }).click()
      await page.getByRole('checkbox', { name: /step 1$/ }).check()
    },
  },
}

const waste: Row = {
  empty: { 'as it comes': at('/shelf/waste', 'No jug for waste stands here yet.') },
  full: { 'as it comes': at('/shelf/waste', 'Limits, for reference') },
  away: { 'as it comes': at('/shelf/waste', NO_ANSWER) },
  trouble: {
    'handed over to nobody': async ({ page, go }) => {
      await go('/shelf/waste')
      await page.getByText('Hand it over').first().click()
      await page.getByRole('button', { name: 'Note the hand-over' }).click()
      await sees(page, 'This is still empty.')
    },
  },
  opened: 'the form behind its line is looked at in trouble',
}

const lots: Row = {
  empty: { 'as it comes': at('/shelf/lots', 'No lot was ever mixed here.') },
  full: { 'as it comes': at('/shelf/lots', /^(Four|\d+) lots/) },
  away: { 'as it comes': at('/shelf/lots', NO_ANSWER) },
  trouble: { 'words that no lot has': at('/shelf/lots?words=nowhere', 'No lot has these words.') },
  opened: 'links and nothing else',
}

const lot: Row = {
  empty: { 'none of this name': at('/shelf/lots/:lot', 'There is no lot') },
  full: { 'as it comes': at('/shelf/lots/:lot', 'What happened to it') },
  away: { 'as it comes': at('/shelf/lots/:lot', NO_ANSWER) },
  trouble: {
    'more poured than there is, a count that is none': async ({ page, go }) => {
      await go('/shelf/lots/:lot')
      await page.getByText('Note a use').first().click()
      await page.getByRole('textbox', { name: 'Poured out of the bottle' }).first().fill('90 L')
      await page.getByRole('button', { name: 'Count it' }).first().click()
      await page.getByRole('alert').first().waitFor()
      await page.getByRole('textbox', { name: 'How many' }).first().fill('some')
      await sees(page, '“some” is no count.')
    },
  },
  opened: {
    'every act behind its line': async ({ page, go }) => {
      await go('/shelf/lots/:lot')
      for (const line of ['Pour it over', 'It was measured otherwise', 'Get rid of it'])
        await page.getByText(line, { exact: true }).first().click()
    },
  },
}

const byCode: Row = {
  empty: { 'a code that no label has': at('/l/26-999', 'There is no lot 26-999 on this bench.') },
  full: { 'as it comes': at('/l/26-002', 'What happened to it') },
  away: { 'as it comes': at('/l/26-002', NO_ANSWER) },
  trouble: 'nothing is typed or sent here',
  opened: 'it leads on to the lot',
}

const thingNew: Row = {
  empty: {
    'a bottle': at('/shelf/things/new?kind=bottle'),
    'a package before there is a product': at('/shelf/things/new?kind=package', 'No product is kept yet.'),
  },
  full: {
    'a package': at('/shelf/things/new?kind=package', 'Counted in'),
    'a jug': at('/shelf/things/new?kind=jug'),
  },
  away: { 'as it comes': at('/shelf/things/new?kind=bottle', NO_ANSWER) },
  trouble: {
    'nothing typed, a day and a price that cannot be read': async ({ page, go }) => {
      await go('/shelf/things/new?kind=package')
      await page.getByRole('textbox', { name: 'Use by' }).fill('soon')
      await page.getByRole('textbox', { name: 'Price' }).fill('cheap')
      await page.getByRole('button', { name: 'Put it on the shelf' }).click()
      await sees(page, '“cheap” is no price.')
    },
  },
  opened: 'a form and nothing else; its choices are the browser’s own lists',
}

const thing: Row = {
  empty: { 'none of this name': at('/shelf/things/:bottle', NOT_HERE) },
  full: {
    'a bottle': at('/shelf/things/:bottle', /^Correct /),
    'a package': at('/shelf/things/:package', /^Correct /),
  },
  away: { 'as it comes': at('/shelf/things/:bottle', NO_ANSWER) },
  trouble: 'the same form as for a new one, which is looked at in trouble',
  opened: 'a form and nothing else; its choices are the browser’s own lists',
}

/** The pages of bottles, products, lots and waste. */
export const bottlesRows = {
  products,
  'product-new': productNew,
  product,
  'product-edit': productEdit,
  mix,
  waste,
  lots,
  lot,
  'lot-by-code': byCode,
  'thing-new': thingNew,
  thing,
}
