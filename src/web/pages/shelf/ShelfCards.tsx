import { useWindowVirtualizer } from '@tanstack/react-virtual';
import { useEffect, useRef } from 'react';
import { SetCard } from './SetCard.js';
import type { ShelfRow } from './ShelfPage.js';
import { useColumns } from './useColumns.js';
import styles from './ShelfCards.module.css';

const narrowestCardPixels = 264;
const usualCardPixels = 330;
const gapPixels = 16;

/** The sets as cards; only those near the window are drawn, however many there are. */
export function ShelfCards({
  rows,
  onNearEnd,
}: {
  rows: readonly ShelfRow[];
  onNearEnd: () => void;
}) {
  const shelf = useRef<HTMLDivElement>(null);
  const { columns, offset } = useColumns(shelf, narrowestCardPixels, gapPixels);
  const count = Math.ceil(rows.length / columns);
  const virtual = useWindowVirtualizer({
    count,
    estimateSize: () => usualCardPixels,
    gap: gapPixels,
    overscan: 2,
    scrollMargin: offset,
  });
  const drawn = virtual.getVirtualItems();
  const last = drawn.at(-1)?.index ?? 0;
  useEffect(() => {
    if (last >= count - 2) onNearEnd();
  }, [last, count, onNearEnd]);

  return (
    <div
      ref={shelf}
      role="list"
      className={styles['shelf']}
      style={{ blockSize: virtual.getTotalSize() }}
    >
      {drawn.map((row) => (
        <div
          key={row.key}
          role="none"
          ref={virtual.measureElement}
          data-index={row.index}
          className={styles['board']}
          style={{
            transform: `translateY(${row.start - offset}px)`,
            gridTemplateColumns: `repeat(${columns}, minmax(0, 1fr))`,
            gap: gapPixels,
          }}
        >
          {rows.slice(row.index * columns, (row.index + 1) * columns).map((rig) => (
            <SetCard key={rig.id} rig={rig} />
          ))}
        </div>
      ))}
    </div>
  );
}
