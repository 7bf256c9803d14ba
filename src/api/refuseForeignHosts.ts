import type { RequestHandler } from 'express';

const loopbackNames = new Set(['localhost', '127.0.0.1', '[::1]']);

/**
 * A page elsewhere can point a name of its own at this machine and then read what the server says
 * (DNS rebinding). So the server answers only to names it knows.
 */
export function refuseForeignHosts(allowedHosts: readonly string[]): RequestHandler {
  const known = new Set([...loopbackNames, ...allowedHosts.map((host) => host.toLowerCase())]);
  return (request, response, next) => {
    const name = (request.headers.host ?? '').toLowerCase().replace(/:\d+$/, '');
    if (known.has(name)) {
      next();
      return;
    }
    response
      .status(421)
      .type('text/plain')
      .send(
        'Reglow does not answer to this host name. Use http://localhost, or name the host in REGLOW_ALLOWED_HOSTS.\n',
      );
  };
}
