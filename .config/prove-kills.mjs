import { installPackages, requireChromium, tool } from './prepare.mjs';

// The long run of the kill journey: how many kills is the first argument, 200 when there is none.
installPackages();
requireChromium();
tool(
  'vitest',
  ['run', '--config', '.config/vitest.config.ts', '--project', 'journeys', 'tests/journeys/kills'],
  {
    env: { ...process.env, KILLS: process.argv[2] ?? '200' },
  },
);
