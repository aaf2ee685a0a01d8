/** Whether somebody is there. */
export interface Presence {
  /** Time since the page was last touched or typed on, or was opened; milliseconds. */
  idleMs(): number;
}
