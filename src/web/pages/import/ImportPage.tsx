import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { useMutation } from 'urql';
import { ImportListDocument, type ListField } from '../../gql/graphql.js';
import { Button } from '../../parts/Button.js';
import { Failed } from '../../parts/Failed.js';
import { FileDrop } from '../../parts/FileDrop.js';
import { useTitle } from '../../parts/useTitle.js';
import { useFormats } from '../../locale/useFormats.js';
import { fromApi } from '../../texts/fromApi.js';
import { useTexts } from '../../texts/textsContext.js';
import { decodeText } from './decodeText.js';
import { ImportColumns } from './ImportColumns.js';
import { ImportProblems } from './ImportProblems.js';
import { ImportWishes, type Wishes } from './ImportWishes.js';
import styles from './ImportPage.module.css';

const longestList = 1_000_000;

/** Drop a list, see what would happen, say what its columns mean, then load all of it or nothing. */
export function ImportPage() {
  const { bringList, frame } = useTexts();
  const formats = useFormats();
  useTitle(bringList.title);
  const [csv, setCsv] = useState<string | null>(null);
  const [fileName, setFileName] = useState<string | null>(null);
  const [wishes, setWishes] = useState<Wishes>({ kind: 'RIG', role: null, dateOrder: null });
  const [mapping, setMapping] = useState<Record<string, ListField | 'IGNORE'>>({});
  const [{ data, error, fetching }, read] = useMutation(ImportListDocument);
  const report = data?.importList.report;
  const problems = data?.importList.problems ?? [];

  const ask = (text: string, isDryRun: boolean, meant = mapping, wished = wishes) => {
    const { kind, role, dateOrder } = wished;
    void read({
      input: {
        csv: text,
        kind,
        isDryRun,
        ...(kind === 'ACCESSORY' && role !== null && { role }),
        ...(dateOrder !== null && { dateOrder }),
        mapping: Object.entries(meant).flatMap(([column, field]) =>
          field === 'IGNORE' ? [] : [{ column, field }],
        ),
        ignore: Object.keys(meant).filter((column) => meant[column] === 'IGNORE'),
      },
    });
  };
  const take = async (file: File) => {
    const text = await decodeText(file);
    setCsv(text);
    setFileName(file.name);
    setMapping({});
    if (text.trim() !== '' && text.length <= longestList) ask(text, true, {});
  };
  const isTooLong = csv !== null && csv.length > longestList;
  const isEmpty = csv !== null && csv.trim() === '';
  const canBeRead = csv !== null && !isTooLong && !isEmpty;

  return (
    <div className={styles['page']}>
      <h1>{bringList.title}</h1>
      <p>{bringList.what}</p>
      <p>
        <Link to="/bring-a-log">{bringList.toLog}</Link>
      </p>
      <FileDrop
        label={bringList.file}
        accept=".csv,text/csv,text/plain"
        fileName={fileName}
        take={(file) => void take(file)}
      />
      {isEmpty && <p role="alert">{bringList.emptyFile}</p>}
      <ImportWishes
        wishes={wishes}
        change={(next) => {
          setWishes(next);
          if (canBeRead) ask(csv, true, mapping, next);
        }}
      />
      {isTooLong && <p role="alert">{bringList.tooLong(formats.number(longestList))}</p>}
      {fetching && <p role="status">{bringList.looking}</p>}
      {error && canBeRead && (
        <Failed
          error={error}
          retry={() => {
            ask(csv, true);
          }}
        />
      )}
      {canBeRead &&
        problems.map(({ message }) => (
          <p key={message} role="alert" {...fromApi} className={styles['problem']}>
            {message}
          </p>
        ))}
      {report && canBeRead && (
        <div className={styles['report']} aria-live="polite">
          <h2>
            {report.rowsLoaded > 0
              ? bringList.loaded(report.rowsLoaded)
              : bringList.found(report.rowsRead)}
          </h2>
          {report.remarks.map((remark) => (
            <p key={remark}>{remark}</p>
          ))}
          {report.isDryRun && report.problemCount === 0 && report.rowsRead > 0 && (
            <>
              <p>{bringList.noProblems}</p>
              <Added report={report} />
              <div>
                <Button
                  weight="main"
                  disabled={fetching}
                  onClick={() => {
                    ask(csv, false);
                  }}
                >
                  {bringList.load(report.rowsRead)}
                </Button>
              </div>
            </>
          )}
          {report.problemCount > 0 && (
            <ImportProblems count={report.problemCount} problems={report.problems} />
          )}
          {report.rowsLoaded === 0 && (
            <ImportColumns
              columns={report.columns}
              change={(column, field) => {
                const next = { ...mapping, [column]: field };
                setMapping(next);
                ask(csv, true, next);
              }}
            />
          )}
        </div>
      )}
      {!report && csv === null && <p className={styles['soft']}>{frame.importHint}</p>}
    </div>
  );
}

function Added({
  report,
}: {
  report: { newModels: string[]; newParties: string[]; newPlaces: string[] };
}) {
  const { bringList } = useTexts();
  const { newModels, newParties, newPlaces } = report;
  const lines = [
    newModels.length > 0 && bringList.newModels(newModels.join(', ')),
    newParties.length > 0 && bringList.newParties(newParties.join(', ')),
    newPlaces.length > 0 && bringList.newPlaces(newPlaces.join(', ')),
  ].filter((line) => line !== false);
  if (lines.length === 0) return null;
  return (
    <div>
      <h3>{bringList.alsoAdds}</h3>
      <ul>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </div>
  );
}
