import { useState } from 'react'
import type { PictureCrop } from '../../../../../shared-core/colour/picture/picture.ts'
import { parseCount } from '../../../../../shared-core/units/parse-count.ts'
import type { DecimalMark } from '../../../../../shared-core/units/parse-options.ts'
import { Button } from '../../../../ui/button.tsx'
import { QuantityInput } from '../../../../ui/quantity-input.tsx'
import { clampCrop, type PictureSize } from './crop-drag.ts'

type CropFieldsProps = Readonly<{
  crop: PictureCrop
  size: PictureSize
  decimal: DecimalMark
  onCrop: (crop: PictureCrop) => void
}>

const SIDES = [
  ['x', 'Crop from left'],
  ['y', 'Crop from top'],
  ['width', 'Crop width'],
  ['height', 'Crop height'],
] as const

/** The part of the picture that is used, as numbers. */
export function CropFields({ crop, size, decimal, onCrop }: CropFieldsProps) {
  const isWhole = crop.width === size.width && crop.height === size.height
  return (
    <div className="crop-fields">
      {SIDES.map(([side, label]) => (
        <CropNumber
          key={side}
          label={label}
          value={crop[side]}
          decimal={decimal}
          onValue={(value) => onCrop(clampCrop({ ...crop, [side]: value }, size))}
        />
      ))}
      <Button
        small
        icon="fit"
        disabled={isWhole}
        onClick={() => onCrop({ x: 0, y: 0, width: size.width, height: size.height })}
      >
        {`Whole picture, ${size.width} × ${size.height} px`}
      </Button>
    </div>
  )
}

function CropNumber({
  label,
  value,
  decimal,
  onValue,
}: Readonly<{
  label: string
  value: number
  decimal: DecimalMark
  onValue: (value: number) => void
}>) {
  const [typed, setTyped] = useState<Readonly<{ text: string; gave: number }>>()
  // What the rectangle says wins once it says something else than was typed.
  const text = typed?.gave === value ? typed.text : String(value)
  return (
    <QuantityInput
      label={label}
      text={text}
      parse={(told) => parseCount(told, { decimal })}
      onText={(told, count) => {
        setTyped({ text: told, gave: count ?? value })
        if (count !== undefined) onValue(count)
      }}
    />
  )
}
