import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openBrowser } from '../support/browser.js';
import { axeFindings, openPage, phone, sticksOut, type OpenPage } from '../support/openPage.js';
import { cameraPicture } from '../support/picture.js';
import { servedDemo, type ServedDemo } from '../support/servedDemo.js';
import { tabTo } from '../support/tabTo.js';

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

describe('intake', () => {
  it('says beside the field what is wrong with a new set, and keeps what was typed', async () => {
    const { page } = open;
    await page.goto('/intake');
    await page.getByLabel('Number').first().fill('R-001');
    await page.getByLabel('When it was made').fill('some day');
    await page.getByRole('button', { name: 'Write it down and look it over' }).click();
    await page.getByRole('alert').first().waitFor();
    const beside = (label: string) =>
      page.locator('form div', { has: page.getByLabel(label) }).getByRole('alert');
    await expect.poll(() => beside('When it was made').count()).toBeGreaterThan(0);
    await page.reload();
    expect(await page.getByLabel('When it was made').inputValue()).toBe('some day');
  });

  it('is walked from the first field to a recorded inspection by keyboard alone', async () => {
    const { page } = open;
    const model = (
      await asked(
        '{ models(first: 20, filter: { itemKind: RIG }) { nodes { maker designation fitOut(first: 60) { nodes { zone } } } } }',
      )
    ).models.nodes.find(
      (one: any) => one.fitOut.nodes.filter(({ zone }: any) => zone === 'TUBES').length >= 3,
    );
    await page.goto('/intake');
    const type = async (label: string, text: string) => {
      await tabTo(page, page.getByLabel(label).first());
      await page.keyboard.press('Control+A');
      await page.keyboard.type(text);
    };
    await type('When it was made', '1962');
    await type('Number', 'R-901');
    await type('What you call it', 'The one from the loft');
    await type('Model', `${model.maker} ${model.designation}`);
    await page.keyboard.press('Escape');
    await type('Serial number', '4711');
    await page.keyboard.press('Enter');
    await page.waitForURL('**/intake/R-901');

    // From the whole to the tubes, and off they are ticked: there, missing, wrong by the arrows.
    await tabTo(page, page.getByRole('tab', { name: 'whole' }));
    for (let turn = 0; turn < 7; turn++) await page.keyboard.press('ArrowDown');
    await page.getByRole('heading', { name: 'What a complete one has here' }).waitFor();
    await page.keyboard.press('Tab');
    await page.keyboard.press('t');
    await page.keyboard.press('m');
    await page.keyboard.press('Space');
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ArrowRight');
    await tabTo(page, page.getByRole('button', { name: 'Add a finding' }));
    await page.keyboard.press('Enter');
    await tabTo(page, page.getByLabel('What you see'));
    await page.keyboard.type('One socket is scorched');
    const file = { name: 'socket.jpg', mimeType: 'image/jpeg', buffer: await cameraPicture() };
    await tabTo(page, page.locator('input[type=file]'));
    const chooser = page.waitForEvent('filechooser');
    await page.keyboard.press('Enter');
    await (await chooser).setFiles(file);
    await page.getByText('1 picture').waitFor();
    await page.reload();
    await tabTo(page, page.getByRole('tab', { name: 'whole' }));
    const hazards = page.getByRole('tab', { name: 'Hazards' });
    for (let turn = 0; turn < 12; turn++) await page.keyboard.press('ArrowDown');
    await tabTo(page, hazards);
    await tabTo(page, page.getByRole('checkbox', { name: 'stored charge' }));
    await page.keyboard.press('Space');
    await tabTo(page, page.getByLabel('Where, and how you know'));
    await page.keyboard.type('No bleeder to be seen');
    await tabTo(page, hazards);
    await page.keyboard.press('ArrowDown');
    await page.getByText('1 finding, 3 positions ticked off, 1 hazard.').waitFor();
    await tabTo(page, page.getByRole('button', { name: 'Record the inspection' }));
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { name: 'The inspection is recorded' }).waitFor();

    const { item } = await asked(
      `{ item(inventoryNumber: "R-901") { name serialNumber hazards { kind note }
         inspections(first: 5) { nodes { findings { zone note attachments { totalCount } } fitOutChecks { state } } } } }`,
    );
    expect(item).toMatchObject({
      name: 'The one from the loft',
      serialNumber: '4711',
      hazards: [{ kind: 'STORED_CHARGE', note: 'No bleeder to be seen' }],
    });
    const [{ findings, fitOutChecks }, ...others] = item.inspections.nodes;
    expect(others).toEqual([]);
    expect(findings).toEqual([
      { zone: 'TUBES', note: 'One socket is scorched', attachments: { totalCount: 1 } },
    ]);
    expect(fitOutChecks.map(({ state }: any) => state).sort()).toEqual([
      'MISSING',
      'PRESENT',
      'WRONG',
    ]);
  });

  it('shows a refusal beside the finding that it is about', async () => {
    const { page } = open;
    await page.goto('/intake/R-002');
    await page.getByRole('button', { name: 'Add a finding' }).click();
    await page.getByRole('tab', { name: 'Send' }).click();
    await page.getByRole('button', { name: 'Record the inspection' }).click();
    await page.getByRole('alert').waitFor();
    await page.getByRole('tab', { name: 'whole' }).click();
    await page.locator('fieldset', { hasText: 'Finding 1' }).getByRole('alert').waitFor();
  });

  it('says that somebody else has looked it over since, and loses nothing that was typed', async () => {
    const { page } = open;
    await page.goto('/intake/R-003');
    await page.getByRole('button', { name: 'Add a finding' }).click();
    await page.getByLabel('What you see').fill('Scratch on the lid');
    const { item, parties } = await asked(
      '{ item(inventoryNumber: "R-003") { id } parties(first: 1) { nodes { id name } } }',
    );
    const [inspector] = parties.nodes;
    await demo.ask(
      `mutation ($input: RecordInspectionInput!) { recordInspection(input: $input) { problems { message } } }`,
      {
        input: {
          itemId: item.id,
          inspectorId: inspector.id,
          findings: [{ zone: 'CABINET', severity: 'COSMETIC', note: 'Lid scratched' }],
        },
      },
    );
    const said = page.getByRole('status').filter({ hasText: 'looked over in the meantime' });
    await said.getByText(inspector.name).waitFor();
    await said.getByText('cabinet, cosmetic: Lid scratched').waitFor();
    expect(await page.getByLabel('What you see').inputValue()).toBe('Scratch on the lid');
    await page.reload();
    await page.getByRole('tab', { name: 'Send' }).click();
    await page.getByText('another inspection was recorded').waitFor();
    expect(await axeFindings(page)).toEqual([]);
    await said.getByRole('button', { name: 'Taken note of' }).click();
    await expect.poll(() => said.count()).toBe(0);
    await page.getByText('Scratch on the lid').waitFor();
    await page.getByRole('button', { name: 'Record the inspection' }).click();
    await page.getByRole('heading', { name: 'The inspection is recorded' }).waitFor();
  });

  it('sends an inspection once, though its answer gets lost', async () => {
    const { page } = open;
    await page.goto('/intake/R-009');
    await page.getByRole('button', { name: 'Add a finding' }).click();
    await page.getByLabel('What you see').fill('Told twice, kept once');
    let isLost = false;
    await page.route('**/graphql', async (route) => {
      const isIt = route.request().postData()?.includes('mutation RecordInspection') ?? false;
      if (!isIt || isLost) return route.fallback();
      isLost = true;
      await route.fetch();
      await route.abort();
    });
    await page.getByRole('tab', { name: 'Send' }).click();
    const record = page.getByRole('button', { name: 'Record the inspection' });
    await record.click();
    await page.getByText('The program does not answer').first().waitFor();
    await record.click();
    await page.getByRole('heading', { name: 'The inspection is recorded' }).waitFor();
    const { item } = await asked(
      '{ item(inventoryNumber: "R-009") { findings(first: 60) { nodes { note } } } }',
    );
    const told = item.findings.nodes.filter(({ note }: any) => note === 'Told twice, kept once');
    expect(told).toHaveLength(1);
  });

  it('can be read by everyone on a phone, leaf by leaf', async () => {
    const { page, close, complaints } = await openPage(browser, demo.url, phone);
    await page.goto('/intake/R-004');
    for (const leaf of ['tubes', 'Hazards', 'Send']) {
      await page.getByRole('tab', { name: leaf }).click();
      expect(await axeFindings(page)).toEqual([]);
      expect(await sticksOut(page)).toBe(false);
    }
    expect(complaints).toEqual([]);
    await close();
  });
});
