import { useRef, useState, type ReactNode } from 'react';
import { Button } from './Button.js';
import styles from './Opener.module.css';

/** A step that is rarely taken, behind a button of its name; once taken, the focus is back there. */
export function Opener({
  label,
  isOpenAtFirst = false,
  children,
}: {
  label: string;
  /** For what was begun and not sent yet. */
  isOpenAtFirst?: boolean;
  children: (close: () => void) => ReactNode;
}) {
  const [isOpen, setIsOpen] = useState(isOpenAtFirst);
  const button = useRef<HTMLButtonElement>(null);
  return (
    <div className={styles['opener']}>
      <Button
        ref={button}
        aria-expanded={isOpen}
        onClick={() => {
          setIsOpen(!isOpen);
        }}
      >
        <span aria-hidden="true">{isOpen ? '▾' : '▸'}</span>
        {label}
      </Button>
      {isOpen && (
        <div className={styles['opened']}>
          {children(() => {
            setIsOpen(false);
            button.current?.focus();
          })}
        </div>
      )}
    </div>
  );
}
