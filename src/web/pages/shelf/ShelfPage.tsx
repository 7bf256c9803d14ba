import { Link, useNavigate, useSearch } from '@tanstack/react-router';
import { useMemo } from 'react';
import { useConnection } from '../../api/useConnection.js';
import { ShelfDocument, type ShelfQuery } from '../../gql/graphql.js';
import { useFormats } from '../../locale/useFormats.js';
import { Button } from '../../parts/Button.js';
import { Failed } from '../../parts/Failed.js';
import { Loading } from '../../parts/Loading.js';
import { Notice } from '../../parts/Notice.js';
import { useTitle } from '../../parts/useTitle.js';
import { useTexts } from '../../texts/textsContext.js';
import { ShelfAsked } from './ShelfAsked.js';
import { ShelfCards } from './ShelfCards.js';
import { ShelfTable } from './ShelfTable.js';
import { readShelfSearch, shelfQuestion, type ShelfSearch } from './shelfSearch.js';
import styles from './ShelfPage.module.css';

export type ShelfRow = ShelfQuery['rigs']['nodes'][number];

const pageOf = (data: ShelfQuery) => data.rigs;

/** The collection as a shelf of sets, or as a table. */
export function ShelfPage() {
  const { buy, shelf } = useTexts();
  const formats = useFormats();
  useTitle(shelf.title);
  const asked = useSearch({ from: '/collection' });
  // The router hands on what it was told to leave out.
  const search = useMemo(() => readShelfSearch({ ...asked }), [asked]);
  const navigate = useNavigate({ from: '/collection' });
  const ask = (next: ShelfSearch) => void navigate({ search: next, replace: true });
  const question = useMemo(() => shelfQuestion(search), [search]);
  const sets = useConnection(ShelfDocument, question, pageOf);
  const isAsked = Boolean(search.find ?? search.standing);

  return (
    <>
      <div className={styles['head']}>
        <h1>{shelf.title}</h1>
        <p aria-live="polite">
          {sets.isHere &&
            shelf.count(sets.rows.length, formats.number(sets.rows.length), !sets.hasMore)}
        </p>
        <p data-print="no">
          <Link to="/buy">{buy.title}</Link>
        </p>
      </div>
      <ShelfAsked search={search} ask={ask} />
      {sets.error && <Failed error={sets.error} retry={sets.fetchAgain} />}
      {!sets.isHere && !sets.error && <Loading />}
      {sets.isHere && sets.rows.length === 0 && !isAsked && (
        <Notice title={shelf.emptyTitle} help={shelf.emptyHelp} />
      )}
      {sets.isHere && sets.rows.length === 0 && isAsked && (
        <Notice title={shelf.noneTitle} help={shelf.noneHelp}>
          <Button
            onClick={() => {
              ask({});
            }}
          >
            {shelf.clear}
          </Button>
        </Notice>
      )}
      {sets.rows.length > 0 &&
        (search.as === 'table' ? (
          <ShelfTable rows={sets.rows} onNearEnd={sets.fetchMore} search={search} ask={ask} />
        ) : (
          <ShelfCards rows={sets.rows} onNearEnd={sets.fetchMore} />
        ))}
    </>
  );
}
