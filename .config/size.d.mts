export const budgets: { paceScreen: number; allScripts: number; language: number; kept: number };
export function sizes(dist: string): {
  paceScreen: number;
  allScripts: number;
  language: number;
  kept: number;
  files: { file: string; size: number }[];
};
