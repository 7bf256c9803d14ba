import { Link, useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { useLiveQuery } from '../../api/useLiveQuery.js';
import { BenchChoicesDocument } from '../../gql/graphql.js';
import { BasisButton } from '../../parts/BasisButton.js';
import { Button } from '../../parts/Button.js';
import { Failed } from '../../parts/Failed.js';
import { Field } from '../../parts/Field.js';
import { Loading } from '../../parts/Loading.js';
import { Notice } from '../../parts/Notice.js';
import { useTitle } from '../../parts/useTitle.js';
import { fromApi } from '../../texts/fromApi.js';
import { useTexts } from '../../texts/textsContext.js';
import { Timers } from '../tonight/Timers.js';
import { BenchChoices } from './BenchChoices.js';
import styles from './BenchChoicePage.module.css';

const mostMinutes = 10_080;

/** What can be done at the bench now, and the way to it. */
export function BenchChoicePage() {
  const { bench } = useTexts();
  useTitle(bench.title);
  const [typed, setTyped] = useState('60');
  const minutes = Math.min(mostMinutes, Math.max(1, Math.round(Number(typed)) || 60));
  const [{ data, error }, fetchAgain] = useLiveQuery({
    query: BenchChoicesDocument,
    variables: { minutes },
  });
  const next = data?.whatNext;
  return (
    <>
      <h1>{bench.title}</h1>
      <p className={styles['intro']}>{bench.intro}</p>
      <Timers />
      <div className={styles['asked']}>
        <Field label={bench.minutes}>
          <input
            type="number"
            min={1}
            max={mostMinutes}
            value={typed}
            onChange={(event) => {
              setTyped(event.target.value);
            }}
          />
        </Field>
        <ByNumber />
      </div>
      {error && !data && <Failed error={error} retry={fetchAgain} />}
      {!next && !error && <Loading />}
      {next?.suggestions.length === 0 && <Notice title={bench.noneTitle} help={bench.noneHelp} />}
      {next && next.suggestions.length > 0 && (
        <section>
          <h2 className={styles['head']}>
            {bench.suggested}
            <BasisButton of={bench.suggested} basis={next.basis} />
          </h2>
          <BenchChoices suggestions={next.suggestions} />
        </section>
      )}
      {next && next.heldBack.length > 0 && (
        <section>
          <h2 className={styles['head']}>{bench.heldBack}</h2>
          <ul className={styles['held']}>
            {next.heldBack.map(({ task, reasons }) => (
              <li key={task.id}>
                <Link
                  to="/bench/$number"
                  params={{ number: task.project.item.inventoryNumber }}
                  search={{ task: task.id }}
                >
                  {task.project.item.inventoryNumber} {task.title}
                </Link>
                <span {...fromApi}>{reasons.join(' ')}</span>
              </li>
            ))}
          </ul>
        </section>
      )}
    </>
  );
}

function ByNumber() {
  const { bench } = useTexts();
  const navigate = useNavigate();
  const [number, setNumber] = useState('');
  return (
    <form
      className={styles['number']}
      onSubmit={(event) => {
        event.preventDefault();
        const asked = number.trim();
        if (asked) void navigate({ to: '/bench/$number', params: { number: asked } });
      }}
    >
      <Field label={bench.number}>
        <input
          value={number}
          spellCheck={false}
          onChange={(event) => {
            setNumber(event.target.value);
          }}
        />
      </Field>
      <Button type="submit">{bench.toBench}</Button>
    </form>
  );
}
