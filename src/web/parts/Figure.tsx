import type { ReactNode } from 'react';
import { BasisButton, type ShownBasis } from './BasisButton.js';
import styles from './Figure.module.css';

/** A figure under its name, with what it means in words and how it was counted. */
export function Figure({
  name,
  value,
  basis,
  children,
}: {
  name: string;
  value: ReactNode;
  basis: ShownBasis;
  children?: ReactNode;
}) {
  return (
    <div className={styles['figure']}>
      <dt>
        {name}
        <BasisButton of={name} basis={basis} />
      </dt>
      <dd className={styles['value']}>{value}</dd>
      {children && <dd className={styles['words']}>{children}</dd>}
    </div>
  );
}
