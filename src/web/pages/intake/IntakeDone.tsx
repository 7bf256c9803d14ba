import { Link } from '@tanstack/react-router';
import { useEffect, useRef } from 'react';
import { buttonClass } from '../../parts/Button.js';
import { useTexts } from '../../texts/textsContext.js';
import styles from './IntakeWalk.module.css';

/** The inspection is in the records, and where to go from here. */
export function IntakeDone({ number }: { number: string }) {
  const { intake } = useTexts();
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    heading.current?.focus();
  }, []);
  return (
    <section className={styles['done']}>
      <h1 ref={heading} tabIndex={-1}>
        {intake.recordedTitle}
      </h1>
      <p>{intake.recorded}</p>
      <div className={styles['buttons']}>
        <Link className={buttonClass('main')} to="/sets/$number" params={{ number }}>
          {intake.toPage}
        </Link>
        <Link className={buttonClass()} to="/bench/$number" params={{ number }}>
          {intake.toBench}
        </Link>
        <Link className={buttonClass()} to="/intake">
          {intake.another}
        </Link>
      </div>
    </section>
  );
}
