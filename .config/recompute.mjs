import { installPackages, top } from './prepare.mjs';

installPackages();
const { runnerImport } = await import('vite');
const { module } = await runnerImport(`${top}/.config/recompute-command.ts`, {
  configFile: false,
  root: top,
  logLevel: 'error',
});
process.exitCode = await module.recomputeCommand(process.argv.slice(2));
