import {
  Button as PressButton,
  Dialog,
  DialogTrigger,
  Heading,
  Popover,
} from 'react-aria-components';
import { useFormats } from '../locale/useFormats.js';
import { fromApi } from '../texts/fromApi.js';
import { useTexts } from '../texts/textsContext.js';
import styles from './BasisButton.module.css';

export interface ShownBasis {
  method: string;
  asOf: string;
  assumptions: readonly string[];
  counted: readonly { what: string; count: number }[];
}

/** Opens how a figure came about: the rule, what was counted, what was taken for granted. */
export function BasisButton({ of, basis }: { of: string; basis: ShownBasis }) {
  const { frame } = useTexts();
  const formats = useFormats();
  return (
    <DialogTrigger>
      <PressButton className={styles['opener'] ?? ''} aria-label={`${of}: ${frame.basis}`}>
        <span aria-hidden="true">Σ</span>
      </PressButton>
      <Popover className={styles['popover'] ?? ''} placement="bottom start">
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
    </DialogTrigger>
  );
}
