import type { ReactNode } from 'react'
import './badge.css'

/** What a state means to the maker. Each tone has a shape of its own, so that colour is never the only sign. */
export type BadgeTone = 'good' | 'attention' | 'bad' | 'quiet' | 'busy'

const shapes: Readonly<Record<BadgeTone, string>> = {
  good: 'M2 6.5 5 9.500 10.500 2.500',
  attention: 'M6 1.500 11 10.500H1Z',
  bad: 'M2 2l8 8M10 2 2 10',
  quiet: 'M6 2a4 4 0 1 0 0 8 4 4 0 0 0 0-8Z',
  busy: 'M6 2a4 4 0 0 1 0 8Z',
}

/** A state in a word, with the shape of its tone. */
export function Badge({ tone, children }: Readonly<{ tone: BadgeTone; children: ReactNode }>) {
  return (
    <span className={`badge badge-${tone}`}>
      <svg viewBox="0 0 12 12" width="11" height="11" aria-hidden="true">
        <path d={shapes[tone]} />
      </svg>
      {children}
    </span>
  )
}
