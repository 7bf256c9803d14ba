import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Browser, BrowserContext, Page } from 'playwright-core';

const require = createRequire(import.meta.url);
const rules = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

interface Violation {
  id: string;
  help: string;
  nodes: { target: string[] }[];
}

const axe = readFileSync(require.resolve('axe-core/axe.min.js'), 'utf8');

export interface PageLook {
  width?: number;
  height?: number;
  light?: 'light' | 'dark';
  locale?: string;
  /** Device pixels a CSS pixel: 2 is what a zoom of 200 % makes of a window of twice the width. */
  pixelsPerPixel?: number;
  /** Whether all files are fetched for when there is no connection: it takes its time. */
  isForOffline?: boolean;
}

export interface OpenPage {
  page: Page;
  context: BrowserContext;
  /** What the page complained of in its console, and requests that left the machine. */
  complaints: string[];
  close(): Promise<void>;
}

export const wide = { width: 1440, height: 900 };
export const phone = { width: 360, height: 780 };

/** A window on the dashboard, as a person with such a screen has it. */
export async function openPage(
  browser: Browser,
  url: string,
  {
    width = 1440,
    height = 900,
    light = 'light',
    locale = 'en-GB',
    pixelsPerPixel = 1,
    isForOffline = false,
  }: PageLook = {},
): Promise<OpenPage> {
  const context = await browser.newContext({
    viewport: { width, height },
    deviceScaleFactor: pixelsPerPixel,
    colorScheme: light,
    locale,
    timezoneId: 'Europe/Berlin',
    reducedMotion: 'reduce',
    serviceWorkers: isForOffline ? 'allow' : 'block',
    baseURL: url,
  });
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error') complaints.push(message.text());
  });
  page.on('request', (request) => {
    const asked = request.url();
    const isOurs = asked.startsWith(url) || /^(data|blob):/.test(asked);
    if (!isOurs) complaints.push(`asked ${asked}`);
  });
  return { page, context, complaints, close: () => context.close() };
}

/** What axe finds wrong with the page as it is, each with the places; WCAG 2.2 AA and best practice. */
export async function axeFindings(page: Page): Promise<string[]> {
  await page.evaluate(axe);
  const violations = await page.evaluate<Violation[]>(
    `axe.run(document, { runOnly: ${JSON.stringify(rules)} }).then((found) => found.violations)`,
  );
  return violations.map(
    ({ id, help, nodes }) =>
      `${id}: ${help}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`,
  );
}

/** Whether something sticks out sideways, so that the whole page would scroll. */
export const sticksOut = (page: Page): Promise<boolean> =>
  page.evaluate<boolean>('document.documentElement.scrollWidth > innerWidth');
