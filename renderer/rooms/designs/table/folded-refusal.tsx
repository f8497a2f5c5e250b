import { memo } from 'react'
import type { DesignBody } from '../../../../shared-core/design/design.ts'
import { Button } from '../../../ui/button.tsx'
import { RefusalNotice } from '../../../ui/notice.tsx'
import type { DesignDetail, Fillings } from '../page/open-design.ts'
import { useWorkshopQuestion } from '../reading/use-workshop-question.ts'
import { useLiveReading } from './use-live-reading.ts'

type FoldedRefusalProps = Readonly<{
  body: DesignBody
  design: DesignDetail
  fillings: Fillings
  onShow: () => void
}>

/** Why the design cannot be read, while the figures that would say so are folded away. */
export const FoldedRefusal = memo(function FoldedRefusal({
  body,
  design,
  fillings,
  onShow,
}: FoldedRefusalProps) {
  const { answer } = useLiveReading(useWorkshopQuestion(body, fillings, design.beadsPerGram))
  if (answer?.ok !== false) return null
  return (
    <RefusalNotice
      refusal={answer.error}
      actions={
        <Button small icon="side" onClick={onShow}>
          Show palette and figures
        </Button>
      }
    />
  )
})
