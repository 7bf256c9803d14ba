import type { RefObject } from 'react';
import { Dialog, Heading, Popover } from 'react-aria-components';
import { useFormats } from '../locale/useFormats.js';
import { fromApi } from '../texts/fromApi.js';
import type { ShownBasis } from './BasisButton.js';
import styles from './BasisButton.module.css';

/** How a figure came about: the rule, what was counted, what was taken for granted. */
export function BasisPopover({
  of,
  basis,
  opener,
  isOpen,
  onOpenChange,
}: {
  of: string;
  basis: ShownBasis;
  opener: RefObject<HTMLButtonElement | null>;
  isOpen: boolean;
  onOpenChange: (isOpen: boolean) => void;
}) {
  const formats = useFormats();
  return (
    <Popover
      className={styles['popover'] ?? ''}
      placement="bottom start"
      triggerRef={opener}
      isOpen={isOpen}
      onOpenChange={onOpenChange}
    >
      <Dialog className={styles['dialog'] ?? ''}>
        <Heading slot="title" className={styles['title'] ?? ''}>
          {of}
        </Heading>
        <p {...fromApi}>{basis.method}</p>
        {basis.counted.length > 0 && (
          <ul>
            {basis.counted.map(({ what, count }) => (
              <li key={what}>
                {formats.number(count)} <span {...fromApi}>{what}</span>
              </li>
            ))}
          </ul>
        )}
        {basis.assumptions.map((assumption) => (
          <p key={assumption} {...fromApi}>
            {assumption}
          </p>
        ))}
        <p className={styles['asOf']}>{formats.minute(basis.asOf)}</p>
      </Dialog>
    </Popover>
  );
}
