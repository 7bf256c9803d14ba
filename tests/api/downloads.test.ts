import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { httpApi, type HttpApi } from '../support/httpApi.js';

describe.each(['sqlite', 'postgres'] as const)('downloads on %s', (engine) => {
  let api: HttpApi;
  let base: string;
  beforeAll(async () => {
    api = await httpApi(engine);
    base = api.url.replace('/graphql', '/download');
  });
  afterAll(() => api?.close());

  it.each([
    ['hours.csv', 'text/csv'],
    ['sessions.ics', 'text/calendar'],
    ['maintenance.ics', 'text/calendar'],
    ['progress.md', 'text/markdown'],
    ['progress.html', 'text/html'],
    ['insurance-schedule.csv', 'text/csv'],
    ['insurance-schedule.pdf', 'application/pdf'],
  ])('%s comes as a file of its type', async (name, type) => {
    const response = await fetch(`${base}/${name}?from=2026-05-01&to=2026-05-31`);
    expect(response.status).toBe(200);
    expect(response.headers.get('content-type')).toContain(type);
    expect(response.headers.get('content-disposition')).toBe(`attachment; filename="${name}"`);
    expect((await response.text()).length).toBeGreaterThan(20);
  });

  it('say what to mend', async () => {
    const response = await fetch(`${base}/hours.csv?from=May&to=2026-05-31`);
    expect(response.status).toBe(400);
    expect(await response.text()).toContain('YYYY-MM-DD');
    const nobody = await fetch(`${base}/hours.csv?from=2026-05-01&to=2026-05-31&item=R-999`);
    expect(await nobody.text()).toContain('R-999');
    const schedule = await fetch(`${base}/insurance-schedule.pdf?items=R-998,R-999&place=Nowhere`);
    expect(schedule.status).toBe(400);
    expect(await schedule.text()).toMatch(/R-998.*R-999.*Nowhere/);
    expect(api.logged).toEqual([]);
  });
});
