import { useTexts } from '../texts/textsContext.js';
import { Button } from './Button.js';
import styles from './Conflict.module.css';

/** Somebody else wrote here meanwhile: both texts side by side, and the person settles it. */
export function Conflict({
  theirs,
  mine,
  settle,
}: {
  theirs: string;
  mine: string;
  /** The text that is to stand. */
  settle: (text: string) => void;
}) {
  const { frame } = useTexts();
  return (
    <section className={styles['conflict']} role="alert">
      <h3>{frame.conflictTitle}</h3>
      <div className={styles['both']}>
        <div>
          <h4>{frame.conflictTheirs}</h4>
          <p>{theirs || '–'}</p>
          <Button
            onClick={() => {
              settle(theirs);
            }}
          >
            {frame.conflictTakeTheirs}
          </Button>
        </div>
        <div>
          <h4>{frame.conflictMine}</h4>
          <p>{mine || '–'}</p>
          <Button
            onClick={() => {
              settle(mine);
            }}
          >
            {frame.conflictTakeMine}
          </Button>
        </div>
      </div>
      <Button
        weight="quiet"
        onClick={() => {
          settle([theirs, mine].filter(Boolean).join('\n'));
        }}
      >
        {frame.conflictTakeBoth}
      </Button>
    </section>
  );
}
