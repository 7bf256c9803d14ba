import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { packageFolder } from '../../src/features/packageFolder.js';
import { openBrowser } from '../support/browser.js';
import { openPage, phone, sticksOut, type OpenPage } from '../support/openPage.js';
import { servedDemo, type ServedDemo } from '../support/servedDemo.js';

const pictures = packageFolder(join('.tmp', 'screens'));

let demo: ServedDemo;
let browser: Browser;
let open: OpenPage;
beforeAll(async () => {
  mkdirSync(pictures, { recursive: true });
  [demo, browser] = await Promise.all([servedDemo(), openBrowser()]);
  open = await openPage(browser, demo.url);
  await open.page.goto('/sets/R-009');
}, 240_000);
afterAll(async () => {
  await browser.close();
  await demo.close();
});

const sheet = () => open.page.locator('#dossier');
const addressOf = async (name: RegExp): Promise<string> =>
  (await sheet().getByRole('link', { name }).getAttribute('href')) ?? '';

describe('the dossier on the page of a set', () => {
  it('leaves out what the API says is usual for its reader', async () => {
    const { dossierReaders } = await demo.ask('{ dossierReaders { reader usuallyWithheld } }');
    const names = { BUYER: 'a buyer', INSURER: 'an insurer', HEIR: 'an heir' } as const;
    for (const { reader, usuallyWithheld } of dossierReaders) {
      await sheet()
        .getByLabel(names[reader as keyof typeof names])
        .check();
      const asked = new URLSearchParams((await addressOf(/^Look at it/)).split('?')[1]);
      expect(asked.get('reader')).toBe(reader);
      expect((asked.get('withhold') ?? '').split(',').filter((word) => word !== 'nothing')).toEqual(
        usuallyWithheld,
      );
    }
  });

  it('says what is left out and what the reader learns, as it is chosen', async () => {
    await sheet().getByLabel('a buyer').check();
    await sheet().getByLabel('people').uncheck();
    await sheet().getByLabel('serial numbers').check();
    const said = await sheet().getByRole('status').innerText();
    expect(said).toContain('Left out: prices, places, serial numbers.');
    expect(said).toContain('Of these the reader learns: people, photographs.');
    await sheet().getByRole('button', { name: 'As usual for this reader' }).click();
    expect(await sheet().getByRole('status').innerText()).toContain('people, prices, places.');
  });

  it('opens the very file beside the page, and hands it out on either paper', async () => {
    const { page, context } = open;
    const [beside] = await Promise.all([
      context.waitForEvent('page'),
      sheet()
        .getByRole('link', { name: /^Look at it/ })
        .click(),
    ]);
    await beside.getByText('R-009').first().waitFor();
    await beside.screenshot({ path: join(pictures, 'dossier-html.png'), fullPage: true });
    await beside.close();
    // Points of 1/72 inch: ISO 216 A4 and 8.5 × 11 inches.
    for (const [name, width] of [
      [/A4/, 595],
      [/Letter/, 612],
    ] as const) {
      const answer = await page.request.get(await addressOf(name));
      expect(answer.headers()['content-type']).toBe('application/pdf');
      expect((await answer.body()).toString('latin1')).toMatch(
        new RegExp(`/MediaBox \\[0 0 ${width}`),
      );
    }
    await page.setViewportSize(phone);
    expect(await sticksOut(page)).toBe(false);
    await sheet().screenshot({ path: join(pictures, 'dossier-sheet-phone.png') });
    await page.setViewportSize({ width: 1440, height: 900 });
    await sheet().screenshot({ path: join(pictures, 'dossier-sheet.png') });
    expect(open.complaints).toEqual([]);
  });
});
