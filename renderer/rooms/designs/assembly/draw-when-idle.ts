/** What one frame may spend on small pictures, ms: the page stays quick while a wall of them is drawn. */
const FRAME_MS = 8

const waiting = new Set<() => void>()
let isAsked = false

/** Draws soon, a few pictures a frame; the answer takes it back before it is drawn. */
export function drawWhenIdle(draw: () => void): () => void {
  waiting.add(draw)
  if (!isAsked) {
    isAsked = true
    requestAnimationFrame(drawSome)
  }
  return () => waiting.delete(draw)
}

function drawSome(): void {
  const until = performance.now() + FRAME_MS
  for (const draw of waiting) {
    waiting.delete(draw)
    draw()
    if (performance.now() > until) break
  }
  isAsked = waiting.size > 0
  if (isAsked) requestAnimationFrame(drawSome)
}
