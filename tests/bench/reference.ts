import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { readinessAt } from '../../src/domain/readiness/readinessAt.js';
import { sqliteReader } from '../../src/db/sqliteReader.js';
import { readComponentStandings } from '../../src/features/parts/componentStandings.reads.js';
import { readWhole } from './referenceWhole.js';
import { readPage } from './referencePage.js';

/**
 * The bare server that the API is measured against: `node:http`, prepared statements of
 * `better-sqlite3`, the rules of `src/domain`, `JSON.stringify`; no GraphQL, no framework.
 */
export async function serveReference(path: string): Promise<number> {
  const reader = sqliteReader(path);
  const server = createServer((request, response) => {
    const chunks: Buffer[] = [];
    request.on('data', (chunk: Buffer) => chunks.push(chunk));
    request.on('end', () => {
      const { variables } = JSON.parse(Buffer.concat(chunks).toString()) as {
        variables: { first?: number; inventoryNumber?: string };
      };
      const answer =
        variables.inventoryNumber === undefined
          ? readPage(reader, variables.first ?? 20, readinessAt)
          : readWhole(reader, variables.inventoryNumber, readComponentStandings);
      answer.then(
        (data) => {
          response.setHeader('content-type', 'application/json; charset=utf-8');
          response.end(JSON.stringify({ data }));
        },
        (error: unknown) => {
          response.statusCode = 500;
          response.end(String(error));
        },
      );
    });
  });
  await new Promise<void>((resolve) => {
    server.listen(0, '127.0.0.1', resolve);
  });
  return (server.address() as AddressInfo).port;
}
