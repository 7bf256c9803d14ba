import type { ShelfOrder, ShelfSearch } from './shelfSearch.js';
import { shelfQuestion } from './shelfSearch.js';
import styles from './SortedHeading.module.css';

/** A heading that orders the table; pressed again it starts at the other end. */
export function SortedHeading({
  by,
  words,
  search,
  ask,
  className,
}: {
  by: ShelfOrder;
  words: string;
  search: ShelfSearch;
  ask: (next: ShelfSearch) => void;
  className?: string | undefined;
}) {
  const { sort } = shelfQuestion(search);
  const isSorted = sort.by === by;
  const direction = sort.direction === 'DESC' ? 'descending' : 'ascending';
  return (
    <th scope="col" aria-sort={isSorted ? direction : 'none'} className={className}>
      <button
        type="button"
        className={styles['press']}
        onClick={() => {
          const { turned, by: _by, ...rest } = search;
          ask({ ...rest, by, ...(isSorted && !turned ? { turned: true } : {}) });
        }}
      >
        {words}
        <span aria-hidden="true">{isSorted ? (direction === 'ascending' ? ' ↑' : ' ↓') : ''}</span>
      </button>
    </th>
  );
}
