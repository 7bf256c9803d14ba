import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { useSend, type ShownProblem } from '../../api/useSend.js';
import { useDraft } from '../../drafts/useDraft.js';
import { RecordUseDocument, type SetUseQuery } from '../../gql/graphql.js';
import { typedInstant } from '../../locale/typedInstant.js';
import { typedNumber } from '../../locale/typedNumber.js';
import { Button } from '../../parts/Button.js';
import { Field } from '../../parts/Field.js';
import { ProblemsAt, ProblemsElsewhere } from '../../parts/ProblemsAt.js';
import { Ticks } from '../../parts/Ticks.js';
import { useTexts } from '../../texts/textsContext.js';
import type { UsedSet } from './SetUse.js';
import styles from './SetUse.module.css';

type Served = Extract<NonNullable<SetUseQuery['item']>, { __typename: 'Rig' }>['servedBy'];

const empty = {
  startedAt: '',
  hours: '',
  contacts: '',
  band: '',
  mode: '',
  note: '',
  accessoryIds: [] as string[],
};
type TypedName = Exclude<keyof typeof empty, 'accessoryIds'>;
const shown = (['startedAt', 'hours', 'contacts', 'band', 'mode', 'note'] as const).map((name) => [
  name,
]);

/** One use on the air, written down by hand; what served it ages with it. */
export function RecordUse({
  rigId,
  item,
  servedBy,
}: {
  rigId: string;
  item: Pick<UsedSet, 'model'>;
  servedBy: Served;
}) {
  const { use, bench } = useTexts();
  const { draft, change, clear } = useDraft(`use.${rigId}`, empty);
  const { send, problems, isSending, forget } = useSend(
    RecordUseDocument,
    (data) => data.recordUse,
  );
  const [unread, setUnread] = useState<ShownProblem[]>([]);
  const [isKept, setIsKept] = useState(false);
  const capabilities = item.model?.capabilities ?? [];
  const record = async () => {
    const hours = typedNumber(draft.hours);
    const contacts = draft.contacts.trim() === '' ? '0' : draft.contacts.trim();
    const lacking: ShownProblem[] = [
      ...(hours === null ? [unreadAt('hours', use.hoursUnread)] : []),
      ...(/^\d{1,6}$/.test(contacts) ? [] : [unreadAt('contacts', use.contactsUnread)]),
    ];
    setUnread(lacking);
    forget();
    if (lacking.length > 0) return;
    const kept = await send({
      input: {
        rigId,
        hours: Number(hours),
        contacts: Number(contacts),
        startedAt: typedInstant(draft.startedAt),
        band: draft.band.replace(/\s/g, '') || null,
        mode: draft.mode.trim().toUpperCase() || null,
        note: draft.note.trim() || null,
        accessoryIds: draft.accessoryIds,
      },
    });
    if (!kept) return;
    // The same supply and speaker serve it the next time, most often.
    clear({ accessoryIds: draft.accessoryIds });
    setIsKept(true);
  };
  const bound = (name: TypedName) => ({
    value: draft[name],
    onChange: (event: { target: { value: string } }) => {
      change({ [name]: event.target.value });
      setIsKept(false);
    },
  });
  const all = [...unread, ...problems];
  const zone = Intl.DateTimeFormat().resolvedOptions().timeZone;
  return (
    <details className={styles['record']} open={draft.hours !== '' || draft.note !== '' || isKept}>
      <summary>{use.writeDown}</summary>
      <form
        className={styles['form']}
        onSubmit={(event) => {
          event.preventDefault();
          void record();
        }}
      >
        <div className={styles['fields']}>
          <div>
            <Field label={use.hours}>
              <input inputMode="decimal" {...bound('hours')} />
            </Field>
            <ProblemsAt problems={all} path={['hours']} />
          </div>
          <div>
            <Field label={use.contacts}>
              <input inputMode="numeric" {...bound('contacts')} />
            </Field>
            <ProblemsAt problems={all} path={['contacts']} />
          </div>
          <div>
            <Field label={use.began(zone)}>
              <input type="datetime-local" {...bound('startedAt')} />
            </Field>
            <ProblemsAt problems={all} path={['startedAt']} />
          </div>
          <div>
            <Field label={use.band}>
              <input list={`bands-${rigId}`} spellCheck={false} {...bound('band')} />
            </Field>
            <ProblemsAt problems={all} path={['band']} />
          </div>
          <div>
            <Field label={use.mode}>
              <input list={`modes-${rigId}`} spellCheck={false} {...bound('mode')} />
            </Field>
            <ProblemsAt problems={all} path={['mode']} />
          </div>
        </div>
        <datalist id={`bands-${rigId}`}>
          {[...new Set(capabilities.map(({ band }) => band))].map((band) => (
            <option key={band} value={band} />
          ))}
        </datalist>
        <datalist id={`modes-${rigId}`}>
          {[...new Set(capabilities.map(({ mode }) => mode))].map((mode) => (
            <option key={mode} value={mode} />
          ))}
        </datalist>
        {servedBy.length > 0 && (
          <Ticks
            legend={use.servedBy}
            options={servedBy.map(({ accessory: { id, inventoryNumber, name } }) => ({
              value: id,
              words: [inventoryNumber, name].filter(Boolean).join(' '),
            }))}
            values={draft.accessoryIds}
            onChange={(accessoryIds) => {
              change({ accessoryIds });
            }}
          />
        )}
        <Field label={use.note}>
          <textarea rows={2} {...bound('note')} />
        </Field>
        <ProblemsAt problems={all} path={['note']} />
        <ProblemsElsewhere problems={all} shown={shown} />
        <Button type="submit" disabled={isSending}>
          {bench.writeDown}
        </Button>
        <p role="status" className={styles['kept']}>
          {isKept && bench.kept}
        </p>
        <p>
          <Link to="/bring-a-log">{use.toLog}</Link>
        </p>
      </form>
    </details>
  );
}

const unreadAt = (name: string, message: string): ShownProblem => ({
  code: 'INVALID',
  message,
  path: [name],
});
