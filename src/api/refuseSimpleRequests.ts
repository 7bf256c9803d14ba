import type { RequestHandler } from 'express';

/** As Apollo Server's own guard for requests that are not JSON. */
const guardHeaders = ['apollo-require-preflight', 'x-apollo-operation-name'];

/**
 * A page elsewhere can make a browser post bytes here without asking, but not with a header of its
 * own: for that the browser asks first, and this server does not allow it.
 */
export const refuseSimpleRequests: RequestHandler = (request, response, next) => {
  if (guardHeaders.some((name) => request.headers[name])) {
    next();
    return;
  }
  const message = 'Send the header Apollo-Require-Preflight: true with an upload.';
  response.status(400).set('Connection', 'close');
  response.json({
    file: null,
    attachment: null,
    problems: [{ code: 'INVALID', message, path: [] }],
  });
};
