import type { Request } from 'express';

/**
 * The address that a request was sent to, its host having been checked. Behind a proxy that speaks
 * TLS it must not turn into plain HTTP, which would carry the next request's token in the open.
 */
export const addressOf = ({ headers }: Request): string =>
  `${headers['x-forwarded-proto'] === 'https' ? 'https' : 'http'}://${headers.host ?? 'localhost'}`;
