import type { ReactNode } from 'react'
import { EmptyPicture, type EmptyPictureName } from './empty-pictures.tsx'
import './empty-state.css'

/** A place with nothing in it yet: one picture, one sentence that teaches, one action. */
export function EmptyState({
  picture,
  children,
  action,
}: Readonly<{ picture: EmptyPictureName; children: ReactNode; action?: ReactNode }>) {
  return (
    <div className="empty">
      <EmptyPicture name={picture} />
      <p className="empty-sentence">{children}</p>
      {action}
    </div>
  )
}
