import { drawThumbnail, THUMBNAIL_MARGIN } from '../../../drawing/draw-thumbnail.ts'
import { fitView, type SizePx } from '../../../drawing/view.ts'
import type { Assembly } from './assemble.ts'
import { paintFindings } from './finding.ts'

/** Draws a whole assembly, findings and all, fitted on a canvas of a CSS size. */
export function drawAssembly(canvas: HTMLCanvasElement, assembly: Assembly, size: SizePx): void {
  drawThumbnail(canvas, assembly.scene, size)
  const brush = canvas.getContext('2d')
  if (brush === null || assembly.findings.length === 0) return
  const { xMm, yMm, scale } = fitView(assembly.scene, canvas, THUMBNAIL_MARGIN)
  paintFindings(brush, assembly.findings, {
    x: (mm) => (mm - xMm) * scale,
    y: (mm) => (mm - yMm) * scale,
    scale,
  })
}
