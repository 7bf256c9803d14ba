import type { RequestHandler } from 'express';

/** Ends a request whose body has not come in time, so that idle senders cannot hold connections. */
export const endSlowRequests =
  (milliseconds: number): RequestHandler =>
  (request, _response, next) => {
    const timer = setTimeout(() => {
      if (!request.complete) request.destroy();
    }, milliseconds);
    timer.unref();
    request.once('close', () => {
      clearTimeout(timer);
    });
    next();
  };
