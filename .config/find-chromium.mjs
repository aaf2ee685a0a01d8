import { existsSync } from 'node:fs';

const usualPlaces = [
  process.env.CHROMIUM,
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
];

/** The path of a Chromium on this machine, or null. CHROMIUM in the environment wins. */
export function findChromium() {
  return usualPlaces.find((place) => place && existsSync(place)) ?? null;
}

/** What a headless browser needs in a container, and what keeps it from calling home. */
export const browserArguments = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];
