import { readFile } from 'node:fs/promises';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { passing } from '../support/bringUpStory.js';
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
import { isFocused, tabTo } from '../support/tabTo.js';

const number = 'R-008';
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

const button = (name: string) => page.getByRole('button', { name, exact: true });
const press = async (name: string): Promise<void> => {
  await tabTo(page, button(name));
  await page.keyboard.press('Enter');
};
const statementsThatHold = () =>
  page.locator('#now').getByRole('radio', { name: 'holds', exact: true });
async function sayThatAllHolds(statements: number): Promise<void> {
  for (let at = 0; at < statements; at++) {
    await tabTo(page, statementsThatHold().nth(at));
    await page.keyboard.press('Space');
  }
}
/** Where the keyboard is put once a step is recorded. */
const stepInHand = (title: string) => page.locator('#now').getByRole('heading', { name: title });
const line = (title: string) => page.locator('#steps > ol > li').filter({ hasText: `. ${title}` });
const runs = async (): Promise<any[]> =>
  (
    await demo.ask(
      `{ item(inventoryNumber: "${number}") { id bringUps(first: 5) { nodes { id version status reason
        steps { plan { key } outcome finding { id version hazards { id version } } } } } } }`,
    )
  ).item.bringUps.nodes;
const done = async (verb: string, input: object): Promise<void> => {
  const type = `${verb[0]?.toUpperCase() ?? ''}${verb.slice(1)}Input`;
  const answer = await demo.ask(
    `mutation ($input: ${type}!) { ${verb}(input: $input) { problems { message } } }`,
    { input },
  );
  expect(answer[verb].problems).toEqual([]);
};
const inAnotherWindow = (run: any, stepKey: string) =>
  done('recordBringUpStep', {
    key: `there ${stepKey}`,
    bringUpId: run.id,
    stepKey,
    ...passing[stepKey],
  });

/** A record of a log; the calls are invented. */
const contact = (fields: Record<string, string>): string =>
  `${Object.entries(fields)
    .map(([name, value]) => `<${name}:${value.length}>${value}`)
    .join('')}<eor>\n`;
const onTheAir = { qso_date: '20261101', band: '40M', mode: 'CW' };
const bring = (name: string, text: string) =>
  page
    .locator('input[type=file]')
    .setInputFiles({ name, mimeType: 'text/plain', buffer: Buffer.from(text) });

describe('a bring-up by keyboard alone', () => {
  it('begins with a procedure; what can hurt stands above the field, and all that is missing is said at once', async () => {
    await page.goto(`/sets/${number}/bring-up`);
    await tabTo(page, page.getByRole('radio', { name: 'Bring-up of a tube receiver' }));
    await page.keyboard.press('Space');
    await press('Begin this bring-up');
    await stepInHand('Line cord and fuse').waitFor();
    const caution = page.getByText('A brittle cord gives way when it is moved');
    const value = page.getByLabel('Value in A');
    const top = async (of: typeof value) => (await of.boundingBox())?.y ?? NaN;
    expect(await top(caution)).toBeLessThan(await top(value));
    await press('Record the step');
    expect(await page.locator('#now').getByRole('alert').allInnerTexts()).toEqual([
      'Say whether it holds.',
      'Say whether it holds.',
      'Write down what was read.',
    ]);
    expect(await axeFindings(page)).toEqual([]);
  });

  it('keeps what is typed over a reload, and goes on to the next step', async () => {
    await sayThatAllHolds(2);
    const value = page.getByLabel('Value in A');
    await tabTo(page, value);
    await page.keyboard.type('one');
    await page.keyboard.press('Enter');
    await page.getByText('Write a number: 12 or 0.5.').waitFor();
    await page.reload();
    await value.waitFor();
    expect(await value.inputValue()).toBe('one');
    expect(await statementsThatHold().nth(1).isChecked()).toBe(true);
    await tabTo(page, value);
    await page.keyboard.press('Control+A');
    await page.keyboard.type('1,25');
    await page.keyboard.press('Enter');
    await expect.poll(() => stepInHand('Earth bond').evaluate(isFocused)).toBe(true);
    await page.getByText('“Line cord and fuse”: passed; fuse rating 1.25 A').waitFor();
    await page.getByText('at most 0.1 Ω').waitFor();
  });

  it('stops at a gate that fails, and says what was found and what to do', async () => {
    await sayThatAllHolds(1);
    await tabTo(page, page.getByLabel('Value in Ω'));
    await page.keyboard.type('3');
    await page.keyboard.press('Enter');
    const stopped = page.getByRole('heading', { name: 'Stopped at a gate' });
    await expect.poll(() => stopped.evaluate(isFocused)).toBe(true);
    await page.getByText('earth bond resistance 3 Ohm is above 0.1 Ohm').first().waitFor();
    await page.getByRole('heading', { name: 'Do not connect it' }).waitFor();
    await press('Go on with this bring-up');
    await page.getByRole('alert').getByText('Settle the finding that it opened first').waitFor();
    expect(await axeFindings(page)).toEqual([]);
  });

  it('puts right what was misread, with what it said before, and goes on once the finding is settled', async () => {
    await press('Put it right: Earth bond');
    await page.keyboard.type('0.03 read as 3');
    await tabTo(page, line('Earth bond').getByLabel('Value in Ω'));
    await page.keyboard.press('Control+A');
    await page.keyboard.type('0.03');
    await press('Let it stand so');
    await line('Earth bond').getByText('Before, it said (failed):').waitFor();
    await line('Earth bond').getByText('earth bond resistance 3 Ω').waitFor();
    await line('Earth bond').getByText('earth bond resistance 0.03 Ω').waitFor();
    const [run] = await runs();
    const { finding } = run.steps[1];
    const clearedById = (
      await demo.ask('{ parties(first: 1, filter: { kind: PERSON }) { nodes { id } } }')
    ).parties.nodes[0].id;
    for (const { id, version } of finding.hazards) {
      const check = { clearedByCheck: 'Bond measured again: 0.03 Ohm', clearedById };
      await done('clearHazard', { id, version, ...check });
    }
    await press('Settle it');
    await tabTo(page, page.getByLabel('How it was put right'));
    await page.keyboard.type('Misread');
    await press('Settled so');
    await page.getByText('The finding is settled: resolved.').waitFor();
    await press('Go on with this bring-up');
    await stepInHand('Insulation resistance').waitFor();
  });

  it('shows what another window records, and keeps what was being typed meanwhile', async () => {
    await tabTo(page, page.getByLabel('Value in MΩ'));
    await page.keyboard.type('17');
    const [run] = await runs();
    await inAnotherWindow(run, 'insulation-resistance');
    await stepInHand('Capacitors re-formed').waitFor();
    await line('Insulation resistance').getByText('insulation resistance 20 MΩ').waitFor();
    await line('Insulation resistance').getByText('insulation resistance 17').waitFor();
    await press('Forget what was typed');
  });

  it('refuses power while a hazard stands, in the API’s words, and leads to where it is cleared', async () => {
    const [run] = await runs();
    await inAnotherWindow(run, 'capacitors');
    await stepInHand('Current-limited first power').waitFor();
    const { item } = await demo.ask(`{ item(inventoryNumber: "${number}") { id } }`);
    const note = 'Cut through at the plug';
    await done('raiseHazard', { itemId: item.id, kind: 'DAMAGED_CORD', note });
    await page.getByRole('heading', { name: 'Do not connect it' }).waitFor();
    await sayThatAllHolds(2);
    await tabTo(page, page.getByLabel('Value in A'));
    await page.keyboard.type('0.2');
    await page.keyboard.press('Enter');
    const refused = page.locator('#now').getByRole('alert');
    await refused
      .getByText(/first power” applies power\./)
      .first()
      .waitFor();
    const way = page.locator('#now').getByRole('link', { name: 'Where hazards are cleared' });
    expect(await way.getAttribute('href')).toContain(`/sets/${number}`);
  });

  it('is given up with a reason, and stands among the earlier ones; a phone shows all of it', async () => {
    await tabTo(page, page.locator('summary', { hasText: 'Give this bring-up up for now' }));
    await page.keyboard.press('Enter');
    await press('Give it up for now');
    await page.locator('details').getByRole('alert').waitFor();
    await tabTo(page, page.getByLabel('Why'));
    await page.keyboard.type('The cord first');
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { name: 'Given up for now' }).waitFor();
    await page.setViewportSize(phone);
    expect(await sticksOut(page)).toBe(false);
    expect(await axeFindings(page)).toEqual([]);
    await page.goto(`/sets/${number}/bring-up`);
    await page.locator('#earlier').getByText('The cord first').waitFor();
    await page.getByText('Hazards of this set are not cleared.').waitFor();
    expect((await runs()).map(({ status, reason }) => [status, reason])).toEqual([
      ['ABANDONED', 'The cord first'],
    ]);
    expect(open.complaints).toEqual([]);
  });
});

describe('a contact log', () => {
  it('that is empty or malformed is told as such, by place, and nothing is counted', async () => {
    await page.setViewportSize(wide);
    await page.goto('/bring-a-list');
    await bring('nothing.csv', '');
    await page.getByRole('alert').getByText('This file is empty').waitFor();
    await page.getByRole('link', { name: 'Bring a contact log (ADIF) instead' }).click();
    await bring('nothing.adi', '');
    await page.getByRole('alert').getByText('Export the log again').waitFor();
    await bring(
      'broken.adi',
      `<call:9>XX1ABC<eor>\n${contact({ call: 'XX2DEF', ...onTheAir, time_on: '2575' })}`,
    );
    const problems = page.getByRole('region', { name: /nothing can be loaded yet/ });
    await problems.waitFor();
    const lines = await problems.locator('tbody tr td:first-child').allInnerTexts();
    expect(new Set(lines)).toEqual(new Set(['1', '2']));
    expect(await page.getByRole('button', { name: /^Count/ }).count()).toBe(0);
    expect(await axeFindings(page)).toEqual([]);
    const coming = page.waitForEvent('download');
    await page.getByRole('link', { name: 'Download the problems as CSV' }).click();
    const [head, ...written] = (await readFile(await (await coming).path(), 'utf8')).split('\r\n');
    expect(head).toBe('"line","character","message"');
    expect(written).toHaveLength(lines.length);
  });

  it('that is sound is matched with the sets, looked at, and counted once', async () => {
    const useOf = async (of: string) =>
      (await demo.ask(`{ item(inventoryNumber: "${of}") { use { contacts } } }`)).item.use
        .contacts as number;
    const before = await Promise.all(['R-003', 'R-005'].map(useOf));
    const log =
      contact({ call: 'XX1ABC', ...onTheAir, time_on: '190000', my_rig: 'R-003' }) +
      contact({ call: 'XX2DEF', ...onTheAir, time_on: '193000', my_rig: 'R-003' }) +
      contact({ call: 'XX3GHI', ...onTheAir, time_on: '200000', my_rig: 'Old faithful' });
    await bring('november.adi', log);
    await page.getByText('“Old faithful” (contacts: 1) is no rig here').waitFor();
    await page
      .getByLabel('Taken for: Old faithful')
      .selectOption({ label: 'R-005 Bench Quillvane' });
    await press('Count all 3 contacts');
    await page.getByRole('heading', { name: '3 contacts are now counted.' }).waitFor();
    expect(await Promise.all(['R-003', 'R-005'].map(useOf))).toEqual([
      (before[0] ?? 0) + 2,
      (before[1] ?? 0) + 1,
    ]);
    // Chosen once more, after a reload: what was said of the rig is still known.
    await page.reload();
    await bring('november.adi', log);
    await page.getByText('3 contacts stand twice in it or were counted before.').waitFor();
    await page.getByText('There is nothing new in it to be counted.').waitFor();
    expect(open.complaints).toEqual([]);
  });
});

describe('use', () => {
  it('is written down on the page of the set, and so is maintenance that was done', async () => {
    await page.goto('/sets/R-003');
    const sheet = page.locator('#use');
    await sheet.getByText('Write a use down').click();
    await sheet.getByLabel('Hours').fill('long');
    const keep = sheet.getByRole('button', { name: 'Write it down', exact: true });
    await keep.click();
    await sheet.getByRole('alert').getByText('Write the hours as a number').waitFor();
    await sheet.getByLabel('Hours').fill('1,5');
    await sheet.getByLabel('Band: 40m').fill('60 m');
    await keep.click();
    await sheet.getByText('90 min · 60 m').waitFor();
    const rule = 'Covers off, dust out, screws of the power connectors tight';
    await sheet.getByRole('button', { name: `It is done: ${rule}` }).click();
    await sheet.getByLabel('Remarks').last().fill('All of them');
    await sheet.getByRole('button', { name: 'Write it down as done' }).click();
    const done = async () =>
      (
        await demo.ask('{ item(inventoryNumber: "R-003") { maintenance { title done { note } } } }')
      ).item.maintenance.find(({ title }: any) => title === rule).done as unknown[];
    await expect.poll(done).toContainEqual({ note: 'All of them' });
  });

  it('an order stands on the wanted list at once, and a schedule is had of chosen things', async () => {
    await page.goto('/wanted');
    await page.getByRole('button', { name: 'Ordered: 0A2' }).click();
    await button('Write the order down').click();
    await page.getByRole('alert').getByText('it is empty').waitFor();
    await page.getByLabel('Where it was ordered').fill('Ashgrove Parts');
    await button('Write the order down').click();
    await page.getByText('1 on order from Ashgrove Parts, no day said').waitFor();
    await page.goto('/books');
    await page.getByLabel('chosen things').check();
    await page.getByText('Tick at least one thing.').waitFor();
    await page.getByLabel('R-003 First Duskferry').check();
    const csv = await page.getByRole('link', { name: 'CSV' }).getAttribute('href');
    const told = await (await page.request.get(csv ?? '')).text();
    expect(told).toContain('R-003');
    expect(told).not.toContain('R-005');
    expect(open.complaints).toEqual([]);
  });
});
