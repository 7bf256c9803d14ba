import type { GraphQLResolveInfo } from 'graphql';
import { Field } from 'type-graphql';
import type { ApiContext } from '../../api/kit/apiContext.js';
import { carryOut } from '../../api/kit/carryOut.js';
import { loadRelations } from '../../api/kit/loadRelations.js';
import { payloadOf } from '../../api/kit/payloadOf.js';
import { requestedNames } from '../../api/kit/requestedNames.js';
import type { Row } from '../../api/kit/typeReads.js';
import type { UnitOfWork } from '../../db/unitOfWork.js';
import { hazardColumns } from '../hazards/hazard.reads.js';
import { Hazard } from '../hazards/hazard.type.js';
import { sessionOverlaps } from './sessionOverlaps.reads.js';
import { SessionOverlap, WorkSession } from './workSession.type.js';

/** The payload of what begins, records or ends a session: with what the person should know of. */
export function sessionPayloadOf(mutation: string) {
  const Payload = payloadOf(mutation, 'session', () => WorkSession, 'The session as it is now.');
  Field(() => [Hazard], {
    description: 'What is known to hurt in the item and is not cleared. Read this first.',
  })(Payload.prototype, 'hazards');
  Field(() => [SessionOverlap], {
    description: 'Other sessions of the same person that claim some of the time; it counts once.',
  })(Payload.prototype, 'overlaps');
  return Payload;
}

/** `carryOut` for those payloads. */
export async function carryOutSession(
  context: ApiContext,
  info: GraphQLResolveInfo,
  verb: (work: UnitOfWork) => Promise<string>,
): Promise<object> {
  const asSession = { field: 'session', typeName: 'WorkSession' };
  const payload = await carryOut(context, info, asSession, verb);
  const session = payload['session'] as Row | null;
  const asked = requestedNames(info);
  const isAskedFor = (name: string) => session !== null && asked.has(name);
  const hazards = isAskedFor('hazards') ? await openHazards(context, session as Row) : [];
  await loadRelations(context, info, 'Hazard', hazards, ['hazards']);
  const overlaps = isAskedFor('overlaps')
    ? (await sessionOverlaps(context, [session as Row], {}, new Set())).children
    : [];
  await loadRelations(context, info, 'SessionOverlap', overlaps, ['overlaps']);
  return { ...payload, hazards, overlaps };
}

const openHazards = ({ database: { reader } }: ApiContext, session: Row): Promise<Row[]> =>
  reader.rows<Row>(
    `SELECT ${hazardColumns} FROM hazard
     WHERE hazard.item_id = ? AND hazard.cleared_at IS NULL
     ORDER BY hazard.raised_at DESC, hazard.id`,
    [session['itemId'] as string],
  );
