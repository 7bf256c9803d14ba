import type { Request } from 'express';

/** A “persisted document request”, GraphQL over HTTP, draft, appendix A. */
export interface DocumentRequest {
  documentId: string;
  operationName: string | null;
  variables: Record<string, unknown>;
}

/** What is wrong with a request, in a sentence. */
export interface Malformed {
  why: string;
}

/** Reads a request whose document is named in the path, in the address, or in a body of JSON. */
export function documentRequest(request: Request): DocumentRequest | Malformed {
  const isGet = request.method !== 'POST';
  const given = isGet ? request.query : (request.body as unknown);
  if (!isObject(given)) return { why: 'The body is to be one JSON object.' };
  const inPath = request.params['name'];
  const { documentId = inPath, operationName = null, query } = given;
  const variables = isGet ? parsed(given['variables']) : (given['variables'] ?? {});
  if (query !== undefined) {
    return { why: 'Only published documents are run here: send documentId, and no query.' };
  }
  if (typeof documentId !== 'string' || documentId === '') {
    return { why: 'Name a published document: documentId=sha256:…, or its name in the path.' };
  }
  if (inPath !== undefined && documentId !== inPath) {
    return { why: 'The path names one document and documentId another.' };
  }
  if (operationName !== null && typeof operationName !== 'string') {
    return { why: 'operationName is to be one text.' };
  }
  if (!isObject(variables)) return { why: 'variables are to be one JSON object.' };
  return { documentId, operationName: operationName === '' ? null : operationName, variables };
}

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

function parsed(text: unknown): unknown {
  if (text === undefined) return {};
  try {
    return typeof text === 'string' ? JSON.parse(text) : null;
  } catch {
    return null;
  }
}
