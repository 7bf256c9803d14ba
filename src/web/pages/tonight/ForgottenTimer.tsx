import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { useMutation } from 'urql';
import { StopTimerDocument, type TimerFragment } from '../../gql/graphql.js';
import { useFormats } from '../../locale/useFormats.js';
import { Button } from '../../parts/Button.js';
import { Field } from '../../parts/Field.js';
import { fromApi } from '../../texts/fromApi.js';
import { useTexts } from '../../texts/textsContext.js';
import styles from './Timers.module.css';

/** A timer left running: nothing of it counts until the person says when the work ended. */
export function ForgottenTimer({ timer }: { timer: TimerFragment }) {
  const { tonight } = useTexts();
  const formats = useFormats();
  const [endedAt, setEndedAt] = useState('');
  const [{ data }, stop] = useMutation(StopTimerDocument);
  return (
    <form
      className={styles['timer']}
      aria-label={tonight.leftRunning(timer.person.name)}
      onSubmit={(event) => {
        event.preventDefault();
        const input = { personId: timer.person.id, endedAt: new Date(endedAt).toISOString() };
        void stop({ input });
      }}
    >
      <p className={styles['what']}>
        <strong>{tonight.leftRunning(timer.person.name)}</strong>{' '}
        <Link to="/sets/$number" params={{ number: timer.item.inventoryNumber }}>
          {timer.item.inventoryNumber} {timer.item.name}
        </Link>
        <span className={styles['question']}>
          {tonight.whenEnded(formats.minute(timer.startedAt, timer.zone))}
        </span>
      </p>
      <Field label={tonight.endedWhen}>
        <input
          type="datetime-local"
          required
          value={endedAt}
          onChange={(event) => {
            setEndedAt(event.target.value);
          }}
        />
      </Field>
      <Button type="submit" weight="main">
        {tonight.sayWhen}
      </Button>
      {data?.stopTimer.problems.map(({ message }) => (
        <p key={message} role="alert" {...fromApi} className={styles['problem']}>
          {message}
        </p>
      ))}
    </form>
  );
}
