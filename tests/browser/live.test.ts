import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openBrowser } from '../support/browser.js';
import { openPage, type OpenPage } from '../support/openPage.js';
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

async function rename(name: string): Promise<void> {
  const { rig } = await demo.ask('{ rig(inventoryNumber: "R-001") { id version } }');
  const { changeRig } = await demo.ask(
    'mutation ($input: ChangeRigInput!) { changeRig(input: $input) { problems { message } } }',
    { input: { id: rig.id, version: rig.version, name } },
  );
  expect(changeRig.problems).toEqual([]);
}

const firstName = () => open.page.locator('h2').first().innerText();

describe('an open window', () => {
  it('shows what is changed elsewhere, without being asked', async () => {
    await open.page.goto('/collection');
    await expect.poll(firstName).toBe('R-001 Marlpost receiver');
    // The feed has begun once a change made now arrives.
    await rename('Renamed at the other table');
    await expect.poll(firstName, { timeout: 10_000 }).toBe('R-001 Renamed at the other table');
    await rename('And once more');
    await expect.poll(firstName, { timeout: 10_000 }).toBe('R-001 And once more');
  });

  it('says that the program is gone, and catches up when it is back', async () => {
    await demo.stop();
    await open.page.getByText('The program does not answer just now').waitFor();
    await demo.startAgain();
    await rename('While nobody listened');
    await expect.poll(firstName, { timeout: 20_000 }).toBe('R-001 While nobody listened');
    await expect.poll(() => open.page.getByText('does not answer just now').count()).toBe(0);
  });
});
