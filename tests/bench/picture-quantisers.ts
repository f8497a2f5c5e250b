import gifenc from 'gifenc'
import { applyPaletteSync, buildPaletteSync, utils } from 'image-q'
import quantize from 'quantize'

import { hexOfRgb } from '../../shared-core/colour/srgb.ts'

/** Bytes r, g, b, a of some pixels. */
export type Pixels = Readonly<{ rgba: Uint8ClampedArray; width: number; height: number }>

/** What a library made of cells: its palette, and each cell's colour of it as r, g, b, a. */
export type Reduced = Readonly<{ palette: readonly string[]; mapped: Uint8Array }>

/** A general-purpose library: chooses a palette from `source` and gives each of `cells` a colour of it. */
export type Quantiser = Readonly<{
  name: string
  reduce: (source: Pixels, cells: Pixels, colours: number) => Reduced
}>

function imageQ(palette: 'wuquant' | 'neuquant'): Quantiser['reduce'] {
  return (source, cells, colours) => {
    const container = ({ rgba, width, height }: Pixels) =>
      utils.PointContainer.fromUint8Array(rgba, width, height)
    const built = buildPaletteSync([container(source)], {
      colors: colours,
      paletteQuantization: palette,
      colorDistanceFormula: 'euclidean',
    })
    const mapped = applyPaletteSync(container(cells), built, {
      colorDistanceFormula: 'euclidean',
      imageQuantization: 'nearest',
    })
    const points = built.getPointContainer().getPointArray()
    return {
      palette: points.map(({ r, g, b }) => hexOfRgb({ r, g, b })),
      mapped: mapped.toUint8Array(),
    }
  }
}

type Triple = [number, number, number]

function* triples({ rgba }: Pixels): Generator<Triple> {
  for (let i = 0; i < rgba.length; i += 4) {
    yield [rgba[i] as number, rgba[i + 1] as number, rgba[i + 2] as number]
  }
}

const hexes = (palette: readonly Triple[]) => palette.map(([r, g, b]) => hexOfRgb({ r, g, b }))

function medianCut(source: Pixels, cells: Pixels, colours: number): Reduced {
  const map = quantize([...triples(source)], colours)
  if (map === false) throw new Error('quantize refused the picture')
  const mapped = new Uint8Array(cells.rgba.length)
  let at = 0
  for (const colour of triples(cells)) {
    mapped.set(map.map(colour), at)
    at += 4
  }
  return { palette: hexes(map.palette()), mapped }
}

function pairwiseNearest(source: Pixels, cells: Pixels, colours: number): Reduced {
  const palette = gifenc.quantize(source.rgba, colours)
  const indexes = gifenc.applyPalette(cells.rgba, palette)
  const mapped = new Uint8Array(cells.rgba.length)
  for (let i = 0; i < indexes.length; i++) {
    const [r, g, b] = palette[indexes[i] as number] as Triple
    mapped[4 * i] = r
    mapped[4 * i + 1] = g
    mapped[4 * i + 2] = b
  }
  return { palette: hexes(palette), mapped }
}

/** The libraries, each called the quickest way it offers. */
export const quantisers: readonly Quantiser[] = [
  { name: 'image-q, Wu', reduce: imageQ('wuquant') },
  { name: 'image-q, NeuQuant', reduce: imageQ('neuquant') },
  { name: 'quantize, median cut', reduce: medianCut },
  { name: 'gifenc, pairwise nearest', reduce: pairwiseNearest },
]
