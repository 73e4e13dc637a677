import { TABLES } from '../../src/store/tables.js'

export type Row = Record<string, string | number | null>
/** Every row of every table, by table. */
export type Data = Record<string, Row[]>

export const TABLE_NAMES: readonly string[] = TABLES.map((table) => table.name)

export const rows = (data: Data, table: string, where: Row = {}): Row[] =>
  (data[table] ?? []).filter((row) => Object.entries(where).every(([column, value]) => row[column] === value))

/** What must hold after any kill, whatever was being written: a complaint for each thing that is only half there. */
export function halfWrites(data: Data): string[] {
  return [...halfRevisions(data), ...halfFeeds(data), ...halfSets(data), ...halfRuns(data), ...halfKeys(data)]
}

function halfRevisions(data: Data): string[] {
  const complaints: string[] = []
  for (const [records, revisions, id] of [
    ['reference_times', 'reference_time_revisions', 'time_id'],
    ['thermometers', 'thermometer_revisions', 'thermometer_id'],
    ['recipes', 'recipe_revisions', 'recipe_id'],
  ] as const) {
    const numbers = grouped(
      data[revisions],
      (row) => row[id],
      (row) => Number(row['revision']),
    )
    for (const { id: record } of rows(data, records))
      if (!countsFrom(1, numbers.get(record ?? null) ?? []))
        complaints.push(`${records} ${record}: revisions ${numbers.get(record ?? null)}`)
  }
  const positions = grouped(data['reference_time_points'], pointOf, (row) => Number(row['position']))
  for (const revision of rows(data, 'reference_time_revisions')) {
    const found = positions.get(pointOf(revision)) ?? []
    if (!countsFrom(0, found)) complaints.push(`time ${pointOf(revision)}: points ${found}`)
  }
  return complaints
}

const pointOf = (row: Row): string => `${row['time_id']} ${row['revision']}`

/** The feed is numbered without gap up to the bench's number, and tells each change of a record once. */
function halfFeeds(data: Data): string[] {
  const complaints: string[] = []
  const numbers = grouped(
    data['feed'],
    (row) => row['bench_id'],
    (row) => Number(row['seq']),
  )
  for (const bench of rows(data, 'benches')) {
    const found = numbers.get(bench['id'] ?? null) ?? []
    const whole = found.length === bench['feed_seq'] && (found.length === 0 || countsFrom(1, found))
    if (!whole) complaints.push(`bench ${bench['name']}: ${found.length} feed rows, number ${bench['feed_seq']}`)
  }
  const told = counted(data['feed'], (row) => row['subject'])
  for (const [subject, changes] of changesBySubject(data))
    if ((told.get(subject) ?? 0) !== changes)
      complaints.push(`${subject}: ${changes} changes, told ${told.get(subject) ?? 0} times`)
  return complaints
}

function changesBySubject(data: Data): Map<string | number | null, number> {
  const checked = new Map(rows(data, 'thermometer_checks').map((row) => [row['id'], row['thermometer_id']]))
  const subjects = [
    ...rows(data, 'reference_time_revisions').map((row) => row['time_id']),
    ...rows(data, 'thermometer_revisions').map((row) => row['thermometer_id']),
    ...rows(data, 'recipe_revisions').map((row) => row['recipe_id']),
    ...checked.values(),
    ...rows(data, 'thermometer_check_withdrawals').map((row) => checked.get(row['check_id'] ?? null)),
    ...rows(data, 'devices').flatMap((row) => (row['removed_at'] === null ? [row['id']] : [row['id'], row['id']])),
  ]
  return counted(
    subjects.map((subject) => ({ subject: subject ?? null })),
    (row) => row['subject'],
  )
}

/** A run has its reels, and as many events as its number says, numbered without gap. */
function halfRuns(data: Data): string[] {
  const numbers = grouped(
    data['run_events'],
    (row) => row['run_id'],
    (row) => Number(row['seq']),
  )
  const reels = counted(data['run_reels'], (row) => row['run_id'])
  return rows(data, 'runs').flatMap((run) => {
    const found = numbers.get(run['id'] ?? null) ?? []
    const whole = found.length === run['last_seq'] && (found.length === 0 || countsFrom(1, found))
    return whole && reels.has(run['id'] ?? null) ? [] : [`run ${run['id']}: events ${found}, number ${run['last_seq']}`]
  })
}

/** Class sets have all their checks; used pairing codes and devices belong together. */
function halfSets(data: Data): string[] {
  const complaints: string[] = []
  const sets = counted(
    rows(data, 'thermometer_checks').filter((row) => row['set_id'] !== null),
    (row) => row['set_id'],
  )
  for (const [set, checks] of sets)
    if (checks !== THERMOMETERS_IN_A_SET) complaints.push(`class set ${set}: ${checks} checks`)
  return complaints
}

/** How many thermometers the requests of these tests put into a class set. */
export const THERMOMETERS_IN_A_SET = 3

const halfKeys = (data: Data): string[] =>
  rows(data, 'write_keys', { response: null }).map((row) => `key ${row['key']}: taken, without an answer`)

function grouped<K, V>(
  list: readonly Row[] | undefined,
  key: (row: Row) => K | undefined,
  value: (row: Row) => V,
): Map<K | null, V[]> {
  const groups = new Map<K | null, V[]>()
  for (const row of list ?? []) {
    const group = groups.get(key(row) ?? null) ?? []
    group.push(value(row))
    groups.set(key(row) ?? null, group)
  }
  return groups
}

const counted = (
  list: readonly Row[] | undefined,
  key: (row: Row) => Row[string] | undefined,
): Map<Row[string], number> => new Map([...grouped(list, key, () => 1)].map(([name, ones]) => [name, ones.length]))

const countsFrom = (first: number, numbers: readonly number[]): boolean =>
  numbers.length > 0 && [...numbers].sort((a, b) => a - b).every((number, i) => number === first + i)
