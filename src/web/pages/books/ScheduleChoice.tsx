import { useState } from 'react';
import { useConnection } from '../../api/useConnection.js';
import { useLiveQuery } from '../../api/useLiveQuery.js';
import { useDraft } from '../../drafts/useDraft.js';
import {
  ScheduleItemsDocument,
  SchedulePlacesDocument,
  type ScheduleItemsQuery,
} from '../../gql/graphql.js';
import { Button, buttonClass } from '../../parts/Button.js';
import { Choice } from '../../parts/Choice.js';
import { Field } from '../../parts/Field.js';
import { Ticks } from '../../parts/Ticks.js';
import { useTexts } from '../../texts/textsContext.js';
import { scheduleAddress, type ScheduleOf } from './scheduleAddress.js';
import styles from './BooksPage.module.css';

const itemsIn = (data: ScheduleItemsQuery) => data.items;
const shownAtOnce = 24;
const everything: ScheduleOf = { which: 'ALL', place: '', numbers: [] };

/** The insurance schedule: of everything in hand, of one place, or of what is ticked. */
export function ScheduleChoice() {
  const { books, frame } = useTexts();
  const { draft, change } = useDraft('schedule', everything);
  const [text, setText] = useState('');
  const [{ data }] = useLiveQuery({ query: SchedulePlacesDocument, variables: {} });
  const items = useConnection(
    ScheduleItemsDocument,
    { text: text.trim() || null },
    itemsIn,
    shownAtOnce,
  );
  const { which, place, numbers } = draft;
  const isLacking =
    (which === 'PLACE' && place === '') || (which === 'CHOSEN' && numbers.length === 0);
  const unseen = numbers.filter(
    (number) => !items.rows.some(({ inventoryNumber }) => inventoryNumber === number),
  );
  const options = [
    ...unseen.map((number) => ({ value: number, words: number })),
    ...items.rows.map(({ inventoryNumber, name }) => ({
      value: inventoryNumber,
      words: [inventoryNumber, name].filter(Boolean).join(' '),
    })),
  ];
  return (
    <section className={styles['schedule']} aria-label={books.schedule} data-print="no">
      <h3>{books.schedule}</h3>
      <Choice
        legend={books.scheduleOf}
        name="schedule-of"
        value={which}
        options={(['ALL', 'PLACE', 'CHOSEN'] as const).map((value) => ({
          value,
          words: books.scheduleWhich[value],
        }))}
        onChange={(next) => {
          change({ which: next });
        }}
      />
      {which === 'PLACE' && (
        <Field label={books.schedulePlace}>
          <select
            value={place}
            onChange={(event) => {
              change({ place: event.target.value });
            }}
          >
            <option value="">{books.choosePlace}</option>
            {data?.places.nodes.map(({ id, name }) => (
              <option key={id} value={name}>
                {name}
              </option>
            ))}
          </select>
        </Field>
      )}
      {which === 'CHOSEN' && (
        <>
          <Field label={books.findItems}>
            <input
              type="search"
              value={text}
              onChange={(event) => {
                setText(event.target.value);
              }}
            />
          </Field>
          <Ticks
            legend={books.chosenItems(numbers.length)}
            options={options}
            values={numbers}
            onChange={(next) => {
              change({ numbers: next });
            }}
          />
          {items.hasMore && (
            <div>
              <Button weight="quiet" onClick={items.fetchMore}>
                {frame.more}
              </Button>
            </div>
          )}
        </>
      )}
      {isLacking ? (
        <p role="status">{which === 'PLACE' ? books.choosePlace : books.tickItems}</p>
      ) : (
        <p className={styles['ways']}>
          {(['pdf', 'csv'] as const).map((format) => (
            <a key={format} className={buttonClass()} href={scheduleAddress(draft, format)}>
              {format.toUpperCase()}
            </a>
          ))}
        </p>
      )}
    </section>
  );
}
