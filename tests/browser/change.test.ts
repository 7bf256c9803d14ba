import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openBrowser } from '../support/browser.js';
import { axeFindings, openPage, phone, type OpenPage } from '../support/openPage.js';
import { cameraPicture } from '../support/picture.js';
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

const look = async (number: string) =>
  (
    await demo.ask(
      `query ($number: String!) { item(inventoryNumber: $number) {
         id version name serialNumber note place { name } coverPicture { id caption }
         outlook { version presentStandard successPercent premium { amount currency } premiumReason }
       } }`,
      { number },
    )
  ).item;

/** Somebody else, at another table. */
async function changeElsewhere(number: string, changes: object): Promise<void> {
  const { id, version } = await look(number);
  const { changeRig } = await demo.ask(
    'mutation ($input: ChangeRigInput!) { changeRig(input: $input) { problems { message } } }',
    { input: { id, version, ...changes } },
  );
  expect(changeRig.problems).toEqual([]);
}

const data = () => page.locator('#data');
const write = () => data().getByRole('button', { name: 'Write it down' });

describe('what is written down of a set', () => {
  it('is changed on its page, the fields that were typed in and no other', async () => {
    const before = await look('R-004');
    await page.goto('/sets/R-004');
    await page.getByRole('link', { name: 'Change what is written down' }).click();
    await data().getByLabel('Serial number').fill('SN 77-12');
    await write().click();
    await data().getByText('Written down.').waitFor();
    expect(await look('R-004')).toMatchObject({ name: before.name, serialNumber: 'SN 77-12' });
  });

  it('says beside the field what is to be mended, and keeps what was typed', async () => {
    await data().getByLabel('Number', { exact: true }).fill('R-005');
    await write().click();
    await data().getByRole('alert').first().waitFor();
    await page.reload();
    expect(await data().getByLabel('Number', { exact: true }).inputValue()).toBe('R-005');
    await data().getByLabel('Number', { exact: true }).fill('R-004');
    expect(await write().isDisabled()).toBe(true);
  });

  it('is laid side by side when somebody else changed it meanwhile; the person settles it', async () => {
    await data().getByLabel('Remarks').fill('Mine: the dial cord slips.');
    await data().getByLabel('Serial number').fill('SN 77-13');
    await changeElsewhere('R-004', { note: 'Theirs: dial cord renewed.', name: 'Theirs' });
    const conflict = data().getByRole('alert');
    await conflict.getByText('Theirs: dial cord renewed.').waitFor();
    expect(await conflict.innerText()).toContain('Mine: the dial cord slips.');
    expect(await axeFindings(page)).toEqual([]);
    // Nothing is sent over the other's words unseen.
    expect(await write().isDisabled()).toBe(true);
    const settle = conflict.getByRole('button', { name: 'Let it stand so' });
    expect(await settle.isDisabled()).toBe(true);
    await conflict.getByLabel('Put mine in its place').check();
    await settle.click();
    await write().click();
    await data().getByText('Written down.').waitFor();
    expect(await look('R-004')).toMatchObject({
      note: 'Mine: the dial cord slips.',
      serialNumber: 'SN 77-13',
      name: 'Theirs',
    });
  });

  it('is settled the other way too: what is there stays', async () => {
    await data().getByLabel('Remarks').fill('Mine again');
    await changeElsewhere('R-004', { note: 'Theirs again' });
    const conflict = data().getByRole('alert');
    await conflict.getByLabel('Leave what is there').check();
    await conflict.getByRole('button', { name: 'Let it stand so' }).click();
    await expect.poll(() => data().getByLabel('Remarks').inputValue()).toBe('Theirs again');
    expect((await look('R-004')).note).toBe('Theirs again');
  });
});

describe('where it stands', () => {
  it('is changed by a move, which is kept as one', async () => {
    const { places } = await demo.ask('{ places(first: 100) { nodes { name } } }');
    const now = (await look('R-004')).place?.name;
    const other = places.nodes.find(({ name }: { name: string }) => name !== now).name as string;
    const sheet = page.locator('#place');
    await sheet.getByLabel('Goes to').selectOption({ label: other });
    await sheet.getByRole('button', { name: 'Write the move down' }).click();
    await sheet.getByText(`Now: ${other}.`).waitFor();
    expect((await look('R-004')).place.name).toBe(other);
  });
});

describe('what the owner says of it', () => {
  it('is kept with the amount as people write it, and side by side with what another said', async () => {
    await page.goto('/sets/R-012/change');
    const sheet = page.locator('#outlook');
    await sheet.getByLabel('Worth to you beyond its price').fill('60,50');
    await sheet.getByLabel('Why it is worth more to you').fill('The only one of its kind here.');
    await sheet.getByRole('button', { name: 'Write it down' }).click();
    await sheet.getByText('Written down.').waitFor();
    const { id, outlook } = await look('R-012');
    expect(outlook).toMatchObject({
      premium: { amount: '60.50' },
      premiumReason: 'The only one of its kind here.',
    });

    await sheet.getByLabel('Chance that the work succeeds').fill('70');
    const { setItemOutlook } = await demo.ask(
      `mutation ($input: SetItemOutlookInput!) { setItemOutlook(input: $input) { problems { message } } }`,
      { input: { itemId: id, version: outlook.version, successPercent: 40 } },
    );
    expect(setItemOutlook.problems).toEqual([]);
    const conflict = sheet.getByRole('alert');
    await conflict.getByText('40', { exact: true }).waitFor();
    await conflict.getByLabel('Put mine in its place').check();
    await conflict.getByRole('button', { name: 'Let it stand so' }).click();
    await sheet.getByRole('button', { name: 'Write it down' }).click();
    await expect.poll(async () => (await look('R-012')).outlook.successPercent).toBe(70);
  });

  it('keeps what is typed while the rest is on its way, as nobody else’s', async () => {
    const sheet = page.locator('#outlook');
    await page.route('**/graphql', async (route) => {
      const isWriting = route.request().postData()?.includes('setItemOutlook') ?? false;
      if (isWriting) await new Promise((resolve) => setTimeout(resolve, 700));
      await route.continue();
    });
    await sheet.getByLabel('Chance that the work succeeds').fill('55');
    await sheet.getByRole('button', { name: 'Write it down' }).click();
    await sheet.getByLabel('Why it is worth more to you').fill('Typed meanwhile');
    await sheet.getByText('Written down.').waitFor();
    await page.unroute('**/graphql');
    await expect.poll(async () => (await look('R-012')).outlook.successPercent).toBe(55);
    const reason = sheet.getByLabel('Why it is worth more to you');
    expect(await reason.inputValue()).toBe('Typed meanwhile');
    await sheet.getByRole('button', { name: 'Write it down' }).click();
    await expect
      .poll(async () => (await look('R-012')).outlook.premiumReason)
      .toBe('Typed meanwhile');
    expect(await sheet.getByRole('alert').count()).toBe(0);
  });

  it('says how an amount is to be written, and sends nothing until it is', async () => {
    const sheet = page.locator('#outlook');
    await sheet.getByLabel('Worth to you beyond its price').fill('a lot');
    await sheet.getByRole('button', { name: 'Write it down' }).click();
    await sheet.getByText('Write the amount in figures').waitFor();
    expect((await look('R-012')).outlook.premium.amount).toBe('60.50');
  });
});

describe('the pictures of a set', () => {
  it('show what was before and after side by side, named as such', async () => {
    await page.goto('/sets/R-003/pictures');
    const pair = page
      .locator('section', { has: page.getByRole('heading', { name: 'Before and after' }) })
      .locator('li')
      .first();
    await pair.waitFor();
    const [before, after] = await Promise.all(
      [0, 1].map((index) => pair.locator('figure').nth(index).boundingBox()),
    );
    expect(before?.y).toBe(after?.y);
    expect(after?.x).toBeGreaterThan(before?.x ?? 0);
    expect(await pair.locator('figcaption').first().innerText()).toMatch(/^Before/);
    expect(await axeFindings(page)).toEqual([]);
  });

  it('take a new one in, which can become the one to know it by', async () => {
    const picture = await cameraPicture({});
    await page.goto('/sets/R-004/pictures');
    await page.locator('figure img').first().waitFor();
    await page.getByLabel('What it shows').first().fill('On the bench in autumn');
    await page
      .getByLabel('Add pictures')
      .setInputFiles({ name: 'autumn.jpg', mimeType: 'image/jpeg', buffer: picture });
    await page.getByText('autumn.jpg is kept').waitFor();
    const card = page.locator('li', { hasText: 'On the bench in autumn' });
    await card.getByText('Change what is said of it').click();
    await card.getByRole('button', { name: 'Know it by this picture' }).click();
    await card.getByText('The picture to know it by').waitFor();
    expect((await look('R-004')).coverPicture.caption).toBe('On the bench in autumn');

    await card.getByLabel('What it shows').fill('On the bench in October');
    await card.getByRole('button', { name: 'Write it down' }).click();
    await expect
      .poll(async () => (await look('R-004')).coverPicture.caption)
      .toBe('On the bench in October');
    expect(open.complaints).toEqual([]);
  });
});
