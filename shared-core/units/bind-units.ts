const NUMBER_BEFORE_UNIT = /(\d) (?=(?:mm|cm|m|mg|g|kg|%)(?![\p{L}\d]))/gu

/**
 * The text with every number bound to the unit of length, mass or share after it by a no-break space,
 * so that no line ends between them.
 *
 * @example bindUnits('2 of 1.41 m') -> '2 of 1.41\u00a0m'
 */
export function bindUnits(text: string): string {
  return text.replace(NUMBER_BEFORE_UNIT, '$1\u00a0')
}
