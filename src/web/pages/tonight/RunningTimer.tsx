import { Link } from '@tanstack/react-router';
import { useEffect, useState } from 'react';
import { useMutation } from 'urql';
import {
  EndBreakDocument,
  StopTimerDocument,
  TakeBreakDocument,
  type TimerFragment,
} from '../../gql/graphql.js';
import { Button } from '../../parts/Button.js';
import { fromApi } from '../../texts/fromApi.js';
import { useTexts } from '../../texts/textsContext.js';
import { netSeconds, shownClock } from './timerClock.js';
import styles from './Timers.module.css';

/** A timer with its clock, breaks and end. */
export function RunningTimer({ timer }: { timer: TimerFragment }) {
  const { tonight } = useTexts();
  const [nowMs, setNowMs] = useState(Date.now);
  useEffect(() => {
    const ticking = setInterval(() => {
      setNowMs(Date.now());
    }, 1000);
    return () => {
      clearInterval(ticking);
    };
  }, []);
  const [stopped, stop] = useMutation(StopTimerDocument);
  const [begun, takeBreak] = useMutation(TakeBreakDocument);
  const [ended, endBreak] = useMutation(EndBreakDocument);
  const isOnBreak = timer.breaks.some(({ endedAt }) => endedAt === null);
  const input = { personId: timer.person.id };
  const problems = [
    ...(stopped.data?.stopTimer.problems ?? []),
    ...(begun.data?.takeBreak.problems ?? []),
    ...(ended.data?.endBreak.problems ?? []),
  ];
  return (
    <section className={styles['timer']} aria-label={tonight.atWork(timer.person.name)}>
      <p className={styles['clock']} role="timer">
        {shownClock(netSeconds(timer, nowMs))}
      </p>
      <p className={styles['what']}>
        <strong>{isOnBreak ? tonight.onBreak : tonight.atWork(timer.person.name)}</strong>{' '}
        <Link to="/sets/$number" params={{ number: timer.item.inventoryNumber }}>
          {timer.item.inventoryNumber} {timer.item.name}
        </Link>
        {timer.task && `: ${timer.task.title}`}
      </p>
      <Button onClick={() => void (isOnBreak ? endBreak({ input }) : takeBreak({ input }))}>
        {isOnBreak ? tonight.goOn : tonight.pause}
      </Button>
      <Button weight="main" onClick={() => void stop({ input })}>
        {tonight.stop}
      </Button>
      {problems.map(({ message }) => (
        <p key={message} role="alert" {...fromApi} className={styles['problem']}>
          {message}
        </p>
      ))}
    </section>
  );
}
