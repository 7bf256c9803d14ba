import { GraphQLError } from 'graphql';
import { itemTypes, recordId } from '../../api/kit/globalId.js';
import { Refusal } from '../../db/refusal.js';
import type { WorkSessionFilter } from './workSession.args.js';

/** A filter as conditions of SQL. @throws GraphQLError for an id of something else. */
export function sessionConditions(
  filter: WorkSessionFilter,
): { sql: string; parameters: string[] }[] {
  const { personId, itemId, taskId, from, to } = filter;
  const conditions: { sql: string; parameters: string[] }[] = [];
  const add = (sql: string, parameter: string) => conditions.push({ sql, parameters: [parameter] });
  if (personId) add('work_session.person_id = ?', idFor('Party', personId, 'personId'));
  if (itemId) add('work_session.item_id = ?', idFor(itemTypes, itemId, 'itemId'));
  if (taskId) add('work_session.task_id = ?', idFor('Task', taskId, 'taskId'));
  if (from) add('work_session.started_at >= ?', from.toISOString());
  if (to) add('work_session.started_at < ?', to.toISOString());
  return conditions;
}

function idFor(wanted: string | readonly string[], text: string, field: string): string {
  try {
    return recordId(wanted, text);
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    throw new GraphQLError(`filter.${field}: ${error.message}`, {
      extensions: { code: 'BAD_USER_INPUT' },
    });
  }
}
