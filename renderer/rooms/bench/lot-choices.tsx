import type { CallOutput } from '../../../shared-core/contract/calls.ts'
import type { Format } from '../../app/format.ts'
import { Select } from '../../ui/select.tsx'

type Choice = CallOutput<'makes.plan'>['choices'][number]

const OWN_CHOICE = 'auto'

/** Which lot each material is drawn from, where more than one could be: the studio's choice, or hers. */
export function LotChoices({
  choices,
  lots,
  format,
  onLots,
}: Readonly<{
  choices: readonly Choice[]
  lots: Readonly<Record<string, string>>
  format: Format
  onLots: (lots: Readonly<Record<string, string>>) => void
}>) {
  const offered = choices.filter((choice) => choice.lots.some(({ holdsAll }) => holdsAll))
  if (offered.length === 0) return null
  function choose(materialId: string, lotId: string) {
    const { [materialId]: _, ...rest } = lots
    onLots(lotId === OWN_CHOICE ? rest : { ...rest, [materialId]: lotId })
  }
  return (
    <div className="bench-lots">
      {offered.map((choice) => (
        <Select
          key={choice.materialId}
          label={`Lot of ${choice.name}`}
          value={lots[choice.materialId] ?? OWN_CHOICE}
          options={[
            { value: OWN_CHOICE, label: 'As the studio finds best' },
            ...choice.lots
              .filter(({ holdsAll }) => holdsAll)
              .map(({ lotId, dyeLot, available }) => ({
                value: lotId,
                label: dyeLot === '' ? 'Without a lot number' : `Lot ${dyeLot}`,
                detail: `${format.quantity(available, choice.unit)} free`,
              })),
          ]}
          onChange={(lotId) => choose(choice.materialId, lotId)}
        />
      ))}
    </div>
  )
}
