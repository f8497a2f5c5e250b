import module from 'node:module'

import { servePort } from './port.ts'

// The entry of the utility process. The service itself is loaded below, after the compile cache has
// been switched on (where the runtime has one), so that a second start finds it compiled.
module.enableCompileCache?.()
const [file = ''] = process.argv.slice(2)
const service = import('./open-service.ts').then(({ openService }) => openService(file))

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
