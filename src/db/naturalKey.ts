const digits = 10;

/**
 * A text by which designators sort as people count them: V2 before V10. Each number is filled up
 * with zeros; of one longer than ten digits the last ten count. `natural_key` in SQL says the same.
 */
export const naturalKey = (text: string): string =>
  text.replace(/[0-9]+/g, (number) => number.padStart(digits, '0').slice(-digits));
