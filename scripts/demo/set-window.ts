import type { Studio } from '../../tests/e2e/studio.ts'

const size = { width: 1280, height: 800 }

/** The same window for every picture, whatever the screen. */
export async function setWindow({ app }: Studio): Promise<void> {
  await app.evaluate(({ BrowserWindow }, { width, height }) => {
    BrowserWindow.getAllWindows()[0]?.setContentSize(width, height)
  }, size)
}
