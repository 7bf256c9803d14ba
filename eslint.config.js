import graphql from '@graphql-eslint/eslint-plugin';
import prettier from 'eslint-config-prettier';
import { createNodeResolver, importX } from 'eslint-plugin-import-x';
import { defineConfig, globalIgnores } from 'eslint/config';
import tseslint from 'typescript-eslint';

const SOURCE = ['**/*.ts', '**/*.tsx', '**/*.mjs'];
const SCHEMA = 'schema/schema.graphql';
const OPERATIONS = 'schema/operations/**/*.graphql';

/**
 * The house's arrows run one way: commands → api → features → db, features → domain, web → schema.
 * Each zone says which folders the files of `target` may not import from. A resolver needs paging,
 * payloads, problems and scalars, so src/api/kit is open to features; the rest of src/api is not.
 */
const arrows = [
  {
    target: './src/domain',
    from: ['./src', './migrations', './tests'],
    except: ['./domain'],
    message: 'src/domain holds the arithmetic and imports only itself and luxon.',
  },
  {
    target: './src/db',
    from: './src',
    except: ['./db', './domain'],
    message: 'src/db imports only itself and src/domain; hand it what it needs as an argument.',
  },
  {
    target: './src/features',
    from: './src',
    except: ['./features', './db', './domain', './api/kit'],
    message: 'src/features imports src/db, src/domain and src/api/kit; not the api or commands.',
  },
  {
    target: './src/api/kit',
    from: './src',
    except: ['./api/kit', './db', './domain'],
    message: 'src/api/kit serves every feature, so it imports none of them.',
  },
  {
    target: './src/api',
    from: './src',
    except: ['./api', './features', './db', './domain'],
    message: 'src/api imports src/features and what lies below; not commands, main or config.',
  },
  {
    target: './src/commands',
    from: './src',
    except: ['./commands', './api', './features', './db', './domain', './config.ts'],
    message: 'src/commands is started by src/main.ts and does not import it.',
  },
  {
    target: './src/web',
    from: ['./src', './migrations', './tests'],
    except: ['./web'],
    message: 'src/web talks to the GraphQL API and imports only itself and schema/.',
  },
  { target: './src', from: './tests', message: 'The program does not import its tests.' },
];

/** As recommended, but "part type" is a word of the trade and of the design, so `PartType` stands. */
const [, recommended] =
  graphql.configs['flat/schema-recommended'].rules['@graphql-eslint/naming-convention'];
const naming = {
  ...recommended,
  types: 'PascalCase',
  ...Object.fromEntries(
    Object.entries(recommended).map(([selector, rule]) => [
      selector,
      typeof rule === 'object' && rule.forbiddenSuffixes
        ? { ...rule, ignorePattern: '^PartType$' }
        : rule,
    ]),
  ),
};

export default defineConfig(
  globalIgnores(['dist/', 'dist-*/', 'coverage/', '.tmp/', 'src/web/gql/']),
  { linterOptions: { reportUnusedDisableDirectives: 'error' } },
  {
    files: SOURCE,
    extends: [tseslint.configs.recommendedTypeChecked, tseslint.configs.stylisticTypeChecked],
    plugins: { 'import-x': importX },
    languageOptions: {
      parserOptions: {
        // Named, not found by the service for editors: in one run that costs an eighth less.
        project: ['./tsconfig.json', './src/web/tsconfig.json'],
        tsconfigRootDir: import.meta.dirname,
      },
    },
    settings: {
      'import-x/resolver-next': [
        createNodeResolver({
          extensions: ['.ts', '.tsx', '.mjs', '.js', '.json'],
          extensionAlias: { '.js': ['.ts', '.tsx', '.js'] },
        }),
      ],
      'import-x/parsers': { '@typescript-eslint/parser': ['.ts', '.tsx'] },
    },
    rules: {
      'import-x/no-default-export': 'error',
      'import-x/no-restricted-paths': ['error', { basePath: import.meta.dirname, zones: arrows }],
      'max-lines': ['error', { max: 300, skipBlankLines: true, skipComments: true }],
      eqeqeq: 'error',
      '@typescript-eslint/consistent-type-imports': [
        'error',
        // typeorm and type-graphql read the types of decorated fields at run time.
        { fixStyle: 'separate-type-imports', disallowTypeAnnotations: false },
      ],
      '@typescript-eslint/no-non-null-assertion': 'error',
      '@typescript-eslint/no-unused-vars': [
        'error',
        { argsIgnorePattern: '^_', ignoreRestSiblings: true },
      ],
      '@typescript-eslint/restrict-template-expressions': [
        'error',
        { allowNumber: true, allowBoolean: false, allowNullish: false },
      ],
      '@typescript-eslint/switch-exhaustiveness-check': [
        'error',
        { considerDefaultExhaustiveForUnions: true },
      ],
      // tsconfig's noPropertyAccessFromIndexSignature asks for the brackets that this forbids.
      '@typescript-eslint/dot-notation': 'off',
      // In src the mark it asks for is forbidden; a cast with its type says what is taken for granted.
      '@typescript-eslint/non-nullable-type-assertion-style': 'off',
      // A type alias and an interface say the same; neither is worth a failed run.
      '@typescript-eslint/consistent-type-definitions': 'off',
    },
  },
  {
    // The one place where a class stands for a table or a GraphQL type and holds no code.
    files: ['src/**/*.entity.ts', 'src/**/*.type.ts', 'src/**/*.inputs.ts'],
    rules: { '@typescript-eslint/no-extraneous-class': 'off' },
  },
  {
    files: ['src/domain/**'],
    rules: {
      // An index that a loop has just bounded: without the mark each sum would need a dead branch.
      '@typescript-eslint/no-non-null-assertion': 'off',
      'no-restricted-imports': [
        'error',
        {
          patterns: [
            {
              regex: String.raw`^(?!\.{1,2}/|luxon$)`,
              message: 'src/domain imports only itself and luxon.',
            },
          ],
        },
      ],
      'no-restricted-globals': [
        'error',
        { name: 'process', message: 'The environment is read in src/config.ts alone.' },
        { name: 'setTimeout', message: 'The arithmetic knows no clock.' },
        { name: 'setInterval', message: 'The arithmetic knows no clock.' },
      ],
      'no-restricted-properties': [
        'error',
        {
          object: 'Math',
          property: 'random',
          message: 'Take the source of chance as an argument.',
        },
        { object: 'Date', property: 'now', message: 'Take the instant as an argument.' },
        { object: 'DateTime', property: 'now', message: 'Take the instant as an argument.' },
      ],
      'no-restricted-syntax': [
        'error',
        {
          selector:
            "NewExpression[callee.name='Date'][arguments.length=0], CallExpression[callee.object.name='DateTime'][callee.property.name=/^(utc|local)$/][arguments.length=0]",
          message: 'Take the instant as an argument.',
        },
      ],
    },
  },
  {
    files: ['**/*.mjs'],
    // The launcher's few casts of JSON and of errors are in JSDoc, which these rules do not read.
    rules: {
      '@typescript-eslint/no-unsafe-assignment': 'off',
      '@typescript-eslint/no-unsafe-member-access': 'off',
      '@typescript-eslint/no-unsafe-return': 'off',
    },
  },
  {
    files: ['tests/**'],
    rules: {
      // expect(object.method) names the method without calling it.
      '@typescript-eslint/unbound-method': 'off',
      '@typescript-eslint/no-non-null-assertion': 'off',
      // Answers of the API and asymmetric matchers are untyped; what they hold is what is tested.
      '@typescript-eslint/no-explicit-any': 'off',
      '@typescript-eslint/no-unsafe-argument': 'off',
      '@typescript-eslint/no-unsafe-assignment': 'off',
      '@typescript-eslint/no-unsafe-call': 'off',
      '@typescript-eslint/no-unsafe-member-access': 'off',
      '@typescript-eslint/no-unsafe-return': 'off',
    },
  },
  {
    // eslint and vitest take their settings as a default export.
    files: ['*.config.ts', '*.config.js', 'src/web/vite.config.ts'],
    rules: { 'import-x/no-default-export': 'off' },
  },
  {
    files: [SCHEMA],
    plugins: { '@graphql-eslint': graphql },
    languageOptions: {
      parser: graphql.parser,
      // The same for both: the plugin keeps the first configuration that it sees of a schema.
      parserOptions: { graphQLConfig: { schema: SCHEMA, documents: OPERATIONS } },
    },
    rules: {
      ...graphql.configs['flat/schema-recommended'].rules,
      ...graphql.configs['flat/schema-relay'].rules,
      // Off: it asks for an id in every type. Here things have one (the Node interface obliges
      // them), and values such as money, a basis, an edge or a payload have none to give.
      '@graphql-eslint/strict-id-in-types': 'off',
      // Connections are walked forwards only, which the Relay specification allows.
      '@graphql-eslint/relay-arguments': ['error', { includeBoth: false }],
      // What cannot grow is a plain list, and connections show `nodes` beside their edges.
      '@graphql-eslint/relay-edge-types': ['error', { listTypeCanWrapOnlyEdgeType: false }],
      // Off: a move's `movedAt` and a change's `changedFields` say in full what they are.
      '@graphql-eslint/no-typename-prefix': 'off',
      '@graphql-eslint/naming-convention': ['error', naming],
      '@graphql-eslint/require-description': [
        'error',
        {
          types: true,
          rootField: true,
          DirectiveDefinition: true,
          FieldDefinition: true,
          InputValueDefinition: true,
          EnumValueDefinition: true,
        },
      ],
    },
  },
  {
    files: [OPERATIONS],
    plugins: { '@graphql-eslint': graphql },
    languageOptions: {
      parser: graphql.parser,
      parserOptions: { graphQLConfig: { schema: SCHEMA, documents: OPERATIONS } },
    },
    rules: {
      ...graphql.configs['flat/operations-recommended'].rules,
      // Off: it asks for the id wherever one exists. These documents are also the README's
      // examples, and show what a collector asks for.
      '@graphql-eslint/require-selections': 'off',
      // Seven levels do not reach through edges, node, standing and its basis; the server's own
      // pricing bounds what a document may cost.
      '@graphql-eslint/selection-set-depth': ['error', { maxDepth: 12 }],
    },
  },
  { files: SOURCE, ...prettier },
);
