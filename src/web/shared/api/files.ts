import type { RestoreResult } from './client.js'
import { send } from './transport.js'

/** Puts a backup file in place of everything kept. */
export const sendBackup = (file: Blob) => send<RestoreResult>('POST', '/api/restore', { body: file, writes: true })
