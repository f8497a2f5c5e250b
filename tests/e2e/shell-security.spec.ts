import { expect, test } from '@playwright/test'

import type { Bridge } from '../../shared-core/contract/bridge.ts'
import { openStudio, type Studio } from './studio.ts'

// Each test tries, from inside the page, what a hostile file or script would try.

type Page = Window & Readonly<{ tallystrand: Bridge }>

let studio: Studio
test.describe.configure({ mode: 'default' })
test.beforeAll(async () => {
  studio = await openStudio()
})
test.afterAll(async () => {
  await studio.close()
})

test('the page has no Node', async () => {
  const seen = await studio.page.evaluate(() =>
    ['require', 'process', 'module', 'Buffer', 'global', '__dirname'].filter(
      (name) => name in globalThis,
    ),
  )
  expect(seen).toEqual([])
})

test('the window is sandboxed, isolated and without Node integration', async () => {
  const settings = await studio.app.evaluate(({ BrowserWindow }) => {
    const [window] = BrowserWindow.getAllWindows()
    // Not in the published types, but the only way to read what a window was made with.
    const contents = window?.webContents as unknown as {
      getLastWebPreferences: () => Record<string, unknown>
    }
    const { sandbox, contextIsolation, nodeIntegration, webSecurity, webviewTag } =
      contents.getLastWebPreferences()
    return { sandbox, contextIsolation, nodeIntegration, webSecurity, webviewTag }
  })
  expect(settings).toEqual({
    sandbox: true,
    contextIsolation: true,
    nodeIntegration: false,
    webSecurity: true,
    webviewTag: false,
  })
})

test('the bridge offers five functions and nothing of Electron', async () => {
  const keys = await studio.page.evaluate(() =>
    Object.keys((window as unknown as Page).tallystrand).toSorted(),
  )
  expect(keys).toEqual(['onCommand', 'onService', 'request', 'sayInteractive', 'shell'])
})

test('the page cannot put another bridge in the place of its own', async () => {
  const kept = await studio.page.evaluate(() => {
    const page = window as unknown as { tallystrand: unknown }
    const before = page.tallystrand
    try {
      page.tallystrand = {}
    } catch {
      // A thrown TypeError is as good an answer as silence.
    }
    return page.tallystrand === before
  })
  expect(kept).toBe(true)
})

test('an inline script does not run', async () => {
  const ran = await studio.page.evaluate(async () => {
    const script = document.createElement('script')
    script.textContent = 'window.inlineRan = true'
    document.head.append(script)
    await new Promise((resolve) => setTimeout(resolve, 100))
    return 'inlineRan' in window
  })
  expect(ran).toBe(false)
})

test('an inline event handler does not run', async () => {
  const ran = await studio.page.evaluate(async () => {
    const holder = document.createElement('div')
    holder.innerHTML = '<img src="data:image/png;base64,x" onerror="window.handlerRan = true">'
    document.body.append(holder)
    await new Promise((resolve) => setTimeout(resolve, 200))
    holder.remove()
    return 'handlerRan' in window
  })
  expect(ran).toBe(false)
})

test('text cannot be evaluated as a script', async () => {
  // Evaluated by a script of the page itself: the tool that drives this test stands above the policy.
  const outcome = await studio.page.evaluate(
    () =>
      new Promise<string>((resolve) => {
        document.addEventListener('securitypolicyviolation', (event) => resolve(event.blockedURI), {
          once: true,
        })
        setTimeout('window.timerRan = true', 0)
        setTimeout(() => resolve('timerRan' in window ? 'ran' : 'nothing happened'), 500)
      }),
  )
  expect(outcome).toBe('eval')
})

for (const address of [
  'http://127.0.0.1:9/',
  'https://example.invalid/',
  'file:///etc/passwd',
  'data:text/plain,hello',
]) {
  test(`the page cannot fetch ${address}`, async () => {
    const outcome = await studio.page.evaluate(
      (url) =>
        fetch(url).then(
          () => 'answered',
          () => 'refused',
        ),
      address,
    )
    expect(outcome).toBe('refused')
  })
}

test('the page cannot navigate away', async () => {
  const before = studio.page.url()
  for (const address of [
    'https://example.invalid/',
    'file:///etc/passwd',
    'data:text/html,hello',
  ]) {
    await studio.page.evaluate((url) => {
      window.location.href = url
    }, address)
    await studio.page.waitForTimeout(200)
    expect(studio.page.url()).toBe(before)
  }
})

test('a link cannot lead away', async () => {
  const before = studio.page.url()
  await studio.page.evaluate(() => {
    const link = document.createElement('a')
    link.href = 'https://example.invalid/'
    document.body.append(link)
    link.click()
    link.remove()
  })
  await studio.page.waitForTimeout(200)
  expect(studio.page.url()).toBe(before)
})

test('no second window opens', async () => {
  const opened = await studio.page.evaluate(() => [
    window.open('https://example.invalid/') === null,
    window.open('about:blank') === null,
    window.open(window.location.href) === null,
  ])
  expect(opened).toEqual([true, true, true])
  const windows = await studio.app.evaluate(
    ({ BrowserWindow }) => BrowserWindow.getAllWindows().length,
  )
  expect(windows).toBe(1)
})

test('a frame cannot be put into the page', async () => {
  const blocked = await studio.page.evaluate(
    () =>
      new Promise<string>((resolve) => {
        document.addEventListener(
          'securitypolicyviolation',
          (event) => resolve(event.effectiveDirective),
          { once: true },
        )
        const frame = document.createElement('iframe')
        frame.src = 'data:text/html,<p>inside</p>'
        document.body.append(frame)
        setTimeout(() => resolve('nothing was blocked'), 1_000)
      }),
  )
  expect(blocked).toBe('frame-src')
})

test('every permission is denied', async () => {
  const states = await studio.page.evaluate(async () => {
    const names = ['geolocation', 'notifications', 'camera', 'microphone'] as const
    const found = await Promise.all(
      names.map((name) => navigator.permissions.query({ name: name as PermissionName })),
    )
    return found.map(({ state }) => state)
  })
  expect(states).toEqual(['denied', 'denied', 'denied', 'denied'])
})

test('a call that is not in the contract is refused', async () => {
  const answers = await studio.page.evaluate(async () => {
    const { tallystrand } = window as unknown as { tallystrand: LooseBridge }
    type LooseBridge = Record<
      'request' | 'shell',
      (name: unknown, input: unknown) => Promise<unknown>
    >
    return Promise.all([
      tallystrand.request('store.readEverything', {}),
      tallystrand.request('__proto__', {}),
      tallystrand.request('file.pick', {}),
      tallystrand.request(null, {}),
      tallystrand.shell('workshop.read', {}),
      tallystrand.shell('toString', {}),
    ])
  })
  for (const answer of answers) {
    expect(answer).toMatchObject({ ok: false, error: { code: 'unknown-call' } })
  }
})

test('a shell call with an input of another shape is refused and names the field', async () => {
  const answer = await studio.page.evaluate(async () => {
    const { tallystrand } = window as unknown as Page
    return tallystrand.shell('file.pick', {
      title: 'Choose a chart',
      filters: [{ name: 'Chart', extensions: ['../csv'] }],
    })
  })
  expect(answer).toMatchObject({
    ok: false,
    error: { code: 'bad-input', field: 'filters.0.extensions.0' },
  })
})

for (const path of [
  '/../package.json',
  '/..%2fmain%2fmain.cjs',
  '/%2e%2e/main/main.cjs',
  '/..%5cmain%5cmain.cjs',
  '//etc/passwd',
  '/%2fetc%2fpasswd',
  '/assets/..%2f..%2fmain%2fmain.cjs',
  '/%00/index.html',
  '/%E0%A4%A',
  '/',
]) {
  test(`the scheme serves nothing for ${path}`, async () => {
    const status = await studio.app.evaluate(
      async ({ net }, url) => (await net.fetch(url)).status,
      `tallystrand://studio${path}`,
    )
    expect(status).toBe(404)
  })
}

test('the scheme serves nothing for another host, and the page for its own', async () => {
  const statuses = await studio.app.evaluate(async ({ net }) => {
    const other = await net.fetch('tallystrand://elsewhere/index.html')
    const ours = await net.fetch('tallystrand://studio/index.html')
    return [other.status, ours.status, ours.headers.get('content-security-policy')]
  })
  expect(statuses).toEqual([404, 200, expect.stringContaining("default-src 'none'")])
})
