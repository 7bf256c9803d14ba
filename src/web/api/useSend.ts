import type { TypedDocumentNode } from '@graphql-typed-document-node/core';
import { useState } from 'react';
import { useMutation, type AnyVariables } from 'urql';
import type { ProblemCode } from '../gql/graphql.js';
import { useTexts } from '../texts/textsContext.js';

export interface ShownProblem {
  code: ProblemCode;
  message: string;
  path: readonly string[];
  /** Said by the page in the person's language, not by the API. */
  isOfPage?: boolean;
}

export interface Sending<Variables, Payload> {
  /** The payload when it was kept; null when something is to be mended, which `problems` say. */
  send: (variables: Variables) => Promise<Payload | null>;
  problems: readonly ShownProblem[];
  isSending: boolean;
  /** Takes the problems off the screen. */
  forget: () => void;
}

/** Sends a change. What the API refuses, and an API that does not answer, come back as problems. */
export function useSend<
  Data,
  Variables extends AnyVariables,
  Payload extends { problems: readonly ShownProblem[] },
>(
  document: TypedDocumentNode<Data, Variables>,
  payloadOf: (data: Data) => Payload,
): Sending<Variables, Payload> {
  const { frame } = useTexts();
  const [{ fetching }, run] = useMutation<Data, Variables>(document);
  const [problems, setProblems] = useState<readonly ShownProblem[]>([]);
  const send = async (variables: Variables): Promise<Payload | null> => {
    const { data, error } = await run(variables);
    if (!data) {
      const said = error?.graphQLErrors.map(({ message }) => message).join(' ') ?? '';
      const isOfPage = said === '';
      const message = isOfPage ? frame.failedKept : said;
      setProblems([{ code: 'INVALID', message, path: [], isOfPage }]);
      return null;
    }
    const payload = payloadOf(data);
    setProblems(payload.problems);
    return payload.problems.length > 0 ? null : payload;
  };
  return {
    send,
    problems,
    isSending: fetching,
    forget: () => {
      setProblems([]);
    },
  };
}
