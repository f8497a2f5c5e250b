import type { ReactNode } from 'react'

/** What an empty room shows: each drawn by us with a few strokes and one lit bead. */
export type EmptyPictureName =
  | 'strand'
  | 'tray'
  | 'tubes'
  | 'calendar'
  | 'shelf'
  | 'needle'
  | 'scale'
  | 'ledger'

const bead = (x: number, y: number) => (
  <g className="empty-bead">
    <rect x={x - 7} y={y - 8} width="14" height="16" rx="4" />
    <path d={`M${x - 3.5} ${y - 4.5}v6`} />
  </g>
)

const pictures: Readonly<Record<EmptyPictureName, ReactNode>> = {
  strand: (
    <>
      <path d="M10 28C50 28 50 76 100 76S150 40 190 40" />
      <rect x="34" y="28" width="14" height="16" rx="4" transform="rotate(38 41 36)" />
      <rect x="58" y="54" width="14" height="16" rx="4" transform="rotate(52 65 62)" />
      <rect x="124" y="62" width="14" height="16" rx="4" transform="rotate(-28 131 70)" />
      {bead(100, 76)}
    </>
  ),
  tray: (
    <>
      <path d="M20 44h160l-14 46H34ZM28 58h144" />
      <path d="M100 16v8M78 22l5 6M122 22l-5 6" />
      <circle cx="64" cy="74" r="5" />
      <circle cx="82" cy="79" r="5" />
      <circle cx="126" cy="76" r="5" />
      <circle cx="142" cy="71" r="5" />
      {bead(102, 73)}
    </>
  ),
  tubes: (
    <>
      <path d="M50 22h24v62a6 6 0 0 1-6 6H56a6 6 0 0 1-6-6ZM46 22h32M88 22h24v62a6 6 0 0 1-6 6H94a6 6 0 0 1-6-6ZM84 22h32M126 22h24v62a6 6 0 0 1-6 6h-12a6 6 0 0 1-6-6ZM122 22h32" />
      <path d="M50 58h24M88 44h24M126 72h24" />
      {bead(100, 72)}
    </>
  ),
  calendar: (
    <>
      <path d="M44 26h112v66H44ZM44 44h112M64 18v14M136 18v14M72 44v48M100 44v48M128 44v48M44 68h112" />
      {bead(114, 80)}
    </>
  ),
  shelf: (
    <>
      <path d="M24 86h152M40 86v10M160 86v10M62 86V62l10-10 10 10v24M118 86V52h22v34M118 62h22" />
      <path d="M100 30v18" />
      {bead(100, 56)}
    </>
  ),
  needle: (
    <>
      <path d="M24 88 158 25l17-6-14 11ZM157 28l8-4" />
      <path d="M161 26c22 4 24 22 2 28s-58 2-66 22 22 24 40 10" />
      {bead(98, 72)}
    </>
  ),
  scale: (
    <>
      <path d="M40 92h120l-8-26H48ZM84 92V80h32v12M56 66c0-8 88-8 88 0" />
      <path d="M92 86h16" />
      {bead(100, 48)}
    </>
  ),
  ledger: (
    <>
      <path d="M100 30c-16-10-44-8-56-2v60c12-6 40-8 56 2 16-10 44-8 56-2V28c-12-6-40-8-56 2ZM100 30v60M56 46c10-3 22-3 32 1M56 60c10-3 22-3 32 1M112 61c10-4 22-4 32-1" />
      {bead(128, 46)}
    </>
  ),
}

/** The picture of an empty room; the sentence beside it says everything, so it is hidden from readers. */
export function EmptyPicture({ name }: Readonly<{ name: EmptyPictureName }>) {
  return (
    <svg
      className="empty-picture"
      viewBox="0 0 200 108"
      width="240"
      height="130"
      aria-hidden="true"
    >
      {pictures[name]}
    </svg>
  )
}
