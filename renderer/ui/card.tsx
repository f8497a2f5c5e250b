import type { ComponentProps, ReactNode } from 'react'
import './card.css'

/** One of a list of pictures with words beside: a `CardLink` in it makes the whole card open. */
export function Card({ className = '', ...item }: ComponentProps<'li'>) {
  return <li {...item} className={`card ${className}`} />
}

/** The name on a card, which leads where the whole card leads. */
export function CardLink({ href, children }: Readonly<{ href: string; children: ReactNode }>) {
  return (
    <a className="card-link" href={href}>
      {children}
    </a>
  )
}
