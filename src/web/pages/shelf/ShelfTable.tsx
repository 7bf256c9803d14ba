import { Link } from '@tanstack/react-router';
import { useWindowVirtualizer } from '@tanstack/react-virtual';
import { useEffect, useRef } from 'react';
import { useFormats } from '../../locale/useFormats.js';
import { Lamp } from '../../parts/Lamp.js';
import { useTexts } from '../../texts/textsContext.js';
import { setName } from './SetCard.js';
import type { ShelfRow } from './ShelfPage.js';
import { SortedHeading } from './SortedHeading.js';
import type { ShelfSearch } from './shelfSearch.js';
import styles from './ShelfTable.module.css';

const usualRowPixels = 45;

/** The sets as a table, for those who prefer it; a click on a heading orders by it. */
export function ShelfTable({
  rows,
  onNearEnd,
  search,
  ask,
}: {
  rows: readonly ShelfRow[];
  onNearEnd: () => void;
  search: ShelfSearch;
  ask: (next: ShelfSearch) => void;
}) {
  const { shelf } = useTexts();
  const formats = useFormats();
  const body = useRef<HTMLTableSectionElement>(null);
  const virtual = useWindowVirtualizer({
    count: rows.length,
    estimateSize: () => usualRowPixels,
    overscan: 12,
    scrollMargin: body.current?.offsetTop ?? 0,
  });
  const drawn = virtual.getVirtualItems();
  const last = drawn.at(-1)?.index ?? 0;
  useEffect(() => {
    if (last >= rows.length - 10) onNearEnd();
  }, [last, rows.length, onNearEnd]);
  const margin = virtual.options.scrollMargin;
  const above = (drawn[0]?.start ?? margin) - margin;
  const below = virtual.getTotalSize() - ((drawn.at(-1)?.end ?? margin) - margin);
  const heading = { search, ask };

  return (
    <div className={styles['around']} role="region" aria-label={shelf.asTable} tabIndex={0}>
      <table className={styles['table']} aria-rowcount={rows.length + 1}>
        <thead>
          <tr>
            <SortedHeading {...heading} by="INVENTORY_NUMBER" words={shelf.columns.number} />
            <SortedHeading {...heading} by="NAME" words={shelf.columns.set} />
            <SortedHeading {...heading} by="READINESS" words={shelf.columns.standing} />
            <SortedHeading
              {...heading}
              by="COMPLETION"
              words={shelf.columns.completion}
              className={styles['figure']}
            />
            <SortedHeading
              {...heading}
              by="HOURS"
              words={shelf.columns.hours}
              className={styles['figure']}
            />
            <th scope="col" className={styles['figure']}>
              {shelf.columns.left}
            </th>
            <th scope="col">{shelf.columns.place}</th>
          </tr>
        </thead>
        <tbody ref={body}>
          {above > 0 && <tr aria-hidden="true" style={{ blockSize: above }} />}
          {drawn.map(({ index }) => {
            const rig = rows[index];
            if (!rig) return null;
            const { share } = rig.completion;
            return (
              <tr
                key={rig.id}
                aria-rowindex={index + 2}
                data-index={index}
                ref={virtual.measureElement}
              >
                <td>{rig.inventoryNumber}</td>
                <th scope="row">
                  <Link to="/sets/$number" params={{ number: rig.inventoryNumber }}>
                    {setName(rig)}
                  </Link>
                </th>
                <td>
                  <Lamp level={rig.readiness.level} />
                </td>
                <td className={styles['figure']}>{share === null ? '–' : formats.share(share)}</td>
                <td className={styles['figure']}>{formats.hours(rig.hours.hours)}</td>
                <td className={styles['figure']}>{formats.hours(rig.remaining.p80Hours)}</td>
                <td>{rig.place?.name ?? '–'}</td>
              </tr>
            );
          })}
          {below > 0 && <tr aria-hidden="true" style={{ blockSize: below }} />}
        </tbody>
      </table>
    </div>
  );
}
