import { useState, type ReactNode } from 'react';
import { draftPlaces } from '../../drafts/keptDrafts.js';
import { classNames } from '../../parts/classNames.js';
import styles from './Fold.module.css';

/** Folded away until it is asked for; open from the start where something typed is not sent yet. */
export function Fold({
  title,
  heard,
  drafts = [],
  isOpenAtFirst = false,
  isSmall = false,
  children,
}: {
  title: string;
  /** The title with what it is about, where many on a page are called the same. */
  heard?: string;
  /** Where what is typed in it is kept. */
  drafts?: readonly string[];
  isOpenAtFirst?: boolean;
  isSmall?: boolean;
  children: ReactNode;
}) {
  const [isOpen, setIsOpen] = useState(
    () => isOpenAtFirst || drafts.some((place) => draftPlaces(place).length > 0),
  );
  return (
    <details
      className={classNames(styles['fold'], isSmall && styles['small'])}
      open={isOpen}
      onToggle={({ currentTarget, target }) => {
        // Folds in a fold tell this one too.
        if (target === currentTarget) setIsOpen(currentTarget.open);
      }}
      data-print="no"
    >
      <summary>
        {heard === undefined ? (
          title
        ) : (
          <>
            <span aria-hidden="true">{title}</span>
            <span className="only-heard">{heard}</span>
          </>
        )}
      </summary>
      {isOpen && <div className={styles['content']}>{children}</div>}
    </details>
  );
}
