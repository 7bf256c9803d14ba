import type { RowSource } from '../../db/rowSource.js';
import { provJsonLd } from './provJsonLd.js';
import { readProvFacts } from './provFacts.reads.js';
import { provOfItem } from './provOfItem.js';
import { provTurtle } from './provTurtle.js';

/** The forms in which a provenance is handed out, by the ending of its file. */
export const provForms = {
  json: { format: 'PROV_JSON', mediaType: 'application/json' },
  jsonld: { format: 'JSON_LD', mediaType: 'application/ld+json' },
  ttl: { format: 'TURTLE', mediaType: 'text/turtle' },
} as const;

export type ProvFormat = (typeof provForms)[keyof typeof provForms]['format'];

/** The provenance of each item as one text; items that are not there are left out. */
export async function provTexts(
  source: RowSource,
  itemIds: readonly string[],
  format: ProvFormat,
  today: string,
): Promise<Map<string, string>> {
  const texts = new Map<string, string>();
  for (const facts of await readProvFacts(source, itemIds)) {
    const document = provOfItem(facts, today);
    texts.set(
      facts.item.id,
      format === 'TURTLE'
        ? await provTurtle(document)
        : `${JSON.stringify(format === 'JSON_LD' ? provJsonLd(document) : document, null, 2)}\n`,
    );
  }
  return texts;
}
