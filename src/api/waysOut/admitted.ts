import type { Request, RequestHandler, Response } from 'express';
import { admitToken, type Admission } from '../../features/readTokens/admitToken.js';
import type { TokenScope } from '../../features/readTokens/tokenScope.js';
import type { ApiContext } from '../kit/apiContext.js';
import { tokenOfRequest } from './tokenOfRequest.js';

export interface Door {
  scope: TokenScope;
  mayBeInAddress: boolean;
  contextNow: () => ApiContext;
  /** Writes a refusal down as readers of this way out expect it; a line of text if left out. */
  refuse?: (response: Response, reason: string, request: Request) => void;
}

type Admitted = (
  request: Request,
  response: Response,
  admission: Admission,
  context: ApiContext,
) => Promise<void>;

const asText: NonNullable<Door['refuse']> = (response, reason) => {
  response.type('text/plain').send(`${reason}\n`);
};

/**
 * Lets a request in that brings a token for this way out. Nothing of it, refusals included, is to
 * be kept by anybody between; no page of another site is told that it may read it.
 */
export const admitted =
  (
    { scope, mayBeInAddress, contextNow, refuse = asText }: Door,
    answer: Admitted,
  ): RequestHandler =>
  async (request, response) => {
    response.set('Cache-Control', 'private, no-store').vary('Authorization');
    const token = tokenOfRequest(request, mayBeInAddress);
    const context = contextNow();
    const outcome =
      typeof token === 'string'
        ? await admitToken(context.database, token, scope, context.nowMs)
        : token;
    if ('shows' in outcome) {
      await answer(request, response, outcome, context);
      return;
    }
    const { status, code, reason } = outcome;
    response.status(status).set('WWW-Authenticate', challenge(code, scope));
    refuse(response, reason, request);
  };

const challenge = (code: string | null, scope: TokenScope): string =>
  [`Bearer realm="Reglow"`, ...(code === null ? [] : [`error="${code}"`]), `scope="${scope}"`].join(
    ', ',
  );
