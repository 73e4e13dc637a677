import { instantText, ok } from '../../kernel/index.js'
import { importRegister, readRegister, registerTable, rollRegister } from '../../lab/index.js'
import { type Handlers, read, write } from '../call.js'

export const registerHandlers: Handlers<'exportRegister' | 'exportRegisterTable' | 'importRegister'> = {
  exportRegister: async (call) => ok(await read(call, rollRegister)),
  exportRegisterTable: async (call) => {
    const table = registerTable(await read(call, rollRegister))
    const day = instantText(call.house.clock.now()).slice(0, 10)
    return ok({ body: new TextEncoder().encode(table), fileName: `rolls-${day}.csv` })
  },
  importRegister: async (call) => {
    const register = await readRegister(call.body.text)
    return register.ok ? write(call, (context, rooms) => importRegister(context, rooms, register.value)) : register
  },
}
