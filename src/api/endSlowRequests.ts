import type { IncomingMessage } from 'node:http';

/** Ends a request whose body has not come in time, so that idle senders cannot hold connections. */
export const endSlowRequests =
  (milliseconds: number) =>
  (request: IncomingMessage, _response: unknown, next: () => void): void => {
    const timer = setTimeout(() => {
      if (!request.complete) request.destroy();
    }, milliseconds);
    timer.unref();
    request.once('close', () => {
      clearTimeout(timer);
    });
    next();
  };
