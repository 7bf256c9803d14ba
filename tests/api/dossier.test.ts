import { createHash } from 'node:crypto';
import { writeFile } from 'node:fs/promises';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { demoCollection } from '../support/demoCollection.js';
import { httpApi, type HttpApi } from '../support/httpApi.js';
import { cameraPicture } from '../support/picture.js';
import { readPdf } from '../support/readPdf.js';

const serialNumber = 'QX-88431';
const marking = 'LOT-5570-K';
/** What somebody wrote down freely, with all in it that can be withheld. */
const remark = `Scratch by the dial. Dagny Thornvale had it mended for 137.50 GBP in Quarantine corner; plate ${serialNumber}.`;
const everything = 'PEOPLE,PRICES,PLACES,SERIAL_NUMBERS,PHOTOGRAPHS';

describe.each(['sqlite', 'postgres'] as const)('the dossier of an item on %s', (engine) => {
  let api: HttpApi;
  let base: string;
  let rig: string;

  const ask = async (query: string, variables = {}): Promise<any> => {
    const answer = (await (await api.post({ query, variables })).json()) as any;
    expect(answer.errors).toBeUndefined();
    return answer.data;
  };
  const get = (query: string, ending = 'html'): Promise<Response> =>
    fetch(`${base}/download/dossier.${ending}?item=R-009&${query}`);
  const written = async (query: string, ending = 'html'): Promise<Buffer> => {
    const answer = await get(query, ending);
    expect(answer.status).toBe(200);
    return Buffer.from(await answer.arrayBuffer());
  };

  beforeAll(async () => {
    api = await httpApi(engine, demoCollection(engine));
    base = api.url.replace('/graphql', '');
    const { rig: found } = await ask('{ rig(inventoryNumber: "R-009") { id version } }');
    rig = found.id;
    const { changeRig } = await ask(
      `mutation ($input: ChangeRigInput!) { changeRig(input: $input) { problems { message } } }`,
      { input: { id: rig, version: found.version, serialNumber } },
    );
    expect(changeRig.problems).toEqual([]);
    await ask(
      `mutation ($input: RecordFindingInput!) { recordFinding(input: $input) { problems { message } } }`,
      { input: { itemId: rig, zone: 'TUBES', severity: 'MINOR', note: remark } },
    );
    const { fitComponent } = await ask(
      `mutation ($input: FitComponentInput!) { fitComponent(input: $input) { problems { message } } }`,
      { input: { itemId: rig, designator: 'X9', component: { marking } } },
    );
    expect(fitComponent.problems).toEqual([]);
    const sent = await fetch(
      `${base}/attachments?to=${rig}&role=OVERALL&caption=Seen+by+Dagny+Thornvale&name=thornvale.jpg`,
      {
        method: 'POST',
        headers: { 'apollo-require-preflight': 'true' },
        body: (await cameraPicture({ width: 400, height: 300 })) as never,
      },
    );
    expect(sent.status).toBe(201);
  }, 120_000);
  afterAll(() => api.close());

  it('answers the nine categories of Object ID, or says that nobody recorded them', async () => {
    const { text } = await readPdf(await written('reader=heir', 'pdf'));
    for (const category of [
      'Type of object',
      'Materials and techniques',
      'Measurements',
      'Inscriptions and markings',
      'Distinguishing features',
      'Title',
      'Subject',
      'Date or period',
      'Maker',
    ]) {
      expect(text).toContain(category);
    }
    expect(text).toContain(`Serial number ${serialNumber}`);
    expect(text).toContain('Ombershaw');
  });

  it('tells the heir all, gaps of the chain as gaps, and what is original by position', async () => {
    const page = (await written('reader=heir')).toString();
    for (const word of ['Dagny Thornvale', serialNumber, marking, 'data:image/jpeg', '137.50']) {
      expect(page).toContain(word);
    }
    expect(page).toContain('Gap: not accounted for');
    expect(page).toContain('Original by position: ');
    expect(page).toContain('Contradiction: ');
    const digest = /[0-9a-f]{64}/.exec(page.slice(page.indexOf('papers by digest')))?.[0];
    expect((await fetch(`${base}/attachments/${digest ?? ''}`)).status).toBe(200);
  });

  it('tells what was found, and apart from it what was said, of the whole lot too', async () => {
    const told = (await written('reader=heir')).toString();
    expect(told).toContain('We had it on the air at the school in the autumn of 1957');
    expect(told).toContain('Statements are claims until evidence bears on them.');
    expect(told).toContain(remark);
    const ofLot = await fetch(`${base}/download/dossier.html?item=R-004&reader=buyer`);
    const page = await ofLot.text();
    expect(page).toContain('Both from one operator, working when put away.');
    expect(page).not.toContain('Pochard and Tolhurst');
  });

  it('leaves nothing of what is withheld anywhere in the bytes', async () => {
    const page = await written(`withhold=${everything}`);
    const pdf = await written(`withhold=${everything}`, 'pdf');
    const read = await readPdf(pdf);
    const people = await ask('{ parties(first: 100) { nodes { name } } }');
    const places = await ask('{ places(first: 100) { nodes { name } } }');
    const names: string[] = [...people.parties.nodes, ...places.places.nodes].map(
      ({ name }: { name: string }) => name,
    );
    expect(names.length).toBeGreaterThan(10);
    const maker = 'Ombershaw';
    const secrets = names.filter((name) => !name.startsWith(maker));
    for (const secret of [...secrets, 'Dagny', 'thornvale', serialNumber, marking, '137.50']) {
      const whole = new RegExp(`(?<![\\p{L}\\p{N}])${secret}(?![\\p{L}\\p{N}])`, 'u');
      expect(page.toString()).not.toMatch(whole);
      expect(read.text).not.toMatch(whole);
      expect(read.title).not.toMatch(whole);
    }
    expect(page.toString()).not.toContain('data:image');
    expect(pdf.toString('latin1')).not.toContain('/Subtype /Image');
    for (const text of [page.toString(), read.text]) {
      expect(text).toContain('Withheld by the owner: people, photographs, places, prices');
      expect(text).toContain('Scratch by the dial.');
    }
  });

  it('leaves out for each reader what is usual', async () => {
    const insurer = (await written('reader=insurer')).toString();
    expect(insurer).toContain(serialNumber);
    expect(insurer).not.toContain('Thornvale');
    const buyer = (await written('reader=buyer')).toString();
    expect(buyer).toContain('Withheld by the owner: people, places, prices.');
    expect(buyer).not.toContain('137.50');
  });

  it('is the same bytes for the same records, but for the day that it states', async () => {
    for (const ending of ['html', 'pdf']) {
      const [one, same] = [
        await written('statedOn=2031-03-07', ending),
        await written('statedOn=2031-03-07', ending),
      ];
      expect(one.equals(same)).toBe(true);
    }
    const page = (await written('statedOn=2031-03-07')).toString();
    const later = (await written('statedOn=2032-11-28')).toString();
    expect(later).not.toBe(page);
    expect(later.replaceAll('2032-11-28', '2031-03-07')).toBe(page);
    const first = await readPdf(await written('statedOn=2031-03-07', 'pdf'));
    const second = await readPdf(await written('statedOn=2032-11-28', 'pdf'));
    expect(second.text.replaceAll('2032-11-28', '2031-03-07')).toBe(first.text);
  });

  it('is on A4 or on Letter, with fonts, title and structure in it', async () => {
    const a4 = await written('paper=a4&reader=heir', 'pdf');
    if (process.env['DOSSIER_OUT']) await writeFile(`${process.env['DOSSIER_OUT']}.pdf`, a4);
    const { size, structure, title, pageCount } = await readPdf(a4);
    // 210 × 297 mm (ISO 216) and 8.5 × 11 inches, at 72 points an inch.
    expect(size[0]).toBeCloseTo((210 / 25.4) * 72, 0);
    expect(size[1]).toBeCloseTo((297 / 25.4) * 72, 0);
    expect((await readPdf(await written('paper=letter', 'pdf'))).size).toEqual([612, 792]);
    expect(structure).toEqual(expect.arrayContaining(['Document', 'H1', 'H2', 'Table', 'TH', 'P']));
    expect(title).toContain('R-009');
    expect(pageCount).toBeGreaterThan(1);
    expect(a4.toString('latin1')).toContain('/FontFile2');
  });

  it('shows the owner the very bytes that the reader will get', async () => {
    const { rig: found } = await ask(
      `query ($format: DossierFormat!) { rig(inventoryNumber: "R-009") { dossier(reader: INSURER, withhold: [PEOPLE, PRICES], format: $format) {
        fileName mediaType byteCount digest contentBase64 path withheld } } }`,
      { format: 'PDF' },
    );
    const { dossier } = found;
    const preview = Buffer.from(dossier.contentBase64, 'base64');
    const answer = await fetch(`${base}${dossier.path}`);
    expect(Buffer.from(await answer.arrayBuffer()).equals(preview)).toBe(true);
    expect(answer.headers.get('content-disposition')).toBe(
      'attachment; filename="dossier-R-009.pdf"',
    );
    expect(dossier).toMatchObject({
      fileName: 'dossier-R-009.pdf',
      mediaType: 'application/pdf',
      byteCount: preview.length,
      digest: createHash('sha256').update(preview).digest('hex'),
      withheld: ['PEOPLE', 'PRICES'],
    });
  });

  it('is shown in a browser with its own pictures and looks, and nothing else', async () => {
    const answer = await get('show=1');
    expect(answer.headers.get('content-disposition')).toBe('inline; filename="dossier-R-009.html"');
    expect(answer.headers.get('content-security-policy')).toContain('img-src data:');
    expect(answer.headers.get('content-security-policy')).toContain("default-src 'none'");
  });

  it.each([
    ['reader=thief', 'reader is one of buyer, insurer, heir'],
    ['withhold=people,gold', 'withhold is one of'],
    ['paper=a4&paper=letter', 'Give paper once.'],
    ['statedOn=May', 'YYYY-MM-DD'],
  ])('says what to mend in %s', async (query, sentence) => {
    const answer = await get(query);
    expect(answer.status).toBe(400);
    expect(await answer.text()).toContain(sentence);
  });

  it('makes the report of a theft in one action: the loss, the sheet and the photographs', async () => {
    const { reportLoss } = await ask(
      `mutation ($input: ReportLossInput!) { reportLoss(input: $input) {
        loss { report(format: HTML) { contentBase64 path } } problems { message } } }`,
      {
        input: {
          itemId: rig,
          kind: 'STOLEN',
          missedOn: '2026-05-30',
          circumstances: 'Taken from the van.',
          reportedTo: 'Harbour police',
          reportNumber: 'HP-77',
        },
      },
    );
    expect(reportLoss.problems).toEqual([]);
    const page = Buffer.from(reportLoss.loss.report.contentBase64, 'base64').toString();
    for (const word of ['Taken from the van.', 'HP-77', serialNumber, 'Measurements', remark]) {
      expect(page).toContain(word);
    }
    expect(page).toContain('data:image/jpeg');
    expect(page).not.toContain('Work done');
    const pdf = await fetch(
      `${base}${(reportLoss.loss.report.path as string).replace('.html', '.pdf')}`,
    );
    expect((await readPdf(Buffer.from(await pdf.arrayBuffer()))).text).toContain('HP-77');
  });
});
