import { useRef, useState } from 'react';
import { useTexts } from '../texts/textsContext.js';
import { Button } from './Button.js';
import styles from './CopyText.module.css';

/** A text as it is to be pasted elsewhere, with a button that takes it along. */
export function CopyText({ name, text }: { name: string; text: string }) {
  const { frame } = useTexts();
  const shown = useRef<HTMLPreElement>(null);
  const [outcome, setOutcome] = useState<'copied' | 'marked' | null>(null);
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(text);
      setOutcome('copied');
    } catch {
      // Without TLS a browser lets no page copy, but on the loopback: the person's own keys do.
      if (shown.current) getSelection()?.selectAllChildren(shown.current);
      setOutcome('marked');
    }
  };
  return (
    <div className={styles['around']}>
      <pre ref={shown} className={styles['text']} role="group" aria-label={name}>
        {text}
      </pre>
      <Button aria-label={frame.copyWhat(name)} onClick={() => void copy()}>
        {frame.copy}
      </Button>
      <p role="status" className={styles['outcome']}>
        {outcome && frame.copyOutcome[outcome]}
      </p>
    </div>
  );
}
