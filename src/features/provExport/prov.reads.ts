import type { Relation } from '../../api/kit/typeReads.js';
import { provTexts, type ProvFormat } from './provText.js';

export const provRelationsOfProvenance: Record<string, Relation> = {
  prov: async ({ database: { reader }, nowMs }, groups, args) => {
    const today = new Date(nowMs).toISOString().slice(0, 10);
    const format = (args['format'] ?? 'PROV_JSON') as ProvFormat;
    const ids = groups.map(({ id }) => id);
    const texts = await provTexts(reader, ids, format, today);
    return { values: ids.map((id) => texts.get(id) ?? ''), children: [], childType: null };
  },
};
