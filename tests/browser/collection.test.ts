import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { words } from '../../src/web/texts/de/words.js';
import { openBrowser } from '../support/browser.js';
import { openPage, type OpenPage } from '../support/openPage.js';
import { servedDemo, type ServedDemo } from '../support/servedDemo.js';

let demo: ServedDemo;
let browser: Browser;
let open: OpenPage;
beforeAll(async () => {
  [demo, browser] = await Promise.all([servedDemo(), openBrowser()]);
  open = await openPage(browser, demo.url);
}, 120_000);
afterAll(async () => {
  await browser.close();
  await demo.close();
});

const numbers = async () =>
  (await open.page.locator('h2').allInnerTexts()).map((text) => text.slice(0, 5));

describe('the collection', () => {
  it('is found by words, which are kept in the address', async () => {
    const { page } = open;
    await page.goto('/collection');
    await page.getByLabel('Find').fill('quillvane');
    await expect.poll(numbers).toEqual(['R-005', 'R-008']);
    expect(page.url()).toContain('find=quillvane');
    await page.reload();
    await expect.poll(numbers).toEqual(['R-005', 'R-008']);
  });

  it('says what to do when nothing answers', async () => {
    const { page } = open;
    await page.goto('/collection?find=nothing-like-it');
    await page.getByText('No set answers to this').waitFor();
    await page.getByRole('button', { name: 'Ask for all' }).click();
    await expect.poll(numbers).toContain('R-001');
  });

  it('is ordered by a press on a heading, and from the other end by another', async () => {
    const { page } = open;
    await page.goto('/collection?as=table');
    await page.getByRole('button', { name: 'Hours given' }).click();
    const first = page.locator('tbody th').first();
    await expect.poll(() => first.innerText()).toBe('Bench Quillvane');
    await page.getByRole('button', { name: 'Hours given' }).click();
    await expect.poll(() => first.innerText()).not.toBe('Bench Quillvane');
  });

  it('speaks German when the browser does, and English when asked', async () => {
    const german = await openPage(browser, demo.url, { locale: 'de-CH' });
    await german.page.goto('/collection');
    await german.page.getByRole('heading', { name: 'Die Sammlung' }).waitFor();
    await german.page.goto('/sets/R-006');
    const blocker = german.page.locator('#standing li').first();
    expect(await blocker.locator('strong').innerText()).toBe(`${words.remark.HAZARD_NOT_CLEARED}:`);
    // What the API says in sentences is English, and is marked so.
    const said = await demo.ask(
      '{ rig(inventoryNumber: "R-006") { readiness { blockers { message } } } }',
    );
    expect(await blocker.locator('[lang=en]').first().innerText()).toBe(
      said.rig.readiness.blockers[0].message,
    );
    await german.page.goto('/collection');
    await german.page.getByLabel('Sprache').selectOption('en');
    await german.page.getByRole('heading', { name: 'The collection' }).waitFor();
    await german.close();
  });

  it('draws what is left of a set, and gives the same as a table that ends on the day foreseen', async () => {
    const { page } = open;
    const { rig } = await demo.ask('{ rig(inventoryNumber: "R-005") { projects { id } } }');
    const { node } = await demo.ask(
      `query ($id: ID!) { node(id: $id) { ... on Project { forecast {
          finish { p80On } weeksAhead { on } } } } }`,
      { id: rig.projects[0].id },
    );
    const { finish, weeksAhead } = node.forecast;
    await page.goto('/sets/R-005');
    const left = page.locator('#left');
    await left.getByRole('img', { name: 'earned so far' }).waitFor();
    await left.getByRole('img', { name: 'Chance that it is done by then' }).waitFor();
    await left.getByText('The figures as a table').first().click();
    const table = left.getByRole('region', { name: 'Hours over time' });
    expect(await table.getByRole('columnheader').last().innerText()).toBe(
      'three in five of the trials',
    );
    // The whole on both edges of the band, in the first week that holds the day.
    const end = weeksAhead.find(({ on }: { on: string }) => on >= finish.p80On).on;
    const lastRow = table.getByRole('row').last();
    const written = new Intl.DateTimeFormat('en-GB', { dateStyle: 'medium', timeZone: 'UTC' });
    expect(await lastRow.getByRole('rowheader').innerText()).toBe(written.format(new Date(end)));
    const [low, high] = (await lastRow.getByRole('cell').last().innerText()).split('–');
    expect(low).toBe(high);
    expect(Number(low)).toBeGreaterThan(0);
  });
});
