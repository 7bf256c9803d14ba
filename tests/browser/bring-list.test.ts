import { readFile } from 'node:fs/promises';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openBrowser } from '../support/browser.js';
import { axeFindings, openPage, type OpenPage } from '../support/openPage.js';
import { servedDemo, type ServedDemo } from '../support/servedDemo.js';

let demo: ServedDemo;
let browser: Browser;
let open: OpenPage;
let page: Page;
beforeAll(async () => {
  [demo, browser] = await Promise.all([servedDemo(), openBrowser()]);
  open = await openPage(browser, demo.url);
  ({ page } = open);
}, 120_000);
afterAll(async () => {
  await browser.close();
  await demo.close();
});

const heads = 'Number,Maker,Model,Made,Where it lies,Inner remark';
const listOf = (...rows: string[]): string => [heads, ...rows].join('\r\n');
const broken = listOf(
  'R-801,Quarrendale,Q-8,1961,Loft,=SUM(A1)',
  'R-001,Quarrendale,Q-8,1962,Loft,',
  'R-803,Quarrendale,Q-8,some day,Loft,',
);
const mended = listOf(
  'R-801,Quarrendale,Q-8,1961,Loft,from the aunt',
  'R-802,Quarrendale,Q-8,1962,Loft,',
  'R-803,Quarrendale,Q-8,1963,Loft,',
);

async function drop(name: string, content: string): Promise<void> {
  const dataTransfer = await page.evaluateHandle(
    (given) => {
      const transfer = new (globalThis as any).DataTransfer();
      transfer.items.add(new File([given.content], given.name, { type: 'text/csv' }));
      return transfer as unknown;
    },
    { name, content },
  );
  const target = page.locator('label', { has: page.locator('input[type=file]') });
  await target.dispatchEvent('dragover', { dataTransfer });
  await target.dispatchEvent('drop', { dataTransfer });
}
const meaningOf = (column: string) => page.getByLabel(`Meaning: ${column}`);
const countOf = async () =>
  (await demo.ask('{ rigs(first: 1) { totalCount } }')).rigs.totalCount as number;

describe('a list that is brought', () => {
  it('is dropped, looked at, and said to be wrong line by line; nothing changes', async () => {
    const before = await countOf();
    await page.goto('/bring-a-list');
    await drop('loft.csv', broken);
    await page.getByText('Taken: loft.csv').waitFor();
    const problems = page.getByRole('region', { name: /nothing can be loaded yet/ });
    await problems.waitFor();
    const lines = await problems.locator('tbody tr td:first-child').allInnerTexts();
    expect(lines).toEqual(expect.arrayContaining(['3', '4']));
    expect(await page.getByRole('button', { name: /^Load/ }).count()).toBe(0);
    expect(await axeFindings(page)).toEqual([]);
    expect(await countOf()).toBe(before);
  });

  it('gives its problems away as a file, each with its line', async () => {
    const rows = page
      .getByRole('region', { name: /nothing can be loaded yet/ })
      .locator('tbody tr');
    const shown = await rows.locator('td:last-child').allInnerTexts();
    const coming = page.waitForEvent('download');
    await page.getByRole('link', { name: 'Download the problems as CSV' }).click();
    const download = await coming;
    expect(download.suggestedFilename()).toBe('problems.csv');
    const [head, ...written] = (await readFile(await download.path(), 'utf8')).split('\r\n');
    expect(head).toBe('"line","column","message"');
    expect(written).toHaveLength(shown.length);
    for (const [index, message] of shown.entries()) {
      expect(written[index]).toContain(message.replaceAll('"', '""'));
    }
  });

  it('is chosen once mended; its columns are matched by hand, and it is loaded as a whole', async () => {
    const before = await countOf();
    const file = (content: string) => ({
      name: 'loft.csv',
      mimeType: 'text/csv',
      buffer: Buffer.from(content),
    });
    await page.locator('input[type=file]').setInputFiles(file(mended));
    await page.getByText('Nothing is wrong with it.').waitFor();
    expect(await meaningOf('Inner remark').inputValue()).toBe('');
    await meaningOf('Where it lies').selectOption('PLACE');
    await page.getByText('places: Loft').waitFor();
    await meaningOf('Inner remark').selectOption('IGNORE');
    await expect.poll(() => meaningOf('Inner remark').inputValue()).toBe('IGNORE');
    await page.getByRole('button', { name: 'Load all 3 rows' }).click();
    await page.getByRole('heading', { name: '3 rows are now in the collection.' }).waitFor();
    expect(await countOf()).toBe(before + 3);
    const { rig } = await demo.ask(
      '{ rig(inventoryNumber: "R-801") { note madeEdtf place { name } model { maker } } }',
    );
    expect(rig).toEqual({
      note: null,
      madeEdtf: '1961',
      place: { name: 'Loft' },
      model: { maker: 'Quarrendale' },
    });
    expect(open.complaints).toEqual([]);
  });
});
