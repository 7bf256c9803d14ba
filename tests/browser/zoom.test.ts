import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openBrowser } from '../support/browser.js';
import { openPage } from '../support/openPage.js';
import { servedDemo, type ServedDemo } from '../support/servedDemo.js';
import { pages } from './pages.js';

// WCAG 2.2, 1.4.4 Resize Text and 1.4.10 Reflow: 200 % without loss, and 320 CSS pixels without
// scrolling in two dimensions, but for what needs two of them, such as a data table.
const windows = [
  { name: '1280 px at 200 %', width: 640, height: 450, pixelsPerPixel: 2 },
  { name: '1280 px at 400 %', width: 320, height: 256, pixelsPerPixel: 4 },
  { name: 'a telephone of 360 px', width: 360, height: 780, pixelsPerPixel: 3 },
];

/** Controls and texts that stick out of the window or are cut off, but for those in a table that scrolls. */
const cutOff = `(() => {
  const scrolls = (element) => {
    for (let at = element; at !== null && at !== document.body; at = at.parentElement) {
      if (['auto', 'scroll'].includes(getComputedStyle(at).overflowX)) return true;
    }
    return false;
  };
  const isSeen = (element) => element.checkVisibility({ visibilityProperty: true });
  const named = (element) =>
    element.tagName + ' ' + (element.innerText || element.getAttribute('aria-label') || '').slice(0, 40);
  const found = [];
  for (const element of document.querySelectorAll('body *')) {
    if (!isSeen(element) || element.closest('.only-heard')) continue;
    const { left, right, width } = element.getBoundingClientRect();
    const isControl = element.matches('a, button, input, select, textarea, summary, label, [role=tab]');
    const isOff = element.closest('[href="#content"]') !== null;
    if (isControl && !isOff && width > 0 && !scrolls(element) && (left < -1 || right > innerWidth + 1)) {
      found.push('sticks out: ' + named(element));
    }
    const hides = ['hidden', 'clip'].includes(getComputedStyle(element).overflowX);
    const isField = element.matches('input, textarea, select, svg, img');
    if (hides && !isField && element.scrollWidth > element.clientWidth + 1) {
      found.push('is cut off: ' + named(element));
    }
  }
  return found;
})()`;

let demo: ServedDemo;
let browser: Browser;
beforeAll(async () => {
  [demo, browser] = await Promise.all([servedDemo(), openBrowser()]);
}, 120_000);
afterAll(async () => {
  await browser.close();
  await demo.close();
});

describe.each(windows)('in a window of $name', (look) => {
  it('every page keeps to its width, and nothing on it is cut off', async () => {
    const { page, close } = await openPage(browser, demo.url, look);
    const wrong: string[] = [];
    for (const { name, address, isThereWhen } of pages) {
      await page.goto(address);
      await page.locator(isThereWhen).first().waitFor();
      const [seen, there] = await page.evaluate<[number, number]>(
        '[document.documentElement.clientWidth, document.documentElement.scrollWidth]',
      );
      if (there > seen) wrong.push(`${name}: ${there} px wide in ${seen} px`);
      const off = await page.evaluate<string[]>(cutOff);
      wrong.push(...off.map((what) => `${name}: ${what}`));
    }
    expect(wrong).toEqual([]);
    await close();
  }, 240_000);
});
