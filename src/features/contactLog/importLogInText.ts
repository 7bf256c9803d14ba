import { optionalRecordId, recordId } from '../../api/kit/globalId.js';
import type { Act, Database } from '../../db/database.js';
import { Refusal, type Refused } from '../../db/refusal.js';
import type { ImportContactLogInput } from './contactLog.inputs.js';
import type { ContactLogReport } from './contactLogReport.js';
import { importContactLog } from './importContactLog.js';
import type { LogOptions } from './logOptions.js';

const longestLog = 1_000_000;
const mostGapMinutes = 1440;

/** Counts a log that was sent as text; what is wrong in it is in the report. */
export async function importLogInText(
  database: Database,
  act: Act,
  input: ImportContactLogInput,
): Promise<{ report: ContactLogReport | null; problems: readonly Refused[] }> {
  let options: LogOptions;
  try {
    options = optionsOf(input);
  } catch (error) {
    if (error instanceof Refusal) return { report: null, problems: error.problems };
    throw error;
  }
  const report = await importContactLog(database, act, input.adi, options);
  if (input.isDryRun || report.problemCount === 0) return { report, problems: [] };
  const message = `Nothing was counted: the log has ${report.problemCount} problems, which the report names by place.`;
  return { report, problems: [{ code: 'INVALID', message, path: ['adi'] }] };
}

/** @throws Refusal */
function optionsOf(input: ImportContactLogInput): LogOptions {
  const { adi, gapMinutes, isDryRun, ignore } = input;
  if (adi.length > longestLog) {
    throw Refusal.invalid(
      `The log has ${adi.length} characters; ${longestLog} is the most. Send it in parts, or use \`reglow import-log\`.`,
      ['adi'],
    );
  }
  if (gapMinutes < 1 || gapMinutes > mostGapMinutes) {
    throw Refusal.invalid(`The gap is from 1 to ${mostGapMinutes} minutes.`, ['gapMinutes']);
  }
  return {
    isDryRun,
    gapMinutes,
    ignore,
    rigId: optionalRecordId('Rig', input.rigId ?? null, ['rigId']),
    rigTexts: input.rigs.map(({ text, rigId }, index) => ({
      text,
      rigId: recordId('Rig', rigId, ['rigs', String(index), 'rigId']),
    })),
  };
}
