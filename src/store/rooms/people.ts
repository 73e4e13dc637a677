import type { Device, PeoplePort } from '../../lab/index.js'
import type { Db, DeviceRow } from '../schema.js'

/** Paired devices of one bench and the codes that pair them, in one transaction. */
export function peopleRoom(db: Db, bench: string): PeoplePort {
  return {
    async addPairingCode(code, at) {
      await db.deleteFrom('pairing_codes').where('bench_id', '=', bench).where('expires_at', '<=', at).execute()
      await db
        .insertInto('pairing_codes')
        .values({ bench_id: bench, code_hash: code.codeHash, made_at: at, expires_at: code.expiresAt, used_at: null })
        .execute()
    },
    async useCode(codeHash, at) {
      const used = await db
        .updateTable('pairing_codes')
        .set({ used_at: at })
        .where('bench_id', '=', bench)
        .where('code_hash', '=', codeHash)
        .where('used_at', 'is', null)
        .where('expires_at', '>', at)
        .executeTakeFirst()
      return used.numUpdatedRows === 1n
    },
    async addDevice(device) {
      await db.insertInto('devices').values(deviceRow(bench, device)).execute()
    },
    async deviceByToken(tokenHash) {
      const row = await devices(db, bench).where('token_hash', '=', tokenHash).executeTakeFirst()
      return row ? deviceRecord(row) : null
    },
    async devices() {
      return (await devices(db, bench).orderBy('paired_at').orderBy('id').execute()).map(deviceRecord)
    },
    async removeDevice(id, at) {
      const removed = await db
        .updateTable('devices')
        .set({ removed_at: at })
        .where('bench_id', '=', bench)
        .where('id', '=', id)
        .where('removed_at', 'is', null)
        .executeTakeFirst()
      return removed.numUpdatedRows === 1n
    },
    async seen(id, at) {
      await db
        .updateTable('devices')
        .set({ last_seen_at: at })
        .where('bench_id', '=', bench)
        .where('id', '=', id)
        .execute()
    },
  }
}

/** Devices whose pairing has not ended; the rows of the others stay as a record. */
const devices = (db: Db, bench: string) =>
  db.selectFrom('devices').selectAll().where('bench_id', '=', bench).where('removed_at', 'is', null)

const deviceRow = (bench: string, device: Device): DeviceRow => ({
  bench_id: bench,
  id: device.id,
  name: device.name,
  token_hash: device.tokenHash,
  paired_at: device.pairedAt,
  last_seen_at: device.lastSeenAt,
  removed_at: device.removedAt,
})

const deviceRecord = (row: DeviceRow): Device => ({
  id: row.id,
  name: row.name,
  tokenHash: row.token_hash,
  pairedAt: row.paired_at,
  lastSeenAt: row.last_seen_at,
  removedAt: row.removed_at,
})
