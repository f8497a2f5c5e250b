import { join } from 'node:path'

import { loadCompiled } from './load-compiled.ts'
import { servePort } from './port.ts'

// The entry of the utility process: the file to open, and where compiled code may be kept.
const [file = '', compiledFolder = ''] = process.argv.slice(2)
const { openService } = loadCompiled(
  join(import.meta.dirname, '..', 'service', 'service.cjs'),
  compiledFolder,
) as typeof import('./open-service.ts')
const service = openService(file)

process.parentPort.on('message', ({ data, ports: [port] }) => {
  if (data.kind === 'connect' && port !== undefined) {
    servePort(port, async (name, input) => (await service).answer(name, input))
  }
  if (data.kind === 'close') void closeAndExit()
})

async function closeAndExit(): Promise<void> {
  await (await service).close()
  process.exit(0)
}
