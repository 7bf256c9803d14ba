/** What a changed row says about whose standing must be computed anew. */
export type Subject =
  'item' | 'model' | 'partType' | 'component' | 'lot' | 'project' | 'task' | 'session' | 'quantity';

/**
 * For each table, the fields of a row that lead to the items it bears on. Tables that are not
 * named bear on no figure (a place, a claim, a person's note).
 */
export const bearsOn: Readonly<Record<string, readonly [field: string, subject: Subject][]>> = {
  item: [
    ['id', 'item'],
    ['housedInId', 'item'],
  ],
  item_service: [
    ['accessoryId', 'item'],
    ['rigId', 'item'],
  ],
  model: [['id', 'model']],
  model_role: [['modelId', 'model']],
  fit_out_position: [['modelId', 'model']],
  reading_limit: [
    ['modelId', 'model'],
    ['partTypeId', 'partType'],
  ],
  part_type: [['id', 'partType']],
  acquisition: [['id', 'lot']],
  extra_cost: [['acquisitionId', 'lot']],
  lot_line: [
    ['acquisitionId', 'lot'],
    ['itemId', 'item'],
  ],
  loan: [['itemId', 'item']],
  item_loss: [['itemId', 'item']],
  inspection: [['itemId', 'item']],
  fit_out_check: [['itemId', 'item']],
  finding: [['itemId', 'item']],
  hazard: [['itemId', 'item']],
  component: [['id', 'component']],
  fitting: [['itemId', 'item']],
  reading: [
    ['itemId', 'item'],
    ['componentId', 'component'],
  ],
  instrument_comparison: [['quantity', 'quantity']],
  final_check: [['itemId', 'item']],
  project: [['itemId', 'item']],
  task: [['projectId', 'project']],
  task_step: [['taskId', 'task']],
  work_session: [
    ['itemId', 'item'],
    ['id', 'session'],
  ],
  work_break: [['sessionId', 'session']],
  expense: [['itemId', 'item']],
};
