import { useEffect, useRef, useState } from 'react';
import { Button } from '../../parts/Button.js';
import { Field } from '../../parts/Field.js';
import { useTexts } from '../../texts/textsContext.js';
import { levels, orders, type ShelfOrder, type ShelfSearch } from './shelfSearch.js';
import styles from './ShelfAsked.module.css';

const typingMilliseconds = 250;

/** What the shelf is asked for: words, standing, order, and how it is seen. */
export function ShelfAsked({
  search,
  ask,
}: {
  search: ShelfSearch;
  ask: (next: ShelfSearch) => void;
}) {
  const { shelf, words } = useTexts();
  const [typed, setTyped] = useState(search.find ?? '');
  const waiting = useRef<ReturnType<typeof setTimeout>>(undefined);
  // The address may change under the field: by the way back, or by “ask for all”.
  useEffect(() => {
    setTyped(search.find ?? '');
  }, [search.find]);
  const askFor = (words: string) => {
    clearTimeout(waiting.current);
    ask(withFind(search, words));
  };
  const type = (words: string) => {
    setTyped(words);
    clearTimeout(waiting.current);
    waiting.current = setTimeout(() => {
      askFor(words);
    }, typingMilliseconds);
  };

  return (
    <form
      className={styles['asked']}
      role="search"
      data-print="no"
      onSubmit={(event) => {
        event.preventDefault();
        askFor(typed);
      }}
    >
      <Field label={shelf.find}>
        <input
          type="search"
          value={typed}
          placeholder={shelf.findHint}
          onChange={(event) => {
            type(event.target.value);
          }}
        />
      </Field>
      <Field label={shelf.standing}>
        <select
          value={search.standing ?? ''}
          onChange={(event) => {
            const standing = levels.find((level) => level === event.target.value);
            const { standing: _standing, ...rest } = search;
            ask(standing ? { ...rest, standing } : rest);
          }}
        >
          <option value="">{shelf.anyStanding}</option>
          {levels.map((level) => (
            <option key={level} value={level}>
              {words.level[level]}
            </option>
          ))}
        </select>
      </Field>
      <Field label={shelf.order}>
        <select
          value={search.by ?? 'INVENTORY_NUMBER'}
          onChange={(event) => {
            ask({ ...search, by: event.target.value as ShelfOrder });
          }}
        >
          {orders.map((order) => (
            <option key={order} value={order}>
              {shelf.orders[order]}
            </option>
          ))}
        </select>
      </Field>
      <Button
        aria-pressed={search.turned ?? false}
        onClick={() => {
          const { turned, ...rest } = search;
          ask(turned ? rest : { ...rest, turned: true });
        }}
      >
        {shelf.turnAround}
      </Button>
      <Button
        aria-pressed={search.as === 'table'}
        onClick={() => {
          const { as, ...rest } = search;
          ask(as ? rest : { ...rest, as: 'table' });
        }}
      >
        {search.as === 'table' ? shelf.asShelf : shelf.asTable}
      </Button>
    </form>
  );
}

function withFind(search: ShelfSearch, typed: string): ShelfSearch {
  const { find, ...rest } = search;
  return typed.trim() === '' ? rest : { ...rest, find: typed };
}
