import type { Request } from 'express';

/** Why a request is turned away before any token is looked at. */
export interface NoToken {
  status: 400 | 401;
  reason: string;
  /** RFC 6750, section 3.1; without one when nothing was sent that could be wrong. */
  code: 'invalid_request' | null;
}

/**
 * The bearer token of a request (RFC 6750): from the Authorization header, or from the parameter
 * `access_token` for programs that can send no headers, and then only where that is allowed.
 */
export function tokenOfRequest(request: Request, mayBeInAddress: boolean): string | NoToken {
  const [, inHeader] = /^bearer +(\S+)$/i.exec(request.headers.authorization ?? '') ?? [];
  const inAddress = request.query['access_token'];
  if (inAddress !== undefined && inHeader !== undefined) {
    return wrong('The token is there twice. Send it in the Authorization header alone.');
  }
  if (inAddress !== undefined && !mayBeInAddress) {
    return wrong('Send the token in the Authorization header: here the address takes none.');
  }
  if (inHeader !== undefined) return inHeader;
  if (typeof inAddress === 'string' && inAddress !== '') return inAddress;
  if (inAddress !== undefined) return wrong('access_token is empty, or there twice.');
  const orAddress = mayBeInAddress ? ', or as access_token in the address' : '';
  const reason = `A token is wanted here: Authorization: Bearer …${orAddress}. It is made on the page “Ways out”.`;
  return { status: 401, reason, code: null };
}

const wrong = (reason: string): NoToken => ({ status: 400, reason, code: 'invalid_request' });
