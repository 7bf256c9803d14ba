import type { TypedDocumentNode } from '@graphql-typed-document-node/core';
import { useState } from 'react';
import { useSend, type ShownProblem } from '../../api/useSend.js';

/** What was typed, as the API takes it; or what of it cannot be read, all at once. */
export type Read<Input> = { input: Input } | { unread: readonly ShownProblem[] };

/** As `useSend`, of what may be unreadable: then nothing is sent, and that is the problem. */
export function useReadAndSend<Data, Input, Payload extends { problems: readonly ShownProblem[] }>(
  document: TypedDocumentNode<Data, { input: Input }>,
  payloadOf: (data: Data) => Payload,
) {
  const { send, problems, isSending } = useSend(document, payloadOf);
  const [unread, setUnread] = useState<readonly ShownProblem[]>([]);
  return {
    isSending,
    problems: unread.length > 0 ? unread : problems,
    /** @returns the payload when it was kept, else null */
    send: async (read: Read<Input>): Promise<Payload | null> => {
      setUnread('unread' in read ? read.unread : []);
      return 'unread' in read ? null : send({ input: read.input });
    },
  };
}
