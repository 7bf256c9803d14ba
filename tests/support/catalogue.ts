import type { TestApi } from './testApi.js';

/** Carries out one mutation with a single `input`; fails the test when it is refused. */
export async function done(
  api: TestApi,
  mutation: string,
  input: Record<string, unknown>,
  answer: string,
): Promise<any> {
  const { value, problems } = await attempt(api, mutation, input, answer);
  if (problems.length > 0) throw new Error(`${mutation} was refused: ${JSON.stringify(problems)}`);
  return value;
}

/** Carries out one mutation, and gives its problems when it is refused. */
export async function attempt(
  api: TestApi,
  mutation: string,
  input: Record<string, unknown>,
  answer: string,
): Promise<{ value: any; problems: { code: string; message: string; path: string[] }[] }> {
  const type = `${mutation.charAt(0).toUpperCase()}${mutation.slice(1)}Input`;
  const data = await api.ask(
    `mutation ($input: ${type}!) {
      ${mutation}(input: $input) { ${answer} problems { code message path } }
    }`,
    { input },
  );
  const { problems, ...thing } = data[mutation];
  return { value: Object.values(thing)[0], problems };
}
