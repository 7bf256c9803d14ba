/** The same quantity however it was capitalised or spaced: "Leakage  current". */
export const quantityKey = (quantity: string): string =>
  quantity.trim().replace(/\s+/g, ' ').toLowerCase();
