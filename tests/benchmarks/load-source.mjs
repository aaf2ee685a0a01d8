import path from 'node:path';
import { runnerImport } from 'vite';
import { top } from '../../.config/prepare.mjs';

/** A module of the project's own source, by its path from the top. */
export const loadSource = async (file) =>
  (await runnerImport(path.join(top, file), { root: top, configFile: false })).module;
