import { parse } from 'csv-parse/sync';
import ICAL from 'ical.js';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { carried } from '../support/carried.js';
import { shedStory, type ShedStory } from '../support/shedStory.js';
import { testApi, type TestApi } from '../support/testApi.js';

const period = { from: '2026-05-01', to: '2026-05-31' };
const args = `from: "${period.from}", to: "${period.to}"`;

describe.each(['sqlite', 'postgres'] as const)('reports on %s', (engine) => {
  let api: TestApi;
  let story: ShedStory;
  let sessionId: string;
  beforeAll(async () => {
    api = await testApi(engine);
    story = await shedStory(api);
    const projectId = await story.project('=HYPERLINK("http://x")');
    const [clean, caps] = await story.tasks(projectId, [
      { title: 'Clean, dry; then "wet" \\ wipe', kind: 'CLEANING' },
      { title: '<b>Filter</b> capacitors', kind: 'CAPACITORS', hazardKinds: ['STORED_CHARGE'] },
    ]);
    const recorded = await story.session({
      taskId: clean,
      startedAt: '2026-05-10T08:00:00Z',
      endedAt: '2026-05-10T10:30:00Z',
      breaks: [{ startedAt: '2026-05-10T09:00:00Z', endedAt: '2026-05-10T09:30:00Z' }],
      note: `Line one\nLine two; ${'long words '.repeat(20)}äöü`,
    });
    sessionId = recorded.session.id;
    await story.session({
      itemId: story.rigId,
      startedAt: '2026-05-10T10:00:00Z',
      endedAt: '2026-05-10T11:00:00Z',
    });
    // The last day counts to its end by the clock at the bench, which is ahead of UTC.
    await story.session({
      taskId: caps,
      startedAt: '2026-05-31T21:30:00Z',
      endedAt: '2026-05-31T21:45:00Z',
    });
    await story.session({
      taskId: caps,
      startedAt: '2026-05-31T22:30:00Z',
      endedAt: '2026-05-31T22:45:00Z',
    });
    api.nowMs = Date.parse('2026-05-10T11:05:00Z');
    await carried(api, 'finishTask', { id: clean }, 'task');
    const reading = (value: string, takenAt: string) => ({
      itemId: story.rigId,
      quantity: 'output power',
      value,
      unit: 'W',
      tier: 'IN_CIRCUIT',
      takenAt,
    });
    await carried(
      api,
      'recordReadings',
      { readings: [reading('40', '2026-04-01T10:00:00Z'), reading('85', '2026-05-10T11:00:00Z')] },
      'readings',
    );
    await carried(
      api,
      'recordFinalCheck',
      {
        itemId: story.rigId,
        procedure: 'insulation, to chassis',
        checkedAt: '2026-05-10T11:00:00Z',
        isPassed: true,
        validDays: 30,
      },
      'finalCheck',
    );
    api.nowMs = Date.parse('2026-06-01T12:00:00Z');
  });
  afterAll(() => api?.close());

  it('give hours as CSV that parses back, with every moment of a person once', async () => {
    const { hoursCsv } = await api.ask(`{ hoursCsv(${args}) }`);
    expect(hoursCsv.split('\r\n').length).toBeGreaterThan(3);
    const rows: Record<string, string>[] = parse(hoursCsv, { columns: true });
    expect(rows).toHaveLength(3);
    expect(rows[0]).toMatchObject({
      date: '2026-05-10',
      start: '2026-05-10T10:00:00+02:00',
      time_zone: 'Europe/Berlin',
      item: 'R-001',
      project: `'=HYPERLINK("http://x")`,
      task: 'Clean, dry; then "wet" \\ wipe',
      break_hours: '0.5000',
      net_hours: '2.0000',
      counted_hours: '2.0000',
      note: expect.stringContaining('Line one\nLine two'),
    });
    expect(rows[1]).toMatchObject({ net_hours: '1.0000', counted_hours: '0.5000', task: '' });
    const { collection } = await api
      .ask('{ collection { hours { total: seconds } } }')
      .catch(() => ({
        collection: null,
      }));
    if (collection) expect(collection.hours.total).toBeGreaterThan(0);
  });

  // RFC 5545, read back by ical.js, a parser of another house.
  it('give sessions as iCalendar that parses back', async () => {
    const { sessionsCalendar } = await api.ask(`{ sessionsCalendar(${args}) }`);
    const lines: string[] = sessionsCalendar.split('\r\n');
    // RFC 5545, 3.1: lines are folded at 75 octets.
    expect(Math.max(...lines.map((line) => Buffer.byteLength(line)))).toBeLessThanOrEqual(75);
    const calendar = new ICAL.Component(ICAL.parse(sessionsCalendar));
    expect(calendar.getFirstPropertyValue('version')).toBe('2.0');
    const events = calendar.getAllSubcomponents('vevent').map((one) => new ICAL.Event(one));
    expect(events).toHaveLength(3);
    const [first] = events;
    expect(first?.uid).toBe(`${sessionId.slice('WorkSession_'.length)}@reglow`);
    expect(first?.summary).toBe('R-001: Clean, dry; then "wet" \\ wipe');
    expect(first?.description).toContain('Line one\nLine two; long words');
    expect(first?.description).toContain('äöü');
    expect(first?.startDate.toJSDate().toISOString()).toBe('2026-05-10T08:00:00.000Z');
    expect(first?.endDate.toJSDate().toISOString()).toBe('2026-05-10T10:30:00.000Z');
    expect(new Set(events.map(({ uid }) => uid)).size).toBe(3);
  });

  it('give the day on which a check goes stale', async () => {
    const { maintenanceCalendar } = await api.ask('{ maintenanceCalendar }');
    const calendar = new ICAL.Component(ICAL.parse(maintenanceCalendar));
    const [event] = calendar.getAllSubcomponents('vevent').map((one) => new ICAL.Event(one));
    expect(event?.startDate.isDate).toBe(true);
    expect(event?.startDate.toString()).toBe('2026-06-09');
    expect(event?.summary).toBe('R-001: “insulation, to chassis” goes stale');
  });

  it('tell of progress in Markdown and HTML, with cautions and without tags of others', async () => {
    const { progressReport } = await api.ask(`{ progressReport(${args}) }`);
    expect(progressReport).toContain('# The shed: progress from 2026-05-01 to 2026-05-31');
    expect(progressReport).toContain('2.75 h in 3 sessions');
    expect(progressReport).toContain('2026-05-10: Clean, dry; then "wet" \\\\ wipe');
    expect(progressReport).toContain('40 W (2026-04-01) | 85 W (2026-05-10)');
    expect(progressReport).toContain('Caution:');
    expect(progressReport).not.toMatch(/[^\\]<b>/);
    const { html } = await api.ask(`{ html: progressReport(${args}, format: HTML) }`);
    expect(html).toContain('&lt;b&gt;Filter&lt;/b&gt; capacitors');
    expect(html).not.toContain('<b>');
    expect(html).not.toContain('Ilse');
  });

  it('are of one item where one is named', async () => {
    const { hoursCsv, progressReport } = await api.ask(
      `query ($id: ID!) { hoursCsv(${args}, itemId: $id) progressReport(${args}, itemId: $id) }`,
      { id: story.otherRigId },
    );
    expect(parse(hoursCsv, { columns: true })).toEqual([]);
    expect(progressReport).toContain('No session was recorded');
  });

  it('say which days cannot be', async () => {
    const wrong = async (days: string) =>
      (await api.tryToAsk(`{ hoursCsv(${days}) }`)).errors?.[0]?.message;
    expect(await wrong('from: "2026-05-31", to: "2026-05-01"')).toContain('is before the first');
    expect(await wrong('from: "1900-01-01", to: "2026-05-01"')).toContain('ten years');
    expect(await wrong('from: "2026-02-30", to: "2026-03-01"')).toBeDefined();
  });
});
