import { Combobox } from '@base-ui/react/combobox'
import { Field, type FieldSays } from './field.tsx'
import { Icon } from './icon.tsx'
import { type Option, OptionWords } from './select.tsx'
import { Swatch } from './swatch.tsx'
import './picker.css'

type PickerProps<V extends string> = FieldSays &
  Readonly<{
    value: V | null
    options: readonly Option<V>[]
    onChange: (value: V | null) => void
    placeholder?: string
    /** Said when nothing matches what was typed. */
    none?: string
  }>

/** Rows drawn at once: more than anyone reads, few enough to open at once. */
const MOST_SHOWN = 100

/** A choice from a long list by typing part of its name. */
export function Picker<V extends string>({
  value,
  options,
  onChange,
  placeholder = 'Type to find',
  none = 'Nothing of that name.',
  label,
  hint,
  error,
  missing,
  optional,
  labelHidden,
}: PickerProps<V>) {
  const chosen = options.find((option) => option.value === value) ?? null
  return (
    <Field
      {...{ label, hint, error, optional, labelHidden }}
      missing={chosen ? undefined : missing}
    >
      {(control) => (
        <Combobox.Root<Option<V>>
          items={options}
          limit={MOST_SHOWN}
          value={chosen}
          onValueChange={(option) => onChange(option === null ? null : option.value)}
          itemToStringLabel={(option) => option.label}
          isItemEqualToValue={(a, b) => a.value === b.value}
        >
          <Combobox.InputGroup className="picker">
            {chosen?.look !== undefined && <Swatch look={chosen.look} />}
            <Combobox.Input
              {...control}
              className="input"
              placeholder={placeholder}
              onKeyDown={(event) => {
                const isClosed = event.currentTarget.getAttribute('aria-expanded') !== 'true'
                // With its list closed Escape belongs to the sheet around it; it must not empty the choice.
                if (event.key === 'Escape' && isClosed) event.preventBaseUIHandler()
              }}
            />
            <Combobox.Trigger className="picker-open" aria-label={`Show all for ${label}`}>
              <Icon name="down" size={16} />
            </Combobox.Trigger>
          </Combobox.InputGroup>
          <Combobox.Portal>
            <Combobox.Positioner className="list-place" sideOffset={4}>
              <Combobox.Popup className="list-popup">
                <Combobox.Empty className="list-empty">{none}</Combobox.Empty>
                <Combobox.List>
                  {(option: Option<V>) => (
                    <Combobox.Item key={option.value} value={option} className="list-item">
                      <OptionWords option={option} />
                      <Combobox.ItemIndicator className="list-chosen">
                        <Icon name="check" size={16} />
                      </Combobox.ItemIndicator>
                    </Combobox.Item>
                  )}
                </Combobox.List>
              </Combobox.Popup>
            </Combobox.Positioner>
          </Combobox.Portal>
        </Combobox.Root>
      )}
    </Field>
  )
}
