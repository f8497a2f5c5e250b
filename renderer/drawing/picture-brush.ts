let isUnaided: boolean | undefined

/**
 * The brush of a canvas that is shown.
 *
 * Without a graphics processor the page copies a whole canvas at every change, several milliseconds each;
 * one that is not held in step with the page is handed over as it is.
 */
export function pictureBrush(canvas: HTMLCanvasElement): CanvasRenderingContext2D | null {
  isUnaided ??= isWithoutGraphics()
  return canvas.getContext('2d', { desynchronized: isUnaided })
}

function isWithoutGraphics(): boolean {
  const probe = document.createElement('canvas').getContext('webgl', {
    failIfMajorPerformanceCaveat: true,
  })
  probe?.getExtension('WEBGL_lose_context')?.loseContext()
  return probe === null
}
