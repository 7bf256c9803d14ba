import {
  mkdirSync,
  readFileSync,
  rmdirSync,
  rmSync,
  statSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { hostname } from 'node:os';
import { dirname } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { isAlive } from './isAlive.mjs';

const HEARTBEAT_MILLISECONDS = 5_000;
const ABANDONED_AFTER_MILLISECONDS = 60_000;
// After a restart of the machine the holder's number may belong to another process for ever.
const FORGOTTEN_AFTER_MILLISECONDS = 600_000;
const POLL_MILLISECONDS = 200;

/**
 * @typedef {{ noteTool: (pid: number) => void, end: () => void }} Turn
 * @typedef {{ pid: number, host: string, toolPid?: number }} Holder
 */

/**
 * Waits until no other preparation of this clone is under way and keeps others out until `end`.
 * A killed holder's file is recognised and removed, but not while the npm or tsc it had started
 * still runs: two of those in one folder would spoil each other's work.
 * @param {string} file
 * @param {(holder: Holder | null) => void} onWait told once, when another holds the turn
 * @returns {Promise<Turn>}
 */
export async function takeTurn(file, onWait) {
  mkdirSync(dirname(file), { recursive: true });
  let toldOfWait = false;
  while (!createdAlone(file, { pid: process.pid, host: hostname() })) {
    if (isAbandoned(file)) {
      removeAbandoned(file);
      continue;
    }
    if (!toldOfWait) onWait(readHolder(file));
    toldOfWait = true;
    await pause(POLL_MILLISECONDS);
  }
  const heartbeat = setInterval(() => touch(file), HEARTBEAT_MILLISECONDS).unref();
  return {
    noteTool: (toolPid) => {
      const holder = { pid: process.pid, host: hostname(), toolPid };
      writeFileSync(file, JSON.stringify(holder));
    },
    end: () => {
      clearInterval(heartbeat);
      rmSync(file, { force: true });
    },
  };
}

/**
 * @param {string} file
 * @param {Holder} holder
 */
function createdAlone(file, holder) {
  try {
    writeFileSync(file, JSON.stringify(holder), { flag: 'wx' });
    return true;
  } catch (error) {
    if (/** @type {NodeJS.ErrnoException} */ (error).code === 'EEXIST') return false;
    throw error;
  }
}

/**
 * @param {string} file
 * @returns {Holder | null} null when the file is gone or half written
 */
function readHolder(file) {
  try {
    return JSON.parse(readFileSync(file, 'utf8'));
  } catch {
    return null;
  }
}

/** @param {string} file */
function isAbandoned(file) {
  const holder = readHolder(file);
  const age = millisecondsSinceTouched(file);
  if (age === null) return false;
  if (holder?.host !== hostname()) return age > ABANDONED_AFTER_MILLISECONDS;
  if (age > FORGOTTEN_AFTER_MILLISECONDS) return true;
  return !isAlive(holder.pid) && (holder.toolPid === undefined || !isAlive(holder.toolPid));
}

/**
 * Only one process at a time may remove an abandoned file, after looking again: else a slow one
 * would remove the fresh file of a quick one.
 * @param {string} file
 */
function removeAbandoned(file) {
  const guard = `${file}.removal`;
  try {
    mkdirSync(guard);
  } catch {
    const age = millisecondsSinceTouched(guard);
    if (age !== null && age > ABANDONED_AFTER_MILLISECONDS) rmSync(guard, { recursive: true });
    return;
  }
  try {
    if (isAbandoned(file)) rmSync(file, { force: true });
  } finally {
    rmdirSync(guard);
  }
}

/** @param {string} file */
function millisecondsSinceTouched(file) {
  try {
    return Date.now() - statSync(file).mtimeMs;
  } catch {
    return null;
  }
}

/** @param {string} file */
function touch(file) {
  try {
    utimesSync(file, new Date(), new Date());
  } catch {
    // Someone cleaned the scratch folder by hand; the work under way is none the worse for it.
  }
}
