import { useMemo } from 'react'
import { type Format, makeFormat } from './format.ts'
import { useToday } from './today.ts'
import { useCall } from './use-call.ts'

/** The figures as this workshop writes them: its decimal mark, its currency, today's date. */
export function useFormat(): Format {
  const today = useToday()
  const { value } = useCall('workshop.read', {})
  const decimal = value?.workshop?.decimalMark ?? '.'
  const currency = value?.workshop?.currency ?? 'EUR'
  return useMemo(() => makeFormat({ decimal, currency, today }), [decimal, currency, today])
}
