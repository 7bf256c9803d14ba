import type { ReactNode } from 'react';
import styles from './Field.module.css';

/** A label over what it names: one input, select or text area. */
export function Field({ label, children }: { label: string; children: ReactNode }) {
  return (
    <label className={styles['field']}>
      <span>{label}</span>
      {children}
    </label>
  );
}
