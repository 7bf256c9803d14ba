import type { Request, Response } from 'express';
import type { Database } from '../db/database.js';
import { provForms, provTexts } from '../features/provExport/provText.js';
import { itemTypes, splitGlobalId } from './kit/globalId.js';

/** `GET /provenance/Rig_….ttl`: the provenance of one item as a file. */
export const downloadProvenance =
  (database: Database, clock: () => number) =>
  async (request: Request, response: Response): Promise<void> => {
    const [, id = '', ending = ''] =
      /^([\w-]+)\.(json|jsonld|ttl)$/.exec(String(request.params['file'])) ?? [];
    const split = splitGlobalId(id);
    const isItem = split !== null && itemTypes.some((type) => type === split.typeName);
    const itemId = isItem ? split.id : null;
    const form = provForms[ending as keyof typeof provForms] as
      (typeof provForms)['ttl'] | undefined;
    const today = new Date(clock()).toISOString().slice(0, 10);
    const text =
      itemId === null || !form
        ? undefined
        : (await provTexts(database.reader, [itemId], form.format, today)).get(itemId);
    if (text === undefined || !form) {
      response
        .status(404)
        .type('text/plain')
        .send(
          'There is no such item. Ask for /provenance/<id of a rig or accessory>.ttl, .json or .jsonld.\n',
        );
      return;
    }
    response.type(form.mediaType).attachment(`provenance.${ending}`).send(text);
  };
