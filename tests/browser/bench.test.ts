import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openBrowser } from '../support/browser.js';
import { axeFindings, openPage, phone, sticksOut, type OpenPage } from '../support/openPage.js';
import { cameraPicture } from '../support/picture.js';
import { servedDemo, type ServedDemo } from '../support/servedDemo.js';
import { isFocused, tabTo } from '../support/tabTo.js';

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

const asked = async (query: string) => {
  const answer = await open.page.request.post('/graphql', { data: { query } });
  return ((await answer.json()) as { data: any }).data;
};

describe('the bench', () => {
  it('says what can be done now, and leads there', async () => {
    const { page } = open;
    await page.goto('/bench');
    const first = page.locator('h3 a').first();
    const title = await first.innerText();
    await first.click();
    await page.waitForURL(/\/bench\/[RA]-\d+\?task=/);
    await page.getByRole('button', { name: `Start the timer on “${title}”` }).waitFor();
  });

  it('shows what can hurt when the timer starts; the timer is started, paused and stopped by keyboard', async () => {
    const { page } = open;
    await page.goto('/bench/R-006?task=none');
    const start = page.getByRole('button', { name: 'Start the timer' });
    await tabTo(page, start);
    await page.keyboard.press('Enter');
    const warned = page.getByRole('alert').filter({ hasText: 'Before you put a hand in' });
    await warned.waitFor();
    expect(await warned.locator('dd').count()).toBeGreaterThan(0);
    // Another person's timer runs in the demo.
    const own = page.getByRole('region', { name: 'Tamsin Oakhollow' });
    for (const name of ['Take a break', 'Go on', 'Stop the timer']) {
      await tabTo(page, own.getByRole('button', { name }));
      await page.keyboard.press('Enter');
    }
    await start.waitFor();
    const { item } = await asked(
      '{ item(inventoryNumber: "R-006") { sessions(first: 1) { nodes { endedAt breaks { endedAt } } } } }',
    );
    expect(item.sessions.nodes[0].endedAt).not.toBeNull();
    expect(item.sessions.nodes[0].breaks[0].endedAt).not.toBeNull();
  });

  it('takes a sweep by keyboard alone: value, Enter, next; the verdict stands there before it is sent', async () => {
    const { page } = open;
    await page.goto('/bench/R-004');
    await tabTo(page, page.getByRole('tab', { name: 'Finding' }));
    for (let turn = 0; turn < 3; turn++) await page.keyboard.press('ArrowRight');
    const value = page.getByRole('textbox', { name: 'Value' });
    await value.waitFor();
    const position = page.getByRole('combobox', { name: 'Position' });
    await tabTo(page, value);
    const first = await position.inputValue();
    await page.keyboard.type('1');
    await page.getByText('below the limit').waitFor();
    await page.keyboard.press('Enter');
    await page.keyboard.type('99999');
    await page.getByText('within limits').waitFor();
    await page.keyboard.press('Enter');
    await page.keyboard.press('Enter');
    await page.keyboard.type('8000,5');
    await page.keyboard.press('Enter');
    const taken = page.getByRole('region', { name: 'Taken so far' }).locator('tbody tr');
    expect(await taken.count()).toBe(3);

    await page.reload();
    await tabTo(page, page.getByRole('tab', { name: 'Finding' }));
    for (let turn = 0; turn < 3; turn++) await page.keyboard.press('ArrowRight');
    await expect.poll(() => taken.count()).toBe(3);
    // One more, in a position that the set does not have.
    await tabTo(page, position);
    await page.keyboard.press('Control+A');
    await page.keyboard.type('V99');
    await page.keyboard.press('Enter');
    await expect.poll(() => value.evaluate(isFocused)).toBe(true);
    await page.keyboard.type('5000');
    await page.keyboard.press('Enter');
    const send = page.getByRole('button', { name: 'Write 4 rows down' });
    await tabTo(page, send);
    await page.keyboard.press('Enter');
    await page.getByText('3 written down, 1 refused').waitFor();
    expect(await taken.count()).toBe(1);
    expect(await taken.innerText()).toContain('Nothing is recorded as sitting in V99');
    const { item } = await asked(
      '{ item(inventoryNumber: "R-004") { components(first: 60) { nodes { designator component { readings(first: 1) { nodes { value verdict { word } } } } } } } }',
    );
    const found = item.components.nodes.find((one: any) => one.designator === first);
    expect(found.component.readings.nodes[0]).toMatchObject({
      value: '1',
      verdict: { word: 'BELOW_LIMIT' },
    });
  });

  it('keeps a finding that is half typed, sends it, and a picture of it', async () => {
    const { page } = open;
    await page.goto('/bench/R-005');
    await page.getByLabel('Zone').selectOption('REAR_PANEL');
    await page.getByRole('button', { name: 'Write it down' }).click();
    await page.getByRole('alert').waitFor();
    await page.getByLabel('What you see').fill('Fuse holder is cracked');
    await page.reload();
    expect(await page.getByLabel('What you see').inputValue()).toBe('Fuse holder is cracked');
    await page.getByLabel('major').check();
    await page.getByRole('button', { name: 'Write it down' }).click();
    await page.getByText('Written down.').waitFor();
    const picture = { name: 'fuse.jpg', mimeType: 'image/jpeg', buffer: await cameraPicture() };
    await page.locator('input[type=file]').setInputFiles(picture);
    await expect
      .poll(async () => {
        const { item } = await asked(
          '{ item(inventoryNumber: "R-005") { findings(first: 1) { nodes { zone severity note attachments { totalCount } } } } }',
        );
        return item.findings.nodes[0];
      })
      .toMatchObject({
        zone: 'REAR_PANEL',
        severity: 'MAJOR',
        note: 'Fuse holder is cracked',
        attachments: { totalCount: 1 },
      });
  });

  it('shows both notes when somebody else wrote meanwhile, and keeps what the person settles', async () => {
    const { page } = open;
    await page.goto('/bench/R-003');
    await page.getByRole('tab', { name: 'Note' }).click();
    const note = page.getByRole('textbox', { name: 'On the set' });
    await note.fill('Mine');
    const { item } = await asked('{ item(inventoryNumber: "R-003") { id version } }');
    await asked(
      `mutation { changeRig(input: { id: "${item.id}", version: ${item.version}, note: "Theirs" }) { problems { message } } }`,
    );
    await page.getByRole('button', { name: 'Write it down' }).click();
    await page.getByRole('heading', { name: 'Somebody wrote here meanwhile' }).waitFor();
    await page.getByRole('button', { name: 'Keep both' }).click();
    await page.getByText('Written down.').waitFor();
    const after = await asked('{ item(inventoryNumber: "R-003") { note } }');
    expect(after.item.note).toBe('Theirs\nMine');
  });

  it('holds a reading against its limits and can be read by everyone on a phone', async () => {
    const { page, close, complaints } = await openPage(browser, demo.url, phone);
    await page.goto('/bench/R-004');
    for (const leaf of ['Picture', 'Reading', 'Sweep', 'Note']) {
      await page.getByRole('tab', { name: leaf }).click();
      expect(await axeFindings(page)).toEqual([]);
      expect(await sticksOut(page)).toBe(false);
    }
    expect(complaints).toEqual([]);
    await close();
  });
});
