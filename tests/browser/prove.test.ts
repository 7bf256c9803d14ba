import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openBrowser } from '../support/browser.js';
import { axeFindings, openPage, phone, sticksOut, type OpenPage } from '../support/openPage.js';
import { servedDemo, type ServedDemo } from '../support/servedDemo.js';

let demo: ServedDemo;
let browser: Browser;
let open: OpenPage;
let page: Page;
beforeAll(async () => {
  [demo, browser] = await Promise.all([servedDemo(), openBrowser()]);
  open = await openPage(browser, demo.url, phone);
  ({ page } = open);
}, 120_000);
afterAll(async () => {
  await browser.close();
  await demo.close();
});

const look = async (number: string, fields: string) =>
  (
    await demo.ask(
      `query ($number: String!) { item(inventoryNumber: $number) { id version ${fields} } }`,
      { number },
    )
  ).item;

const hazardsOf = async (number: string): Promise<any[]> =>
  (await look(number, 'hazards { kind clearedByCheck clearedBy { name } note }')).hazards;

/** The part of a page that tells of one hazard. */
const hazard = (on: Page, kind: string) => on.locator('details').filter({ hasText: kind }).first();

describe('a hazard', () => {
  it('is not cleared by empty words, nor by words that name no check', async () => {
    await page.goto('/sets/R-006');
    const cord = hazard(page, 'damaged cord');
    await cord.getByRole('button', { name: 'Clear it by a check' }).click();
    const send = cord.getByRole('button', { name: 'Cleared by this check' });
    await send.click();
    await cord.getByRole('alert').filter({ hasText: 'it is empty' }).waitFor();
    await cord.getByLabel('What was done, and what it showed').fill('done');
    await send.click();
    await cord.getByRole('alert').filter({ hasText: '“done” names no check.' }).waitFor();
    await cord.getByLabel('Who did it').fill('Nobody Known');
    await send.click();
    await cord.getByRole('alert').filter({ hasText: 'Nobody is written down as' }).waitFor();
    expect((await hazardsOf('R-006')).map(({ clearedByCheck }) => clearedByCheck)).toEqual([
      null,
      null,
    ]);
    expect(await axeFindings(page)).toEqual([]);
    expect(await sticksOut(page)).toBe(false);
  });

  it('is cleared by the check and whoever made it, who may be new; what was typed outlives a reload', async () => {
    await page.reload();
    const cord = hazard(page, 'damaged cord');
    const check = 'New cord and plug; bond 0.1 ohm';
    await cord.getByLabel('What was done, and what it showed').fill(check);
    await cord.getByRole('button', { name: 'Write “Nobody Known” down as a new name' }).click();
    await cord
      .getByRole('button', { name: 'Write “Nobody Known” down as a new name' })
      .waitFor({ state: 'detached' });
    await cord.getByRole('button', { name: 'Cleared by this check' }).click();
    await page.getByText('“damaged cord” is cleared by the check that you wrote down.').waitFor();
    const [, cleared] = await hazardsOf('R-006');
    expect(cleared).toMatchObject({
      clearedByCheck: check,
      clearedBy: { name: 'Nobody Known' },
    });
  });

  it('stands again when somebody says so, and its words are corrected', async () => {
    const cord = hazard(page, 'damaged cord');
    await cord.locator('summary').click();
    await cord.getByRole('button', { name: 'It stands again' }).click();
    await page.getByText('“damaged cord” stands again').waitFor();
    await cord.getByRole('button', { name: 'Correct what is written' }).click();
    await cord.getByLabel('Where, and how you know').fill('Gnawed in three places.');
    await cord.getByRole('button', { name: 'Write it down' }).click();
    await expect
      .poll(async () => (await hazardsOf('R-006')).map(({ note }) => note))
      .toContain('Gnawed in three places.');
  });

  it('is raised with its cautions in view, and one of the design cannot be cleared', async () => {
    await page.goto('/bench/R-005');
    await page.getByRole('button', { name: 'Write another hazard down' }).click();
    const form = page.locator('form').filter({ hasText: 'Write the hazard down' });
    await form.getByLabel('What can hurt').selectOption('HOT_PARTS');
    await form.getByText('so no check clears it').waitFor();
    await form.getByRole('button', { name: 'Write the hazard down' }).click();
    await page.getByText('“hot parts” is written down.').waitFor();
    const hot = hazard(page, 'hot parts');
    await hot.locator('summary').click();
    await hot.getByText('so no check clears it').waitFor();
    expect(await hot.getByRole('button', { name: 'Clear it by a check' }).count()).toBe(0);
  });

  it('that two clear at once is cleared by the first; the second sees both and settles it', async () => {
    const other = await openPage(browser, demo.url);
    for (const each of [page, other.page]) {
      await each.goto('/sets/R-006');
      const soiling = hazard(each, 'vermin soiling');
      await soiling.getByRole('button', { name: 'Clear it by a check' }).click();
      const mine = each === page ? 'First: wiped twice' : 'Second: wiped and looked over';
      await soiling.getByLabel('What was done, and what it showed').fill(mine);
    }
    const send = (on: Page) =>
      hazard(on, 'vermin soiling').getByRole('button', { name: 'Cleared by this check' });
    await Promise.all([send(page).click(), send(other.page).click()]);
    await expect
      .poll(async () => (await hazardsOf('R-006')).filter((one) => one.clearedByCheck).length)
      .toBe(1);
    // Whose came first is left to chance: the other one is asked.
    const windows = [page, other.page];
    const asked = await Promise.any(
      windows.map(async (each) => {
        await each.getByText('Somebody wrote here meanwhile').waitFor();
        return each;
      }),
    );
    const conflict = hazard(asked, 'vermin soiling').getByRole('alert');
    expect(await conflict.innerText()).toContain('First: wiped twice');
    expect(await conflict.innerText()).toContain('Second: wiped and looked over');
    await conflict.getByRole('button', { name: 'Keep both, one under the other' }).click();
    await expect
      .poll(async () => JSON.stringify(await hazardsOf('R-006')))
      .toMatch(/First: wiped twice.*Second|Second: wiped and looked over.*First/);
    expect(other.complaints).toEqual([]);
    await other.close();
  });
});

describe('a final check', () => {
  it('says all at once what is missing, and keeps what was typed', async () => {
    await page.goto('/sets/R-005');
    const sheet = page.locator('#final-checks');
    await sheet.getByText('No final check is named for this rig').waitFor();
    await sheet.getByRole('button', { name: 'Write a final check down' }).click();
    await sheet.getByText('What can still hurt here').waitFor();
    await sheet.getByLabel('Holds for how many days').fill('a year');
    await sheet.getByLabel('What was measured').fill('40 MOhm at 500 V');
    await sheet.getByRole('button', { name: 'Write the check down' }).click();
    await sheet.getByText('Say what was checked').waitFor();
    await sheet.getByText('Say whether it was passed.').waitFor();
    await sheet.getByText('Write a whole number of days').waitFor();
    expect(await axeFindings(page)).toEqual([]);
    await page.reload();
    expect(await sheet.getByLabel('What was measured').inputValue()).toBe('40 MOhm at 500 V');
  });

  it('is written down with until when it holds, and the blocker goes', async () => {
    const sheet = page.locator('#final-checks');
    await sheet.getByLabel('What was checked').fill('Insulation to chassis');
    await sheet.getByLabel('Holds for how many days').fill('0');
    await sheet.getByRole('radio', { name: 'passed', exact: true }).check();
    await sheet.getByRole('button', { name: 'Write the check down' }).click();
    await sheet.getByText('A check holds for 1 to 36500 days').waitFor();
    await sheet.getByLabel('Holds for how many days').fill('30');
    await sheet.getByLabel('When, if not now').fill('2026-01-02T10:00');
    await sheet.getByRole('button', { name: 'Write the check down' }).click();
    await sheet.getByText('passed, but lapsed on 1 Feb 2026').waitFor();
    await sheet.getByText('No final check is named for this rig').waitFor({ state: 'detached' });
    const { finalChecks } = await look(
      'R-005',
      'finalChecks(first: 1) { nodes { note isPassed checkedBy { name } } }',
    );
    expect(finalChecks.nodes).toEqual([
      { note: '40 MOhm at 500 V', isPassed: true, checkedBy: { name: 'Tamsin Oakhollow' } },
    ]);
  });
});

describe('a finding', () => {
  it('is not settled without words; then it is, and may be opened again', async () => {
    const sheet = page.locator('#findings');
    const line = sheet.getByRole('listitem').filter({ hasText: 'Lettering worn' });
    await line.getByRole('button', { name: 'Settle it' }).click();
    await line.getByRole('radio', { name: 'accepted as it is' }).check();
    await line.getByRole('button', { name: 'Settled so' }).click();
    await line.getByText('Say why it stays as it is.').waitFor();
    await line.getByLabel('Why it stays as it is').fill('The wear is honest');
    await line.getByRole('button', { name: 'Settled so' }).click();
    await sheet.getByText('The finding is settled: accepted as it is.').waitFor();
    await sheet.getByText('that are settled').click();
    await line.getByText('The wear is honest').waitFor();
    await line.getByRole('button', { name: 'Open it again' }).click();
    await sheet.getByText('The finding is open again.').waitFor();
  });

  it('has its words corrected; who changed it meanwhile is not overwritten', async () => {
    const sheet = page.locator('#findings');
    const line = sheet.getByRole('listitem').filter({ hasText: 'Plate supply' });
    await line.getByRole('button', { name: 'Correct what is written' }).click();
    await line.getByLabel('What you see').fill('Mine: plate supply on an open terminal.');
    const { findings } = await look('R-005', 'findings(first: 20) { nodes { id version note } }');
    const { id, version } = findings.nodes.find(({ note }: any) => note.startsWith('Plate'));
    const { changeFinding } = await demo.ask(
      'mutation ($input: ChangeFindingInput!) { changeFinding(input: $input) { problems { message } } }',
      { input: { id, version, note: 'Theirs: plate supply, bare.' } },
    );
    expect(changeFinding.problems).toEqual([]);
    const conflict = sheet.getByRole('alert').filter({ hasText: 'Somebody wrote here meanwhile' });
    await conflict.getByLabel('Put mine in its place').check();
    await conflict.getByRole('button', { name: 'Let it stand so' }).click();
    await sheet.getByRole('button', { name: 'Write it down' }).click();
    await sheet.getByText('Written down.').waitFor();
    await sheet.getByText('Mine: plate supply on an open terminal.').waitFor();
  });
});

describe('these pages', () => {
  it('have complained of nothing', () => {
    expect(open.complaints).toEqual([]);
  });
});
