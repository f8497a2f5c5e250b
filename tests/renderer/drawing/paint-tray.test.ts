import { createHash } from 'node:crypto'
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest'
import type { Brush } from '../../../renderer/drawing/bead-look.ts'
import { paintTray } from '../../../renderer/drawing/paint-tray.ts'

/** An image without pixels: what is proved here is what is put where, in which order. */
class Image {
  readonly width: number
  readonly height: number
  constructor(width: number, height: number) {
    this.width = width
    this.height = height
  }
  getContext(): null {
    return null
  }
}

class Line {
  readonly steps: string[] = []
  moveTo(...to: number[]): void {
    this.steps.push(`M${to.join(' ')}`)
  }
  bezierCurveTo(...to: number[]): void {
    this.steps.push(`C${to.join(' ')}`)
  }
}

beforeAll(() => {
  vi.stubGlobal('OffscreenCanvas', Image)
  vi.stubGlobal('Path2D', Line)
})
afterAll(() => vi.unstubAllGlobals())

/** A brush that writes down what is painted; images are told apart by the order they first come in. */
function writingBrush() {
  const told: string[] = []
  const images: Image[] = []
  const brush = {
    lineWidth: 0,
    strokeStyle: '',
    drawImage(image: Image, x: number, y: number) {
      if (!images.includes(image)) images.push(image)
      told.push(`${images.indexOf(image)} ${image.width}x${image.height} ${x},${y}`)
    },
    stroke(line: Line) {
      told.push(`${this.strokeStyle} ${this.lineWidth} ${line.steps.join('')}`)
    },
  }
  return { brush: brush as unknown as Brush, told }
}

/** What is painted, written down and summed up. */
function painted(width: number, height: number): string {
  const { brush, told } = writingBrush()
  for (const _ of paintTray(brush, width, height)) void _
  return createHash('sha256').update(told.join('\n')).digest('hex').slice(0, 16)
}

describe('paintTray', () => {
  // Summed up from the tray as it was painted in one go.
  it.each([
    [736, 773, 'fcd7dd904246f46a'],
    [1376, 1080, '09c0f3829d297035'],
    [300, 900, '659d3817602077c7'],
  ])('puts the same beads at the same places in the same order, %i x %i', (width, height, sum) => {
    expect(painted(width, height)).toBe(sum)
    expect(painted(width, height)).toBe(sum)
  })

  it('paints no more than one bead of the heaps in a step, and the diamond in one once its beads are ready', () => {
    const { brush, told } = writingBrush()
    const perStep: number[] = []
    for (const _ of paintTray(brush, 736, 773)) perStep.push(told.length)
    const inHeaps = perStep.findLastIndex((count, at) => count > (perStep[at - 1] ?? 0)) + 1
    expect(perStep.slice(0, inHeaps)).toEqual(Array.from({ length: inHeaps }, (_, at) => at + 1))
    expect(inHeaps).toBe(255)
    // Its beads are made ready without a mark on the tray.
    expect(new Set(perStep.slice(inHeaps))).toEqual(new Set([inHeaps]))
    expect(perStep.length - inHeaps).toBeGreaterThan(200)
    expect(told.length).toBeGreaterThan(inHeaps)
  })
})
