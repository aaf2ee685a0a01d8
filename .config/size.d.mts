export const budgets: { paceScreen: number; allScripts: number; languages: number; everything: number };
export function sizes(dist: string): {
  paceScreen: number;
  allScripts: number;
  languages: number;
  everything: number;
  files: { file: string; size: number }[];
};
