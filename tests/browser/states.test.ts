import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openBrowser } from '../support/browser.js';
import { axeFindings, openPage, phone, sticksOut } from '../support/openPage.js';
import { servedDemo, type ServedDemo } from '../support/servedDemo.js';

const addresses = [
  '/',
  '/?band=40m&mode=CW',
  '/collection',
  '/collection?as=table',
  '/bench',
  '/intake',
  '/wanted',
  '/books',
  '/bring-a-list',
  '/bring-a-log',
  '/sets/R-001',
  '/sets/R-001/plan',
  '/sets/R-001/provenance',
  '/sets/R-001/bring-up',
  '/bench/R-001',
  '/intake/R-001',
  '/no-such-page',
];
/** These have something to show when the API does not answer. */
const askNothing = ['/bring-a-list', '/bring-a-log', '/intake', '/no-such-page'];

let empty: ServedDemo;
let browser: Browser;
beforeAll(async () => {
  [empty, browser] = await Promise.all([servedDemo({ isEmpty: true }), openBrowser()]);
}, 120_000);
afterAll(async () => {
  await browser.close();
  await empty.close();
});

describe('when nothing is written down yet', () => {
  it.each(addresses)('%s says so under a heading, and can be read by everyone', async (address) => {
    const { page, complaints, close } = await openPage(browser, empty.url, phone);
    await page.goto(address);
    await page.locator('main h1').waitFor();
    await page.waitForFunction(`!document.querySelector('main').innerText.includes('Fetching')`);
    expect(await page.locator('main h1').count()).toBe(1);
    expect(await page.getByText('Fetching …').count()).toBe(0);
    expect(await page.locator('main').innerText()).toMatch(/\w{3}.*\n[\s\S]*\w{3}/);
    expect(await axeFindings(page)).toEqual([]);
    expect(await sticksOut(page)).toBe(false);
    expect(complaints).toEqual([]);
    await close();
  });
});

describe('when the program does not answer', () => {
  it.each(addresses.filter((address) => !askNothing.includes(address)))(
    '%s says what to do, and shows itself once it answers again',
    async (address) => {
      const { page, close } = await openPage(browser, empty.url, phone);
      await page.route('**/graphql', (route) => route.abort());
      await page.goto(address);
      const said = page.getByText(/Start it with “npm start”|was never opened on this device/);
      await said.first().waitFor();
      expect(await page.locator('main h1').count()).toBe(1);
      expect(await axeFindings(page)).toEqual([]);
      await page.unroute('**/graphql');
      const again = page.getByRole('button', { name: 'Try again' });
      // One answer may take away the buttons of others before they are pressed.
      const press = () =>
        again
          .first()
          .click({ timeout: 1000 })
          .catch(() => undefined);
      while ((await again.count()) > 0) await press();
      await said.first().waitFor({ state: 'detached' });
      await close();
    },
  );
});

it('a page whose answer takes its time says that it is being fetched', async () => {
  const { page, close } = await openPage(browser, empty.url);
  let answer: (() => void) | undefined;
  const held = new Promise<void>((resolve) => (answer = resolve));
  await page.route('**/graphql', async (route) => {
    await held;
    await route.continue();
  });
  await page.goto('/books');
  await page.getByRole('status').getByText('Fetching …').waitFor();
  answer?.();
  await page.getByRole('heading', { level: 1, name: 'The books' }).waitFor();
  expect(await page.getByText('Fetching …').count()).toBe(0);
  await close();
});
