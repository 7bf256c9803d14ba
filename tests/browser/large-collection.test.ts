import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { serveApi } from '../../src/api/serveApi.js';
import type { Database } from '../../src/db/database.js';
import { openCollection } from '../../src/features/openCollection.js';
import { packageFolder } from '../../src/features/packageFolder.js';
import { buildDataSet } from '../bench/buildDataSet.js';
import { openBrowser } from '../support/browser.js';
import { openPage } from '../support/openPage.js';

const rigs = 3000;
const last = `R-${rigs - 1}`;
const mostAtOnce = 100;

let folder: string;
let database: Database;
let served: Awaited<ReturnType<typeof serveApi>>;
let browser: Browser;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'reglow-test-large-'));
  const path = join(folder, 'large.sqlite');
  await buildDataSet(path, { rigs, accessories: 40, parts: 2, tasks: 2, sessions: 2 });
  database = await openCollection(`sqlite:${path}`);
  served = await serveApi(database, {
    host: '127.0.0.1',
    port: 0,
    allowedHosts: [],
    pagesFolder: packageFolder('dist-web'),
    attachmentsFolder: join(folder, 'attachments'),
    clock: () => Date.now(),
    log: (id, error) => {
      console.error(id, error);
    },
  });
  browser = await openBrowser();
}, 240_000);
afterAll(async () => {
  await browser.close();
  await served.close();
  await database.close();
  await rm(folder, { recursive: true });
});

interface Asked {
  first: number;
  after: string | null;
}

/** Follows what a page asks of the shelf. */
function followQuestions(page: Page): Asked[] {
  const asked: Asked[] = [];
  page.on('request', (request) => {
    const sent = request.postData();
    if (!sent?.includes('query Shelf')) return;
    asked.push((JSON.parse(sent) as { variables: Asked }).variables);
  });
  return asked;
}

/** Goes down to the last set, and says how many elements there were at the most. */
async function scrollThrough(page: Page): Promise<number> {
  let most = 0;
  const lastOne = page.getByText(last, { exact: true });
  for (let turn = 0; turn < 2000; turn++) {
    most = Math.max(most, await page.evaluate<number>(`document.querySelectorAll('*').length`));
    if ((await lastOne.count()) > 0) return most;
    await page.evaluate('scrollTo(0, document.documentElement.scrollHeight)');
    await page.waitForTimeout(30);
  }
  throw new Error(`${last} was not reached.`);
}

describe.each([
  { name: 'shelf', address: '/collection', isThere: 'h2:has-text("R-0000")', elements: 1500 },
  { name: 'table', address: '/collection?as=table', isThere: 'td:text("R-0000")', elements: 2000 },
])('3,000 sets as a $name', ({ address, isThere, elements, name }) => {
  it('are fetched page by page and drawn only near the window', async () => {
    const { page, complaints, close } = await openPage(browser, served.url);
    const asked = followQuestions(page);
    await page.goto(address);
    await page.locator(isThere).waitFor();
    expect(asked).toHaveLength(1);
    const most = await scrollThrough(page);
    console.log(`${name}: ${most} elements at the most, ${asked.length} questions`);
    expect(most).toBeLessThan(elements);
    for (const { first } of asked) expect(first).toBeLessThanOrEqual(mostAtOnce);
    // Each page once, each from where the one before ended.
    const places = asked.map(({ after }) => after);
    expect(new Set(places).size).toBe(places.length);
    expect(asked.length).toBe(Math.ceil(rigs / (asked[0]?.first ?? 1)));
    await page.getByText('3,000 sets').waitFor();

    // Back at the top the first are drawn again, and nothing more is asked.
    await page.evaluate('scrollTo(0, 0)');
    await page.locator(isThere).waitFor();
    expect(asked.length).toBe(places.length);
    expect(complaints).toEqual([]);
    await close();
  }, 240_000);
});

it('a search among 3,000 sets asks for one page', async () => {
  const { page, close } = await openPage(browser, served.url);
  const asked = followQuestions(page);
  await page.goto('/collection');
  await page.locator('h2:has-text("R-0000")').waitFor();
  await page.getByLabel('Find').fill('R-2345');
  await page.locator('h2:has-text("R-2345")').waitFor();
  expect(await page.locator('h2').count()).toBe(1);
  expect(asked.filter(({ after }) => after !== null)).toEqual([]);
  await close();
});
