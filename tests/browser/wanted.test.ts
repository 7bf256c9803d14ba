import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openBrowser } from '../support/browser.js';
import { openPage, phone, type OpenPage } from '../support/openPage.js';
import { servedDemo, type ServedDemo } from '../support/servedDemo.js';

let demo: ServedDemo;
let browser: Browser;
let open: OpenPage;
beforeAll(async () => {
  [demo, browser] = await Promise.all([servedDemo(), openBrowser()]);
  await demo.ask('mutation ($input: AddWantInput!) { addWant(input: $input) { want { id } } }', {
    input: {
      description: 'Knob with a skirt, 6 mm shaft',
      quantity: 2,
      ceiling: { amount: '4.50', currency: 'GBP' },
    },
  });
  open = await openPage(browser, demo.url, { ...phone, isForOffline: true });
}, 120_000);
afterAll(async () => {
  await browser.close();
  await demo.close();
});

const findsOfKnobs = async (): Promise<number> => {
  const { wantedList } = await demo.ask(
    '{ wantedList { wants { description standing { foundQuantity } } } }',
  );
  return wantedList.wants.find(({ description }: any) => description?.startsWith('Knob')).standing
    .foundQuantity;
};

describe('the wanted list at a fair', () => {
  it('opens without a connection once it was opened with one', async () => {
    const { page, context } = open;
    await page.goto('/wanted');
    await page.getByText('Knob with a skirt').waitFor();
    await page.evaluate('navigator.serviceWorker.ready.then(() => true)');
    await context.setOffline(true);
    await page.reload();
    await page.getByText('Knob with a skirt').waitFor();
    await page.getByText('No connection: the list as of').waitFor();
    await page.getByText('up to £4.50').waitFor();
  });

  it('notes a purchase in two touches and a price, and sends it once when it can', async () => {
    const { page, context } = open;
    await page.getByRole('button', { name: 'Bought it: Knob with a skirt' }).click();
    await page.getByLabel('Price of all').fill('3,80');
    await page.getByRole('button', { name: 'Note it' }).click();
    await page.getByRole('heading', { name: 'Bought, not sent yet' }).waitFor();
    expect(await findsOfKnobs()).toBe(0);

    await page.reload();
    await page.getByRole('heading', { name: 'Bought, not sent yet' }).waitFor();
    await context.setOffline(false);
    await page.evaluate("window.dispatchEvent(new Event('online'))");
    await page.evaluate("window.dispatchEvent(new Event('online'))");
    await expect.poll(findsOfKnobs).toBe(1);
    await expect
      .poll(() => page.getByRole('heading', { name: 'Bought, not sent yet' }).count())
      .toBe(0);
    expect(await findsOfKnobs()).toBe(1);
  });
});
