import { Refusal } from './refusal.js';

/**
 * The engines' word that a unique index was broken, as something a person can read. Rules are
 * checked before; this catches the two who do the same thing at the same time.
 * @returns the refusal, or the error itself when it is something else.
 */
export function refusalFromConstraint(error: unknown): unknown {
  const { code, message = '', detail = '' } = error as Record<string, string | undefined>;
  const columns =
    code === 'SQLITE_CONSTRAINT_UNIQUE'
      ? /failed: (.*)$/.exec(message)?.[1]?.replace(/\w+\./g, '')
      : code === '23505'
        ? /^Key \((.*?)\)=/.exec(detail)?.[1]
        : undefined;
  if (columns === undefined) return error;
  const words = columns.replaceAll('_id', '').replaceAll('_', ' ').replaceAll(', ', ' and ');
  return Refusal.conflict(
    `There is a record with the same ${words} already. Load it and change that one instead.`,
  );
}
