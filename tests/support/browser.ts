import { existsSync } from 'node:fs';
import { chromium, type Browser } from 'playwright-core';

/** The system's (Debian's package), when it is there; else the one that comes as a package. */
const systemBrowser = '/usr/bin/chromium';

// A browser under test asks nothing of the world outside.
const args = [
  '--headless',
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** Starts a Chromium; `close` it in `afterAll`. */
export async function openBrowser(): Promise<Browser> {
  return chromium.launch({ executablePath: await browserFile(), args });
}

async function browserFile(): Promise<string> {
  if (existsSync(systemBrowser)) return systemBrowser;
  const { default: packaged } = await import('@sparticuz/chromium');
  return packaged.executablePath();
}
