// Written by scripts/generate-client.mjs from docs/openapi.json; changes made here are lost.
import { address, send } from './transport.js'

export type AbandonRunInput = {
  reason: string
}

export type Act = {
  id: string
  name: string
  reason: string
  cautions:
    | Array<'dark-until-fixed'
    | 'never-into-developer'
    | 'acid-splash'
    | 'bleach-oxidiser'
    | 'bleach-never-meets-fixer'
    | 'no-rinse-between'
    | 'keep-temperature'
    | 'do-not-touch-emulsion'
    | 'even-light'
    | 'gloves'>
  step: 'act'
  kind: 'lid-off' | 'look' | 'squeeze' | 're-expose' | 'hang-up'
  length: Length
  within: number | null
}

export type ActInput = {
  id: string
  name: string
  reason: string
  cautions:
    | Array<'dark-until-fixed'
    | 'never-into-developer'
    | 'acid-splash'
    | 'bleach-oxidiser'
    | 'bleach-never-meets-fixer'
    | 'no-rinse-between'
    | 'keep-temperature'
    | 'do-not-touch-emulsion'
    | 'even-light'
    | 'gloves'>
  step: 'act'
  kind: 'lid-off' | 'look' | 'squeeze' | 're-expose' | 'hang-up'
  length: LengthInput
  within: number | null
}

export type AddCheckInput = {
  method: 'entered' | 'comparison' | 'ice' | 'boiling'
  read_c: number
  true_c?: number
  altitude_m?: number
  pressure_hpa?: number
}

export type AddClassSetInput = {
  trusted_id: IdInput | null
  readings: Array<{
    thermometer_id: IdInput
    read_c: number
  }>
}

export type AddContainerInput = {
  statement: ContainerStatementInput
  holds?: number | null
}

export type AddFilmInput = FilmStatementInput

export type AddOrderInput = OrderStatementInput

export type AddProductInput = ProductStatementInput

export type AddRunEventsInput = {
  events: RunEventInput[]
}

export type AddThermometerInput = ThermometerStatementInput

export type AddVesselInput = {
  statement: VesselStatementInput
}

export type Agitation = {
  kind: 'none'
} | {
  kind: 'continuous'
} | {
  kind: 'rotary'
} | {
  kind: 'turns'
  opening: Turn | null
  turn: Turn
  every: number
  first?: number
} | {
  kind: 'moments'
  opening: Turn | null
  moments: Array<{
    at: number
    turn: Turn
  }>
} | {
  kind: 'then-continuous'
  before: {
    kind: 'none'
  } | {
    kind: 'continuous'
  } | {
    kind: 'rotary'
  } | {
    kind: 'turns'
    opening: Turn | null
    turn: Turn
    every: number
    first?: number
  } | {
    kind: 'moments'
    opening: Turn | null
    moments: Array<{
      at: number
      turn: Turn
    }>
  }
  from: number
}

export type AgitationInput = {
  kind: 'none'
} | {
  kind: 'continuous'
} | {
  kind: 'rotary'
} | {
  kind: 'turns'
  opening: TurnInput | null
  turn: TurnInput
  every: number
  first?: number
} | {
  kind: 'moments'
  opening: TurnInput | null
  moments: Array<{
    at: number
    turn: TurnInput
  }>
} | {
  kind: 'then-continuous'
  before: {
    kind: 'none'
  } | {
    kind: 'continuous'
  } | {
    kind: 'rotary'
  } | {
    kind: 'turns'
    opening: TurnInput | null
    turn: TurnInput
    every: number
    first?: number
  } | {
    kind: 'moments'
    opening: TurnInput | null
    moments: Array<{
      at: number
      turn: TurnInput
    }>
  }
  from: number
}

export type AskedConditionsInput = {
  tank: string
  offset?: number
  temperatures?: Record<string, number>
  room?: {
    temperature: number
    timeConstant: number
  } | null
  volume?: number | null
  clearing?: number | null
  checks?: number[]
  overridesSpread?: boolean
  development: {
    from: 'kept'
    time_id: IdInput
    modifiers?: Array<{
      name: 'agitation' | 'pre-wet' | 'repeat-use' | 'push-pull' | 'own-strips' | 'other'
      factor: number
      origin: 'measured' | 'sheet' | 'law' | 'practice' | 'assumption'
      note?: string
    }>
    temperature: number
    course?: Array<{
      at: number
      temperature: number
    }>
  } | {
    from: 'own'
    time: number
    temperature: number | null
  } | {
    from: 'shared'
    temperature: number
  } | null
}

export type AskedOnReelInput = {
  film?: string
  exposure_index?: number | null
  label?: string
  reel?: number
  roll_id?: IdInput
  time_id?: IdInput
  wants_s?: number
}

export type AskedTankInput = {
  reels: number
  developer?: string
  dilution_parts?: number[] | null
  recipe: RecipeInput
  on_reels: AskedOnReelInput[]
  conditions: AskedConditionsInput
  vessel_id?: IdInput
  crosses_because?: string
  confirmed?: Array<'carbon-backing' | 'infrared'>
  from_shelf?: Array<{
    step: number
    container_id: IdInput
    lot_id?: IdInput | null
    poured_ml?: number
  }>
}

export type Bath = {
  id: string
  name: string
  reason: string
  cautions:
    | Array<'dark-until-fixed'
    | 'never-into-developer'
    | 'acid-splash'
    | 'bleach-oxidiser'
    | 'bleach-never-meets-fixer'
    | 'no-rinse-between'
    | 'keep-temperature'
    | 'do-not-touch-emulsion'
    | 'even-light'
    | 'gloves'>
  step: 'bath'
  kind:
    | 'pre-wet'
    | 'developer'
    | 'single-bath'
    | 'bath-a'
    | 'bath-b'
    | 'first-developer'
    | 'colour-developer'
    | 'second-developer'
    | 'stop'
    | 'rinse'
    | 'reversal'
    | 'pre-bleach'
    | 'bleach'
    | 'clear'
    | 'fix'
    | 'wash'
    | 'wash-aid'
    | 'wetting'
  time: TimeLaw
  agitation: Agitation
  window: {
    from: number
    to: number
    origin: 'measured' | 'sheet' | 'law' | 'practice' | 'assumption'
  } | null
  convention: {
    starts: 'start-of-pour' | 'end-of-pour'
    ends: 'start-of-drain' | 'end-of-drain'
  }
  handling: {
    pour: Length
    drain: Length
    cap: Length
    tap: Length | null
  }
  goesTo: 'bottle' | 'away' | 'waste-jug'
  neverPartFromNext: boolean
  mayStay: number
}

export type BathInput = {
  id: string
  name: string
  reason: string
  cautions:
    | Array<'dark-until-fixed'
    | 'never-into-developer'
    | 'acid-splash'
    | 'bleach-oxidiser'
    | 'bleach-never-meets-fixer'
    | 'no-rinse-between'
    | 'keep-temperature'
    | 'do-not-touch-emulsion'
    | 'even-light'
    | 'gloves'>
  step: 'bath'
  kind:
    | 'pre-wet'
    | 'developer'
    | 'single-bath'
    | 'bath-a'
    | 'bath-b'
    | 'first-developer'
    | 'colour-developer'
    | 'second-developer'
    | 'stop'
    | 'rinse'
    | 'reversal'
    | 'pre-bleach'
    | 'bleach'
    | 'clear'
    | 'fix'
    | 'wash'
    | 'wash-aid'
    | 'wetting'
  time: TimeLawInput
  agitation: AgitationInput
  window: {
    from: number
    to: number
    origin: 'measured' | 'sheet' | 'law' | 'practice' | 'assumption'
  } | null
  convention: {
    starts: 'start-of-pour' | 'end-of-pour'
    ends: 'start-of-drain' | 'end-of-drain'
  }
  handling: {
    pour: LengthInput
    drain: LengthInput
    cap: LengthInput
    tap: LengthInput | null
  }
  goesTo: 'bottle' | 'away' | 'waste-jug'
  neverPartFromNext: boolean
  mayStay: number
}

export type BenchView = {
  name: string
  units: 'metric' | 'us'
  paper: 'A4' | 'Letter'
  zone: string
  bench_id: Id
  kind: 'own' | 'demo'
  demo_exists: boolean
  role: 'owner' | 'device'
}

export type ChangeRollsInput = {
  roll_ids: IdInput[]
  change: {
    film?: string
    process?: 'black-and-white' | 'colour-negative' | 'colour-reversal'
    whose?: string | null
    exposure_index?: number | null
    treatment?: TreatmentInput
    due?: LocalDateInput | null
    order_id?: IdInput | null
  }
}

export type ClassSetResult = {
  set_id: Id
  true_c: number
  by: 'trusted' | 'median'
  trusted_id: Id | null
  spread_c: number
  offsets: Array<{
    thermometer_id: Id
    read_c: number
    offset_c: number
  }>
}

export type ContainerRecord = {
  id: Id
  revision: number
  saved_at: Instant
  removed: boolean
  statement: ContainerStatement
  unit: 'ml' | 'g'
  held: number
  lot_id: Id | null
}

export type ContainerStatement = {
  kind: 'package'
  name: string
  product_id: Id
  part: string
  unit: 'ml' | 'g'
  full: number
  bought: LocalDate | null
  use_by: LocalDate | null
  opened: LocalDate | null
  price: {
    minor: number
    currency: string
  } | null
  note: string
} | {
  kind: 'bottle'
  name: string
  shape: 'stoppered' | 'collapsible' | 'tank' | 'tray'
  holds_ml: number
  note: string
} | {
  kind: 'jug'
  name: string
  holds_ml: number
  opened: LocalDate | null
  note: string
}

export type ContainerStatementInput = {
  kind: 'package'
  name?: string
  product_id: IdInput
  part?: string
  unit: 'ml' | 'g'
  full: number
  bought?: LocalDateInput | null
  use_by?: LocalDateInput | null
  opened?: LocalDateInput | null
  price?: {
    minor: number
    currency: string
  } | null
  note?: string
} | {
  kind: 'bottle'
  name: string
  shape?: 'stoppered' | 'collapsible' | 'tank' | 'tray'
  holds_ml: number
  note?: string
} | {
  kind: 'jug'
  name: string
  holds_ml: number
  opened?: LocalDateInput | null
  note?: string
}

export type CorrectContainerInput = {
  seen_revision: number
  statement: ContainerStatementInput
}

export type CorrectFilmInput = {
  seen_revision: number
  statement: FilmStatementInput
}

export type CorrectOrderInput = {
  seen_revision: number
  statement: OrderStatementInput
}

export type CorrectProductInput = {
  seen_revision: number
  statement: ProductStatementInput
}

export type CorrectRecipeInput = {
  seen_revision: number
  statement: RecipeStatementInput
}

export type CorrectRollInput = {
  seen_revision: number
  statement: RollStatementInput
}

export type CorrectThermometerInput = {
  seen_revision: number
  statement: ThermometerStatementInput
}

export type CorrectTimeInput = {
  seen_revision: number
  statement: TimeStatementInput
}

export type CorrectVesselInput = {
  seen_revision: number
  statement: VesselStatementInput
}

export type DemoResult = {
  bench_id: Id
}

export type Devices = {
  devices: DeviceView[]
}

export type DeviceView = {
  id: Id
  name: string
  paired_at: Instant
  last_seen_at: Instant | null
}

export type DiscardInput = {
  container_id: IdInput
  amount?: number | null
  where: 'jug' | 'given-away' | 'spilt' | 'as-allowed'
  jug_id?: IdInput | null
  at?: InstantInput | null
  note?: string
}

export type EntryTold = {
  kind: 'brought-in'
} | {
  kind: 'mixed'
  parts: number[] | null
} | {
  kind: 'used'
  film: MetFilm[]
  rolls: number
  poured_ml: number
  lost_ml: number
  run_id: Id | null
  roll_ids: Id[]
  bath?: {
    tank: string
    step: number
  }
} | {
  kind: 'topped-up'
} | {
  kind: 'moved'
} | {
  kind: 'discarded'
  where: 'jug' | 'given-away' | 'spilt' | 'as-allowed'
} | {
  kind: 'measured'
  found: number
} | {
  kind: 'tested'
  test: ShelfTest
  met_rolls: number
} | {
  kind: 'stationed'
  station: 'first' | 'second' | null
} | {
  kind: 'handed-over'
  to: string
} | {
  kind: 'taken-back'
}

export type Equivalent = {
  done_s: number
  target_s: number
  fraction: number
  low: number
  high: number
}

export type FilmRecord = {
  name: string
  process: 'black-and-white' | 'colour-negative' | 'colour-reversal'
  tolerance: FilmTolerance
  strips?: Array<{
    time_s: number
    contrast: number
  }>
  fixing: 'ordinary' | 'fast-using'
  remarks: Array<'found' | 'expired' | 'infrared' | 'carbon-backing' | 'chromogenic'>
  drying_s: number | null
  keeping: string
  note: string
  id: Id
  revision: number
  saved_at: Instant
  removed: boolean
}

export type FilmRecords = {
  films: FilmRecord[]
}

export type FilmStatement = {
  name: string
  process: 'black-and-white' | 'colour-negative' | 'colour-reversal'
  tolerance: FilmTolerance
  strips?: Array<{
    time_s: number
    contrast: number
  }>
  fixing: 'ordinary' | 'fast-using'
  remarks: Array<'found' | 'expired' | 'infrared' | 'carbon-backing' | 'chromogenic'>
  drying_s: number | null
  keeping: string
  note: string
}

export type FilmStatementInput = {
  name: string
  process: 'black-and-white' | 'colour-negative' | 'colour-reversal'
  tolerance?: FilmToleranceInput
  strips?: Array<{
    time_s: number
    contrast: number
  }>
  fixing?: 'ordinary' | 'fast-using'
  remarks?: Array<'found' | 'expired' | 'infrared' | 'carbon-backing' | 'chromogenic'>
  drying_s?: number | null
  keeping?: string
  note?: string
}

export type FilmTolerance = {
  in: 'percent'
  down: number
  up: number
} | {
  in: 'contrast'
  down: number
  up: number
}

export type FilmToleranceInput = {
  in: 'percent'
  down: number
  up: number
} | {
  in: 'contrast'
  down: number
  up: number
}

export type FindLotsInput = {
  words?: string
  after?: string | null
  most?: number
}

export type FindRollsInput = {
  look?: RollSearchInput
  after?: string | null
  most?: number
}

export type FinishMixInput = {
  product_id: IdInput
  parts?: number[] | null
  from?: Array<{
    container_id: IdInput
    amount: number
  }>
  into: Array<{
    container_id: IdInput
    ml: number
  }>
  at?: InstantInput | null
  note?: string
}

export type FromShelf = {
  step: number
  container_id: Id
  name: string
  lot_id: Id | null
  code: string | null
  product: string
  poured_ml: number
  film: MetFilm[]
}

export type HandBackInput = {
  counted_out: number
}

export type HandOverInput = {
  jug_id: IdInput
  ml?: number | null
  to: string
  at?: InstantInput | null
  note?: string
}

export type Health = {
  status: 'ready'
  engine: 'sqlite' | 'postgres'
  now: Instant
}

/** UUID version 7. */
export type Id = string

/** UUID version 7. */
export type IdInput = string

export type ImportedRegister = {
  rolls: number
  orders: number
  films: number
  there: number
}

/** The text of an exported file, CSV or JSON. */
export type ImportRegisterInput = {
  text: string
}

/** UTC, ISO 8601, milliseconds. */
export type Instant = string

/** UTC, ISO 8601, milliseconds. */
export type InstantInput = string

export type JudgeRunInput = {
  tank: string
  density: 'thin' | 'right' | 'dense' | null
  marks?: Array<'uneven' | 'streaks' | 'bubbles' | 'half-moons' | 'scratches' | 'drying-marks' | 'fogged' | 'milky'>
  note?: string
}

export type JugView = {
  id: Id
  name: string
  holds_ml: number
  held_ml: number
  silver_rich_ml: number
  rolls: number
  silver_g: {
    low: number
    usual: number
    high: number
  }
  opened_at: Instant | null
  full: boolean
  full_on: Instant | null
  record: ContainerRecord
}

export type KeepRecipeInput = {
  copied_from?: string | null
  statement: RecipeStatementInput
}

export type KeepTimesInput = {
  times: TimeStatementInput[]
}

export type KeepViewInput = {
  name: string
  look: RollSearchInput
}

export type KeptEvent = {
  seq: number
  received_at: Instant
  event: RunEvent
}

export type LeftView = {
  limits: Array<{
    by: 'volume' | 'count' | 'silver' | 'tests' | 'acid' | 'age'
    rolls: number | null
    days: number | null
    part: number
    ends: Instant | null
    origin: 'measured' | 'sheet' | 'law' | 'practice' | 'assumption'
    source: string
  }>
  decides: 'volume' | 'count' | 'silver' | 'tests' | 'acid' | 'age' | null
  rolls: number | null
  days: number | null
  part: number | null
  ends: Instant | null
  whole: {
    ordinary: number
    tabular: number
    'high-iodide': number
  } | null
  met: number
  rolls_per_week: number | null
  silver_g_per_l: {
    low: number
    usual: number
    high: number
  } | null
  clearing: {
    fresh_s: number
    now_s: number
    fix_for_s: number
    finished: boolean
  } | null
  state: 'usable' | 'finished' | 'unknown'
  next_time_factor: number | null
  due_ml: number | null
}

export type Length = {
  seconds: number
  origin: 'measured' | 'sheet' | 'law' | 'practice' | 'assumption'
}

export type LengthInput = {
  seconds: number
  origin: 'measured' | 'sheet' | 'law' | 'practice' | 'assumption'
}

/** A day where the bench is. */
export type LocalDate = string

/** A day where the bench is. */
export type LocalDateInput = string

export type LotHead = {
  id: Id
  code: string
  product_id: Id
  product: string
  role: 'developer' | 'stop' | 'fixer' | 'wash-aid' | 'wetting-agent' | 'toner' | 'bleach' | 'cleaner' | 'other'
  parts: number[] | null
  mixed_at: Instant
  mixed_by: string
  mixed_ml: number
  note: string
}

export type LotHeads = {
  lots: LotHead[]
  found: number
  next: string | null
}

export type LotView = {
  lot: LotHead
  containers: OnShelf[]
  cost: ShelfCost | null
  history: ShelfEntry[]
}

export type MakeOrderLinkInput = {
  days?: number
}

export type MeasureContentsInput = {
  container_id: IdInput
  found: number
  seen: number
  at?: InstantInput | null
  note?: string
}

export type MetFilm = {
  format: '110' | '120' | '127' | '135' | '220' | '4x5' | '5x7' | '8x10' | '11x14' | '9x12cm' | '13x18cm'
  frames: number | null
  count: number
  family: 'ordinary' | 'tabular' | 'high-iodide'
}

export type MetFilmInput = {
  format: '110' | '120' | '127' | '135' | '220' | '4x5' | '5x7' | '8x10' | '11x14' | '9x12cm' | '13x18cm'
  frames?: number | null
  count?: number
  family?: 'ordinary' | 'tabular' | 'high-iodide'
}

export type MovePortionInput = {
  from_id: IdInput
  into_id: IdInput
  amount?: number | null
  top_up?: boolean
  at?: InstantInput | null
  note?: string
}

export type MoveRollsInput = {
  roll_ids: IdInput[]
  state: 'taken-in' | 'loaded' | 'developed' | 'hung' | 'sleeved' | 'scanned' | 'handed-back' | 'lost' | 'ruined'
  run_id?: IdInput | null
  hook?: string
  reason?: string
  at?: InstantInput | null
}

export type NumberBlock = {
  block_id: Id
  first: number
  last: number
  numbers: string[]
}

/** {year} and {n}, {n4} with four digits: {year}-{n4} makes 2026-0017. */
export type NumberPattern = {
  pattern: string
}

/** {year} and {n}, {n4} with four digits: {year}-{n4} makes 2026-0017. */
export type NumberPatternInput = {
  pattern: string
}

export type OnReel = {
  film: string
  exposure_index: number | null
  label: string
  reel?: number
  roll?: {
    roll_id: Id
    number: string
  }
  wants_s?: number
  departs?: number
}

export type OnShelf = {
  id: Id
  revision: number
  saved_at: Instant
  removed: boolean
  statement: ContainerStatement
  unit: 'ml' | 'g'
  held: number
  lot_id: Id | null
  lot: LotHead | null
  product: string
  since: Instant | null
  station: 'first' | 'second' | null
  left: LeftView | null
  book: ShelfBook | null
}

export type OrderLink = {
  id: Id
  token: string
  expires_at: Instant
}

export type OrderRecord = {
  person: string
  contact: string
  counted_in: number
  due: LocalDate | null
  deposit: string
  agreed_on_loss: string
  note: string
  id: Id
  revision: number
  saved_at: Instant
  removed: boolean
  rolls: RollSummary[]
  counted_out: number | null
  links: Array<{
    id: Id
    made_at: Instant
    expires_at: Instant
    revoked: boolean
  }>
}

export type OrderRecords = {
  orders: OrderRecord[]
}

export type OrderStanding = {
  rolls: Array<{
    number: string
    state: 'taken-in' | 'loaded' | 'developed' | 'hung' | 'sleeved' | 'scanned' | 'handed-back' | 'lost' | 'ruined'
    sentence: string
  }>
  ready: boolean
}

export type OrderStatement = {
  person: string
  contact: string
  counted_in: number
  due: LocalDate | null
  deposit: string
  agreed_on_loss: string
  note: string
}

export type OrderStatementInput = {
  person: string
  contact?: string
  counted_in: number
  due?: LocalDateInput | null
  deposit?: string
  agreed_on_loss?: string
  note?: string
}

export type PairAskedInput = {
  first_id: IdInput
  second_id: IdInput
}

export type PairingCode = {
  code: string
  address: string
  expires_at: Instant
  qr_svg: string
}

export type PairInput = {
  code: string
  name: string
}

export type PairView = {
  used: number
  verdict: 'carry-on' | 'rotate'
  because: Array<'count' | 'clearing'>
  left_rolls: number
  containers: OnShelf[]
}

/** A year, a month, a day, or a season (ISO 8601-2: 2026-22 is a summer). */
export type PartialDate = string

/** A year, a month, a day, or a season (ISO 8601-2: 2026-22 is a summer). */
export type PartialDateInput = string

export type PastedReading = {
  lines: Array<{
    number: number
    text: string
    read_as: string | null
    trouble: Array<{
      cell: string
      sentence: string
    }>
  }>
  times: Array<{
    film: string
    exposure_index: number | null
    developer: string
    dilution_parts: number[] | null
    agitation: string
    kind: 'ordinary' | 'single-bath' | 'fixed'
    law: 'exponential' | 'arrhenius'
    developer_class:
      | 'unknown'
      | 'metol'
      | 'hydroquinone'
      | 'metol-hydroquinone'
      | 'phenidone-ascorbate'
      | 'pyro'
      | 'glycin'
      | 'p-aminophenol'
    coefficient: number | null
    usable: TemperatureRange | null
    window: TemperatureRange | null
    points: SheetPoint[]
    source_words: string
    source_origin: 'sheet' | 'own-note' | 'measured'
    note: string
  }>
  count: number
}

export type PastedTextInput = {
  text: string
}

export type PlannedTank = {
  reels: number
  developer: string
  dilution_parts: number[] | null
  recipe: Recipe
  on_reels: OnReel[]
  vessel?: {
    id: Id
    name: string
  }
  crosses_because?: string
  confirmed?: Array<'carbon-backing' | 'infrared'>
  from_shelf?: FromShelf[]
  conditions: TankConditions
  time: {
    time_id: Id
    revision: number
    source_words: string
  } | null
}

export type PlanRunInput = {
  practice?: 1 | 5 | 20 | null
  note?: string
  thermometer_id?: IdInput | null
  tanks: AskedTankInput[]
}

export type Posted = {
  entry: ShelfEntry
  containers: OnShelf[]
  lot: LotHead | null
}

/** What was wrong, with the value, and what would be right. */
export type Problem = {
  code: string
  sentence: string
  details: Record<string, unknown>
  field?: string
  help: string
}

export type ProductFormula = {
  additions: Array<{
    salt: string
    g_per_l: number | null
    ml_per_l: number | null
    percent: number | null
  }>
  water_first: number
  from_c: number
  to_c: number
}

export type ProductFormulaInput = {
  additions: Array<{
    salt: string
    g_per_l?: number | null
    ml_per_l?: number | null
    percent?: number | null
  }>
  water_first: number
  from_c: number
  to_c: number
}

export type ProductKeeps = {
  full: number | null
  half_full: number | null
  tray: number | null
  tank: number | null
}

export type ProductKeepsInput = {
  full?: number | null
  half_full?: number | null
  tray?: number | null
  tank?: number | null
}

export type ProductRecord = {
  name: string
  role: 'developer' | 'stop' | 'fixer' | 'wash-aid' | 'wetting-agent' | 'toner' | 'bleach' | 'cleaner' | 'other'
  process: 'black-and-white' | 'colour-negative' | 'colour-reversal'
  form: 'liquid' | 'powder'
  use: 'single-use' | 'reusable' | 'replenished'
  package_parts: string[]
  dilutions: number[][]
  fixer: {
    salt: 'sodium-thiosulfate' | 'ammonium-thiosulfate'
    alkaline: boolean
  } | null
  stop: {
    acid: 'acetic' | 'citric'
    percent: number
  } | null
  rolls_per_litre: number | null
  family_capacity: number | null
  silver_limit_g_per_l: number | null
  floor_ml_per_roll: number | null
  carried_out_ml_per_roll: number | null
  replenish_ml_per_roll: number | null
  longer_percent_per_roll: number | null
  keeps: ProductKeeps
  coefficient_class:
    | 'unknown'
    | 'metol'
    | 'hydroquinone'
    | 'metol-hydroquinone'
    | 'phenidone-ascorbate'
    | 'pyro'
    | 'glycin'
    | 'p-aminophenol'
    | null
  hazards:
    | Array<'acid'
    | 'caustic'
    | 'strong-acid'
    | 'sensitiser'
    | 'irritant'
    | 'fumes'
    | 'oxidiser'
    | 'poison'
    | 'flammable'>
  formula: ProductFormula | null
  origin: 'label' | 'sheet' | 'own' | 'practice' | 'memory' | 'assumption'
  source: string
  note: string
  id: Id
  revision: number
  saved_at: Instant
  removed: boolean
}

export type ProductRecords = {
  products: ProductRecord[]
}

export type ProductStatement = {
  name: string
  role: 'developer' | 'stop' | 'fixer' | 'wash-aid' | 'wetting-agent' | 'toner' | 'bleach' | 'cleaner' | 'other'
  process: 'black-and-white' | 'colour-negative' | 'colour-reversal'
  form: 'liquid' | 'powder'
  use: 'single-use' | 'reusable' | 'replenished'
  package_parts: string[]
  dilutions: number[][]
  fixer: {
    salt: 'sodium-thiosulfate' | 'ammonium-thiosulfate'
    alkaline: boolean
  } | null
  stop: {
    acid: 'acetic' | 'citric'
    percent: number
  } | null
  rolls_per_litre: number | null
  family_capacity: number | null
  silver_limit_g_per_l: number | null
  floor_ml_per_roll: number | null
  carried_out_ml_per_roll: number | null
  replenish_ml_per_roll: number | null
  longer_percent_per_roll: number | null
  keeps: ProductKeeps
  coefficient_class:
    | 'unknown'
    | 'metol'
    | 'hydroquinone'
    | 'metol-hydroquinone'
    | 'phenidone-ascorbate'
    | 'pyro'
    | 'glycin'
    | 'p-aminophenol'
    | null
  hazards:
    | Array<'acid'
    | 'caustic'
    | 'strong-acid'
    | 'sensitiser'
    | 'irritant'
    | 'fumes'
    | 'oxidiser'
    | 'poison'
    | 'flammable'>
  formula: ProductFormula | null
  origin: 'label' | 'sheet' | 'own' | 'practice' | 'memory' | 'assumption'
  source: string
  note: string
}

export type ProductStatementInput = {
  name: string
  role: 'developer' | 'stop' | 'fixer' | 'wash-aid' | 'wetting-agent' | 'toner' | 'bleach' | 'cleaner' | 'other'
  process?: 'black-and-white' | 'colour-negative' | 'colour-reversal'
  form?: 'liquid' | 'powder'
  use: 'single-use' | 'reusable' | 'replenished'
  package_parts?: string[]
  dilutions?: number[][]
  fixer?: {
    salt: 'sodium-thiosulfate' | 'ammonium-thiosulfate'
    alkaline: boolean
  } | null
  stop?: {
    acid: 'acetic' | 'citric'
    percent: number
  } | null
  rolls_per_litre?: number | null
  family_capacity?: number | null
  silver_limit_g_per_l?: number | null
  floor_ml_per_roll?: number | null
  carried_out_ml_per_roll?: number | null
  replenish_ml_per_roll?: number | null
  longer_percent_per_roll?: number | null
  keeps?: ProductKeepsInput
  coefficient_class?:
    | 'unknown'
    | 'metol'
    | 'hydroquinone'
    | 'metol-hydroquinone'
    | 'phenidone-ascorbate'
    | 'pyro'
    | 'glycin'
    | 'p-aminophenol'
    | null
  hazards?:
    | Array<'acid'
    | 'caustic'
    | 'strong-acid'
    | 'sensitiser'
    | 'irritant'
    | 'fumes'
    | 'oxidiser'
    | 'poison'
    | 'flammable'>
  formula?: ProductFormulaInput | null
  origin?: 'label' | 'sheet' | 'own' | 'practice' | 'memory' | 'assumption'
  source?: string
  note?: string
}

export type Recipe = {
  name: string
  process: 'black-and-white' | 'black-and-white-reversal' | 'colour-negative' | 'colour-reversal'
  steps: Array<Bath | Act>
  about: string
  id: string
}

export type RecipeInput = {
  name: string
  process: 'black-and-white' | 'black-and-white-reversal' | 'colour-negative' | 'colour-reversal'
  steps: Array<BathInput | ActInput>
  about: string
  id: string
}

export type RecipeRecord = {
  id: string
  shipped: boolean
  revision: number | null
  saved_at: Instant | null
  removed: boolean
  copied_from: string | null
  recipe: Recipe
}

export type RecipeRecords = {
  recipes: RecipeRecord[]
}

export type RecipeStatementInput = {
  name: string
  process: 'black-and-white' | 'black-and-white-reversal' | 'colour-negative' | 'colour-reversal'
  steps: Array<BathInput | ActInput>
  about: string
}

export type ReserveNumbersInput = {
  count: number
}

export type RestoreResult = {
  tables: number
  rows: number
  data_version: number
}

export type RollBatch = {
  batch_id: Id
  rolls: RollSummary[]
}

export type RollEvent = {
  id: Id
  at: Instant
  by: string
  state: 'taken-in' | 'loaded' | 'developed' | 'hung' | 'sleeved' | 'scanned' | 'handed-back' | 'lost' | 'ruined'
  run_id: Id | null
  hook: string
  reason: string
  batch_id: Id | null
  retracted: boolean
}

export type RollRecord = {
  film: string
  process: 'black-and-white' | 'colour-negative' | 'colour-reversal'
  format: '110' | '120' | '127' | '135' | '220' | '4x5' | '5x7' | '8x10' | '11x14' | '9x12cm' | '13x18cm'
  frames: number | null
  sheets: number
  whose: string | null
  exposure_index: number | null
  treatment: Treatment
  exposed: PartialDate | null
  expired_since: PartialDate | null
  remarks: Array<'found' | 'expired' | 'infrared' | 'carbon-backing' | 'chromogenic'>
  due: LocalDate | null
  note: string
  id: Id
  number: string
  twin: number | null
  order_id: Id | null
  revision: number
  taken_in_at: Instant
  state: 'taken-in' | 'loaded' | 'developed' | 'hung' | 'sleeved' | 'scanned' | 'handed-back' | 'lost' | 'ruined'
  state_at: Instant
  run_id: Id | null
  hook: string
  history: RollEvent[]
  revisions: RollRevision[]
}

export type RollRecords = {
  rolls: RollRecord[]
}

export type RollRegister = {
  register: 'rolls'
  version: 1
  pattern: string | null
  counters: Array<{
    kind: 'roll' | 'twin'
    year: number
    last: number
  }>
  films: Array<{
    id: Id
    saved_at: Instant
    saved_by: string
    statement: FilmStatement
  }>
  orders: Array<{
    id: Id
    saved_at: Instant
    saved_by: string
    statement: OrderStatement
    counted_out: {
      count: number
      at: Instant
      by: string
    } | null
  }>
  rolls: Array<{
    id: Id
    number: string
    year: number
    n: number
    twin: number | null
    order_id: Id | null
    taken_in_at: Instant
    taken_in_by: string
    statement: RollStatement
    steps: Array<{
      id: Id
      at: Instant
      by: string
      state:
        | 'taken-in'
        | 'loaded'
        | 'developed'
        | 'hung'
        | 'sleeved'
        | 'scanned'
        | 'handed-back'
        | 'lost'
        | 'ruined'
        | null
      run_id: Id | null
      hook: string
      reason: string
      batch_id: Id | null
      retracts: Id | null
    }>
  }>
}

export type RollRevision = {
  revision: number
  at: Instant
  by: string
  order_id: Id | null
  statement: {
    film: string
    process: 'black-and-white' | 'colour-negative' | 'colour-reversal'
    format: '110' | '120' | '127' | '135' | '220' | '4x5' | '5x7' | '8x10' | '11x14' | '9x12cm' | '13x18cm'
    frames: number | null
    sheets: number
    whose: string | null
    exposure_index: number | null
    treatment: Treatment
    exposed: PartialDate | null
    expired_since: PartialDate | null
    remarks: Array<'found' | 'expired' | 'infrared' | 'carbon-backing' | 'chromogenic'>
    due: LocalDate | null
    note: string
  }
}

export type RollSearch = {
  words: string
  state: Array<'taken-in' | 'loaded' | 'developed' | 'hung' | 'sleeved' | 'scanned' | 'handed-back' | 'lost' | 'ruined'>
  film: string
  whose: string
  process: 'black-and-white' | 'colour-negative' | 'colour-reversal' | null
  due_by: LocalDate | null
  taken_in_from: LocalDate | null
  taken_in_to: LocalDate | null
  order_id: Id | null
}

export type RollSearchInput = {
  words?: string
  state?:
    | Array<'taken-in'
    | 'loaded'
    | 'developed'
    | 'hung'
    | 'sleeved'
    | 'scanned'
    | 'handed-back'
    | 'lost'
    | 'ruined'>
  film?: string
  whose?: string
  process?: 'black-and-white' | 'colour-negative' | 'colour-reversal' | null
  due_by?: LocalDateInput | null
  taken_in_from?: LocalDateInput | null
  taken_in_to?: LocalDateInput | null
  order_id?: IdInput | null
}

export type RollStatement = {
  film: string
  process: 'black-and-white' | 'colour-negative' | 'colour-reversal'
  format: '110' | '120' | '127' | '135' | '220' | '4x5' | '5x7' | '8x10' | '11x14' | '9x12cm' | '13x18cm'
  frames: number | null
  sheets: number
  whose: string | null
  exposure_index: number | null
  treatment: Treatment
  exposed: PartialDate | null
  expired_since: PartialDate | null
  remarks: Array<'found' | 'expired' | 'infrared' | 'carbon-backing' | 'chromogenic'>
  due: LocalDate | null
  note: string
}

export type RollStatementInput = {
  film: string
  process: 'black-and-white' | 'colour-negative' | 'colour-reversal'
  format: '110' | '120' | '127' | '135' | '220' | '4x5' | '5x7' | '8x10' | '11x14' | '9x12cm' | '13x18cm'
  frames?: number | null
  sheets?: number
  whose?: string | null
  exposure_index?: number | null
  treatment?: TreatmentInput
  exposed?: PartialDateInput | null
  expired_since?: PartialDateInput | null
  remarks?: Array<'found' | 'expired' | 'infrared' | 'carbon-backing' | 'chromogenic'>
  due?: LocalDateInput | null
  note?: string
}

export type RollSummaries = {
  rolls: RollSummary[]
  found: number
  next: string | null
}

export type RollSummary = {
  film: string
  process: 'black-and-white' | 'colour-negative' | 'colour-reversal'
  format: '110' | '120' | '127' | '135' | '220' | '4x5' | '5x7' | '8x10' | '11x14' | '9x12cm' | '13x18cm'
  frames: number | null
  sheets: number
  whose: string | null
  exposure_index: number | null
  treatment: Treatment
  exposed: PartialDate | null
  expired_since: PartialDate | null
  remarks: Array<'found' | 'expired' | 'infrared' | 'carbon-backing' | 'chromogenic'>
  due: LocalDate | null
  note: string
  id: Id
  number: string
  twin: number | null
  order_id: Id | null
  revision: number
  taken_in_at: Instant
  state: 'taken-in' | 'loaded' | 'developed' | 'hung' | 'sleeved' | 'scanned' | 'handed-back' | 'lost' | 'ruined'
  state_at: Instant
  run_id: Id | null
  hook: string
}

export type RotateBathsInput = {
  first_id: IdInput
  second_id: IdInput
  fresh_id?: IdInput | null
  jug_id: IdInput
  at?: InstantInput | null
  note?: string
}

export type Rotated = {
  entries: ShelfEntry[]
  containers: OnShelf[]
}

export type Run = {
  id: Id
  planned_at: Instant
  state: 'planned' | 'running' | 'finished' | 'abandoned'
  started_at: Instant | null
  ended_at: Instant | null
  verdicts: RunVerdict[]
  outcome: TankOutcome[]
  plan: RunPlan
  events: KeptEvent[]
  last_seq: number
}

export type RunCost = {
  baths: Array<{
    lot_id: Id
    code: string
    product: string
    minor: number | null
    currency: string | null
  }>
  minor: number | null
  currency: string | null
  whole: boolean
}

export type RunEvent = {
  id: Id
  device: string
  life: string
  monotonicMs: number
  wallMs: number
  serverOffsetMs: number | null
  statedMs?: number | null
  statedTo?: 'second' | 'minute' | 'placed' | null
  tank: string
  bath: number | null
  actor: string
  kind: 'started'
} | {
  id: Id
  device: string
  life: string
  monotonicMs: number
  wallMs: number
  serverOffsetMs: number | null
  statedMs?: number | null
  statedTo?: 'second' | 'minute' | 'placed' | null
  tank: string
  bath: number | null
  actor: string
  kind: 'poured-in'
} | {
  id: Id
  device: string
  life: string
  monotonicMs: number
  wallMs: number
  serverOffsetMs: number | null
  statedMs?: number | null
  statedTo?: 'second' | 'minute' | 'placed' | null
  tank: string
  bath: number | null
  actor: string
  kind: 'poured-out'
} | {
  id: Id
  device: string
  life: string
  monotonicMs: number
  wallMs: number
  serverOffsetMs: number | null
  statedMs?: number | null
  statedTo?: 'second' | 'minute' | 'placed' | null
  tank: string
  bath: number | null
  actor: string
  kind: 'reading'
  temperature: number
  confirmed: boolean
} | {
  id: Id
  device: string
  life: string
  monotonicMs: number
  wallMs: number
  serverOffsetMs: number | null
  statedMs?: number | null
  statedTo?: 'second' | 'minute' | 'placed' | null
  tank: string
  bath: number | null
  actor: string
  kind: 'step-done'
  clearing?: number | null
} | {
  id: Id
  device: string
  life: string
  monotonicMs: number
  wallMs: number
  serverOffsetMs: number | null
  statedMs?: number | null
  statedTo?: 'second' | 'minute' | 'placed' | null
  tank: string
  bath: number | null
  actor: string
  kind: 'skipped'
  reason: string
} | {
  id: Id
  device: string
  life: string
  monotonicMs: number
  wallMs: number
  serverOffsetMs: number | null
  statedMs?: number | null
  statedTo?: 'second' | 'minute' | 'placed' | null
  tank: string
  bath: number | null
  actor: string
  kind: 'mishap'
  mishap:
    | 'fixer-first'
    | 'developer-short'
    | 'wrong-dilution'
    | 'lid-came-off'
    | 'tank-leaks'
    | 'stop-skipped'
    | 'power-or-phone-dead'
  referenceTime?: number | null
} | {
  id: Id
  device: string
  life: string
  monotonicMs: number
  wallMs: number
  serverOffsetMs: number | null
  statedMs?: number | null
  statedTo?: 'second' | 'minute' | 'placed' | null
  tank: string
  bath: number | null
  actor: string
  kind: 'noted'
  text: string
} | {
  id: Id
  device: string
  life: string
  monotonicMs: number
  wallMs: number
  serverOffsetMs: number | null
  statedMs?: number | null
  statedTo?: 'second' | 'minute' | 'placed' | null
  tank: string
  bath: number | null
  actor: string
  kind: 'retracted'
  of: Id
} | {
  id: Id
  device: string
  life: string
  monotonicMs: number
  wallMs: number
  serverOffsetMs: number | null
  statedMs?: number | null
  statedTo?: 'second' | 'minute' | 'placed' | null
  tank: string
  bath: number | null
  actor: string
  kind: 'abandoned'
  reason: string
} | {
  id: Id
  device: string
  life: string
  monotonicMs: number
  wallMs: number
  serverOffsetMs: number | null
  statedMs?: number | null
  statedTo?: 'second' | 'minute' | 'placed' | null
  tank: string
  bath: number | null
  actor: string
  kind: 'finished'
} | {
  id: Id
  device: string
  life: string
  monotonicMs: number
  wallMs: number
  serverOffsetMs: number | null
  statedMs?: number | null
  statedTo?: 'second' | 'minute' | 'placed' | null
  tank: string
  bath: number | null
  actor: string
  kind: 'resumed'
  previous: {
    life: string
    monotonicMs: number
    wallMs: number
    serverOffsetMs: number | null
  }
} | {
  id: Id
  device: string
  life: string
  monotonicMs: number
  wallMs: number
  serverOffsetMs: number | null
  statedMs?: number | null
  statedTo?: 'second' | 'minute' | 'placed' | null
  tank: string
  bath: number | null
  actor: string
  kind: 'clock-settled'
  choice: 'by-wall' | 'continued'
}

export type RunEventInput = {
  id: IdInput
  device: string
  life: string
  monotonicMs: number
  wallMs: number
  serverOffsetMs: number | null
  statedMs?: number | null
  statedTo?: 'second' | 'minute' | 'placed' | null
  tank: string
  bath: number | null
  actor: string
  kind: 'started'
} | {
  id: IdInput
  device: string
  life: string
  monotonicMs: number
  wallMs: number
  serverOffsetMs: number | null
  statedMs?: number | null
  statedTo?: 'second' | 'minute' | 'placed' | null
  tank: string
  bath: number | null
  actor: string
  kind: 'poured-in'
} | {
  id: IdInput
  device: string
  life: string
  monotonicMs: number
  wallMs: number
  serverOffsetMs: number | null
  statedMs?: number | null
  statedTo?: 'second' | 'minute' | 'placed' | null
  tank: string
  bath: number | null
  actor: string
  kind: 'poured-out'
} | {
  id: IdInput
  device: string
  life: string
  monotonicMs: number
  wallMs: number
  serverOffsetMs: number | null
  statedMs?: number | null
  statedTo?: 'second' | 'minute' | 'placed' | null
  tank: string
  bath: number | null
  actor: string
  kind: 'reading'
  temperature: number
  confirmed: boolean
} | {
  id: IdInput
  device: string
  life: string
  monotonicMs: number
  wallMs: number
  serverOffsetMs: number | null
  statedMs?: number | null
  statedTo?: 'second' | 'minute' | 'placed' | null
  tank: string
  bath: number | null
  actor: string
  kind: 'step-done'
  clearing?: number | null
} | {
  id: IdInput
  device: string
  life: string
  monotonicMs: number
  wallMs: number
  serverOffsetMs: number | null
  statedMs?: number | null
  statedTo?: 'second' | 'minute' | 'placed' | null
  tank: string
  bath: number | null
  actor: string
  kind: 'skipped'
  reason: string
} | {
  id: IdInput
  device: string
  life: string
  monotonicMs: number
  wallMs: number
  serverOffsetMs: number | null
  statedMs?: number | null
  statedTo?: 'second' | 'minute' | 'placed' | null
  tank: string
  bath: number | null
  actor: string
  kind: 'mishap'
  mishap:
    | 'fixer-first'
    | 'developer-short'
    | 'wrong-dilution'
    | 'lid-came-off'
    | 'tank-leaks'
    | 'stop-skipped'
    | 'power-or-phone-dead'
  referenceTime?: number | null
} | {
  id: IdInput
  device: string
  life: string
  monotonicMs: number
  wallMs: number
  serverOffsetMs: number | null
  statedMs?: number | null
  statedTo?: 'second' | 'minute' | 'placed' | null
  tank: string
  bath: number | null
  actor: string
  kind: 'noted'
  text: string
} | {
  id: IdInput
  device: string
  life: string
  monotonicMs: number
  wallMs: number
  serverOffsetMs: number | null
  statedMs?: number | null
  statedTo?: 'second' | 'minute' | 'placed' | null
  tank: string
  bath: number | null
  actor: string
  kind: 'retracted'
  of: IdInput
} | {
  id: IdInput
  device: string
  life: string
  monotonicMs: number
  wallMs: number
  serverOffsetMs: number | null
  statedMs?: number | null
  statedTo?: 'second' | 'minute' | 'placed' | null
  tank: string
  bath: number | null
  actor: string
  kind: 'abandoned'
  reason: string
} | {
  id: IdInput
  device: string
  life: string
  monotonicMs: number
  wallMs: number
  serverOffsetMs: number | null
  statedMs?: number | null
  statedTo?: 'second' | 'minute' | 'placed' | null
  tank: string
  bath: number | null
  actor: string
  kind: 'finished'
} | {
  id: IdInput
  device: string
  life: string
  monotonicMs: number
  wallMs: number
  serverOffsetMs: number | null
  statedMs?: number | null
  statedTo?: 'second' | 'minute' | 'placed' | null
  tank: string
  bath: number | null
  actor: string
  kind: 'resumed'
  previous: {
    life: string
    monotonicMs: number
    wallMs: number
    serverOffsetMs: number | null
  }
} | {
  id: IdInput
  device: string
  life: string
  monotonicMs: number
  wallMs: number
  serverOffsetMs: number | null
  statedMs?: number | null
  statedTo?: 'second' | 'minute' | 'placed' | null
  tank: string
  bath: number | null
  actor: string
  kind: 'clock-settled'
  choice: 'by-wall' | 'continued'
}

export type RunEvents = {
  events: KeptEvent[]
  last_seq: number
}

export type RunPlan = {
  practice: 1 | 5 | 20 | null
  note: string
  thermometer: {
    id: Id
    name: string
    off_c?: number
    band_c?: number
  } | null
  tanks: PlannedTank[]
}

export type RunSummaries = {
  runs: RunSummary[]
  more: boolean
}

export type RunSummary = {
  id: Id
  planned_at: Instant
  state: 'planned' | 'running' | 'finished' | 'abandoned'
  started_at: Instant | null
  ended_at: Instant | null
  verdicts: RunVerdict[]
  outcome: TankOutcome[]
  practice: 1 | 5 | 20 | null
  tanks: Array<{
    tank: string
    recipe_name: string
    process: 'black-and-white' | 'black-and-white-reversal' | 'colour-negative' | 'colour-reversal'
    on_reels: OnReel[]
    developer: string
    dilution_parts: number[] | null
    temperature_c: number | null
    time_s: number | null
  }>
}

export type RunVerdict = {
  tank: string
  density: 'thin' | 'right' | 'dense' | null
  marks: Array<'uneven' | 'streaks' | 'bubbles' | 'half-moons' | 'scratches' | 'drying-marks' | 'fogged' | 'milky'>
  note: string
  id: Id
  at: Instant
  by: string
  stands: boolean
}

export type SavedView = {
  id: Id
  revision: number
  name: string
  look: RollSearch
}

export type SavedViews = {
  views: SavedView[]
}

export type SettingsInput = {
  name: string
  units: 'metric' | 'us'
  paper: 'A4' | 'Letter'
  zone: string
}

export type SheetPoint = {
  temperature_c: number
  time_s: number
}

export type SheetPointInput = {
  temperature_c: number
  time_s: number
}

export type Shelf = {
  bottles: OnShelf[]
  packages: OnShelf[]
  jugs: JugView[]
}

export type ShelfBook = {
  added_ml: number
  discarded_ml: number
  carried_out_ml: number
}

export type ShelfCost = {
  minor: number
  currency: string
  whole: boolean
  per_roll_minor: number | null
}

export type ShelfEntry = {
  id: Id
  at: Instant
  by: string
  told: EntryTold
  note: string
  legs: Array<{
    container_id: Id
    lot_id: Id | null
    unit: 'ml' | 'g'
    change: number
    rolls: number
  }>
  retracts: Id | null
  retracted: boolean
}

export type ShelfTest = {
  of: 'clearing'
  clears_s: number
  family: 'ordinary' | 'tabular' | 'high-iodide'
  fresh: boolean
} | {
  of: 'indicator'
  colour: 'yellow' | 'turning' | 'purple'
} | {
  of: 'leader'
  darkens: 'fully' | 'weakly' | 'not'
  after_s: number
} | {
  of: 'residual-hypo' | 'residual-silver'
  passed: boolean
} | {
  of: 'ph'
  ph: number
} | {
  of: 'specific-gravity'
  gravity: number
  at_c: number | null
}

export type ShelfTestInput = {
  of: 'clearing'
  clears_s: number
  family?: 'ordinary' | 'tabular' | 'high-iodide'
  fresh?: boolean
} | {
  of: 'indicator'
  colour: 'yellow' | 'turning' | 'purple'
} | {
  of: 'leader'
  darkens: 'fully' | 'weakly' | 'not'
  after_s: number
} | {
  of: 'residual-hypo' | 'residual-silver'
  passed: boolean
} | {
  of: 'ph'
  ph: number
} | {
  of: 'specific-gravity'
  gravity: number
  at_c?: number | null
}

export type ShelfWashAnswer = {
  residue_g_per_m2: number
  mg_per_roll: number
  limit_g_per_m2: number
  margin: number
  left: {
    water: {
      mg_per_roll: number
      part: number
    }
    diffusion: {
      mg_per_roll: number
      part: number
    }
  }
  slower: 'water' | 'diffusion'
  scheme: 'changes' | 'running' | 'after-aid'
  water_ml: number
  time_s: number
  half_life_s: number
  diffusion_needs_s: number
  factors: Array<{
    name: 'cold' | 'hardener' | 'wash-aid'
    factor: number
  }>
  floor: {
    time_s: number
    changes: number
    met: boolean
    by_own_test: boolean
  }
  verdict: 'enough' | 'longer' | 'cannot-be-judged'
  because: 'clearing-doubled' | 'count-used' | 'silver-loaded' | 'fixer-unknown' | 'silver-left-in-film' | null
  sentences: string[]
  working: Array<{
    line: string
    source: string
  }>
  fixer: {
    id: Id
    name: string
    code: string | null
    state: 'usable' | 'finished' | 'unknown'
  } | null
}

export type ShelfWashInput = {
  fixer_id?: IdInput | null
  wash: {
    steps: Array<{
      kind: 'change'
      volume_ml: number
      time_s: number
      moved?: boolean
    } | {
      kind: 'running'
      volume_ml: number
      time_s: number
      ml_per_min: number
    }>
    fixer_g_per_l?: number
    rolls?: number
    temperature_c?: number
    rinse?: 'nothing' | 'walls' | 'film-and-walls'
    hardened?: boolean
    wash_aid?: boolean
    half_life_s?: number
    wet?: {
      emulsion_ml: number
      surface_ml: number
      walls_ml: number
    }
    tests?: Array<{
      test: 'residual-hypo' | 'residual-silver'
      passed: boolean
      scheme: 'changes' | 'running' | 'after-aid'
      time_s: number
      changes?: number
      temperature_c: number
      water_ml_per_roll: number
      hardened?: boolean
    }>
  }
}

export type StartingProducts = {
  products: ProductStatement[]
}

export type StationBathInput = {
  container_id: IdInput
  station: 'first' | 'second' | null
  at?: InstantInput | null
  note?: string
}

export type TakeBackInput = {
  note?: string
}

export type TakeInRollsInput = {
  order_id?: IdInput | null
  rolls: Array<{
    statement: RollStatementInput
    number?: {
      block_id: IdInput
      n: number
    } | null
  }>
}

export type TankConditions = {
  tank: string
  offset?: number
  temperatures?: Record<string, number>
  room?: {
    temperature: number
    timeConstant: number
  } | null
  volume?: number | null
  clearing?: number | null
  checks?: number[]
  overridesSpread?: boolean
  development: {
    from: 'basis'
    basis: TimeBasis
    modifiers?: Array<{
      name: 'agitation' | 'pre-wet' | 'repeat-use' | 'push-pull' | 'own-strips' | 'other'
      factor: number
      origin: 'measured' | 'sheet' | 'law' | 'practice' | 'assumption'
      note?: string
    }>
    temperature: number
    course?: Array<{
      at: number
      temperature: number
    }>
  } | {
    from: 'own'
    time: number
    temperature: number | null
  } | null
}

export type TankOutcome = {
  tank: string
  phase: 'not-started' | 'running' | 'done' | 'abandoned'
  equivalent: Equivalent | null
}

export type TemperatureRange = {
  from_c: number
  to_c: number
}

export type TemperatureRangeInput = {
  from_c: number
  to_c: number
}

export type TestBathInput = {
  container_id: IdInput
  test: ShelfTestInput
  at?: InstantInput | null
  note?: string
}

export type ThermometerCheck = {
  id: Id
  at: Instant
  method: 'entered' | 'comparison' | 'ice' | 'boiling' | 'class-set'
  read_c: number
  true_c: number
  set_id: Id | null
  withdrawn: boolean
}

export type ThermometerRecord = {
  name: string
  kind: 'spirit' | 'mercury' | 'digital' | 'dial' | 'other'
  scale_low_c: number
  scale_high_c: number
  note: string
  id: Id
  revision: number
  saved_at: Instant
  removed: boolean
  checks: ThermometerCheck[]
}

export type ThermometerRecords = {
  thermometers: ThermometerRecord[]
}

export type ThermometerStatementInput = {
  name: string
  kind: 'spirit' | 'mercury' | 'digital' | 'dial' | 'other'
  scale_low_c: number
  scale_high_c: number
  note?: string
}

export type TimeAnswer = {
  temperature_c: number
  time_s: number
  reference: SheetPoint
  position: 'sheet-point' | 'between' | 'beyond-cold' | 'beyond-warm' | 'fixed'
  law: 'exponential' | 'arrhenius'
  factors: Array<{
    name: string
    factor: number
    origin: string
    note?: string
  }>
  band: {
    by_sheet_and_law_s: number
    by_thermometer_s: number
    thermometer_error_c: number
  }
  warnings: Array<{
    code: string
    sentence: string
  }>
  sentence: string
  working: Array<{
    line: string
    source: string
  }>
}

export type TimeBasis = {
  kind: 'ordinary' | 'single-bath' | 'fixed'
  law: 'exponential' | 'arrhenius'
  points: Array<{
    temperature: number
    time: number
  }>
  developerClass:
    | 'unknown'
    | 'metol'
    | 'hydroquinone'
    | 'metol-hydroquinone'
    | 'phenidone-ascorbate'
    | 'pyro'
    | 'glycin'
    | 'p-aminophenol'
  coefficient: {
    value: number
    low: number
    high: number
    origin: 'measured' | 'sheet' | 'law' | 'practice' | 'assumption'
  }
  usable: {
    from: number
    to: number
  }
  window: {
    from: number
    to: number
  } | null
  reference: {
    temperature: number
    time: number
  }
}

export type TimeLaw = {
  law: 'by-developing-time'
} | {
  law: 'fixed'
  seconds: number
  origin: 'measured' | 'sheet' | 'law' | 'practice' | 'assumption'
} | {
  law: 'by-clearing'
  multiple: number
  assumed: number
  least: number
  most: number
  origin: 'measured' | 'sheet' | 'law' | 'practice' | 'assumption'
}

export type TimeLawInput = {
  law: 'by-developing-time'
} | {
  law: 'fixed'
  seconds: number
  origin: 'measured' | 'sheet' | 'law' | 'practice' | 'assumption'
} | {
  law: 'by-clearing'
  multiple: number
  assumed: number
  least: number
  most: number
  origin: 'measured' | 'sheet' | 'law' | 'practice' | 'assumption'
}

export type TimeRecord = {
  film: string
  exposure_index: number | null
  developer: string
  dilution_parts: number[] | null
  agitation: string
  kind: 'ordinary' | 'single-bath' | 'fixed'
  law: 'exponential' | 'arrhenius'
  developer_class:
    | 'unknown'
    | 'metol'
    | 'hydroquinone'
    | 'metol-hydroquinone'
    | 'phenidone-ascorbate'
    | 'pyro'
    | 'glycin'
    | 'p-aminophenol'
  coefficient: number | null
  usable: TemperatureRange | null
  window: TemperatureRange | null
  points: SheetPoint[]
  source_words: string
  source_origin: 'sheet' | 'own-note' | 'measured'
  note: string
  id: Id
  revision: number
  saved_at: Instant
  removed: boolean
}

export type TimeRecords = {
  times: TimeRecord[]
}

export type TimeStatementInput = {
  film: string
  exposure_index?: number | null
  developer: string
  dilution_parts?: number[] | null
  agitation?: string
  kind?: 'ordinary' | 'single-bath' | 'fixed'
  law?: 'exponential' | 'arrhenius'
  developer_class?:
    | 'unknown'
    | 'metol'
    | 'hydroquinone'
    | 'metol-hydroquinone'
    | 'phenidone-ascorbate'
    | 'pyro'
    | 'glycin'
    | 'p-aminophenol'
  coefficient?: number | null
  usable?: TemperatureRangeInput | null
  window?: TemperatureRangeInput | null
  points: SheetPointInput[]
  source_words?: string
  source_origin?: 'sheet' | 'own-note' | 'measured'
  note?: string
}

export type TodayView = {
  bench: BenchView
  step: {
    code: 'first-time' | 'first-thermometer' | 'check-thermometer' | 'widen-times' | 'ask-a-time'
    subject: string | null
    subject_id: Id | null
  }
  counts: {
    times: number
    films: number
    thermometers: number
  }
  recent: Array<{
    id: Id
    film: string
    developer: string
    saved_at: Instant
  }>
  drying: Array<{
    id: Id
    number: string
    film: string
    hook: string
    since: Instant
    ready_at: Instant | null
    dry_by: 'kept' | 'own-record' | 'usual' | null
  }>
}

export type Treatment = {
  as: 'normal'
} | {
  as: 'index'
  index: number
} | {
  as: 'contrast'
  contrast: number
}

export type TreatmentInput = {
  as: 'normal'
} | {
  as: 'index'
  index: number
} | {
  as: 'contrast'
  contrast: number
}

export type Turn = {
  by: 'seconds'
  seconds: number
} | {
  by: 'inversions'
  count: number
  secondsEach: number
}

export type TurnInput = {
  by: 'seconds'
  seconds: number
} | {
  by: 'inversions'
  count: number
  secondsEach: number
}

export type UseBathInput = {
  container_id: IdInput
  lot_id?: IdInput | null
  for_role?:
    | 'developer'
    | 'stop'
    | 'fixer'
    | 'wash-aid'
    | 'wetting-agent'
    | 'toner'
    | 'bleach'
    | 'cleaner'
    | 'other'
    | null
  film?: MetFilmInput[]
  poured: number
  lost?: number | null
  back_into?: IdInput | null
  run_id?: IdInput | null
  roll_ids?: IdInput[]
  bath?: {
    tank: string
    step: number
  }
  over_count?: boolean
  at?: InstantInput | null
  note?: string
}

export type VesselRecord = {
  id: Id
  revision: number
  saved_at: Instant
  removed: boolean
  statement: VesselStatement
}

export type VesselRecords = {
  vessels: VesselRecord[]
}

export type VesselStatement = {
  kind: 'tank'
  name: string
  moved: 'inversion' | 'rotary'
  material: 'steel' | 'plastic' | 'glass'
  holds: Array<{
    format: '110' | '120' | '127' | '135' | '220' | '4x5' | '5x7' | '8x10' | '11x14' | '9x12cm' | '13x18cm'
    reels: number
    covers_ml: number
  }>
  warmth_g: number | null
  time_constant_s: number | null
  note: string
} | {
  kind: 'reel'
  name: string
  formats: Array<'110' | '120' | '127' | '135' | '220' | '4x5' | '5x7' | '8x10' | '11x14' | '9x12cm' | '13x18cm'>
  material: 'steel' | 'plastic' | 'glass'
  wet_at: Instant | null
  note: string
} | {
  kind: 'graduate' | 'syringe'
  name: string
  holds_ml: number
  marked_every_ml: number
  note: string
}

export type VesselStatementInput = {
  kind: 'tank'
  name: string
  moved: 'inversion' | 'rotary'
  material: 'steel' | 'plastic' | 'glass'
  holds: Array<{
    format: '110' | '120' | '127' | '135' | '220' | '4x5' | '5x7' | '8x10' | '11x14' | '9x12cm' | '13x18cm'
    reels: number
    covers_ml: number
  }>
  warmth_g?: number | null
  time_constant_s?: number | null
  note?: string
} | {
  kind: 'reel'
  name: string
  formats: Array<'110' | '120' | '127' | '135' | '220' | '4x5' | '5x7' | '8x10' | '11x14' | '9x12cm' | '13x18cm'>
  material: 'steel' | 'plastic' | 'glass'
  wet_at?: InstantInput | null
  note?: string
} | {
  kind: 'graduate' | 'syringe'
  name: string
  holds_ml: number
  marked_every_ml: number
  note?: string
}

export type RemoveTimeBody = {
  seen_revision: number
}

export type UndoTimeBody = {
  seen_revision: number
}

export type AnswerTimeQuery = {
  at_c?: number
  thermometer_error_c?: number
  thermometer_id?: IdInput
  factor?: number
}

export type TimeCardQuery = {
  at_c?: number
  thermometer_error_c?: number
  thermometer_id?: IdInput
  factor?: number
  paper?: 'A4' | 'Letter'
}

export type RemoveThermometerBody = {
  seen_revision: number
}

export type UndoThermometerBody = {
  seen_revision: number
}

export type WithdrawCheckBody = Record<string, never>

export type RecipePaperQuery = {
  paper?: 'A4' | 'Letter'
}

export type RemoveRecipeBody = {
  seen_revision: number
}

export type UndoRecipeBody = {
  seen_revision: number
}

export type ListRunsQuery = {
  film?: string
  ended?: 'true' | 'false'
  practice?: 'true' | 'false'
  before?: IdInput
  limit?: number
}

export type RunEventsQuery = {
  after?: number
}

export type FollowRunQuery = {
  after?: number
}

export type RunSheetQuery = {
  paper?: 'A4' | 'Letter'
}

export type RunRecordQuery = {
  paper?: 'A4' | 'Letter'
}

export type RollByNumberQuery = {
  number: string
}

export type UndoRollBody = {
  seen_revision: number
}

export type UndoRollBatchBody = Record<string, never>

export type RemoveViewBody = {
  seen_revision: number
}

export type RemoveOrderBody = {
  seen_revision: number
}

export type UndoOrderBody = {
  seen_revision: number
}

export type RevokeOrderLinkBody = Record<string, never>

export type RemoveFilmBody = {
  seen_revision: number
}

export type UndoFilmBody = {
  seen_revision: number
}

export type RemoveVesselBody = {
  seen_revision: number
}

export type UndoVesselBody = {
  seen_revision: number
}

export type RemoveProductBody = {
  seen_revision: number
}

export type UndoProductBody = {
  seen_revision: number
}

export type RemoveContainerBody = {
  seen_revision: number
}

export type UndoContainerBody = {
  seen_revision: number
}

export type LotByCodeQuery = {
  code: string
}

export type RollStickersQuery = {
  paper?: 'A4' | 'Letter'
  order_id?: IdInput
  roll_ids?: string
  used?: number
}

export type OrderSlipQuery = {
  paper?: 'A4' | 'Letter'
  token?: string
}

export type LotLabelsQuery = {
  codes: string
  layout?: 'A4' | 'Letter' | 'roll'
  used?: number
}

export type HandOverRecordQuery = {
  paper?: 'A4' | 'Letter'
}

export type OpenDemoBody = Record<string, never>

export type RemoveDemoBody = Record<string, never>

export type NewPairingCodeBody = Record<string, never>

export type RemoveDeviceBody = Record<string, never>

/** Whether the server is ready. */
export const health = () => send<Health>('GET', '/api/health')

/** What is here and the next sensible step. */
export const today = () => send<TodayView>('GET', '/api/today')

/** Where to open: Live changes of the bench; replays after Last-Event-ID. */
export const feedAddress = (): string => address('/api/feed')

/** All developing times of the bench. */
export const listTimes = () => send<TimeRecords>('GET', '/api/times')

/** One developing time. */
export const getTime = (id: string) => send<TimeRecord>('GET', `/api/times/${encodeURIComponent(id)}`)

/** The developing time at a temperature, with its factors and band. */
export const answerTime = (id: string, query: AnswerTimeQuery = {}) =>
  send<TimeAnswer>('GET', address(`/api/times/${encodeURIComponent(id)}/answer`, query))

/** Where to open: The time card of a film, to print. */
export const timeCardAddress = (id: string, query: TimeCardQuery = {}): string =>
  address(`/api/times/${encodeURIComponent(id)}/card.pdf`, query)

/** All thermometers with their checks. */
export const listThermometers = () => send<ThermometerRecords>('GET', '/api/thermometers')

/** All lists of baths: those that come with the program, then one’s own. */
export const listRecipes = () => send<RecipeRecords>('GET', '/api/recipes')

/** Where to open: A list of baths to print: reasons, cautions and where its figures come from. */
export const recipePaperAddress = (id: string, query: RecipePaperQuery = {}): string =>
  address(`/api/recipes/${encodeURIComponent(id)}/list.pdf`, query)

/** Runs, newest first; by film, a page at a time. */
export const listRuns = (query: ListRunsQuery = {}) => send<RunSummaries>('GET', address('/api/runs', query))

/** Plans a run: checked, with copies of its lists and times. */
export const planRun = (body: PlanRunInput) => send<Run>('POST', '/api/runs', { body })

/** One run with everything that happened. */
export const getRun = (id: string) => send<Run>('GET', `/api/runs/${encodeURIComponent(id)}`)

/** What happened after a number that was seen. */
export const runEvents = (id: string, query: RunEventsQuery = {}) =>
  send<RunEvents>('GET', address(`/api/runs/${encodeURIComponent(id)}/events`, query))

/** Adds what happened; an event sent twice is there once. */
export const addRunEvents = (id: string, body: AddRunEventsInput) =>
  send<RunEvents>('POST', `/api/runs/${encodeURIComponent(id)}/events`, { body })

/** Where to open: Events of a run as they come in; replays after Last-Event-ID, else after `after`. */
export const followRunAddress = (id: string, query: FollowRunQuery = {}): string =>
  address(`/api/runs/${encodeURIComponent(id)}/live`, query)

/** Where to open: The bench sheet of a plan, to print: it can finish the run with a wall clock and a pencil. */
export const runSheetAddress = (id: string, query: RunSheetQuery = {}): string =>
  address(`/api/runs/${encodeURIComponent(id)}/sheet.pdf`, query)

/** Where to open: What became of a run, to print. */
export const runRecordAddress = (id: string, query: RunRecordQuery = {}): string =>
  address(`/api/runs/${encodeURIComponent(id)}/record.pdf`, query)

/** Gives up every tank of a run that is not done, with a reason. */
export const abandonRun = (id: string, body: AbandonRunInput) =>
  send<Run>('POST', `/api/runs/${encodeURIComponent(id)}/abandon`, { body })

/** Says what the negatives of a tank look like; a later word corrects an earlier one. */
export const judgeRun = (id: string, body: JudgeRunInput) =>
  send<Run>('POST', `/api/runs/${encodeURIComponent(id)}/verdicts`, { body })

/** Rolls by words, state, film, person and dates, newest number first, a page at a time. */
export const findRolls = (body: FindRollsInput) => send<RollSummaries>('POST', '/api/rolls/find', { body })

/** Takes rolls in: each gets its number, all of them or none. */
export const takeInRolls = (body: TakeInRollsInput) => send<RollRecords>('POST', '/api/rolls', { body })

/** One roll with its way. */
export const getRoll = (id: string) => send<RollRecord>('GET', `/api/rolls/${encodeURIComponent(id)}`)

/** Corrects what is said of a roll; the old words stay on record. */
export const correctRoll = (id: string, body: CorrectRollInput) =>
  send<RollRecord>('PUT', `/api/rolls/${encodeURIComponent(id)}`, { body })

/** A roll by the number on its sticker. */
export const rollByNumber = (query: RollByNumberQuery) =>
  send<RollRecord>('GET', address('/api/rolls/by-number', query))

/** Goes back to the state before the last change. */
export const undoRoll = (id: string, body: UndoRollBody) =>
  send<RollRecord>('POST', `/api/rolls/${encodeURIComponent(id)}/undo`, { body })

/** A step on the way for one roll or many: all of them or none. */
export const moveRolls = (body: MoveRollsInput) => send<RollBatch>('POST', '/api/rolls/move', { body })

/** The same words changed on many rolls: all of them or none. */
export const changeRolls = (body: ChangeRollsInput) => send<RollBatch>('POST', '/api/rolls/change', { body })

/** Takes back what was done to many rolls at once. */
export const undoRollBatch = (id: string, body: UndoRollBatchBody) =>
  send<RollBatch>('POST', `/api/roll-batches/${encodeURIComponent(id)}/undo`, { body })

/** Keeps numbers for this device, to give while it is away. */
export const reserveNumbers = (body: ReserveNumbersInput) =>
  send<NumberBlock>('POST', '/api/roll-numbers/reserve', { body })

/** How rolls are numbered. */
export const rollNumbering = () => send<NumberPattern>('GET', '/api/roll-numbers')

/** Changes how further rolls are numbered. */
export const changeNumbering = (body: NumberPatternInput) => send<NumberPattern>('PUT', '/api/roll-numbers', { body })

/** Searches that were saved. */
export const listViews = () => send<SavedViews>('GET', '/api/roll-views')

/** Saves a search. */
export const keepView = (body: KeepViewInput) => send<SavedView>('POST', '/api/roll-views', { body })

/** Removes a saved search. */
export const removeView = (id: string, body: RemoveViewBody) =>
  send<SavedView>('DELETE', `/api/roll-views/${encodeURIComponent(id)}`, { body })

/** Withdraws a link. */
export const revokeOrderLink = (id: string, body: RevokeOrderLinkBody) =>
  send<OrderRecord>('POST', `/api/order-links/${encodeURIComponent(id)}/revoke`, { body })

/** How far the rolls of an order are, in words; nothing else. */
export const orderStanding = (token: string) =>
  send<OrderStanding>('GET', `/api/order-links/${encodeURIComponent(token)}`)

/** What a run took of its baths, by the prices on their packages. */
export const costOfRun = (id: string) => send<RunCost>('GET', `/api/runs/${encodeURIComponent(id)}/cost`)

/** Where to open: Paired stickers to print: two a roll, one for the roll and one for its envelope. */
export const rollStickersAddress = (query: RollStickersQuery = {}): string => address('/api/rolls/stickers.pdf', query)

/** The whole register of rolls: their ways, orders and films. */
export const exportRegister = () => send<RollRegister>('GET', '/api/rolls/register')

/** Takes an exported register in, all of it or nothing; what is there already stays. */
export const importRegister = (body: ImportRegisterInput) =>
  send<ImportedRegister>('POST', '/api/rolls/register', { body })

/** Where to open: The same as a table (RFC 4180). */
export const exportRegisterTableAddress = (): string => address('/api/rolls/register.csv')

/** The bench, its settings and who is asking. */
export const getBench = () => send<BenchView>('GET', '/api/bench')

/** Changes the settings of the bench. */
export const changeSettings = (body: SettingsInput) => send<BenchView>('PUT', '/api/bench', { body })

/** Opens the demo bench, all invented. */
export const openDemo = (body: OpenDemoBody) => send<DemoResult>('POST', '/api/demo', { body })

/** Removes the demo bench and everything on it. */
export const removeDemo = (body: RemoveDemoBody) => send<DemoResult>('DELETE', '/api/demo', { body })

/** Where to open: Everything kept, as one file. */
export const backupAddress = (): string => address('/api/backup')

/** Puts a backup in place of everything kept. */
export const restore = (body: Blob | string) => send<RestoreResult>('POST', '/api/restore', { body })

/** Makes a one-time code to pair a phone. */
export const newPairingCode = (body: NewPairingCodeBody) => send<PairingCode>('POST', '/api/pairing-codes', { body })

/** Pairs this device by a one-time code. */
export const pair = (body: PairInput) => send<DeviceView>('POST', '/api/pair', { body })

/** The paired devices. */
export const listDevices = () => send<Devices>('GET', '/api/devices')

/** Ends the pairing of a device. */
export const removeDevice = (id: string, body: RemoveDeviceBody) =>
  send<Devices>('DELETE', `/api/devices/${encodeURIComponent(id)}`, { body })
