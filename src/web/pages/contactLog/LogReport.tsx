import { useMemo } from 'react';
import { useFormats } from '../../locale/useFormats.js';
import { BasisButton } from '../../parts/BasisButton.js';
import { Button } from '../../parts/Button.js';
import { figureCell, Table } from '../../parts/Table.js';
import { useTexts } from '../../texts/textsContext.js';
import { ImportProblems } from '../import/ImportProblems.js';
import type { ShownLog } from './ContactLogPage.js';
import styles from '../import/ImportPage.module.css';

/** What a log comes to, rig by rig and day by day, and what is not counted. */
export function LogReport({
  report,
  isSending,
  count,
}: {
  report: ShownLog;
  isSending: boolean;
  /** Counts it in earnest. */
  count: () => void;
}) {
  const { contactLog, bringList } = useTexts();
  const formats = useFormats();
  const { days, problemCount, problems, remarks, leftOut, fieldsLeftOut } = report;
  const placed = useMemo(
    () => problems.map(({ line, offset, message }) => ({ line, column: String(offset), message })),
    [problems],
  );
  const fresh = days.reduce((sum, { contacts }) => sum + contacts, 0);
  const isOpen = report.isDryRun && problemCount === 0;
  return (
    <div className={styles['report']} aria-live="polite">
      <h2>
        {report.isDryRun
          ? contactLog.read(report.contactsRead)
          : contactLog.counted(report.contactsLoaded)}{' '}
        <BasisButton of={contactLog.contacts} basis={report.basis} />
      </h2>
      {report.duplicateCount > 0 && <p>{contactLog.duplicates(report.duplicateCount)}</p>}
      {problemCount > 0 && (
        <ImportProblems
          count={problemCount}
          problems={placed}
          placeHeading={contactLog.character}
          placeName="character"
        />
      )}
      {isOpen && (
        <>
          <p>{fresh > 0 ? bringList.noProblems : contactLog.nothingNew}</p>
          {fresh > 0 && (
            <div>
              <Button weight="main" disabled={isSending} onClick={count}>
                {contactLog.count(fresh)}
              </Button>
            </div>
          )}
        </>
      )}
      {days.length > 0 && problemCount === 0 && (
        <Table
          name={contactLog.days}
          head={
            <tr>
              <th scope="col">{contactLog.day}</th>
              <th scope="col">{contactLog.rig}</th>
              <th scope="col" className={figureCell}>
                {contactLog.contacts}
              </th>
              <th scope="col" className={figureCell}>
                {contactLog.hours}
              </th>
            </tr>
          }
        >
          {days.map(({ inventoryNumber, day, contacts, hours }) => (
            <tr key={`${inventoryNumber} ${day}`}>
              <th scope="row">{formats.localDay(day)}</th>
              <td>{inventoryNumber}</td>
              <td className={figureCell}>{contacts}</td>
              <td className={figureCell}>{formats.number(hours)} h</td>
            </tr>
          ))}
        </Table>
      )}
      {leftOut.map(({ reason, contacts }) => (
        <p key={reason}>{contactLog.notCounted(contacts, reason)}</p>
      ))}
      {remarks.length > 0 && (
        <details>
          <summary>{contactLog.remarks(remarks.length)}</summary>
          <ul>
            {remarks.map(({ line, message }, index) => (
              <li key={index}>
                {bringList.line} {line}: {message}
              </li>
            ))}
          </ul>
        </details>
      )}
      {fieldsLeftOut.length > 0 && (
        <p className={styles['soft']}>
          {contactLog.fieldsLeftOut(fieldsLeftOut.map(({ name }) => name).join(', '))}
        </p>
      )}
    </div>
  );
}
