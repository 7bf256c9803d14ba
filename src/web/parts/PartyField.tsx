import { useId } from 'react';
import { useQuery } from 'urql';
import { isCalled } from '../api/usePartyNamed.js';
import { useSend, type ShownProblem } from '../api/useSend.js';
import { PartyNamesDocument, WritePartyDownDocument, type PartyKind } from '../gql/graphql.js';
import { useTexts } from '../texts/textsContext.js';
import { Button } from './Button.js';
import { Field } from './Field.js';
import { ProblemsAt, ProblemsElsewhere } from './ProblemsAt.js';

/** Somebody by name, with those that answer to what is typed; who is new is written down first. */
export function PartyField({
  label,
  typed,
  onType,
  kind = null,
  problems,
  path,
  isNewSent = false,
}: {
  label: string;
  typed: string;
  onType: (typed: string) => void;
  kind?: PartyKind | null;
  problems: readonly ShownProblem[];
  path: readonly string[];
  /** Whether a new name goes along with what is sent, so that nothing is to be done here. */
  isNewSent?: boolean;
}) {
  const { prove } = useTexts();
  const names = useId();
  const text = typed.trim();
  const [{ data, stale, fetching }, askAgain] = useQuery({
    query: PartyNamesDocument,
    variables: { text: text || null, kind },
  });
  const {
    send,
    problems: ofNew,
    isSending,
  } = useSend(WritePartyDownDocument, (answer) => answer.createParty);
  const found = data?.parties.nodes ?? [];
  const isNew =
    text !== '' && data && !stale && !fetching && !found.some((party) => isCalled(party, text));
  const writeDown = async () => {
    const kept = await send({ input: { name: text, kind: kind ?? 'PERSON' } });
    if (!kept) return;
    askAgain({ requestPolicy: 'network-only' });
  };
  return (
    <div>
      <Field label={label}>
        <input
          list={names}
          value={typed}
          spellCheck={false}
          autoComplete="off"
          onChange={({ target }) => {
            onType(target.value);
          }}
        />
      </Field>
      <datalist id={names}>
        {found.map(({ id, name }) => (
          <option key={id} value={name} />
        ))}
      </datalist>
      <ProblemsAt problems={problems} path={path} />
      {isNew && isNewSent && <p>{prove.newName(text)}</p>}
      {isNew && !isNewSent && (
        <Button weight="quiet" disabled={isSending} onClick={() => void writeDown()}>
          {prove.writePartyDown(text)}
        </Button>
      )}
      <ProblemsElsewhere problems={ofNew} shown={[]} />
    </div>
  );
}
