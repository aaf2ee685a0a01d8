// DO NOT RENAME. Shops have their only records under these names.
export const OWN_DATABASE = 'pacewright';
export const DEMO_DATABASE = 'pacewright-demo';
// What lies in these can be made again from the log.
export const OWN_SUMMARIES = 'pacewright-summaries';
export const DEMO_SUMMARIES = 'pacewright-demo-summaries';
export const OWN_JOURNAL = 'pacewright-journal';
