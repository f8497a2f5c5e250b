import { readFileSync } from 'node:fs'

import { parse } from 'csv-parse/sync'

import { valueAtCost } from '../../../shared-core/stock/lot-value.ts'
import { currencyCode } from '../../../shared-core/units/currency.ts'
import { parseMass } from '../../../shared-core/units/parse-mass.ts'
import { parseMoney } from '../../../shared-core/units/parse-money.ts'
import { sampleFile } from './sample-file.ts'

export const stockFile = sampleFile('stock-list.csv')

/** What the core makes of the stock list's lines by itself: grams and worth of the beads, code by code. */
export function beadsByCore(): ReadonlyMap<string, Readonly<{ mg: number; worthMinor: number }>> {
  const found = new Map<string, { mg: number; worthMinor: number }>()
  for (const row of rows()) {
    const [code, grams, price, pack] = [
      'Artikel-Nr',
      'Bestand g',
      'Preis je Packung',
      'Packung',
    ].map((heading) => row[heading] ?? '')
    if (code === undefined || code === '' || !grams || code === 'XX') continue
    const quantity = mg(grams)
    const cost = { costMinor: minor(price ?? ''), costQuantity: mg(pack ?? '') }
    const before = found.get(code) ?? { mg: 0, worthMinor: 0 }
    found.set(code, {
      mg: before.mg + quantity,
      worthMinor: before.worthMinor + valueAtCost(cost, quantity),
    })
  }
  return found
}

function rows(): readonly Readonly<Record<string, string>>[] {
  return parse(readFileSync(stockFile), { bom: true, delimiter: ';', columns: true })
}

function mg(text: string): number {
  const read = parseMass(text, { decimal: ',' })
  if (!read.ok) throw new Error(read.error.message)
  return read.value.value
}

function minor(text: string): number {
  const read = parseMoney(text, { decimal: ',', currency: currencyCode('EUR') })
  if (!read.ok) throw new Error(read.error.message)
  return read.value.value.amountMinor
}
