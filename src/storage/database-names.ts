// DO NOT RENAME. Shops have their only records under these names.
export const OWN_DATABASE = 'pacewright';
export const DEMO_DATABASE = 'pacewright-demo';
export const OWN_JOURNAL = 'pacewright-journal';
