import { createPrivateKey, generateKeyPairSync, type KeyObject } from 'node:crypto';
import { existsSync } from 'node:fs';
import { mkdir, readFile, stat, writeFile } from 'node:fs/promises';
import { dirname } from 'node:path';
import { CommandFailure } from './commandFailure.js';
import type { Surroundings } from './surroundings.js';

const forOwnerAlone = 0o600;

/** The owner's Ed25519 key, made at its first use; read and written by the owner alone. */
export async function ownerKey(around: Surroundings, path: string): Promise<KeyObject> {
  if (!existsSync(path)) return makeKey(around, path);
  const { mode } = await stat(path);
  if (process.platform !== 'win32' && (mode & 0o077) !== 0) {
    throw new CommandFailure(
      `Others may read the key ${path}, so that it proves nothing: chmod 600 ${path}`,
    );
  }
  try {
    const key = createPrivateKey(await readFile(path));
    if (key.asymmetricKeyType === 'ed25519') return key;
  } catch {
    // Said below.
  }
  throw new CommandFailure(`${path} holds no Ed25519 key. Name another file with --key.`);
}

async function makeKey(around: Surroundings, path: string): Promise<KeyObject> {
  const { privateKey } = generateKeyPairSync('ed25519');
  await mkdir(dirname(path), { recursive: true });
  const pem = privateKey.export({ type: 'pkcs8', format: 'pem' });
  await writeFile(path, pem, { mode: forOwnerAlone, flag: 'wx' });
  around.print(`Made the owner's key ${path}. Keep a copy of it away from the collection.`);
  return privateKey;
}
