/** Words of the frame about how the records fare. */
export const upkeepWords = {
  copy: (age: string) => `Last copy outside: ${age}`,
  noCopy: 'No copy outside yet',
  broken: 'A record is damaged: see Records',
  collapsed: 'Records are missing: see Records',
};
