import { argumentProblem } from '../../api/kit/argumentProblem.js';
import type { ApiContext } from '../../api/kit/apiContext.js';
import type { Row } from '../../api/kit/typeReads.js';
import { outputStanding, type OutputStanding } from '../../domain/capability/outputStanding.js';
import { dayInZone } from '../../domain/dates/dayInZone.js';
import { readiness } from '../../domain/readiness/readiness.js';
import type { ReadinessFacts } from '../../domain/readiness/readinessFacts.js';
import { largestAtOnce } from '../../domain/shack/largestAtOnce.js';
import { readyShack, shackModel } from '../../domain/shack/shackModel.js';
import { bandNamed } from '../reference/amateurBands.js';
import { shownBasis } from '../standing/standingFacts.js';
import { eveningOf } from './eveningOf.js';
import type { OnAirArgs } from './onAir.type.js';
import { readCapabilities, readOutputs } from './onAirFacts.reads.js';
import { readShack } from './readShack.js';
import { servedRow } from './shackAnswer.js';

interface Settings {
  region: 1 | 2 | 3 | null;
  licenceClass: string | null;
  zone: string;
}

/** Which rigs can be on the air on a band, in a mode, with so much power, and with what. */
export async function onAir(context: ApiContext, args: OnAirArgs): Promise<Row> {
  const { reader } = context.database;
  const band = args.band.replaceAll(/\s/g, '').toLowerCase();
  const mode = args.mode.trim().toUpperCase();
  if (!/^\d{1,4}(\.\d{1,2})?(m|cm|mm)$/.test(band)) {
    throw argumentProblem('Write the band as its wavelength: 40m, 70cm.');
  }
  const least = args.atLeastWatts ?? 0;
  if (!(least >= 0)) throw argumentProblem('"atLeastWatts" is from 0 up.');
  const [kept] = await reader.rows<Settings>(
    `SELECT itu_region AS "region", licence_class AS "licenceClass", zone AS "zone"
     FROM collection LIMIT 1`,
  );
  const settings = kept ?? { region: null, licenceClass: null, zone: 'UTC' };
  const atMs = momentOf(args, context.nowMs, settings.zone);
  const factsMs = Math.min(atMs, context.nowMs);
  const { facts } = await readShack(reader, factsMs);
  const rigIds = [...facts.keys()];
  const capabilities = await readCapabilities(reader, rigIds);
  const outputs = await readOutputs(reader, rigIds, new Date(factsMs).toISOString());
  const able = new Map<string, OutputStanding>();
  const leftOut: Row[] = [];
  for (const [rigId, own] of facts) {
    if (own.rig.isRetired) continue;
    const output = outputStanding(
      capabilities.get(rigId) ?? [],
      outputs.get(rigId) ?? [],
      band,
      mode,
    );
    if (output === null) continue;
    const { level, blockers } = readiness(own, atMs, settings.zone);
    const short = whyShort(output, least, `${band} ${mode}`, settings.zone);
    const reasons = [...short, ...blockers.map(({ message }) => message)];
    if (reasons.length === 0) able.set(rigId, output);
    else leftOut.push({ id: rigId, rigId, level, reasons });
  }
  const ready = [...able.keys()].map((rigId) => facts.get(rigId) as ReadinessFacts);
  const allocation = settings.region === null ? undefined : bandNamed(band, settings.region);
  return {
    id: 'on air',
    at: new Date(atMs).toISOString(),
    rigs: onAirRows(ready, able, atMs),
    leftOut,
    allocation: allocation ? { ...allocation, region: `REGION_${allocation.region}` } : null,
    licenceNotice: licenceNotice(settings),
    basis: shownBasis(
      {
        method:
          'Rigs whose model or a reading has the band and mode; the latest reading of output power there decides the power, else the model. Readiness at that moment, then the most of them at once.',
        counted: [
          { what: 'rigs in the collection', count: facts.size },
          { what: 'rigs that work there', count: able.size + leftOut.length },
        ],
      },
      atMs,
      atMs > context.nowMs ? ['What is recorded now still holds then; checks may lapse.'] : [],
    ),
  };
}

function momentOf({ at, tonight }: OnAirArgs, nowMs: number, zone: string): number {
  if (at && tonight)
    throw argumentProblem('Ask for "tonight" or for a moment with "at", not both.');
  if (at) return new Date(at).getTime();
  return tonight ? eveningOf(nowMs, zone) : nowMs;
}

function whyShort(
  { watts, isDead, restsOn, takenAtMs }: OutputStanding,
  least: number,
  there: string,
  zone: string,
) {
  const measured = takenAtMs === null ? '' : ` on ${dayInZone(takenAtMs, zone)}`;
  if (isDead) return [`No output on ${there}: a reading${measured} found none.`];
  if (least === 0 || (watts !== null && watts >= least)) return [];
  if (watts === null) return [`No output power is recorded on ${there}.`];
  const ground = restsOn === 'READING' ? `a reading${measured}` : 'its model';
  return [`${watts} W on ${there} by ${ground}; ${least} W are asked for.`];
}

/** Those at once with what serves each; the others as each would be served alone. */
function onAirRows(
  ready: readonly ReadinessFacts[],
  outputs: ReadonlyMap<string, OutputStanding>,
  atMs: number,
): Row[] {
  const shack = readyShack(shackModel(ready, atMs));
  const { served } = largestAtOnce(shack);
  return ready.map((one): Row => {
    const { itemId } = one.rig;
    const alone = shack.rigs.find(({ rigId }) => rigId === itemId)?.needs ?? [];
    const roles =
      served.get(itemId) ??
      alone.map(({ roleCode, accessoryIds }) => ({
        roleCode,
        accessoryId: accessoryIds[0] as string,
      }));
    const { watts, restsOn, readingId } = outputs.get(itemId) as OutputStanding;
    const isAtOnce = served.has(itemId);
    return { ...servedRow(one, roles, atMs), watts, restsOn, readingId, isAtOnce };
  });
}

const licenceNotice = ({ licenceClass }: Settings): string =>
  `The operator's licence governs${licenceClass === null ? '' : ` (here: ${licenceClass})`}: band, mode and power must be within it and within national rules. An allocation or an answer here is no permission.`;
