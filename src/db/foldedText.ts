/** Marks that PostgreSQL's expressions can name too; `\p{M}` it cannot. */
const marks = /[\u0300-\u036f\u1ab0-\u1aff\u1dc0-\u1dff\u20d0-\u20ff\ufe20-\ufe2f]/g;

/** Small letters without accents, for a search that overlooks both. `folded_text` in SQL says the same. */
export const foldedText = (text: string): string =>
  text.normalize('NFKD').replace(marks, '').toLowerCase();
