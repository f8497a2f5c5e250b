import type { ReactNode } from 'react'
import type { Refusal } from '../../shared-core/refusal.ts'
import { Icon } from './icon.tsx'
import './notice.css'

type NoticeProps = Readonly<{
  /** `refusal`: it was not done. `attention`: look at this. `note`: good to know. */
  kind?: 'refusal' | 'attention' | 'note'
  /** What happened, in a few words. */
  title: ReactNode
  /** What it means and what to do. */
  children?: ReactNode
  /** The cure: one or two buttons. */
  actions?: ReactNode
}>

/** Something the maker must know, with its cure beside it. */
export function Notice({ kind = 'note', title, children, actions }: NoticeProps) {
  return (
    <div className={`notice notice-${kind}`} role={kind === 'refusal' ? 'alert' : undefined}>
      <Icon name={kind === 'note' ? 'info' : 'alert'} size={22} />
      <div className="notice-text">
        <p className="notice-title">{title}</p>
        {children !== undefined && <div className="notice-body">{children}</div>}
      </div>
      {actions !== undefined && <div className="notice-actions">{actions}</div>}
    </div>
  )
}

/** A refusal of the contract as it came: what was found, then what to do. */
export function RefusalNotice({
  refusal,
  actions,
}: Readonly<{ refusal: Refusal; actions?: ReactNode }>) {
  const where = refusal.line === undefined ? '' : `Line ${refusal.line}: `
  return (
    <Notice kind="refusal" title={where + refusal.message} actions={actions}>
      {refusal.next}
    </Notice>
  )
}
