import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { passing } from '../support/bringUpStory.js';
import { openBrowser } from '../support/browser.js';
import { axeFindings, openPage, phone, sticksOut, type OpenPage } from '../support/openPage.js';
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
    const yes = page.locator('#now').getByRole('radio', { name: 'holds', exact: true });
    for (const at of [0, 1]) {
      await tabTo(page, yes.nth(at));
      await page.keyboard.press('Space');
    }
    const value = page.getByLabel('Value in A');
    await tabTo(page, value);
    await page.keyboard.type('one');
    await page.keyboard.press('Enter');
    await page.getByText('Write a number: 12 or 0.5.').waitFor();
    await page.reload();
    await value.waitFor();
    expect(await value.inputValue()).toBe('one');
    expect(await yes.nth(1).isChecked()).toBe(true);
    await tabTo(page, value);
    await page.keyboard.press('Control+A');
    await page.keyboard.type('1,25');
    await page.keyboard.press('Enter');
    await expect.poll(() => stepInHand('Earth bond').evaluate(isFocused)).toBe(true);
    await page.getByText('“Line cord and fuse”: passed; fuse rating 1.25 A').waitFor();
    await page.getByText('at most 0.1 Ω').waitFor();
  });

  it('stops at a gate that fails, and says what was found and what to do', async () => {
    await tabTo(page, page.locator('#now').getByRole('radio', { name: 'holds', exact: true }));
    await page.keyboard.press('Space');
    await tabTo(page, page.getByLabel('Value in Ω'));
    await page.keyboard.type('3');
    await page.keyboard.press('Enter');
    const stopped = page.getByRole('heading', { name: 'Stopped at a gate' });
    await expect.poll(() => stopped.evaluate(isFocused)).toBe(true);
    await page
      .getByText(/^Finding \(open\): .*earth bond resistance 3 Ohm is above 0.1 Ohm/)
      .waitFor();
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
    const { id, version } = finding;
    await done('settleFinding', { id, version, status: 'RESOLVED', note: 'Misread' });
    await page.getByText(/^Finding \(resolved\)/).waitFor();
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
    await demo.ask(
      `mutation ($input: RaiseHazardInput!) { raiseHazard(input: $input) { problems { message } } }`,
      {
        input: {
          itemId: (await demo.ask(`{ item(inventoryNumber: "${number}") { id } }`)).item.id,
          kind: 'DAMAGED_CORD',
          note: 'Cut through at the plug',
        },
      },
    );
    await page.getByRole('heading', { name: 'Do not connect it' }).waitFor();
    const yes = page.locator('#now').getByRole('radio', { name: 'holds', exact: true });
    for (const at of [0, 1]) {
      await tabTo(page, yes.nth(at));
      await page.keyboard.press('Space');
    }
    await tabTo(page, page.getByLabel('Value in A'));
    await page.keyboard.type('0.2');
    await page.keyboard.press('Enter');
    const refused = page.locator('#now').getByRole('alert');
    await refused
      .getByText(/^Do not connect: “Current-limited first power” applies power/)
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
