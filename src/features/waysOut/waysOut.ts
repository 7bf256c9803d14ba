import { openMetricsType } from '../figures/openMetricsText.js';
import { documentCalled } from '../publishedDocuments/publishedDocuments.js';
import type { TokenScope } from '../readTokens/tokenScope.js';
import type { WayOutExampleKind } from './exampleKind.js';

export interface WayOutExample {
  kind: WayOutExampleKind;
  /** For a POSIX shell; the token is in the variable REGLOW_TOKEN. */
  command: string;
  /** What a reader subscribes to that can send no headers; null for those that can. */
  subscribeTo: string | null;
}

export interface WayOut {
  scope: TokenScope;
  path: string;
  standard: string;
  mediaType: string;
  examples: readonly WayOutExample[];
}

/** The name of the shell's variable that examples read the token from. */
export const tokenVariable = 'REGLOW_TOKEN';

/**
 * Every way out with its examples: the page prints these, and a test runs each of them as printed.
 * @param address as `http://localhost:4600`
 */
export function waysOut(address: string): WayOut[] {
  return [
    {
      scope: 'FIGURES',
      path: '/metrics',
      standard: 'OpenMetrics 1.0.0',
      mediaType: openMetricsType,
      examples: [byHeader('FIGURES', `'${address}/metrics'`)],
    },
    {
      scope: 'EVENTS',
      path: '/feeds/events.json',
      standard: 'JSON Feed 1.1',
      mediaType: 'application/feed+json',
      examples: [
        byHeader('EVENTS', `'${address}/feeds/events.json?size=10'`),
        inAddress('EVENTS_IN_ADDRESS', `${address}/feeds/events.json`),
      ],
    },
    {
      scope: 'CALENDAR',
      path: '/calendars',
      standard: 'iCalendar (RFC 5545)',
      mediaType: 'text/calendar; charset=utf-8',
      examples: [
        inAddress('DUE', `${address}/calendars/due.ics`),
        byHeader('SESSIONS', `'${address}/calendars/sessions.ics?from=2026-01-01&to=2026-12-31'`),
      ],
    },
    {
      scope: 'DOCUMENTS',
      path: '/documents',
      standard: 'GraphQL over HTTP, draft, appendix A “Persisted Documents”',
      mediaType: 'application/json; charset=utf-8',
      examples: documentExamples(address),
    },
  ];
}

function documentExamples(address: string): WayOutExample[] {
  const { documentId = '' } = documentCalled('collection-figures') ?? {};
  const body = JSON.stringify({ documentId: 'rigs', variables: { first: 3 } });
  return [
    byHeader('DOCUMENT_BY_NAME', `'${address}/documents/ready-rigs'`),
    byHeader('DOCUMENT_BY_DIGEST', `'${address}/documents?documentId=${documentId}'`),
    byHeader(
      'DOCUMENT_WITH_VARIABLES',
      `'${address}/documents' \\\n  -H 'Content-Type: application/json' \\\n  -d '${body}'`,
    ),
  ];
}

const byHeader = (kind: WayOutExampleKind, rest: string): WayOutExample => ({
  kind,
  command: `curl -sS -H "Authorization: Bearer $${tokenVariable}" \\\n  ${rest}`,
  subscribeTo: null,
});

function inAddress(kind: WayOutExampleKind, url: string): WayOutExample {
  const subscribeTo = `${url}?access_token=$${tokenVariable}`;
  return { kind, command: `curl -sS "${subscribeTo}"`, subscribeTo };
}
