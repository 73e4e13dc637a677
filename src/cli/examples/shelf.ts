export const shelf = {
  shelf: `  $ wetside shelf
  Nothing stands on the shelf yet.`,
  lots: `  $ wetside lots fixer
  0 found.`,
  lot: `  $ wetside lot 26-001
  There is no lot 26-001 on this bench. Read its label again.`,
  products: `  $ wetside products
  0 found.`,
  rinse: `  $ wetside rinse fixer developer
  Rinse it three times, inside and outside.
  Traces of fixer in a developer fog and stain film.`,
  'keep-product': `  < {"name": "Fixer of the label", "role": "fixer", "use": "reusable", "rolls_per_litre": 20}
  $ wetside keep-product -
  Fixer of the label is kept.`,
  'add-container': `  $ wetside add-container bottle "Brown 1" --holds 1L
  Brown 1 is kept.`,
  mix: `  $ wetside mix "Fixer of the label" 1L --parts 1:4
  --parts is “1:4”; write it with a plus, like 1+4: a colon is read two ways.`,
  'use-bath': `  $ wetside use-bath "Brown 1" --film 120=2 --poured 500mL
  Nothing on the shelf is called Brown 1. Look at the shelf for its names.`,
  'test-bath': `  $ wetside test-bath "Brown 1" clearing 55s
  Nothing on the shelf is called Brown 1. Look at the shelf for its names.`,
  station: `  $ wetside station "Brown 1" first
  Nothing on the shelf is called Brown 1. Look at the shelf for its names.`,
  'two-baths': `  $ wetside two-baths "Brown 1" "Brown 2" --rotate
  Say which jug the first bath goes to, like --jug "Silver waste".`,
  'pour-over': `  $ wetside pour-over "Brown 1" "Brown 2" --amount 250mL
  Nothing on the shelf is called Brown 1. Look at the shelf for its names.`,
  'measure-bath': `  $ wetside measure-bath "Brown 1" 480mL
  Nothing on the shelf is called Brown 1. Look at the shelf for its names.`,
  discard: `  $ wetside discard "Brown 1" --jug "Silver waste"
  Nothing on the shelf is called Brown 1. Look at the shelf for its names.`,
  'hand-over': `  $ wetside hand-over "Silver waste" "The town"
  Nothing on the shelf is called Silver waste. Look at the shelf for its names.`,
  'take-back': `  $ wetside take-back 0190d1c2-0000-7000-8000-000000000000
  There is no entry of the shelf with the id 0190d1c2-0000-7000-8000-000000000000 on this bench.`,
  labels: `  $ wetside labels labels.pdf 26-001
  There is no lot 26-001 on this bench. Read its label again.`,
  'hand-over-record': `  $ wetside hand-over-record 0190d1c2-0000-7000-8000-000000000000 record.pdf
  There is no hand-over with the id 0190d1c2-0000-7000-8000-000000000000 on this bench.`,
  'waste-log': `  $ wetside waste-log no-such-folder/waste.csv
  The file no-such-folder/waste.csv cannot be written: ENOENT.`,
} as const
