import { Link } from '@tanstack/react-router';
import { useSyncExternalStore, type RefObject } from 'react';
import { Button, buttonClass } from '../../parts/Button.js';
import { Lamp } from '../../parts/Lamp.js';
import { useTexts } from '../../texts/textsContext.js';
import type { BenchItem } from './BenchPage.js';
import styles from './BenchHead.module.css';

/** Which set lies here, how it stands, and the whole screen for it. */
export function BenchHead({
  item,
  around,
}: {
  item: BenchItem;
  around: RefObject<HTMLElement | null>;
}) {
  const { bench, bringUp } = useTexts();
  const isFull = useSyncExternalStore(followFullScreen, () => document.fullscreenElement !== null);
  const name = item.name ?? (item.model ? `${item.model.maker} ${item.model.designation}` : '');
  return (
    <header className={styles['head']}>
      <h1>
        {item.inventoryNumber} {name}
      </h1>
      <Lamp level={item.readiness.level} />
      <nav className={styles['ways']} aria-label={bench.titleOf(item.inventoryNumber)}>
        <Link className={buttonClass()} to="/bench">
          {bench.otherSet}
        </Link>
        <Link
          className={buttonClass()}
          to="/sets/$number"
          params={{ number: item.inventoryNumber }}
        >
          {bench.page}
        </Link>
        <Link
          className={buttonClass()}
          to="/sets/$number/bring-up"
          params={{ number: item.inventoryNumber }}
        >
          {bringUp.toBringUp}
        </Link>
        {document.fullscreenEnabled && (
          <Button
            onClick={() => {
              if (isFull) void document.exitFullscreen();
              else void around.current?.requestFullscreen();
            }}
          >
            {isFull ? bench.unfill : bench.fill}
          </Button>
        )}
      </nav>
    </header>
  );
}

function followFullScreen(tell: () => void): () => void {
  document.addEventListener('fullscreenchange', tell);
  return () => {
    document.removeEventListener('fullscreenchange', tell);
  };
}
