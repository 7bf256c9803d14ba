import type { ApiContext } from '../../api/kit/apiContext.js';
import { hoursCsv } from './hoursCsv.js';
import { maintenanceCalendar } from './maintenanceCalendar.js';
import { progressReport } from './progressReport.js';
import type { ReportFormat } from './reportFormat.js';
import { reportPeriod } from './reportPeriod.js';
import { readReportedSessions } from './reportedSessions.reads.js';
import { sessionsCalendar } from './sessionsCalendar.js';

/** Which days, both included, and whose. */
export interface ReportScope {
  from: string;
  to: string;
  /** Record id; null for the whole collection. */
  itemId: string | null;
}

/** @throws GraphQLError with a sentence when the days cannot be read, as all of these. */
export async function hoursText(context: ApiContext, scope: ReportScope): Promise<string> {
  const period = await reportPeriod(context, scope.from, scope.to);
  const { itemId } = scope;
  const { reader } = context.database;
  return hoursCsv(await readReportedSessions(reader, { ...period, itemId }, context.nowMs));
}

export async function sessionsText(context: ApiContext, scope: ReportScope): Promise<string> {
  const period = await reportPeriod(context, scope.from, scope.to);
  const { itemId } = scope;
  const { reader } = context.database;
  const sessions = await readReportedSessions(reader, { ...period, itemId }, context.nowMs);
  return sessionsCalendar(period.collectionName, sessions, context.nowMs);
}

export async function maintenanceText(context: ApiContext): Promise<string> {
  const today = new Date(context.nowMs).toISOString().slice(0, 10);
  const { collectionName: name, zone } = await reportPeriod(context, today, today);
  return maintenanceCalendar(context.database.reader, { name, zone, nowMs: context.nowMs });
}

export async function progressText(
  context: ApiContext,
  scope: ReportScope,
  format: ReportFormat,
): Promise<string> {
  const period = await reportPeriod(context, scope.from, scope.to);
  return progressReport(context, period, scope.itemId, format);
}
