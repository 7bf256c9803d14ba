import type { ReactNode } from 'react';
import styles from './Table.module.css';

/** A table that scrolls sideways by itself when the window is narrow. */
export function Table({
  name,
  head,
  children,
}: {
  name: string;
  head: ReactNode;
  children: ReactNode;
}) {
  return (
    <div className={styles['around']} role="region" aria-label={name} tabIndex={0}>
      <table className={styles['table']}>
        <thead>{head}</thead>
        <tbody>{children}</tbody>
      </table>
    </div>
  );
}

/** For cells that hold figures: they stand under each other. */
export const figureCell = styles['figure'] ?? '';
