import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { openBrowser } from '../support/browser.js';
import { openPage, phone } from '../support/openPage.js';
import { servedDemo, type ServedDemo } from '../support/servedDemo.js';

let demo: ServedDemo;
let browser: Browser;
beforeAll(async () => {
  [demo, browser] = await Promise.all([servedDemo(), openBrowser()]);
}, 120_000);
afterAll(async () => {
  await browser.close();
  await demo.close();
});

interface Answer {
  licenceNotice: string;
  allocation: { lowerKilohertz: string };
  rigs: {
    rig: { inventoryNumber: string };
    servedBy: { accessory: { inventoryNumber: string } }[];
  }[];
  leftOut: { rig: { inventoryNumber: string }; reasons: string[] }[];
}
const question = `{ onAir(band: "40m", mode: "CW", atLeastWatts: 50, tonight: true) {
  licenceNotice allocation { lowerKilohertz }
  rigs { rig { inventoryNumber } servedBy { accessory { inventoryNumber } } }
  leftOut { rig { inventoryNumber } reasons }
} }`;

it('a band, a mode and a power are asked for; the answer is the API’s and stays in the address', async () => {
  const { onAir } = (await demo.ask(question)) as { onAir: Answer };
  expect(onAir.rigs.length).toBeGreaterThan(0);
  expect(onAir.leftOut.length).toBeGreaterThan(0);
  const { page, complaints, close } = await openPage(browser, demo.url);
  await page.goto('/');
  await page.getByRole('combobox', { name: 'Band' }).selectOption('40m');
  await page.getByRole('combobox', { name: 'Mode' }).selectOption('CW');
  await page.getByLabel('At least, W').fill('50');
  await page.waitForURL(/band=40m.*watts=50/);
  const heading = page.getByRole('heading', { name: /^40.m, CW, at least 50 W/ });
  await heading.waitFor();

  // What governs stands above the sets, with the edges of the band.
  const answer = page.getByRole('region', { name: /^40/ });
  expect(await answer.innerText()).toContain(onAir.licenceNotice);
  expect(await answer.innerText()).toContain(
    Number(onAir.allocation.lowerKilohertz).toLocaleString('en-GB'),
  );
  const shown = await answer.locator('li > div > h3').allInnerTexts();
  expect(shown.map((name) => name.split(' ')[0])).toEqual(
    onAir.rigs.map(({ rig }) => rig.inventoryNumber),
  );
  for (const { servedBy } of onAir.rigs) {
    for (const { accessory } of servedBy) {
      await answer.getByRole('link', { name: accessory.inventoryNumber }).first().waitFor();
    }
  }
  const silent = page.locator('section', {
    has: page.getByRole('heading', { name: /^Left out of 40/ }),
  });
  for (const { rig, reasons } of onAir.leftOut) {
    const line = silent.locator('li', { hasText: rig.inventoryNumber }).first();
    expect(await line.innerText()).toContain(reasons[0]?.slice(0, 40));
  }

  await page.reload();
  await heading.waitFor();
  expect(await page.getByLabel('At least, W').inputValue()).toBe('50');
  await page.getByRole('button', { name: 'All bands again' }).click();
  await page.getByRole('heading', { name: /on the air at once/ }).waitFor();
  expect(new URL(page.url()).search).toBe('');
  expect(complaints).toEqual([]);
  await close();
});

it('what an address should not say is left out, not answered wrongly', async () => {
  const { page, close } = await openPage(browser, demo.url);
  await page.goto('/?band=everything&mode=%3Cb%3E&watts=-3');
  await page
    .getByRole('heading', { name: /on the air/ })
    .first()
    .waitFor();
  expect(await page.getByRole('combobox', { name: 'Band' }).inputValue()).toBe('');
  await close();
});

it('on a telephone the pages fold away behind a button that the keyboard works too', async () => {
  const { page, close } = await openPage(browser, demo.url, phone);
  await page.goto('/');
  const opener = page.getByRole('button', { name: 'Pages' });
  await opener.waitFor();
  const books = page.getByRole('link', { name: 'Books' });
  expect(await books.isVisible()).toBe(false);
  const header = await page.locator('header').first().boundingBox();
  expect(header?.height).toBeLessThan(72);
  await opener.focus();
  await page.keyboard.press('Enter');
  await books.waitFor();
  await page.keyboard.press('Escape');
  expect(await books.isVisible()).toBe(false);
  const focused = `document.activeElement.getAttribute('aria-controls')`;
  expect(await page.evaluate<string | null>(focused)).toBe('ways');
  await page.keyboard.press('Enter');
  await books.focus();
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { level: 1, name: 'The books' }).waitFor();
  expect(await books.isVisible()).toBe(false);
  await close();
});
