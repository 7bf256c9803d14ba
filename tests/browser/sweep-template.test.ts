import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { openBrowser } from '../support/browser.js';
import { axeFindings, openPage, phone, sticksOut, type OpenPage } from '../support/openPage.js';
import { servedDemo, type ServedDemo } from '../support/servedDemo.js';

let demo: ServedDemo;
let browser: Browser;
let open: OpenPage;
beforeAll(async () => {
  [demo, browser] = await Promise.all([servedDemo(), openBrowser()]);
  open = await openPage(browser, demo.url);
}, 120_000);
afterAll(async () => {
  await browser.close();
  await demo.close();
});

const asked = async (query: string, variables: object = {}) => {
  const answer = await open.page.request.post('/graphql', { data: { query, variables } });
  return ((await answer.json()) as { data: any }).data;
};

it('keeps what is typed as a template, and takes two quantities a row by it, by keyboard', async () => {
  const { page } = open;
  await page.goto('/bench/R-004');
  await page.getByRole('tab', { name: 'Sweep' }).click();
  await page.getByRole('textbox', { name: 'Name for a template' }).fill('Finals, one column');
  await page.getByRole('button', { name: 'Keep as a template' }).click();
  const chosen = page.getByRole('combobox', { name: 'Sweep template' });
  await chosen.locator('option', { hasText: 'Finals, one column' }).waitFor({ state: 'attached' });

  const { rig } = await asked(
    '{ rig(inventoryNumber: "R-004") { model { id sweepTemplates { name designators } } } }',
  );
  expect(rig.model.sweepTemplates).toHaveLength(1);
  const input = {
    modelId: rig.model.id,
    name: 'Finals, two columns',
    tier: 'TESTER',
    designators: ['V9', 'V8'],
    quantities: [
      { quantity: 'transconductance', unit: 'uS' },
      { quantity: 'heater current', unit: 'A' },
    ],
  };
  const { saveSweepTemplate } = await asked(
    `mutation ($input: SaveSweepTemplateInput!) {
      saveSweepTemplate(input: $input) { problems { message } } }`,
    { input },
  );
  expect(saveSweepTemplate.problems).toEqual([]);

  await page.reload();
  await page.getByRole('tab', { name: 'Sweep' }).click();
  await chosen.selectOption({ label: 'Finals, two columns' });
  const position = page.getByRole('combobox', { name: 'Position' });
  expect(await position.inputValue()).toBe('V9');
  await page.getByRole('textbox', { name: 'transconductance (µS)' }).focus();
  for (const typed of ['6000', '1.25']) {
    await page.keyboard.type(typed);
    await page.keyboard.press('Enter');
  }
  expect(await position.inputValue()).toBe('V8');
  const taken = page.getByRole('region', { name: 'Taken so far' }).locator('tbody tr');
  expect(await taken.count()).toBe(1);
  await page.getByRole('button', { name: 'Write one row down' }).press('Enter');
  await page.getByText('1 written down').waitFor();
  await page.getByText('Not read yet: V8.').waitFor();

  const { item } = await asked(
    '{ item(inventoryNumber: "R-004") { components(first: 60) { nodes { designator component { readings(first: 2) { nodes { quantity value } } } } } } }',
  );
  const found = item.components.nodes.find((one: any) => one.designator === 'V9');
  const read = found.component.readings.nodes.map(({ quantity, value }: any) => [quantity, value]);
  expect(read).toEqual(
    expect.arrayContaining([
      ['transconductance', '6000'],
      ['heater current', '1.25'],
    ]),
  );
}, 60_000);

it('can be read by everyone on a phone', async () => {
  const small = await openPage(browser, demo.url, phone);
  await small.page.goto('/bench/R-004');
  await small.page.getByRole('tab', { name: 'Sweep' }).click();
  const chosen = small.page.getByRole('combobox', { name: 'Sweep template' });
  await chosen.selectOption({ label: 'Finals, two columns' });
  await small.page.getByRole('textbox', { name: 'heater current (A)' }).waitFor();
  expect(await sticksOut(small.page)).toBe(false);
  expect(await axeFindings(small.page)).toEqual([]);
  expect(small.complaints).toEqual([]);
  await small.close();
}, 60_000);
