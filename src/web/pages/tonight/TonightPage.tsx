import { useNavigate, useSearch } from '@tanstack/react-router';
import { useTitle } from '../../parts/useTitle.js';
import { useTexts } from '../../texts/textsContext.js';
import { BandAsked } from './BandAsked.js';
import { NextSteps } from './NextSteps.js';
import { OnAnyBand } from './OnAnyBand.js';
import { OnBand } from './OnBand.js';
import { Timers } from './Timers.js';
import { readTonightSearch, type TonightSearch } from './tonightSearch.js';
import styles from './TonightPage.module.css';

/** What may go on the air, what nearly could, the timer, and what to do with the hour there is. */
export function TonightPage() {
  const { tonight } = useTexts();
  useTitle(tonight.title);
  // The router hands on what it was told to leave out.
  const search = readTonightSearch({ ...useSearch({ from: '/' }) });
  const { band, mode, watts } = search;
  const navigate = useNavigate({ from: '/' });
  const ask = (next: TonightSearch) => void navigate({ search: next, replace: true });
  return (
    <>
      <h1 className={styles['title']}>{tonight.title}</h1>
      <Timers />
      <BandAsked search={search} ask={ask} />
      <div className={styles['parts']}>
        {band && mode ? (
          <OnBand key={`${band} ${mode}`} band={band} mode={mode} watts={watts ?? null} />
        ) : (
          <OnAnyBand />
        )}
        <NextSteps />
      </div>
    </>
  );
}
