import qrcode from 'qrcode-generator'

/** A QR code's modules, row by row; `size` is the side in modules without the quiet zone. */
export type QrCode = Readonly<{ size: number; dark: readonly boolean[] }>

/** Encodes a text as a QR code with a quarter of it recoverable. @source ISO/IEC 18004, level Q */
export function qrCode(text: string): QrCode {
  const code = qrcode(0, 'Q')
  code.addData(text)
  code.make()
  const size = code.getModuleCount()
  const dark = Array.from({ length: size * size }, (_, at) =>
    code.isDark(Math.floor(at / size), at % size),
  )
  return { size, dark }
}
