// Written by scripts/generate-client.mjs from docs/openapi.json; changes made here are lost.
import { address, send } from './transport.js'

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

export type AddThermometerInput = ThermometerStatementInput

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

export type CorrectThermometerInput = {
  seen_revision: number
  statement: ThermometerStatementInput
}

export type CorrectTimeInput = {
  seen_revision: number
  statement: TimeStatementInput
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

export type Health = {
  status: 'ready'
  engine: 'sqlite' | 'postgres'
}

/** UUID version 7. */
export type Id = string

/** UUID version 7. */
export type IdInput = string

/** UTC, ISO 8601, milliseconds. */
export type Instant = string

export type KeepTimesInput = {
  times: TimeStatementInput[]
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

/** What was wrong, with the value, and what would be right. */
export type Problem = {
  code: string
  sentence: string
  details: Record<string, unknown>
  field?: string
  help: string
}

export type RestoreResult = {
  tables: number
  rows: number
  data_version: number
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

export type TemperatureRange = {
  from_c: number
  to_c: number
}

export type TemperatureRangeInput = {
  from_c: number
  to_c: number
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

/** Keeps one or more developing times. */
export const keepTimes = (body: KeepTimesInput) => send<TimeRecords>('POST', '/api/times', { body })

/** One developing time. */
export const getTime = (id: string) => send<TimeRecord>('GET', `/api/times/${encodeURIComponent(id)}`)

/** Corrects a developing time; the old one stays on record. */
export const correctTime = (id: string, body: CorrectTimeInput) =>
  send<TimeRecord>('PUT', `/api/times/${encodeURIComponent(id)}`, { body })

/** Removes a developing time; undo brings it back. */
export const removeTime = (id: string, body: RemoveTimeBody) =>
  send<TimeRecord>('DELETE', `/api/times/${encodeURIComponent(id)}`, { body })

/** Goes back to the state before the last change. */
export const undoTime = (id: string, body: UndoTimeBody) =>
  send<TimeRecord>('POST', `/api/times/${encodeURIComponent(id)}/undo`, { body })

/** The developing time at a temperature, with its factors and band. */
export const answerTime = (id: string, query: AnswerTimeQuery = {}) =>
  send<TimeAnswer>('GET', address(`/api/times/${encodeURIComponent(id)}/answer`, query))

/** Where to open: The time card of a film, to print. */
export const timeCardAddress = (id: string, query: TimeCardQuery = {}): string =>
  address(`/api/times/${encodeURIComponent(id)}/card.pdf`, query)

/** Reads a pasted table line by line; keeps nothing. */
export const readTable = (body: PastedTextInput) => send<PastedReading>('POST', '/api/times/read-table', { body })

/** All thermometers with their checks. */
export const listThermometers = () => send<ThermometerRecords>('GET', '/api/thermometers')

/** Adds a thermometer. */
export const addThermometer = (body: AddThermometerInput) =>
  send<ThermometerRecord>('POST', '/api/thermometers', { body })

/** Corrects what is said of a thermometer. */
export const correctThermometer = (id: string, body: CorrectThermometerInput) =>
  send<ThermometerRecord>('PUT', `/api/thermometers/${encodeURIComponent(id)}`, { body })

/** Removes a thermometer; undo brings it back. */
export const removeThermometer = (id: string, body: RemoveThermometerBody) =>
  send<ThermometerRecord>('DELETE', `/api/thermometers/${encodeURIComponent(id)}`, { body })

/** Goes back to the state before the last change. */
export const undoThermometer = (id: string, body: UndoThermometerBody) =>
  send<ThermometerRecord>('POST', `/api/thermometers/${encodeURIComponent(id)}/undo`, { body })

/** Notes one check of a thermometer. */
export const checkThermometer = (id: string, body: AddCheckInput) =>
  send<ThermometerRecord>('POST', `/api/thermometers/${encodeURIComponent(id)}/checks`, { body })

/** Withdraws a check that was wrong. */
export const withdrawCheck = (id: string, body: WithdrawCheckBody) =>
  send<ThermometerRecord>('POST', `/api/checks/${encodeURIComponent(id)}/withdraw`, { body })

/** Several thermometers in one beaker: offsets for all. */
export const addClassSet = (body: AddClassSetInput) => send<ClassSetResult>('POST', '/api/class-sets', { body })

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
