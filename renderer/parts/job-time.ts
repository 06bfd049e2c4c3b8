// The clock of the job on screen: its time zone comes with the board's answer, which is asked for anyway.
import { useCore } from '../client/core.tsx';
import { useJob } from './job.tsx';
import { type TimeWords, timeWords } from './time-words.ts';

/** Null until the job's time zone is known: nothing may be read from or written to a clock before. */
export function useJobZone(): string | null {
  const job = useJob();
  const board = useCore('board.read', { job: job.code });
  return board.data?.job.timeZone ?? null;
}

const unknownYet: TimeWords = {
  full: () => '…',
  dayTime: () => '…',
  day: () => '…',
  time: () => '…',
  date: () => '…',
};

export function useTimeWords(): TimeWords {
  const zone = useJobZone();
  return zone === null ? unknownYet : timeWords(zone);
}
