import type { ReactNode } from 'react';
import styles from './Notice.module.css';

/** Says plainly what is the case and what can be done about it: empty, failed, not found. */
export function Notice({
  title,
  help,
  children,
  isUrgent = false,
}: {
  title: string;
  help: string;
  children?: ReactNode;
  isUrgent?: boolean;
}) {
  return (
    <section className={styles['notice']} role={isUrgent ? 'alert' : undefined}>
      <h2>{title}</h2>
      <p>{help}</p>
      {children}
    </section>
  );
}
