import type { IncomingMessage, ServerResponse } from 'node:http';

type Middleware = (
  request: IncomingMessage,
  response: ServerResponse,
  next: (error?: unknown) => void,
) => void;

/** The headers that a middleware sets on every answer alike, asked of it once. */
export function headersOf(middleware: Middleware): Record<string, string> {
  const headers: Record<string, string> = {};
  const response = {
    setHeader: (name: string, value: string) => {
      headers[name.toLowerCase()] = value;
    },
    removeHeader: (name: string) => {
      Reflect.deleteProperty(headers, name.toLowerCase());
    },
  };
  middleware({} as IncomingMessage, response as unknown as ServerResponse, (error) => {
    if (error !== undefined) throw error as Error;
  });
  return headers;
}
