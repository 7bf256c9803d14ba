import { useState } from 'react';
import { useClient } from 'urql';
import { useModelNamed } from '../../api/useModelNamed.js';
import { usePartyNamed } from '../../api/usePartyNamed.js';
import { useSend, type ShownProblem } from '../../api/useSend.js';
import {
  LotsLatelyDocument,
  NumberedItemDocument,
  RecordLotDocument,
  type LotLineInput,
} from '../../gql/graphql.js';
import { writtenAmount } from '../../locale/writtenAmount.js';
import { useTexts } from '../../texts/textsContext.js';
import { typedNumber } from '../../locale/typedNumber.js';
import type { BuyDraft, BuyLine } from './buyDraft.js';

/** The clocks of the device and of the program may differ by this much. */
const clockToleranceMs = 60_000;

/** Sends a lot; what cannot be sent as it was typed is said beside its field, all at once. */
export function useBuySender() {
  const { buy, change: changeTexts, intake } = useTexts();
  const client = useClient();
  const partyNamed = usePartyNamed();
  const modelNamed = useModelNamed();
  const { send, problems, isSending, forget } = useSend(
    RecordLotDocument,
    (data) => data.recordAcquisition,
  );
  const [own, setOwn] = useState<readonly ShownProblem[]>([]);

  /** The lot that was kept when its answer got lost, if there is such a one. */
  const alreadySent = async (draft: BuyDraft, amount: string): Promise<string | undefined> => {
    const { sentAt } = draft;
    if (sentAt === null) return undefined;
    const answer = await client
      .query(LotsLatelyDocument, {}, { requestPolicy: 'network-only' })
      .toPromise();
    return answer.data?.acquisitions.nodes.find(
      (lot) =>
        Date.parse(lot.recordedAt) >= Date.parse(sentAt) - clockToleranceMs &&
        lot.acquiredOn === draft.acquiredOn &&
        (lot.venue ?? '') === draft.venue.trim() &&
        Number(lot.price.amount) === Number(amount),
    )?.id;
  };

  return {
    problems: [...own, ...problems],
    isSending,
    /** @returns its id; null when something is to be mended */
    record: async (
      draft: BuyDraft & { currency: string },
      noteSent: (at: string) => void,
    ): Promise<string | null> => {
      const found: ShownProblem[] = [];
      const mend = (message: string, ...path: string[]) => {
        found.push({ code: 'INVALID', message, path });
      };
      const currency = draft.currency.trim().toUpperCase();
      const amountAt = (typed: string, ...path: string[]): string => {
        const amount = writtenAmount(typed);
        if (amount === null) mend(changeTexts.amountUnread, ...path);
        return amount ?? '';
      };
      const weightOf = ({ weight }: BuyLine, index: number) => {
        const at = (name: string) => ['lines', String(index), name];
        const typed = weight.trim();
        if (draft.spreadMethod === 'EQUAL_SHARES' || typed === '') return {};
        if (draft.spreadMethod === 'STATED_VALUES') {
          return { statedValue: amountAt(typed, ...at('statedValue')) };
        }
        const share = typedNumber(typed);
        if (share === null) mend(buy.shareUnread, ...at('statedShare'));
        return { statedShare: share };
      };
      const thingOf = async (line: BuyLine, index: number): Promise<LotLineInput> => {
        const at = (...path: string[]) => ['lines', String(index), ...path];
        if (line.what === 'SUNDRIES') return { sundries: line.name };
        if (line.what === 'KNOWN') {
          const number = line.number.trim();
          const answer = await client.query(NumberedItemDocument, { number }).toPromise();
          const itemId = answer.data?.item?.id;
          if (itemId === undefined) mend(buy.noSuchNumber(number), ...at('itemId'));
          return { itemId: itemId ?? null };
        }
        const modelId = await modelNamed(line.model, line.what);
        if (modelId === undefined)
          mend(intake.modelUnknown(line.model), ...at('newItem', 'modelId'));
        return {
          newItem: {
            kind: line.what,
            role: line.what === 'ACCESSORY' ? line.role : null,
            modelId: modelId ?? null,
            inventoryNumber: line.number.trim() || null,
            name: line.name.trim() || null,
            serialNumber: line.serialNumber.trim() || null,
          },
        };
      };

      const price = amountAt(draft.price, 'price', 'amount');
      if (draft.acquiredOn === '') mend(buy.dayMissing, 'acquiredOn');
      const from = draft.from.trim();
      const knownId = await partyNamed(from);
      const lines = await Promise.all(
        draft.lines.map(async (line, index) => ({
          ...(await thingOf(line, index)),
          ...weightOf(line, index),
        })),
      );
      const extraCosts = draft.costs.map((cost, index) => ({
        description: cost.description,
        amount: {
          amount: amountAt(cost.amount, 'extraCosts', String(index), 'amount', 'amount'),
          currency: (cost.currency.trim() || currency).toUpperCase(),
        },
      }));
      const claims = draft.claims.map(({ lineKey, statement }) => {
        const line = draft.lines.findIndex(({ key }) => key === lineKey);
        return { statement, line: line === -1 ? null : line };
      });
      setOwn(found);
      forget();
      if (found.length > 0) return null;
      const there = await alreadySent(draft, price);
      if (there !== undefined) return there;
      noteSent(draft.sentAt ?? new Date().toISOString());
      const kept = await send({
        input: {
          acquiredOn: draft.acquiredOn,
          venue: draft.venue.trim() || null,
          otherParty: from === '' ? null : knownId ? { id: knownId } : { name: from },
          price: { amount: price, currency },
          spreadMethod: draft.spreadMethod,
          note: draft.note.trim() || null,
          lines,
          extraCosts,
          claims,
        },
      });
      return kept?.acquisition?.id ?? null;
    },
  };
}
