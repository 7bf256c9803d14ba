import { Option, type Command } from 'commander';
import { globalId } from '../api/kit/globalId.js';
import { makeReadToken } from '../features/readTokens/makeReadToken.js';
import { readTokenColumns } from '../features/readTokens/readToken.reads.js';
import { takeBackReadToken } from '../features/readTokens/takeBackReadToken.js';
import { TokenAllowance } from '../features/readTokens/tokenAllowance.js';
import { TokenScope } from '../features/readTokens/tokenScope.js';
import { actOfCommand } from './actOfCommand.js';
import { CommandFailure } from './commandFailure.js';
import type { Surroundings } from './surroundings.js';
import { withExistingCollection } from './withCollection.js';

interface MakeOptions {
  name: string;
  opens: string[];
  shows?: string[];
  lastDay?: string;
}

interface KeptToken {
  id: string;
  version: number;
  name: string;
  scopes: string;
  shows: string;
  lastDay: string | null;
  madeAt: string;
  takenBackAt: string | null;
  lastUsedOn: string | null;
}

const lowered = (words: object): string[] => Object.keys(words).map((word) => word.toLowerCase());
const raised = <Word extends string>(words: readonly string[]): Word[] =>
  words.map((word) => word.toUpperCase() as Word);

/** `token make`, `token list`, `token take-back`: what opens ways out to other programs. */
export function addToken(program: Command, around: Surroundings): Command {
  const token = program.command('token').description('Tokens that open ways out to programs.');
  token
    .command('make')
    .description('Make a token; it is printed once and kept nowhere.')
    .requiredOption('--name <words>', 'for whom or what')
    .addOption(
      new Option('--opens <ways...>', 'the ways out that it opens')
        .choices(lowered(TokenScope))
        .makeOptionMandatory(),
    )
    .addOption(
      new Option('--shows <parts...>', 'what may go out with the rest').choices(
        lowered(TokenAllowance),
      ),
    )
    .option('--last-day <day>', 'until then, YYYY-MM-DD; until taken back if left out')
    .action((options: MakeOptions) => makeToken(around, options));
  token
    .command('list')
    .description('List the tokens, those taken back too.')
    .action(() => listTokens(around));
  token
    .command('take-back')
    .description('Take a token back: from then on it opens nothing.')
    .argument('<name>', 'its name, or its id')
    .action((name: string) => takeTokenBack(around, name));
  return program;
}

export async function makeToken(around: Surroundings, options: MakeOptions): Promise<void> {
  const { name, opens, shows = [], lastDay = null } = options;
  if (lastDay !== null && !isDay(lastDay)) {
    throw new CommandFailure('--last-day is a day that exists, YYYY-MM-DD.');
  }
  const input = {
    name,
    scopes: raised<TokenScope>(opens),
    shows: raised<TokenAllowance>(shows),
    lastDay,
  };
  const { text } = await withExistingCollection(around, (database) =>
    database.write(actOfCommand(around, 'makeReadToken'), (work) => makeReadToken(work, input)),
  );
  around.say('This is the token. It is not kept and cannot be shown again:');
  around.print(text);
}

export const listTokens = (around: Surroundings): Promise<void> =>
  withExistingCollection(around, async ({ reader }) => {
    const tokens = await reader.rows<KeptToken>(
      `SELECT ${readTokenColumns} FROM read_token ORDER BY recorded_at DESC, id DESC`,
    );
    if (tokens.length === 0) around.say('There are no tokens.');
    for (const token of tokens) around.print(lineOf(token));
  });

export const takeTokenBack = (around: Surroundings, called: string): Promise<void> =>
  withExistingCollection(around, async (database) => {
    const tokens = await database.reader.rows<KeptToken>(
      `SELECT ${readTokenColumns} FROM read_token WHERE taken_back_at IS NULL`,
    );
    const [token, second] = tokens.filter(
      ({ id, name }) => name === called || globalId('ReadToken', id) === called,
    );
    if (!token) throw new CommandFailure(`No token called ${called} opens anything.`);
    if (second) throw new CommandFailure(`Two tokens are called ${called}: name one by its id.`);
    const input = { tokenId: globalId('ReadToken', token.id), version: token.version };
    await database.write(actOfCommand(around, 'takeBackReadToken'), (work) =>
      takeBackReadToken(work, input),
    );
    around.print(`Took back the token “${token.name}”: it opens nothing any more.`);
  });

function lineOf({ id, name, scopes, shows, ...token }: KeptToken): string {
  const words = (kept: string): string => (JSON.parse(kept) as string[]).join('+').toLowerCase();
  const { lastDay, madeAt, takenBackAt, lastUsedOn } = token;
  return [
    globalId('ReadToken', id),
    name,
    `opens ${words(scopes)}`,
    `shows ${words(shows) || 'nothing more'}`,
    `made ${madeAt.slice(0, 10)}`,
    lastUsedOn === null ? 'never used' : `last used ${lastUsedOn}`,
    ...(lastDay === null ? [] : [`until ${lastDay}`]),
    ...(takenBackAt === null ? [] : [`taken back ${takenBackAt.slice(0, 10)}`]),
  ].join('  ');
}

const isDay = (text: string): boolean =>
  /^\d{4}-\d\d-\d\d$/.test(text) && new Date(`${text}T00:00:00Z`).toJSON()?.slice(0, 10) === text;
