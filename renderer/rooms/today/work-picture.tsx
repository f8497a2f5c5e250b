import { PieceThumbnail } from '../designs/assembly/piece-thumbnail.tsx'
import { useDrawing } from '../designs/gallery/use-drawing.ts'

/** What is being made, drawn small. */
export function WorkPicture({
  designId,
  label,
  size,
}: Readonly<{ designId: string; label: string; size: number }>) {
  const drawing = useDrawing(designId, true)
  return (
    <PieceThumbnail
      assembly={drawing?.assembly}
      pictureKey={drawing?.key ?? ''}
      label={label}
      width={size}
      height={size}
    />
  )
}
