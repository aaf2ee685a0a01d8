import { installPackages, requireChromium, tool } from './prepare.mjs';

installPackages();
requireChromium();
const config = ['--config', '.config/vitest.config.ts'];
tool('typescript', ['-b']);
tool('@biomejs/biome', ['check', '--config-path=.config/lint.json', '--error-on-warnings', '.']);
tool('vitest', ['run', ...config, ...process.argv.slice(2)]);
