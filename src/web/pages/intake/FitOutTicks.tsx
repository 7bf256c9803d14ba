import { useRef, type KeyboardEvent } from 'react';
import type { ShownProblem } from '../../api/useSend.js';
import type { PositionState } from '../../gql/graphql.js';
import { Button } from '../../parts/Button.js';
import { Choice } from '../../parts/Choice.js';
import { ProblemsAt } from '../../parts/ProblemsAt.js';
import { useTexts } from '../../texts/textsContext.js';
import type { IntakeItem } from './IntakeWalkPage.js';
import styles from './FitOutTicks.module.css';

const states = ['PRESENT', 'MISSING', 'WRONG', 'UNKNOWN'] as const;

type Ticks = Readonly<Partial<Record<string, PositionState>>>;

/** The positions of a zone ticked off, by a thumb or by keys alone. */
export function FitOutTicks({
  places,
  ticks,
  order,
  onTick,
  problems,
}: {
  places: IntakeItem['fitOut'];
  ticks: Ticks;
  /** The ids in the order in which they are sent, as problems name them. */
  order: readonly string[];
  onTick: (ticks: Ticks) => void;
  problems: readonly ShownProblem[];
}) {
  const { intake, words } = useTexts();
  const rows = useRef<HTMLUListElement>(null);
  const options = states.map((value) => ({ value, words: words.positionState[value] }));
  const tick = (id: string, state: PositionState) => {
    onTick({ ...ticks, [id]: state });
  };
  const press = (event: KeyboardEvent, id: string, index: number) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const step = event.key === 'ArrowDown' ? 1 : event.key === 'ArrowUp' ? -1 : 0;
    const state = states.find((each) => intake.letters[each] === event.key.toLowerCase());
    if (step === 0 && !state) return;
    event.preventDefault();
    if (state) tick(id, state);
    goTo(rows.current, state ? index + 1 : index + step);
  };
  const open = places.filter(({ position }) => ticks[position.id] === undefined);
  return (
    <>
      <p className={styles['help']}>
        {intake.fitOutHelp}{' '}
        {states.map((state) => (
          <span key={state} className={styles['letter']}>
            <kbd>{intake.letters[state]}</kbd> {words.positionState[state]}
          </span>
        ))}
      </p>
      <ul className={styles['rows']} ref={rows}>
        {places.map(({ position }, index) => (
          <li
            key={position.id}
            onKeyDown={(event) => {
              press(event, position.id, index);
            }}
          >
            <span className={styles['name']}>
              <strong>{position.designator}</strong> {position.partType?.designation}
              {!position.isRequired && ` (${intake.optional})`}
            </span>
            <Choice
              legend={position.designator}
              isLegendHeardOnly
              name={position.id}
              options={options}
              value={ticks[position.id] ?? null}
              onChange={(state) => {
                tick(position.id, state);
              }}
            />
            <ProblemsAt
              problems={problems}
              path={['fitOutChecks', String(order.indexOf(position.id))]}
            />
          </li>
        ))}
      </ul>
      {open.length > 1 && (
        <div>
          <Button
            onClick={() => {
              const there = open.map(({ position }) => [position.id, 'PRESENT'] as const);
              onTick({ ...ticks, ...Object.fromEntries(there) });
            }}
          >
            {intake.allThere}
          </Button>
        </div>
      )}
    </>
  );
}

/** To the choice that is made in a row, else to its first. */
function goTo(rows: HTMLUListElement | null, index: number): void {
  const row = rows?.children[index];
  const made = row?.querySelector<HTMLInputElement>('input:checked');
  (made ?? row?.querySelector<HTMLInputElement>('input'))?.focus();
}
