import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { packageFolder } from '../../src/features/packageFolder.js';
import { openBrowser } from '../support/browser.js';
import {
  axeFindings,
  openPage,
  phone,
  sticksOut,
  wide,
  type OpenPage,
} from '../support/openPage.js';
import { servedDemo, type ServedDemo } from '../support/servedDemo.js';
import { pages } from './pages.js';

// To be looked at: every page, by day and by night, on a desk and in a hand.
const pictures = packageFolder(join('.tmp', 'screens'));
const looks = [
  { name: 'day', ...wide, light: 'light' },
  { name: 'night', ...wide, light: 'dark' },
  { name: 'phone', ...phone, light: 'light' },
] as const;

let demo: ServedDemo;
let browser: Browser;
beforeAll(async () => {
  mkdirSync(pictures, { recursive: true });
  [demo, browser] = await Promise.all([servedDemo(), openBrowser()]);
}, 120_000);
afterAll(async () => {
  await browser.close();
  await demo.close();
});

describe.each(looks)('by $name', (look) => {
  let open: OpenPage;
  beforeAll(async () => {
    open = await openPage(browser, demo.url, look);
  });
  afterAll(() => open.close());

  it.each(pages)('$name can be read by everyone and stays in its frame', async (asked) => {
    const { page, complaints } = open;
    complaints.length = 0;
    await page.goto(asked.address);
    await page.locator(asked.isThereWhen).first().waitFor();
    expect(await page.locator('h1').allInnerTexts()).toHaveLength(1);
    expect(await page.title()).toMatch(/ · Reglow$/);
    expect(await axeFindings(page)).toEqual([]);
    expect(await sticksOut(page)).toBe(false);
    expect(complaints).toEqual([]);
    await page.screenshot({
      path: join(pictures, `${asked.name}-${look.name}.png`),
      fullPage: true,
    });
  });
});
