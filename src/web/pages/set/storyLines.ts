import type { SetStoryQuery } from '../../gql/graphql.js';
import type { Formats } from '../../locale/formats.js';
import { withUnit } from '../../locale/writtenUnit.js';
import type { Texts } from '../../texts/texts.js';

export interface StoryLine {
  key: string;
  /** What it is sorted by: an instant or a day; null where no date is known. */
  at: string | null;
  /** The date as it is shown. */
  day: string;
  /** What happened, in a sentence. */
  said: string;
  /** What else is written down. */
  more: string | null;
}

/** Everything that happened to a set as one time line, the latest first, what has no date at the end. */
export function storyLines(
  item: NonNullable<SetStoryQuery['item']>,
  { set, words }: Texts,
  formats: Formats,
): StoryLine[] {
  const { told } = set;
  const lines: StoryLine[] = [];
  const add = (key: string, at: string | null, day: string, said: string, more?: string | null) =>
    lines.push({ key, at, day, said, more: more ?? null });

  for (const { id, kind, dateEdtf, earliestOn, standing, note, ...event } of item.provenance.events
    .nodes) {
    const fromTo = told.fromTo(event.fromParty?.name ?? '', event.toParty?.name ?? '');
    const said = [words.eventKind[kind], fromTo, event.placeName].filter(Boolean).join(', ');
    add(
      id,
      earliestOn,
      dateEdtf ?? set.undated,
      capital(said),
      join(words.evidence[standing], note),
    );
  }
  const lot = item.acquisition;
  if (lot) {
    const said = told.acquired(lot.otherParty?.name ?? '');
    const more = join(lot.venue, formats.money(lot.price));
    add(lot.id, lot.acquiredOn, formats.localDay(lot.acquiredOn), said, more);
  }
  for (const { id, inspectedAt, findings, note } of item.inspections.nodes) {
    add(id, inspectedAt, formats.day(inspectedAt), told.inspected(findings.length), note);
  }
  for (const { id, seenAt, zone, severity, status, note } of item.findings.nodes) {
    const standing = `${words.severity[severity]}, ${words.findingStatus[status]}`;
    add(id, seenAt, formats.day(seenAt), `${capital(words.zone[zone])}: ${note}`, standing);
  }
  for (const { id, takenAt, quantity, value, unit, tier, verdict } of item.readings.nodes) {
    const said = `${capital(quantity)}: ${withUnit(value, unit)}`;
    add(
      id,
      takenAt,
      formats.day(takenAt),
      said,
      join(words.tier[tier], words.verdict[verdict.word]),
    );
  }
  for (const { id, startedAt, zone, netSeconds, task, note } of item.sessions.nodes) {
    const said = netSeconds === null ? told.running : told.worked(formats.hours(netSeconds / 3600));
    add(id, startedAt, formats.day(startedAt, zone), said, join(task?.title, note));
  }
  for (const { id, fittedAt, designator, component } of item.components.nodes) {
    const part =
      [component.partType?.designation, component.marking].filter(Boolean).join(' ') || '–';
    add(
      id,
      fittedAt,
      formats.day(fittedAt),
      told.fitted(part, designator),
      words.origin[component.origin],
    );
  }
  for (const { id, spentOn, description, amount } of item.expenses.nodes) {
    add(id, spentOn, formats.localDay(spentOn), told.spent(formats.money(amount)), description);
  }
  for (const { id, checkedAt, procedure, isPassed } of item.finalChecks.nodes) {
    const said = isPassed ? told.passed(procedure) : told.failed(procedure);
    add(id, checkedAt, formats.day(checkedAt), said);
  }
  for (const { id, movedAt, toPlace } of item.moves.nodes) {
    const said = toPlace ? told.moved(toPlace.name) : told.taken;
    add(id, movedAt, formats.day(movedAt), said);
  }
  return lines.sort(latestFirst);
}

function latestFirst(one: StoryLine, other: StoryLine): number {
  if (one.at === other.at) return 0;
  if (one.at === null) return 1;
  if (other.at === null) return -1;
  return one.at < other.at ? 1 : -1;
}

/** Whether a list of the story goes on beyond what was fetched. */
export function storyGoesOn(item: NonNullable<SetStoryQuery['item']>): boolean {
  const { provenance, inspections, findings, readings, sessions, components } = item;
  return [
    provenance.events,
    inspections,
    findings,
    readings,
    sessions,
    components,
    item.expenses,
    item.finalChecks,
    item.moves,
  ].some(({ pageInfo }) => pageInfo.hasNextPage);
}

const join = (...said: (string | null | undefined)[]): string => said.filter(Boolean).join(' · ');

const capital = (text: string): string => text.charAt(0).toLocaleUpperCase() + text.slice(1);
