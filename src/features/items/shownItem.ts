/** An item in a sentence: R-007 “Old faithful”, or its number alone. */
export const shownItem = (item: { inventoryNumber: string; name: string | null }): string =>
  item.name === null ? item.inventoryNumber : `${item.inventoryNumber} “${item.name}”`;
