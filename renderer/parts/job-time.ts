// The clock of the job on screen: its time zone comes with the board's answer, which is asked for anyway.
import { useMemo } from 'react';
import { useCore } from '../client/core.tsx';
import type { JobClock } from './job-clock.ts';
import { useJob } from './job.tsx';
import { type TimeWords, timeWords } from './time-words.ts';
import { dayStartMs } from './zoned.ts';

/** Null until the job's time zone is known: nothing may be read from or written to a clock before. */
export function useJobClock(): JobClock | null {
  const job = useJob();
  const board = useCore('board.read', { job: job.code });
  const known = board.data?.job;
  const [timeZone, date] = [known?.timeZone, known?.planFrom];
  return useMemo(() => {
    if (timeZone === undefined || date === undefined) return null;
    return { timeZone, planFrom: new Date(dayStartMs(date, timeZone)).toISOString() };
  }, [timeZone, date]);
}

const unknownYet: TimeWords = {
  full: () => '…',
  dayTime: () => '…',
  day: () => '…',
  time: () => '…',
  date: () => '…',
};

export function useTimeWords(): TimeWords {
  const clock = useJobClock();
  return clock === null ? unknownYet : timeWords(clock.timeZone);
}
