import { readFile } from 'node:fs/promises'
import { extname, resolve, sep } from 'node:path'

import { type ProtocolRequest, type ProtocolResponse, protocol } from 'electron'

/** Where the window's page comes from: a scheme of our own instead of file paths or a web server. */
export const appOrigin = 'tallystrand://studio'

const mediaTypes: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
  '.woff': 'font/woff',
  '.ttf': 'font/ttf',
  '.wasm': 'application/wasm',
  '.json': 'application/json; charset=utf-8',
}

const policy = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join('; ')

/** Declares the scheme; has to run before the app is ready. */
export function declareAppScheme(): void {
  protocol.registerSchemesAsPrivileged([
    {
      scheme: 'tallystrand',
      privileges: { standard: true, secure: true, supportFetchAPI: true, codeCache: true },
    },
  ])
}

/**
 * Serves the files under `root`, and nothing outside it.
 *
 * By buffers, the older of Electron's two ways: wrapping each file as a web response and reading it
 * back as a stream took a tenth of a second of every start.
 */
export function serveAppScheme(root: string): void {
  protocol.registerBufferProtocol('tallystrand', (request, reply) => {
    void answer(root, request).then(reply)
  })
}

async function answer(
  root: string,
  { method, url }: Pick<ProtocolRequest, 'method' | 'url'>,
): Promise<ProtocolResponse> {
  const file = findFile(root, url)
  const mediaType = file === undefined ? undefined : mediaTypes[extname(file)]
  if (method !== 'GET' || file === undefined || mediaType === undefined) return notFound()
  try {
    return { data: await readFile(file), ...described(mediaType) }
  } catch {
    return notFound()
  }
}

/** The file a URL names, or undefined when it is not ours or would leave `root`. */
export function findFile(root: string, url: string): string | undefined {
  const { host, pathname } = new URL(url)
  if (host !== 'studio') return undefined
  const file = resolve(root, `.${decode(pathname)}`)
  return file.startsWith(resolve(root) + sep) ? file : undefined
}

function decode(pathname: string): string {
  try {
    return decodeURIComponent(pathname)
  } catch {
    return pathname
  }
}

function described(mediaType: string): Pick<ProtocolResponse, 'mimeType' | 'headers'> {
  return {
    mimeType: mediaType.split(';', 1)[0] ?? '',
    headers: {
      'content-type': mediaType,
      'content-security-policy': policy,
      'x-content-type-options': 'nosniff',
      'referrer-policy': 'no-referrer',
    },
  }
}

function notFound(): ProtocolResponse {
  return {
    statusCode: 404,
    data: Buffer.from('Not found'),
    ...described('text/plain; charset=utf-8'),
  }
}
