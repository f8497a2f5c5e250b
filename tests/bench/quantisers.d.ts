// Two libraries that come without types: the parts the picture bench calls.

declare module 'gifenc' {
  type Colour = [number, number, number]
  const gifenc: {
    quantize(rgba: Uint8Array | Uint8ClampedArray, colours: number): Colour[]
    applyPalette(rgba: Uint8Array | Uint8ClampedArray, palette: Colour[]): Uint8Array
  }
  export default gifenc
}

declare module 'quantize' {
  type Colour = [number, number, number]
  type ColourMap = { palette(): Colour[]; map(colour: Colour): Colour }
  export default function quantize(colours: Colour[], most: number): ColourMap | false
}
