import { list, one } from '../../api/kit/relations.js';
import { selectColumns } from '../../api/kit/selectColumns.js';
import { tableReads } from '../../api/kit/tableReads.js';
import type { Relation } from '../../api/kit/typeReads.js';

const columns = selectColumns('sweep_template', [
  'id',
  'version',
  'modelId',
  'name',
  'designators',
  'quantities',
  'tier',
  'instrument',
  'method',
  'note',
  'retiredAt',
]);

export const sweepTemplateReads = tableReads('SweepTemplate', 'sweep_template', columns, {
  model: one('Model', 'modelId'),
});

export const sweepTemplatesOfModel: Record<string, Relation> = {
  sweepTemplates: list('SweepTemplate', {
    table: 'sweep_template',
    columns,
    parentColumn: 'model_id',
    orderBy: 'sweep_template.name_key',
    where: 'sweep_template.retired_at IS NULL',
  }),
};
