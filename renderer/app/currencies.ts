import type { Option } from '../ui/select.tsx'

const names = new Intl.DisplayNames('en-GB', { type: 'currency' })

/** Currencies to choose from, by their ISO 4217 code, named in English. */
export const currencies: readonly Option<string>[] = Intl.supportedValuesOf('currency').map(
  (code) => ({ value: code, label: `${code} ${names.of(code) ?? ''}`.trimEnd() }),
)
