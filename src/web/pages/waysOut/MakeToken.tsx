import { useSend } from '../../api/useSend.js';
import { useDraft } from '../../drafts/useDraft.js';
import { MakeReadTokenDocument, type TokenAllowance, type TokenScope } from '../../gql/graphql.js';
import { Button } from '../../parts/Button.js';
import { Field } from '../../parts/Field.js';
import { ProblemsAt, ProblemsElsewhere } from '../../parts/ProblemsAt.js';
import { Ticks } from '../../parts/Ticks.js';
import { useTexts } from '../../texts/textsContext.js';
import type { Made } from './MadeToken.js';
import styles from './WaysOutPage.module.css';

interface TokenDraft {
  name: string;
  scopes: TokenScope[];
  shows: TokenAllowance[];
  lastDay: string;
}
const empty: TokenDraft = { name: '', scopes: [], shows: [], lastDay: '' };
const fields = [['name'], ['scopes'], ['lastDay']] as const;

const optionsOf = <Value extends string>(words: Record<Value, string>) =>
  (Object.entries(words) as [Value, string][]).map(([value, each]) => ({ value, words: each }));

/** What a new token is to open and to show: nothing until it is ticked. */
export function MakeToken({ onMade }: { onMade: (made: Made) => void }) {
  const { waysOut } = useTexts();
  const { draft, change, clear } = useDraft('waysOut.token', empty);
  const { send, problems, isSending } = useSend(
    MakeReadTokenDocument,
    ({ makeReadToken }) => makeReadToken,
  );
  const make = async () => {
    const { name, scopes, shows, lastDay } = draft;
    const input = { name, scopes, shows, lastDay: lastDay === '' ? null : lastDay };
    const payload = await send({ input });
    if (!payload?.readToken || payload.token === null) return;
    clear();
    onMade({ token: payload.token, name: payload.readToken.name, scopes });
  };
  return (
    <form
      className={styles['form']}
      onSubmit={(event) => {
        event.preventDefault();
        void make();
      }}
    >
      <Field label={waysOut.name}>
        <input
          value={draft.name}
          placeholder={waysOut.nameLike}
          maxLength={200}
          autoComplete="off"
          onChange={(event) => {
            change({ name: event.target.value });
          }}
        />
      </Field>
      <ProblemsAt problems={problems} path={['name']} />
      <Ticks
        legend={waysOut.opens}
        options={optionsOf(waysOut.scope)}
        values={draft.scopes}
        onChange={(scopes) => {
          change({ scopes });
        }}
      />
      <ProblemsAt problems={problems} path={['scopes']} />
      <Ticks
        legend={waysOut.shows}
        options={optionsOf(waysOut.allowance)}
        values={draft.shows}
        onChange={(shows) => {
          change({ shows });
        }}
      />
      <Field label={waysOut.lastDay}>
        <input
          type="date"
          value={draft.lastDay}
          onChange={(event) => {
            change({ lastDay: event.target.value });
          }}
        />
      </Field>
      <ProblemsAt problems={problems} path={['lastDay']} />
      <ProblemsElsewhere problems={problems} shown={fields} />
      <Button weight="main" type="submit" disabled={isSending}>
        {waysOut.make}
      </Button>
    </form>
  );
}
