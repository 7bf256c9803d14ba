import { tableReads } from '../../api/kit/tableReads.js';

export const readTokenColumns = `read_token.id AS "id", read_token.version AS "version",
  read_token.name AS "name", read_token.scopes AS "scopes", read_token.shows AS "shows",
  read_token.last_day AS "lastDay", read_token.recorded_at AS "madeAt",
  read_token.taken_back_at AS "takenBackAt",
  (SELECT last_used_on FROM read_token_proof WHERE read_token_proof.id = read_token.id)
    AS "lastUsedOn"`;

export const readTokenReads = tableReads('ReadToken', 'read_token', readTokenColumns);
