// The clock by which moments of a job are read and written.
export interface JobClock {
  readonly timeZone: string;
  /** The plan's first day: a date typed without its year is the one nearest to it. */
  readonly planFrom: string;
}
