import { getOperationAST, validate } from 'graphql';
import { describe, expect, it } from 'vitest';
import { documentOutline } from '../../src/features/publishedDocuments/documentOutline.js';
import {
  documentCalled,
  documentIdOf,
  publishedDocuments,
} from '../../src/features/publishedDocuments/publishedDocuments.js';
import { apiSchema } from '../support/testApi.js';

describe('published documents', () => {
  // GraphQL over HTTP, draft, appendix A “Persisted Documents”, “SHA256 Hex Document Identifier”,
  // both examples: https://github.com/graphql/graphql-over-http.
  it.each([
    [
      'query ($id: ID!) {\n  user(id: $id) {\n    name\n  }\n}',
      'sha256:7dba4bd717b41f10434822356a93c32b1fb4907b983e854300ad839f84cdcd6e',
    ],
    [
      'query($id:ID!){user(id:$id){name}}',
      'sha256:71f7dc5758652baac68e4a10c50be732b741c892ade2883a99358f52b555286b',
    ],
  ])('are identified as the appendix shows: %s', (text, documentId) => {
    expect(documentIdOf(text)).toBe(documentId);
  });

  it('are each one query that the schema answers', async () => {
    const schema = await apiSchema();
    expect(publishedDocuments.length).toBeGreaterThanOrEqual(6);
    for (const { document, description, name } of publishedDocuments) {
      expect(validate(schema, document)).toEqual([]);
      expect(getOperationAST(document)?.operation).toBe('query');
      expect(description).not.toBe('');
      // A custom identifier holds unreserved signs only, and no colon.
      expect(name).toMatch(/^[a-z-]+$/);
    }
  });

  it('say what they show, found from the schema', async () => {
    const schema = await apiSchema();
    const needs = Object.fromEntries(
      publishedDocuments.map(({ name, document }) => [
        name,
        documentOutline(schema, document).needs,
      ]),
    );
    expect(needs).toEqual({
      'collection-figures': [],
      'money-spent': ['MONEY'],
      'ready-rigs': [],
      rigs: [],
      'what-is-due': [],
      'where-things-stand': ['PLACES'],
      'who-has-what': ['PEOPLE'],
    });
  });

  it('ask for no serial number, remark, contact or history', () => {
    for (const { text } of publishedDocuments) {
      expect(text).not.toMatch(/\b(serialNumber|note|contact|history|marking|attachments)\b/);
    }
  });

  it('are found by name and by digest alone', () => {
    const [first] = publishedDocuments;
    expect(documentCalled(first?.name ?? '')).toBe(first);
    expect(documentCalled(first?.documentId ?? '')).toBe(first);
    expect(documentCalled('__proto__')).toBeUndefined();
    expect(documentCalled('../dashboard/books')).toBeUndefined();
  });
});
