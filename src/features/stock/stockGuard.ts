/** What is left of a lot hangs on many rows: stock is written one act at a time. */
export const stockGuard = 'stock';
