import { useState } from 'react';
import { useQuery } from 'urql';
import {
  DossierReadersDocument,
  type DossierReader,
  type DossierWithheld,
} from '../../gql/graphql.js';
import { Button, buttonClass } from '../../parts/Button.js';
import { Choice } from '../../parts/Choice.js';
import { Failed } from '../../parts/Failed.js';
import { Loading } from '../../parts/Loading.js';
import { Sheet } from '../../parts/Sheet.js';
import { Ticks } from '../../parts/Ticks.js';
import { useTexts } from '../../texts/textsContext.js';
import { dossierAddress } from './dossierAddress.js';
import styles from './SetDossier.module.css';

const optionsOf = <Value extends string>(words: Record<Value, string>) =>
  (Object.entries(words) as [Value, string][]).map(([value, each]) => ({ value, words: each }));

/** A dossier of this set: for whom, what is left out, and the same file to look at or to keep. */
export function SetDossier({ number }: { number: string }) {
  const { dossier } = useTexts();
  const [reader, setReader] = useState<DossierReader>('BUYER');
  // Null: as is usual for the reader.
  const [chosen, setChosen] = useState<DossierWithheld[] | null>(null);
  const [{ data, error }, fetchAgain] = useQuery({ query: DossierReadersDocument, variables: {} });
  if (error && !data) return <Failed error={error} retry={fetchAgain} />;
  if (!data) return <Loading />;
  const usual = data.dossierReaders.find((guide) => guide.reader === reader)?.usuallyWithheld ?? [];
  const withheld = chosen ?? usual;
  const every = optionsOf(dossier.withheld);
  const wordsOf = (isWithheld: boolean): string =>
    every
      .filter(({ value }) => withheld.includes(value) === isWithheld)
      .map(({ words }) => words)
      .join(', ');
  const asked = { number, reader, withheld };
  return (
    <Sheet id="dossier" title={dossier.title}>
      <p>{dossier.what}</p>
      <Choice
        legend={dossier.reader}
        name="dossier-reader"
        options={optionsOf(dossier.readers)}
        value={reader}
        onChange={(next) => {
          setReader(next);
          setChosen(null);
        }}
      />
      <Ticks legend={dossier.withhold} options={every} values={withheld} onChange={setChosen} />
      <p role="status">
        {withheld.length === 0 ? dossier.nothingLeftOut : dossier.leftOut(wordsOf(true))}{' '}
        {withheld.length < every.length && dossier.leftIn(wordsOf(false))}
      </p>
      <div className={styles['ways']} data-print="no">
        <a
          className={buttonClass()}
          href={dossierAddress(asked, { kind: 'look' })}
          target="_blank"
          rel="noreferrer"
        >
          {dossier.look}
          <span className="only-heard">, {dossier.inNewWindow}</span>
        </a>
        <a className={buttonClass()} href={dossierAddress(asked, { kind: 'pdf', paper: 'A4' })}>
          {dossier.pdfA4}
        </a>
        <a className={buttonClass()} href={dossierAddress(asked, { kind: 'pdf', paper: 'LETTER' })}>
          {dossier.pdfLetter}
        </a>
        {chosen !== null && (
          <Button
            weight="quiet"
            onClick={() => {
              setChosen(null);
            }}
          >
            {dossier.asUsual}
          </Button>
        )}
      </div>
    </Sheet>
  );
}
