import type { Bridge } from '../shared-core/contract/bridge.ts'

const bridge = (window as unknown as Readonly<{ tallystrand: Bridge }>).tallystrand
const root = document.getElementById('root')
const { value } = await bridge
  .shell('studio.describe', {})
  .then((a) => (a.ok ? a : { value: undefined }))
if (root !== null) root.textContent = `Tallystrand ${value?.version ?? ''}`
bridge.sayInteractive()
