import { useConnected } from '../../api/connection.js';
import { useSend } from '../../api/useSend.js';
import { useDraft } from '../../drafts/useDraft.js';
import { MarkOrderedDocument } from '../../gql/graphql.js';
import { todayHere } from '../../locale/todayHere.js';
import { Button } from '../../parts/Button.js';
import { Field } from '../../parts/Field.js';
import { ProblemsAt, ProblemsElsewhere } from '../../parts/ProblemsAt.js';
import { useTexts } from '../../texts/textsContext.js';
import type { ShownWant } from './WantedLine.js';
import styles from './BoughtIt.module.css';

const line = ['lines', '0'];

/** Where it was ordered, when, and by when it is expected. Somebody else may have: it is asked at once. */
export function OrderedIt({ want, close }: { want: ShownWant; close: () => void }) {
  const { wanted } = useTexts();
  const isConnected = useConnected();
  const { draft, change, clear } = useDraft(`wanted.order.${want.id}`, {
    orderedFrom: '',
    orderedOn: todayHere(),
    expectedOn: '',
    reference: '',
    quantity: String(want.standing.openQuantity),
    isOrderedAgain: false,
  });
  const { send, problems, isSending } = useSend(MarkOrderedDocument, (data) => data.markOrdered);
  const isOrderedBefore = problems.some(({ code }) => code === 'CONFLICT');
  const keep = async () => {
    const { orderedFrom, orderedOn, expectedOn, reference, quantity, isOrderedAgain } = draft;
    const kept = await send({
      input: {
        orderedFrom,
        orderedOn,
        expectedOn: expectedOn || null,
        reference: reference.trim() || null,
        lines: [
          {
            wantId: String(want.id),
            quantity: Math.round(Number(quantity)) || 0,
            designators: [],
            isOrderedAgain,
          },
        ],
      },
    });
    if (!kept) return;
    clear();
    close();
  };
  const bound = (name: 'orderedFrom' | 'orderedOn' | 'expectedOn' | 'reference' | 'quantity') => ({
    value: draft[name],
    onChange: (event: { target: { value: string } }) => {
      change({ [name]: event.target.value });
    },
  });
  return (
    <form
      className={styles['form']}
      onSubmit={(event) => {
        event.preventDefault();
        void keep();
      }}
    >
      <Field label={wanted.orderedFrom}>
        <input autoFocus {...bound('orderedFrom')} />
      </Field>
      <ProblemsAt problems={problems} path={['orderedFrom']} />
      <Field label={wanted.orderedOn}>
        <input type="date" required {...bound('orderedOn')} />
      </Field>
      <ProblemsAt problems={problems} path={['orderedOn']} />
      <Field label={wanted.expectedOn}>
        <input type="date" {...bound('expectedOn')} />
      </Field>
      <ProblemsAt problems={problems} path={['expectedOn']} />
      <Field label={wanted.howMany}>
        <input type="number" min={1} {...bound('quantity')} />
      </Field>
      <ProblemsAt problems={problems} path={[...line, 'quantity']} />
      <Field label={wanted.reference}>
        <input {...bound('reference')} />
      </Field>
      <ProblemsAt problems={problems} path={['reference']} />
      <ProblemsElsewhere
        problems={problems}
        shown={[
          ['orderedFrom'],
          ['orderedOn'],
          ['expectedOn'],
          [...line, 'quantity'],
          ['reference'],
        ]}
      />
      {(isOrderedBefore || draft.isOrderedAgain) && (
        <label>
          <input
            type="checkbox"
            checked={draft.isOrderedAgain}
            onChange={(event) => {
              change({ isOrderedAgain: event.target.checked });
            }}
          />{' '}
          {wanted.orderAgain}
        </label>
      )}
      {!isConnected && <p role="status">{wanted.orderNeedsConnection}</p>}
      <div className={styles['buttons']}>
        <Button type="submit" weight="main" disabled={isSending || !isConnected}>
          {wanted.noteOrder}
        </Button>
        <Button weight="quiet" onClick={close}>
          {wanted.notYet}
        </Button>
      </div>
    </form>
  );
}
