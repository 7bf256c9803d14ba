import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { useSend } from '../../api/useSend.js';
import { useDraft } from '../../drafts/useDraft.js';
import { ImportContactLogDocument, type ImportContactLogMutation } from '../../gql/graphql.js';
import { useFormats } from '../../locale/useFormats.js';
import { FileDrop } from '../../parts/FileDrop.js';
import { ProblemsElsewhere } from '../../parts/ProblemsAt.js';
import { useTitle } from '../../parts/useTitle.js';
import { useTexts } from '../../texts/textsContext.js';
import { decodeText } from '../import/decodeText.js';
import { logInput, noChoice, type LogDraft } from './logDraft.js';
import { LogReport } from './LogReport.js';
import { LogWishes } from './LogWishes.js';
import styles from '../import/ImportPage.module.css';

export type ShownLog = NonNullable<ImportContactLogMutation['importContactLog']['report']>;

const longestLog = 1_000_000;

/** A log that the operator keeps elsewhere: looked at first, then counted as a whole or not at all. */
export function ContactLogPage() {
  const { contactLog, bringList, frame } = useTexts();
  const formats = useFormats();
  useTitle(contactLog.title);
  const [file, setFile] = useState<{ name: string; text: string } | null>(null);
  const [report, setReport] = useState<ShownLog | null>(null);
  const { draft, change } = useDraft('contactLog', noChoice);
  const { send, problems, isSending, forget } = useSend(
    ImportContactLogDocument,
    (data) => data.importContactLog,
  );
  const isEmpty = file?.text.trim() === '';
  const isTooLong = file !== null && file.text.length > longestLog;
  const ask = async (text: string, chosen: LogDraft, isDryRun: boolean) => {
    const answer = await send({ input: logInput(text, chosen, isDryRun) });
    setReport(answer?.report ?? null);
  };
  const take = async (chosen: File) => {
    const text = await decodeText(chosen);
    setFile({ name: chosen.name, text });
    setReport(null);
    forget();
    if (text.trim() !== '' && text.length <= longestLog) await ask(text, draft, true);
  };
  const choose = (changes: Partial<LogDraft>) => {
    change(changes);
    if (file && !isEmpty && !isTooLong) void ask(file.text, { ...draft, ...changes }, true);
  };
  return (
    <div className={styles['page']}>
      <h1>{contactLog.title}</h1>
      <p>{contactLog.what}</p>
      <p>
        <Link to="/bring-a-list">{contactLog.toList}</Link>
      </p>
      <FileDrop
        label={contactLog.file}
        accept=".adi,.adif,text/plain"
        fileName={file?.name ?? null}
        take={(chosen) => void take(chosen)}
      />
      {isEmpty && <p role="alert">{contactLog.emptyFile}</p>}
      {isTooLong && <p role="alert">{contactLog.tooLong(formats.number(longestLog))}</p>}
      <LogWishes draft={draft} report={report} problems={problems} choose={choose} />
      {isSending && <p role="status">{bringList.looking}</p>}
      <ProblemsElsewhere problems={problems} shown={[['gapMinutes'], ['rigId']]} />
      {report && file && (
        <LogReport
          report={report}
          isSending={isSending}
          count={() => void ask(file.text, draft, false)}
        />
      )}
      {!file && <p className={styles['soft']}>{frame.importHint}</p>}
    </div>
  );
}
