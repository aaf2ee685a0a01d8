import { installPackages, top } from './prepare.mjs';

installPackages();
const { runnerImport } = await import('vite');
const { module } = await runnerImport(`${top}/.config/prove-backup-command.ts`, {
  configFile: false,
  root: top,
  logLevel: 'error',
});
process.exitCode = await module.proveBackupCommand(process.argv.slice(2));
