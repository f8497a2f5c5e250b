const tickEverySeconds = 10

/** Progress goes to stderr, so that a command's own output stays clean for pipes. */
export function say(line) {
  process.stderr.write(`setup: ${line}\n`)
}

/** Announces a piece of work, shows that it is still going on, and says how long it took. */
export async function during(label, work) {
  const start = Date.now()
  const seconds = () => ((Date.now() - start) / 1000).toFixed(1)
  say(`${label} ...`)
  const tick = setInterval(() => say(`  still at it, ${seconds()} s`), tickEverySeconds * 1000)
  try {
    const result = await work()
    say(`${label}: done in ${seconds()} s`)
    return result
  } finally {
    clearInterval(tick)
  }
}
