import { useQuery } from 'urql';
import { BandNamesDocument } from '../../gql/graphql.js';
import { Button } from '../../parts/Button.js';
import { Field } from '../../parts/Field.js';
import { useTexts } from '../../texts/textsContext.js';
import { spaced } from './bandsOf.js';
import { modes, mostWatts, type TonightSearch } from './tonightSearch.js';
import { WattsField } from './WattsField.js';
import styles from './BandAsked.module.css';

/** Band, mode and power that are asked for; kept in the address. */
export function BandAsked({
  search,
  ask,
}: {
  search: TonightSearch;
  ask: (next: TonightSearch) => void;
}) {
  const { tonight } = useTexts();
  const [{ data }] = useQuery({ query: BandNamesDocument, variables: {} });
  const bands = listed(data?.bands.map(({ band }) => band) ?? [], search.band);
  return (
    <form
      className={styles['asked']}
      role="search"
      aria-label={tonight.askedFor}
      data-print="no"
      onSubmit={(event) => {
        event.preventDefault();
      }}
    >
      <Field label={tonight.band}>
        <select
          value={search.band ?? ''}
          onChange={({ target }) => {
            ask(target.value === '' ? {} : { ...search, band: target.value, mode: modeOf(search) });
          }}
        >
          <option value="">{tonight.anyBand}</option>
          {bands.map((band) => (
            <option key={band} value={band}>
              {spaced(band)}
            </option>
          ))}
        </select>
      </Field>
      <Field label={tonight.mode}>
        <select
          value={modeOf(search)}
          disabled={search.band === undefined}
          onChange={({ target }) => {
            ask({ ...search, mode: target.value });
          }}
        >
          {listed(modes, search.mode).map((mode) => (
            <option key={mode}>{mode}</option>
          ))}
        </select>
      </Field>
      <WattsField
        key={search.band ?? ''}
        most={mostWatts}
        isOff={search.band === undefined}
        watts={search.watts}
        onWatts={(watts) => {
          const { watts: _before, ...rest } = search;
          ask(watts === undefined ? rest : { ...rest, watts });
        }}
      />
      {search.band !== undefined && (
        <Button
          onClick={() => {
            ask({});
          }}
        >
          {tonight.allBands}
        </Button>
      )}
    </form>
  );
}

const modeOf = ({ mode }: TonightSearch): string => mode ?? modes[0];

/** Each once, and what the address names although it is not among them. */
const listed = (names: readonly string[], asked?: string): string[] => [
  ...new Set([...names, ...(asked === undefined ? [] : [asked])]),
];
