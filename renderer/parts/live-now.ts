// What screens take for now while the plan runs: the hour that has begun, so that what is late is late without anybody
// booking anything. Outside the plan's weeks nothing is said, and the core goes by what was booked last: the demo's
// weeks are not today's.
import { useState } from 'react';
import { useCore } from '../client/core.tsx';
import { hourWithin } from './hour-within.ts';

export interface LiveNow {
  readonly now?: string;
}

const nothing: LiveNow = {};

/** To be spread into a question; the same text for an hour, so that an answer is kept that long. */
export function useLiveNow(job: string): LiveNow {
  const board = useCore('board.read', { job });
  const [opened] = useState(() => new Date().toISOString());
  if (board.data === undefined) return nothing;
  const hour = hourWithin(opened, board.data.days, board.data.job.timeZone);
  return hour === null ? nothing : { now: hour };
}
