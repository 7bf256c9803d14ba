import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openBrowser } from '../support/browser.js';
import { openPage, type OpenPage } from '../support/openPage.js';
import { servedDemo, type ServedDemo } from '../support/servedDemo.js';

const number = 'R-950';
let demo: ServedDemo;
let browser: Browser;
let open: OpenPage;
let tubeId: string;
let taskId: string;

beforeAll(async () => {
  [demo, browser] = await Promise.all([servedDemo(), openBrowser()]);
  open = await openPage(browser, demo.url);
}, 120_000);
afterAll(async () => {
  await browser.close();
  await demo.close();
});

/** What no page does yet is done as another program would do it. */
async function done(verb: string, thing: string, input: object): Promise<any> {
  const type = `${verb[0]?.toUpperCase() ?? ''}${verb.slice(1)}Input`;
  const answer = await demo.ask(
    `mutation ($input: ${type}!) { ${verb}(input: $input) { ${thing} { id } problems { message path } } }`,
    { input },
  );
  expect(answer[verb].problems).toEqual([]);
  return answer[verb][thing];
}
const item = async (fields: string): Promise<any> =>
  (await demo.ask(`{ item(inventoryNumber: "${number}") { id version ${fields} } }`)).item;
const shows = async (text: string): Promise<void> => {
  await open.page.getByText(text).first().waitFor();
};

// One set from the fair to the air, in the order of the work: each step stands on the one before.
describe('the whole job', () => {
  it('buy: a receiver of a lot comes into the collection, with what the seller said', async () => {
    tubeId = (
      await done('createPartType', 'partType', { kind: 'TUBE', designation: '12AV6', ratings: [] })
    ).id;
    await done('createModel', 'model', {
      itemKind: 'RIG',
      maker: 'Ombershaw',
      designation: 'Wicket 3',
      fitOut: [{ designator: 'V1', zone: 'TUBES', partTypeId: tubeId }],
      capabilities: [{ band: '40m', mode: 'CW' }],
    });
    const { page } = open;
    await page.goto('/intake');
    await page.getByRole('link', { name: 'Bought a lot' }).click();
    await page.getByLabel('The day').fill('2026-05-02');
    await page.getByLabel('Fair, auction or house').fill('Spring fair');
    await page.getByLabel('From whom').fill('Isolde Ashgrove');
    await page.getByLabel('Price of the whole lot').fill('45');
    await page.getByLabel('Currency').fill('GBP');
    await page.getByLabel('Number, if not the next free one').fill(number);
    await page.getByLabel('What you call it').fill('Wicket');
    await page.getByLabel('Model').fill('Ombershaw Wicket 3');
    await page.getByRole('button', { name: 'Add a statement' }).click();
    await page.getByLabel('What was said').fill('Played when it was put away');
    await page.getByLabel('Of what').selectOption({ label: `Thing 1 ${number} Wicket` });
    await page.getByRole('button', { name: 'Write the lot down' }).click();
    await page
      .locator('#shares')
      .getByRole('link', { name: `${number} Wicket` })
      .waitFor();
    await open.page.goto(`/sets/${number}`);
    await shows('Came in from Isolde Ashgrove');
    await shows('£45.00');
  });

  it('take in: the tube is missing, a leaf is rusty, and there is a charge to reckon with', async () => {
    const { page } = open;
    await page.goto(`/intake/${number}`);
    await page.getByRole('tab', { name: 'whole' }).click();
    await page.getByRole('button', { name: 'Add a finding' }).click();
    await page.getByLabel('What you see').fill('Rust on the lid');
    await page.getByRole('tab', { name: 'tubes' }).click();
    await page.getByRole('radio', { name: 'missing' }).first().check({ force: true });
    await page.getByRole('tab', { name: 'Hazards' }).click();
    await page.getByRole('checkbox', { name: 'stored charge' }).check();
    await page.getByRole('tab', { name: 'Send' }).click();
    await page.getByRole('button', { name: 'Record the inspection' }).click();
    await page.getByRole('heading', { name: 'The inspection is recorded' }).waitFor();
    await page.goto(`/sets/${number}`);
    await shows('Do not connect');
    expect((await item('completeness { missing }')).completeness.missing).toEqual(['V1']);
  });

  it('decide and plan: a project with a ceiling, and what is to be done', async () => {
    const { page } = open;
    await page.goto(`/sets/${number}`);
    await page.getByRole('link', { name: 'Plan the work' }).click();
    await page.getByLabel('What it is called').fill('Back to listening');
    await page.getByLabel('The most it may cost').fill('80');
    await page.getByLabel('Currency').fill('gbp');
    await page.getByLabel('What was decided, and why').fill('A dry set, and complete but a tube.');
    await page.getByRole('button', { name: 'Open it' }).click();
    await page.getByLabel('What is to be done').fill('New tube in V1');
    await page.getByLabel('Hours if all goes well').fill('0.5');
    await page.getByLabel('Hours, most likely').fill('1');
    await page.getByLabel('Hours if little goes well').fill('2');
    await page.getByLabel('What sort of work').selectOption({ label: 'tubes' });
    await page.getByRole('button', { name: 'Add it' }).click();
    await shows('“New tube in V1” is added.');
    const { projects } = await item('projects { tasks(first: 5) { nodes { id } } }');
    taskId = projects[0].tasks.nodes[0].id;
    await page.goto(`/sets/${number}`);
    await shows('Back to listening');
    await shows('New tube in V1');
    await shows('ceiling £80.00');
  });

  it('work: the timer shows what can hurt, the tube is fitted, the task is done', async () => {
    const { page } = open;
    await page.goto(`/bench/${number}?task=${taskId}`);
    await page.getByRole('button', { name: 'Start the timer on “New tube in V1”' }).click();
    await page.getByRole('alert').filter({ hasText: 'Before you put a hand in' }).waitFor();
    await page.getByRole('tab', { name: 'Part' }).click();
    await page.getByLabel('Position').fill('V1');
    await page.getByRole('radio', { name: 'new to the records' }).check();
    await page.getByRole('button', { name: 'It is fitted' }).click();
    await shows('Written down: fitted in V1.');
    const own = page.getByRole('region', { name: 'Tamsin Oakhollow' });
    await own.getByRole('button', { name: 'Stop the timer' }).click();
    await page.getByRole('button', { name: 'Task done' }).click();
    await shows('“New tube in V1” is done.');
    const { completion, sessions } = await item(
      'completion { share } sessions(first: 5) { totalCount }',
    );
    expect([completion.share, sessions.totalCount]).toEqual([1, 1]);
  });

  it('prove: the tube in its circuit, the hazard by its check, the set by its final checks', async () => {
    const { page } = open;
    await page.goto(`/bench/${number}`);
    await page.getByRole('tab', { name: 'Reading' }).click();
    await page.getByLabel('Measured on').selectOption({ label: 'V1 12AV6' });
    await page.getByLabel('Quantity').fill('plate voltage');
    await page.getByLabel('Value').fill('98');
    await page.getByLabel('Unit').fill('V');
    await page.getByRole('button', { name: 'Write it down' }).click();
    await shows('Written down: plate voltage 98 V');
    const hazard = page.locator('details').filter({ hasText: 'stored charge' });
    await hazard.getByRole('button', { name: 'Clear it by a check' }).click();
    await hazard
      .getByLabel('What was done, and what it showed')
      .fill('Discharged through the resistor; 0 V read');
    await hazard.getByRole('button', { name: 'Cleared by this check' }).click();
    await shows('“stored charge” is cleared by the check that you wrote down.');
    await page.getByRole('button', { name: 'Settle it' }).click();
    await page.getByLabel('How it was put right').fill('Brushed and oiled');
    await page.getByRole('button', { name: 'Settled so' }).click();
    await shows('The finding is settled: resolved.');
    await page.getByRole('button', { name: 'Write a final check down' }).click();
    await page.getByLabel('What was checked').fill('Listening through all bands');
    await page.getByRole('radio', { name: 'passed', exact: true }).check();
    await page.getByRole('button', { name: 'Write the check down' }).click();
    await shows('“Listening through all bands” is written down.');
    await page.goto(`/sets/${number}`);
    await shows('On-air ready');
  });

  it('use: it stands among those that may go on the air tonight', async () => {
    await open.page.goto('/');
    await open.page.getByRole('link', { name: `${number} Wicket` }).waitFor();
  });

  it('account for it: the dossier tells all of it', async () => {
    const answer = await open.page.request.get(
      `/download/dossier.html?item=${number}&reader=heir&statedOn=2026-11-28`,
    );
    expect(answer.status()).toBe(200);
    const told = await answer.text();
    for (const words of [
      'Isolde Ashgrove',
      'Played when it was put away',
      'Rust on the lid',
      'Discharged through the resistor; 0 V read',
      'New tube in V1',
      '12AV6',
    ]) {
      expect(told).toContain(words);
    }
    expect(open.complaints).toEqual([]);
  });
});
