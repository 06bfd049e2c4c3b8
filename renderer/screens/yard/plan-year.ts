// The year that goes without saying: that of the job's plan. Empty until it is known.
import { useJobClock, useTimeWords } from '../../parts/job-time.ts';

export function usePlanYear(): string {
  const clock = useJobClock();
  const words = useTimeWords();
  return clock === null ? '' : words.date(clock.planFrom).slice(0, 4);
}
