const ORDER = '0190d1c2-0000-7000-8000-000000000000'

export const rolls = {
  'take-in': `  < film,format,whose,exposure_index,treatment\\nCorvane 400,135-36,Ida,400,as 800\\nTarn 100,120,,,
  $ wetside take-in - --dry-run
  Line 2: Corvane 400, 135, 36 frames, of Ida, as if it were 800
  Line 3: Tarn 100, 120, as usual
  2 would be taken in; nothing was kept.`,
  'move-rolls': `  $ wetside move-rolls ruined 2026-0001 --reason "the reel slipped"
  There is no roll 2026-0001 on this bench. Read its sticker again.`,
  'find-rolls': `  $ wetside find-rolls corvane --state taken-in,hung
  0 found.`,
  roll: `  $ wetside roll 2026-0001
  There is no roll 2026-0001 on this bench. Read its sticker again.`,
  orders: `  $ wetside orders --json
  {
    "orders": []
  }`,
  stickers: `  $ wetside stickers stickers.pdf --order ${ORDER}
  Say where the bench is reached, like --base http://192.168.1.20:4717.`,
  slip: `  $ wetside slip ${ORDER} slip.pdf
  Say where the bench is reached, like --base http://192.168.1.20:4717.`,
  'export-rolls': `  $ wetside export-rolls bench.rolls.csv
  0 rolls with their ways are in bench.rolls.csv.`,
  'import-rolls': `  $ wetside import-rolls no-such.csv
  The file no-such.csv cannot be read: ENOENT.`,
} as const
