import type { Browser, Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openBrowser } from '../support/browser.js';
import { axeFindings, openPage, phone, sticksOut, type OpenPage } from '../support/openPage.js';
import { servedDemo, type ServedDemo } from '../support/servedDemo.js';
import { tabTo } from '../support/tabTo.js';

const number = 'R-006';
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

const project = async (): Promise<any> =>
  (
    await demo.ask(
      `query ($number: String!) { item(inventoryNumber: $number) { projects {
         id version title status targetStandard decision ceiling { amount currency } ceilingHours
         tasks(first: 100) { totalCount nodes { id version title status isReady note rule
           steps { title weight } estimate { likelyHours } predecessors { title }
           partsNeeded { quantity partType { designation } } } }
       } } }`,
      { number },
    )
  ).item.projects[0];
const task = async (title: string): Promise<any> =>
  (await project()).tasks.nodes.find((each: { title: string }) => each.title === title);

/** Somebody else, at another table. */
async function elsewhere(verb: string, input: object): Promise<void> {
  const type = `${verb[0]?.toUpperCase() ?? ''}${verb.slice(1)}Input`;
  const answer = await demo.ask(
    `mutation ($input: ${type}!) { ${verb}(input: $input) { problems { message } } }`,
    { input },
  );
  expect(answer[verb].problems).toEqual([]);
}

const fold = (title: string): Locator =>
  page.locator('details', { has: page.locator('summary', { hasText: title }) }).last();
const line = (title: string): Locator =>
  page.locator('li', { has: page.getByRole('heading', { name: title, exact: true }) });
const sayHours = async (form: Locator, [well, likely, badly]: [string, string, string]) => {
  await form.getByLabel('Hours if all goes well').fill(well);
  await form.getByLabel('Hours, most likely').fill(likely);
  await form.getByLabel('Hours if little goes well').fill(badly);
};

describe('a restoration', () => {
  it('is opened from the page of a set that has none, by keyboard alone', async () => {
    await page.goto(`/sets/${number}`);
    await tabTo(page, page.locator('#left').getByRole('link', { name: 'Plan the work' }));
    await page.keyboard.press('Enter');
    await tabTo(page, page.getByLabel('The most it may cost'));
    await page.keyboard.type('a lot');
    await tabTo(page, page.getByRole('button', { name: 'Open it' }));
    await page.keyboard.press('Enter');
    // Both at once, each beside its field.
    await page.getByText('Give it a name.').waitFor();
    await page.getByText('Write the amount in figures').waitFor();
    expect(await axeFindings(page)).toEqual([]);

    await page.reload();
    const ceiling = page.getByLabel('The most it may cost');
    await ceiling.waitFor();
    expect(await ceiling.inputValue()).toBe('a lot');
    await tabTo(page, page.getByLabel('What it is called'));
    await page.keyboard.type('Back to the hamlet net');
    await tabTo(page, ceiling);
    await page.keyboard.press('Control+A');
    await page.keyboard.type('120,50');
    await tabTo(page, page.getByLabel('The most hours it may take'));
    await page.keyboard.type('40');
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { name: 'Back to the hamlet net' }).waitFor();
    expect(await project()).toMatchObject({
      status: 'PLANNED',
      targetStandard: 'WORKING',
      ceiling: { amount: '120.50' },
      ceilingHours: 40,
    });
  });

  it('is changed, and what another wrote meanwhile is laid side by side and settled', async () => {
    await page.getByText('Change what it aims at').click();
    const form = fold('Change what it aims at');
    await form.getByLabel('What it is called').fill('Mine');
    const { id, version } = await project();
    await elsewhere('changeProject', { id, version, title: 'Theirs', ceilingHours: 50 });
    const conflict = form.getByRole('alert');
    await conflict.getByText('Theirs').waitFor();
    expect(await conflict.innerText()).toContain('Mine');
    expect(await axeFindings(page)).toEqual([]);
    expect(await form.getByRole('button', { name: 'Write it down' }).isDisabled()).toBe(true);
    await conflict.getByLabel('Put mine in its place').check();
    await conflict.getByRole('button', { name: 'Let it stand so' }).click();
    await form.getByRole('button', { name: 'Write it down' }).click();
    await form.getByText('Written down.').waitFor();
    expect(await project()).toMatchObject({ title: 'Mine', ceilingHours: 50 });
    await form.locator('summary').click();
  });
});

describe('its tasks', () => {
  it('are added with their hours, steps and what can hurt; what is wrong stands beside its field', async () => {
    const form = fold('Add a task');
    await form.getByLabel('What is to be done').fill('Filter capacitors');
    await sayHours(form, ['2', 'soon', '4']);
    await form.getByRole('button', { name: 'Add it' }).click();
    await form.getByText('Write the hours in figures').waitFor();
    await sayHours(form, ['2', '1,5', '4']);
    await form.getByRole('button', { name: 'Add it' }).click();
    await form.getByText('The likely figure is below the optimistic one.').waitFor();
    await sayHours(form, ['1', '1,5', '4']);
    await form.getByLabel('When it counts as done').selectOption({ value: 'WEIGHTED_STEPS' });
    await form.getByRole('button', { name: 'Add a step' }).click();
    await form.getByLabel('Step 1', { exact: true }).fill('Draw where they sit');
    await form.getByText('What can hurt while doing it').first().click();
    await form.getByRole('checkbox', { name: 'stored charge' }).check();
    await form.getByRole('button', { name: 'Add it' }).click();
    await page.getByText('“Filter capacitors” is added.').waitFor();
    expect(await task('Filter capacitors')).toMatchObject({
      rule: 'WEIGHTED_STEPS',
      steps: [{ title: 'Draw where they sit', weight: 1 }],
      estimate: { likelyHours: 1.5 },
    });
    const added = line('Filter capacitors');
    await added.getByText('can be done now').waitFor();
    await added.getByText('What can hurt: stored charge').waitFor();
    expect(await added.locator('details li').first().isVisible()).toBe(true);
    expect(await form.getByLabel('What is to be done').inputValue()).toBe('');

    await form.getByLabel('What is to be done').fill('Bring it up');
    await sayHours(form, ['1', '2', '3']);
    await form.getByLabel('It waits for').selectOption({ label: 'Filter capacitors' });
    await form.getByRole('button', { name: 'Wait for it' }).click();
    await form.getByRole('button', { name: 'Add it' }).click();
    await line('Bring it up').getByText('waits for “Filter capacitors”').waitFor();
  });

  it('do not wait for one another: the circle is named, and what was chosen stays', async () => {
    const first = line('Filter capacitors');
    await first.getByText('Change', { exact: true }).click();
    await first.getByLabel('It waits for').selectOption({ label: 'Bring it up' });
    await first.getByRole('button', { name: 'Wait for it' }).click();
    await first.getByRole('button', { name: 'Keep this order' }).click();
    const said = await first.getByRole('alert').innerText();
    expect(said).toContain('These tasks would wait for one another');
    expect(said).toContain('“Bring it up” before “Filter capacitors”');
    expect((await task('Filter capacitors')).predecessors).toEqual([]);
    await first.getByRole('button', { name: 'Do not wait for “Bring it up”' }).click();
    expect(await first.getByRole('alert').count()).toBe(0);
  });

  it('are changed, side by side with what another wrote; another order alone is no conflict', async () => {
    const own = line('Bring it up');
    await own.getByText('Change', { exact: true }).click();
    await own.getByLabel('Remarks').fill('Mine: with the lamp limiter.');
    const { id, version } = await task('Bring it up');
    await elsewhere('setPredecessors', { id, version, predecessorIds: [] });
    await own.getByText('can be done now').waitFor();
    expect(await own.getByRole('alert').count()).toBe(0);
    await elsewhere('changeTask', { id, version: version + 1, note: 'Theirs: in five steps.' });
    const conflict = own.getByRole('alert');
    await conflict.getByText('Theirs: in five steps.').waitFor();
    expect(await axeFindings(page)).toEqual([]);
    expect(await sticksOut(page)).toBe(false);
    await conflict.getByLabel('Put mine in its place').check();
    await conflict.getByRole('button', { name: 'Let it stand so' }).click();
    await own.getByRole('button', { name: 'Write it down' }).click();
    await own.getByText('Written down.').waitFor();
    expect((await task('Bring it up')).note).toBe('Mine: with the lamp limiter.');
  });

  it('name the parts that they cannot be done without', async () => {
    const own = line('Bring it up');
    await own.getByLabel('Find a part').fill('6146');
    await own
      .getByRole('button', { name: /^It needs 6146/ })
      .first()
      .click();
    await own.getByLabel(/^How many of/).fill('two');
    await own.getByRole('button', { name: 'Keep these parts' }).click();
    await own.getByText('Write how many as a whole number.').waitFor();
    await own.getByLabel(/^How many of/).fill('2');
    await own.getByRole('button', { name: 'Keep these parts' }).click();
    await own.getByText(/needs 2 × 6146/).waitFor();
    const { partsNeeded } = await task('Bring it up');
    expect(partsNeeded).toMatchObject([
      { quantity: 2, partType: { designation: expect.stringContaining('6146') } },
    ]);
  });

  it('are dropped with a remark and opened after all', async () => {
    const own = line('Bring it up');
    await own.getByLabel('A remark, if there is one').fill('Somebody else does it.');
    await own.getByRole('button', { name: 'Drop it' }).click();
    await page.getByText('“Bring it up” is dropped.').waitFor();
    expect((await task('Bring it up')).status).toBe('DROPPED');
    await own.getByRole('button', { name: 'It is open after all' }).click();
    await page.getByText('“Bring it up” is open again.').waitFor();
    expect(await task('Bring it up')).toMatchObject({
      status: 'NOT_STARTED',
      note: 'Mine: with the lamp limiter.\nSomebody else does it.',
    });
  });

  it('come from a ready list too, looked at first, without those that are left out', async () => {
    await page.getByText('Put a list of tasks in').click();
    const form = fold('Put a list of tasks in');
    await form.getByLabel('Choose a list').selectOption({ index: 1 });
    const ticks = form.getByRole('checkbox');
    await ticks.first().waitFor();
    const count = await ticks.count();
    await ticks.last().uncheck();
    await form.getByRole('button', { name: `Put ${count - 1} tasks in` }).click();
    await page.getByText(`${count - 1} tasks are added.`).waitFor();
    expect((await project()).tasks.totalCount).toBe(count + 1);
  });

  it('are shown to the last when there are hundreds, and chosen among', async () => {
    const estimate = { optimisticHours: 1, likelyHours: 2, pessimisticHours: 3 };
    const tasks = Array.from({ length: 200 }, (_, index) => ({
      title: `Contact ${index + 1}`,
      estimate,
    }));
    await elsewhere('addTasks', { projectId: (await project()).id, tasks });
    await line('Contact 200').waitFor();
    const { totalCount } = (await project()).tasks;
    await page.getByText(`${totalCount} of ${totalCount} tasks`).waitFor();
    expect(await page.locator('ol > li').count()).toBe(totalCount);
    expect(await sticksOut(page)).toBe(false);
    await page.getByRole('radio', { name: 'done or dropped' }).check({ force: true });
    await page.getByText('None of the tasks is so.').waitFor();
  });
});

describe('the plan as a whole', () => {
  it('is kept as it is now', async () => {
    await page.getByText('Kept plans').click();
    const form = fold('Kept plans');
    await form.getByLabel('Why it is kept').fill('Before the first evening');
    await form.getByLabel('Hours a week').fill('5');
    await form.getByRole('button', { name: 'Keep the plan as it is now' }).click();
    await form.getByText('Before the first evening').waitFor();
  });

  it('gets its place in the row of those that wait for the same hands', async () => {
    await page.getByText('Which restoration comes first').click();
    const form = fold('Which restoration comes first');
    const own = form.getByRole('row', { name: '(this one)' });
    await own.waitFor();
    const last = Number(await own.locator('td').first().innerText());
    expect(last).toBeGreaterThan(1);
    await form.getByLabel('Its place in the row').selectOption('1');
    await form.getByRole('button', { name: 'Put it there' }).click();
    await expect.poll(() => own.locator('td').first().innerText()).toBe('1');
  });

  it('is given up only when that is said twice, with its words', async () => {
    const form = fold('Where it stands');
    await form.locator('summary').click();
    await form.getByRole('radio', { name: 'completed' }).check({ force: true });
    await form.getByRole('button', { name: 'Let it stand so' }).click();
    await form.getByText('Tasks are still open').waitFor();
    await form.getByRole('radio', { name: 'given up' }).check({ force: true });
    await form.getByLabel('What was decided, and why').fill('The transformer is burnt.');
    expect(await form.getByRole('button', { name: 'Let it stand so' }).isDisabled()).toBe(true);
    await form.getByRole('checkbox', { name: 'Yes, “Mine” is given up' }).check();
    await form.getByRole('button', { name: 'Let it stand so' }).click();
    await page.getByText('Closed: set it under way again').waitFor();
    expect(await project()).toMatchObject({
      status: 'ABANDONED',
      decision: 'The transformer is burnt.',
    });
    expect(open.complaints).toEqual([]);
  });
});
