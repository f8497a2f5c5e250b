import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'

import { _electron } from '@playwright/test'

import { openDisplay } from './display.ts'
import { electronEnv, electronFlags, readRuntime, repo } from './runtime.ts'

// Draws resources/icon.svg at every size that desktops ask for: node scripts/run.mjs scripts/render-icons.ts
const sizes = [16, 24, 32, 48, 64, 128, 256, 512, 1024]
const svg = readFileSync(join(repo, 'resources', 'icon.svg'), 'utf8')

const display = await openDisplay()
const app = await _electron.launch({
  executablePath: readRuntime().executable,
  args: [...electronFlags(), join(repo, 'scripts', 'blank-app')],
  env: electronEnv(display.name),
})
const page = await app.firstWindow()
const folder = join(repo, 'resources', 'icons')
mkdirSync(folder, { recursive: true })
for (const size of sizes) {
  const url = await page.evaluate(drawAt, { svg, size })
  const png = Buffer.from(url.slice(url.indexOf(',') + 1), 'base64')
  writeFileSync(join(folder, `${size}x${size}.png`), png)
}
await app.close()
display.close()

async function drawAt({ svg, size }: Readonly<{ svg: string; size: number }>): Promise<string> {
  const image = new Image()
  image.src = `data:image/svg+xml;base64,${btoa(svg.replace('<svg ', `<svg width="${size}" height="${size}" `))}`
  await image.decode()
  const canvas = new OffscreenCanvas(size, size)
  canvas.getContext('2d')?.drawImage(image, 0, 0, size, size)
  const bytes = new Uint8Array(await (await canvas.convertToBlob()).arrayBuffer())
  return `data:image/png;base64,${btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(''))}`
}
