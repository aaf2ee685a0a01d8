import { installPackages, tool } from './prepare.mjs';

installPackages();
tool('vite', ['build', '--config', '.config/vite.config.ts', '--logLevel', 'warn']);
const { serve } = await import('./serve.mjs');
const port = Number(process.env.PORT ?? 4173);
const server = await serve({ folder: 'dist', port, host: process.env.HOST ?? '127.0.0.1' });
process.stdout.write(`Pacewright is at ${server.url}\nStop it with Ctrl-C.\n`);
