import type { ReactNode } from 'react';
import styles from './Notice.module.css';

/** Says plainly what is the case and what can be done about it: empty, failed, not found. */
export function Notice({
  title,
  help,
  children,
  isUrgent = false,
  isWholePage = false,
}: {
  title: string;
  help: ReactNode;
  children?: ReactNode;
  isUrgent?: boolean;
  /** There is nothing else on the page, so that this is its heading. */
  isWholePage?: boolean;
}) {
  return (
    <section className={styles['notice']} role={isUrgent ? 'alert' : undefined}>
      {isWholePage ? <h1>{title}</h1> : <h2>{title}</h2>}
      <p>{help}</p>
      {children}
    </section>
  );
}
