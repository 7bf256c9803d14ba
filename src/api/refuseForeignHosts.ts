import type { RequestHandler } from 'express';
import { knownHosts } from './knownHosts.js';

export const whyForeignHost =
  'Reglow does not answer to this host name. Use http://localhost, or name the host in REGLOW_ALLOWED_HOSTS.';

/**
 * A page elsewhere can point a name of its own at this machine and then read what the server says
 * (DNS rebinding). So the server answers only to names it knows.
 */
export function refuseForeignHosts(allowedHosts: readonly string[]): RequestHandler {
  const isKnown = knownHosts(allowedHosts);
  return (request, response, next) => {
    if (isKnown(request.headers.host)) {
      next();
      return;
    }
    response.status(421).type('text/plain').send(`${whyForeignHost}\n`);
  };
}
