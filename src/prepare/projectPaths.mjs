import { join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

/**
 * Where everything that preparation reads and writes lies.
 * @param {string} root the project's folder
 */
export function projectPaths(root) {
  return {
    root,
    lockFile: join(root, 'package-lock.json'),
    packages: join(root, 'node_modules'),
    installedLock: join(root, 'node_modules', '.package-lock.json'),
    packagesStamp: join(root, 'node_modules', '.reglow-stamp'),
    program: join(root, 'dist'),
    programStamp: join(root, 'dist', '.reglow-stamp'),
    main: join(root, 'dist', 'src', 'main.js'),
    pages: join(root, 'dist-web'),
    pagesStamp: join(root, 'dist-web', '.reglow-stamp'),
    documentTypes: join(root, 'src', 'web', 'gql', 'graphql.ts'),
    scratch: join(root, '.tmp'),
    turn: join(root, '.tmp', 'prepare.lock'),
  };
}

/** @typedef {ReturnType<typeof projectPaths>} ProjectPaths */

export const thisProject = projectPaths(resolve(fileURLToPath(import.meta.url), '../../..'));
