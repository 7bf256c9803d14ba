import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { packageFolder } from '../../src/features/packageFolder.js';
import { openBrowser } from '../support/browser.js';
import { axeFindings, openPage, phone, sticksOut, type OpenPage } from '../support/openPage.js';
import { servedDemo, type ServedDemo } from '../support/servedDemo.js';

const pictures = packageFolder(join('.tmp', 'screens'));

let demo: ServedDemo;
let browser: Browser;
let open: OpenPage;
beforeAll(async () => {
  mkdirSync(pictures, { recursive: true });
  [demo, browser] = await Promise.all([servedDemo(), openBrowser()]);
  open = await openPage(browser, demo.url);
  await open.context.grantPermissions(['clipboard-read', 'clipboard-write']);
}, 240_000);
afterAll(async () => {
  await browser.close();
  await demo.close();
});

const metrics = async (token: string): Promise<number> =>
  (await fetch(`${demo.url}/metrics`, { headers: { authorization: `Bearer ${token}` } })).status;

/** Tabs on until something with this name has the focus. */
async function tabTo(page: Page, name: RegExp): Promise<void> {
  for (let tabs = 0; tabs < 60; tabs += 1) {
    await page.keyboard.press('Tab');
    const focused = await page.evaluate<string>(
      `(document.activeElement?.labels?.[0] ?? document.activeElement)?.innerText ?? ''`,
    );
    if (name.test(focused)) return;
  }
  throw new Error(`${String(name)} is not reached by keyboard`);
}

describe('the ways out', () => {
  let token = '';

  it('say beside the field what a token lacks, and keep what was typed', async () => {
    const { page } = open;
    await page.goto('/ways-out');
    await page.getByLabel('For whom or what').fill('screen in the hall');
    await page.getByRole('button', { name: 'Make it' }).click();
    await page.getByRole('alert').waitFor();
    expect(await page.getByRole('alert').innerText()).toContain('at least one way out');
    await page.reload();
    expect(await page.getByLabel('For whom or what').inputValue()).toBe('screen in the hall');
  });

  it('make a token by keyboard alone, which opens what was ticked', async () => {
    const { page } = open;
    await page.getByLabel('For whom or what').focus();
    await tabTo(page, /^figures$/);
    await page.keyboard.press('Space');
    await tabTo(page, /^calendars$/);
    await page.keyboard.press('Space');
    await tabTo(page, /^Make it$/);
    await page.keyboard.press('Enter');
    const heading = page.getByRole('heading', { name: 'The token for “screen in the hall”' });
    await heading.waitFor();
    // Who hears the page is told at once.
    expect(await page.evaluate('document.activeElement.innerText')).toContain('The token for');
    token = await page.getByRole('group', { name: 'The token', exact: true }).innerText();
    expect(token).toMatch(/^reglow_[0-9a-f]{12}_[\w-]{43}$/);
    expect(await metrics(token)).toBe(200);
    await page.getByRole('button', { name: 'Copy: The token' }).click();
    await page.getByText('Copied.').waitFor();
    expect(await page.evaluate('navigator.clipboard.readText()')).toBe(token);
    const calendar = page.getByRole('group', { name: 'Address: What falls due, for a calendar' });
    const address = await calendar.innerText();
    expect((await fetch(address)).headers.get('content-type')).toContain('text/calendar');
    expect(await axeFindings(page)).toEqual([]);
    await page.setViewportSize(phone);
    expect(await sticksOut(page)).toBe(false);
    await page.screenshot({ path: join(pictures, 'token-made-phone.png'), fullPage: true });
    await page.setViewportSize({ width: 1440, height: 900 });
    await page.screenshot({ path: join(pictures, 'token-made-day.png'), fullPage: true });
  });

  it('show it once: nothing on the device holds it afterwards', async () => {
    const { page } = open;
    await page.getByRole('button', { name: 'I have it' }).click();
    await page.getByRole('button', { name: 'Make it' }).waitFor();
    const secret = token.slice(-43);
    expect(await page.content()).not.toContain(secret);
    await page.reload();
    await page.getByRole('heading', { name: 'screen in the hall' }).waitFor();
    expect(await page.content()).not.toContain(secret);
    const kept = await page.evaluate<string>(
      `(async () => {
        const names = await caches.keys();
        const urls = await Promise.all(names.map(async (name) => (await (await caches.open(name)).keys()).map(({ url }) => url)));
        return JSON.stringify([{ ...localStorage }, { ...sessionStorage }, urls]);
      })()`,
    );
    expect(kept).not.toContain(secret);
  });

  it('take it back in two steps, and it opens nothing', async () => {
    const { page } = open;
    await page.getByRole('button', { name: 'Take back “screen in the hall”' }).click();
    expect(await metrics(token)).toBe(200);
    await page.getByRole('button', { name: 'Take “screen in the hall” back for good' }).click();
    await page.getByText(/taken back \d/).waitFor();
    expect(await metrics(token)).toBe(401);
    expect(await axeFindings(page)).toEqual([]);
    expect(open.complaints).toEqual([]);
  });

  it('print the address that the page itself was opened under, in German too', async () => {
    const german = await openPage(browser, demo.url, { locale: 'de-DE' });
    await german.page.goto('/ways-out');
    await german.page.locator('html[lang=de] h1').waitFor();
    const commands = await german.page.locator('pre').allInnerTexts();
    expect(commands.length).toBeGreaterThanOrEqual(8);
    expect(commands.every((command) => command.includes(demo.url))).toBe(true);
    expect(await axeFindings(german.page)).toEqual([]);
    await german.close();
  });
});
