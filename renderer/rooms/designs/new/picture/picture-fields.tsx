import type { Dithering } from '../../../../../shared-core/colour/picture/picture-request.ts'
import { withMark } from '../../../../../shared-core/units/with-mark.ts'
import type { Format } from '../../../../app/format.ts'
import { Checkbox } from '../../../../ui/checkbox.tsx'
import { SegmentedChoice } from '../../../../ui/segmented-choice.tsx'
import { Select } from '../../../../ui/select.tsx'
import { SliderInput } from '../../../../ui/slider-input.tsx'
import { stitchOptions } from '../../draft/trade-options.ts'
import { ExtentInput } from '../extent-input.tsx'
import type { ColourSource, PictureSettings } from './picture-settings.ts'

const stitches = stitchOptions.filter(({ value }) => value !== 'ladder')

const ditherings: readonly Readonly<{ value: Dithering; label: string }>[] = [
  { value: 'none', label: 'Flat' },
  { value: 'diffusion', label: 'Scattered' },
  { value: 'ordered', label: 'Woven' },
]

type FieldsProps = Readonly<{
  settings: PictureSettings
  source: ColourSource
  /** Beads of stock that can be chosen from. */
  beads: number
  format: Format
  onChange: (settings: PictureSettings) => void
}>

/** What shapes a picture's chart: its size, its colours and its tone. */
export function PictureFields(props: FieldsProps) {
  const { settings, onChange } = props
  const set = (part: Partial<PictureSettings>) => onChange({ ...settings, ...part })
  return (
    <>
      <Select
        label="Stitch"
        value={settings.stitch}
        options={stitches}
        onChange={(stitch) => set({ stitch })}
      />
      <div className="designs-pair">
        <ExtentInput
          label="Width"
          hint={withMark('40 mm, 1.5 in or 60 beads', props.format.decimal)}
          text={settings.across}
          onText={(across) => set({ across })}
        />
        {!settings.isEven && (
          <ExtentInput label="Height" text={settings.down} onText={(down) => set({ down })} />
        )}
      </div>
      <Checkbox
        label="Height follows the picture"
        checked={settings.isEven}
        onChange={(isEven) => set({ isEven })}
      />
      <ColourFields {...props} set={set} />
      <ToneFields {...props} set={set} />
    </>
  )
}

type PartProps = FieldsProps & Readonly<{ set: (part: Partial<PictureSettings>) => void }>

function ColourFields({ settings, source, beads, format, set }: PartProps) {
  const { decimal } = format
  return (
    <>
      <SegmentedChoice
        label="Colours from"
        value={source}
        options={[
          { value: 'stock', label: 'Beads in stock' },
          { value: 'free', label: 'The picture itself' },
        ]}
        onChange={(next) => set({ source: next })}
      />
      {source === 'stock' && (
        <Checkbox
          label="Only what is on hand and free"
          hint={`${format.counted(beads, 'bead')} of this form to choose from.`}
          checked={settings.onHand}
          onChange={(onHand) => set({ onHand })}
        />
      )}
      <SliderInput
        label={source === 'stock' ? 'Beads at most' : 'Colours'}
        {...{ decimal, value: settings.colours, min: 1, max: 64 }}
        onChange={(colours) => set({ colours })}
      />
      <SegmentedChoice
        label="Steps between colours"
        value={settings.dithering}
        options={ditherings}
        onChange={(dithering) => set({ dithering })}
      />
      <SliderInput
        label="Smallest patch, beads"
        hint="Smaller patches take the colour beside them."
        {...{ decimal, value: settings.smallestPatch, min: 1, max: 60 }}
        onChange={(smallestPatch) => set({ smallestPatch })}
      />
    </>
  )
}

function ToneFields({ settings, format: { decimal }, set }: PartProps) {
  return (
    <>
      <SliderInput
        label="Brightness"
        {...{ decimal, value: settings.brightness, min: -50, max: 50 }}
        onChange={(brightness) => set({ brightness })}
      />
      <SliderInput
        label="Contrast"
        unit="%"
        {...{ decimal, value: settings.contrast, min: -80, max: 150 }}
        onChange={(contrast) => set({ contrast })}
      />
      <SliderInput
        label="Colourfulness"
        unit="%"
        {...{ decimal, value: settings.colourfulness, min: -100, max: 150 }}
        onChange={(colourfulness) => set({ colourfulness })}
      />
    </>
  )
}
