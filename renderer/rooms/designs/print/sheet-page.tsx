import { screenRatio } from '../../../drawing/screen-ratio.ts'
import '@fontsource/literata/latin-600.css'
import '@fontsource/literata/latin-ext-600.css'
import { useEffect, useRef } from 'react'
import { useCall } from '../../../app/use-call.ts'
import { RefusalNotice } from '../../../ui/notice.tsx'
import { useSeen } from '../gallery/use-seen.ts'
import { PAGE_FACES, paintPage, type SheetPage } from './paint-page.ts'
import type { SheetWish } from './sheet-wish.ts'

/** One page as it will be printed, asked for when it comes into view. */
export function SheetPageView({
  wish,
  number,
  pages,
  widthPx,
  shape,
}: Readonly<{
  wish: SheetWish
  number: number
  pages: number
  widthPx: number
  /** Height by width, while the page is not here yet. */
  shape: number
}>) {
  const place = useRef<HTMLLIElement>(null)
  const isSeen = useSeen(place)
  const { value, refusal } = useCall('designs.sheetPage', isSeen ? { ...wish, number } : null)
  const heightPx = Math.round(widthPx * shape)
  return (
    <li ref={place} className="print-page" style={{ width: widthPx }}>
      {refusal !== undefined && <RefusalNotice refusal={refusal} />}
      {value === undefined ? (
        <div className="print-paper" style={{ height: heightPx }} />
      ) : (
        <PaintedPage
          page={value.page}
          widthPx={widthPx}
          label={pageLabel(value.page, number, pages)}
        />
      )}
      <p className="print-number">{`Page ${number} of ${pages}`}</p>
    </li>
  )
}

function PaintedPage({
  page,
  widthPx,
  label,
}: Readonly<{ page: SheetPage; widthPx: number; label: string }>) {
  const canvas = useRef<HTMLCanvasElement>(null)
  const heightPx = Math.round((widthPx * page.heightMm) / page.widthMm)
  useEffect(() => {
    let isLeft = false
    void facesAtHand().then(() => {
      const brush = canvas.current?.getContext('2d')
      if (isLeft || canvas.current === null || !brush) return
      const ratio = screenRatio()
      canvas.current.width = Math.round(widthPx * ratio)
      canvas.current.height = Math.round(heightPx * ratio)
      paintPage(brush, page, canvas.current.width / page.widthMm)
    })
    return () => {
      isLeft = true
    }
  }, [page, widthPx, heightPx])
  return (
    <canvas
      ref={canvas}
      className="print-paper"
      role="img"
      aria-label={label}
      style={{ width: widthPx, height: heightPx }}
    />
  )
}

function facesAtHand(): Promise<unknown> {
  const faces = Object.values(PAGE_FACES).map((face) => face.replace('{size}', '12px'))
  return Promise.all(faces.map((face) => document.fonts.load(face)))
}

/** What a page is, by the titles printed on it. */
function pageLabel({ marks }: SheetPage, number: number, pages: number): string {
  const titles = marks.flatMap((mark) => {
    return mark.kind === 'text' && mark.face === 'title' ? [mark.text] : []
  })
  const what = titles.length === 0 ? '' : `: ${titles.join(', ')}`
  return `Page ${number} of ${pages}${what}`
}
