import { type DragEvent, type ReactNode, useState } from 'react'
import { Button } from '../ui/button.tsx'
import type { EmptyPictureName } from '../ui/empty-pictures.tsx'
import { EmptyState } from '../ui/empty-state.tsx'
import { RefusalNotice } from '../ui/notice.tsx'
import type { FileBytes, FileFilter } from './files.ts'
import { Room } from './room.tsx'
import { type FileChoice, useFileChoice } from './use-file-choice.ts'
import './file-room.css'

type FileRoomProps = Readonly<{
  title: string
  back: Readonly<{ href: string; label: string }>
  /** Title of the dialog: `Choose a stock list`. */
  asks: string
  /** A list that stays the same. */
  filters: readonly FileFilter[]
  picture: EmptyPictureName
  /** What the file should hold, before one is chosen. */
  teaches: ReactNode
  actions?: ReactNode
  /** Told above the choice, before one is chosen. */
  before?: ReactNode
  children: (file: FileBytes) => ReactNode
}>

/** A screen that begins with a file: chosen by a button, dropped anywhere on it, or pasted. */
export function FileRoom(props: FileRoomProps) {
  const choice = useFileChoice(props.asks, props.filters)
  const { chosen, refusal } = choice
  return (
    <Room
      title={props.title}
      back={props.back}
      actions={
        <>
          {props.actions}
          {chosen !== undefined && (
            <Button icon="file" onClick={() => void choice.choose()}>
              Choose another file
            </Button>
          )}
        </>
      }
    >
      <DropPlace choice={choice}>
        {refusal !== undefined && <RefusalNotice refusal={refusal} />}
        {chosen === undefined ? (
          <>
            {props.before}
            <EmptyState
              picture={props.picture}
              action={
                <Button kind="primary" icon="file" onClick={() => void choice.choose()}>
                  Choose a file
                </Button>
              }
            >
              {props.teaches} You can also drop it here, or paste it.
            </EmptyState>
          </>
        ) : (
          <FileKey key={chosen.turn}>{props.children(chosen.file)}</FileKey>
        )}
      </DropPlace>
    </Room>
  )
}

/** Begins anew with every file. */
function FileKey({ children }: Readonly<{ children: ReactNode }>) {
  return <>{children}</>
}

function DropPlace({ choice, children }: Readonly<{ choice: FileChoice; children: ReactNode }>) {
  const [isOver, setOver] = useState(false)
  const over = (event: DragEvent) => {
    if (!event.dataTransfer.types.includes('Files')) return
    event.preventDefault()
    setOver(true)
  }
  const drop = (event: DragEvent) => {
    setOver(false)
    const [file] = event.dataTransfer.files
    if (file === undefined) return
    event.preventDefault()
    void choice.take(file)
  }
  return (
    <section
      className={`file-place${isOver ? ' file-place-over' : ''}`}
      aria-label="A file can be dropped here"
      onDragOver={over}
      onDragLeave={() => setOver(false)}
      onDrop={drop}
    >
      {children}
    </section>
  )
}
