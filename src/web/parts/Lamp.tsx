import type { ReactNode } from 'react';
import type { ReadinessLevel } from '../gql/graphql.js';
import { useTexts } from '../texts/textsContext.js';
import { classNames } from './classNames.js';
import styles from './Lamp.module.css';

/** A pilot lamp: lit with rays, lit, dark, or dark and crossed out; always with its words. */
export function Lamp({ level, isLarge = false }: { level: ReadinessLevel; isLarge?: boolean }) {
  const { words } = useTexts();
  return (
    <span className={classNames(styles['lamp'], styles[level], isLarge && styles['large'])}>
      <svg viewBox="0 0 24 24" aria-hidden="true" focusable="false">
        {glass[level]}
      </svg>
      {words.level[level]}
    </span>
  );
}

const bulb = { cx: 12, cy: 12, r: 5.5 };
const rays = (
  <path d="M12 1.5v3M12 19.5v3M1.5 12h3M19.5 12h3M4.6 4.6l2 2M17.4 17.4l2 2M19.4 4.6l-2 2M6.6 17.4l-2 2" />
);

const glass: Record<ReadinessLevel, ReactNode> = {
  ON_AIR_READY: (
    <>
      <circle {...bulb} fill="currentColor" />
      {rays}
    </>
  ),
  CHECKS_DUE: (
    <>
      <circle {...bulb} fill="none" />
      <path d="M12 6.5a5.5 5.5 0 0 1 0 11z" fill="currentColor" stroke="none" />
    </>
  ),
  NOT_READY: <circle {...bulb} fill="none" />,
  DO_NOT_CONNECT: (
    <>
      <circle {...bulb} fill="none" />
      <path d="M3.5 3.5l17 17" strokeWidth="2.6" />
    </>
  ),
};
