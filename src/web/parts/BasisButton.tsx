import { useRef, useState } from 'react';
import { fromApi } from '../texts/fromApi.js';
import { useTexts } from '../texts/textsContext.js';
import type { BasisPopover } from './BasisPopover.js';
import styles from './BasisButton.module.css';

export interface ShownBasis {
  method: string;
  asOf: string;
  assumptions: readonly string[];
  counted: readonly { what: string; count: number }[];
}

// Not with the page: what shows it is a fifth of what a page could otherwise do without.
const loadPopover = async () => (await import('./BasisPopover.js')).BasisPopover;

/** Opens how a figure came about. */
export function BasisButton({ of, basis }: { of: string; basis: ShownBasis }) {
  const { frame } = useTexts();
  const opener = useRef<HTMLButtonElement>(null);
  const [isOpen, setIsOpen] = useState(false);
  const [loaded, setLoaded] = useState<{ Popover: typeof BasisPopover } | null>(null);
  const [isLost, setIsLost] = useState(false);
  const open = () => {
    setIsOpen(true);
    loadPopover().then(
      (Popover) => {
        setLoaded({ Popover });
      },
      () => {
        setIsLost(true);
      },
    );
  };
  return (
    <>
      <button
        ref={opener}
        type="button"
        className={styles['opener']}
        aria-label={`${of}: ${frame.basis}`}
        aria-haspopup="dialog"
        aria-expanded={isOpen}
        onClick={open}
      >
        <span aria-hidden="true">Σ</span>
      </button>
      {loaded && (
        <loaded.Popover
          of={of}
          basis={basis}
          opener={opener}
          isOpen={isOpen}
          onOpenChange={setIsOpen}
        />
      )}
      {isLost && (
        <span role="status" {...fromApi}>
          {basis.method}
        </span>
      )}
    </>
  );
}
