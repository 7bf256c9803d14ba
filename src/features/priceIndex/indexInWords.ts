import type { IndexedAmount } from '../../domain/worth/indexedAmount.js';
import type { LoadedIndex } from './priceIndexes.reads.js';

export const indexInWords = ({ name, source }: LoadedIndex, { from, to }: IndexedAmount): string =>
  `${name} (${source}): ${from.period} = ${from.value}, ${to.period} = ${to.value}.`;
