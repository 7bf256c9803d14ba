import type { ReactNode } from 'react';
import styles from './Sheet.module.css';

/** A part of a page under a heading of its own. */
export function Sheet({
  id,
  title,
  children,
  aside,
}: {
  id?: string;
  title: string;
  children: ReactNode;
  aside?: ReactNode;
}) {
  return (
    <section id={id} className={styles['sheet']}>
      <div className={styles['head']}>
        <h2>{title}</h2>
        {aside}
      </div>
      {children}
    </section>
  );
}
