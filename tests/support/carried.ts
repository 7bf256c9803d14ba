import { apiSchema, type TestApi } from './testApi.js';

/**
 * Carries out one mutation with one input, and fails the test when it is refused.
 * @param show selection set of what is wanted back, below `field`.
 */
export async function carried(
  api: TestApi,
  mutation: string,
  input: object,
  field: string,
  show = '{ id }',
): Promise<any> {
  const mutations = (await apiSchema()).getMutationType()?.getFields() ?? {};
  const type = String(mutations[mutation]?.args[0]?.type);
  const data = await api.ask(
    `mutation ($input: ${type}) {
      ${mutation}(input: $input) { ${field} ${show} problems { code message path } }
    }`,
    { input },
  );
  const { problems, ...rest } = data[mutation] as { problems: { message: string }[] } & Record<
    string,
    unknown
  >;
  if (problems.length > 0) throw new Error(`${mutation}: ${JSON.stringify(problems)}`);
  return rest[field];
}
