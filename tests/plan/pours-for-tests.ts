// A small invented job for tests of pours: New York time, Monday to Friday 07:00 to 15:30.
import type { Job, Pour } from '../../core/plan/pours.ts';

export const job: Job = {
  code: 'J1',
  name: 'Test basin',
  timeZone: 'America/New_York',
  currency: 'USD',
  units: 'us',
  planFrom: '2026-02-23',
  shifts: { timeZone: 'America/New_York', days: [1, 2, 3, 4, 5], start: '07:00', end: '15:30', off: [] },
  crew: 4,
  labourPerHCents: 5000,
  flyOnH: 2,
  regangBaseH: 1,
  cleanH: 16,
};

/** Set Monday 2 March, closed Tuesday, poured Wednesday 4 March until 12:00. */
export function pourOf(changes: Partial<Pour> = {}): Pour {
  return {
    code: 'W1',
    name: 'Wall 1',
    element: 'wall',
    order: 'face-first',
    sides: [
      { side: 'A', setAt: '2026-03-02T07:00:00-05:00', setH: 4, gangs: [{ design: 'GA', atNm: 0 }] },
      { side: 'B', setAt: '2026-03-03T07:00:00-05:00', setH: 3, gangs: [{ design: 'GA', atNm: 0 }] },
    ],
    finishAt: '2026-03-04T12:00:00-05:00',
    stripMinimumH: 24,
    stripH: 3,
    after: [],
    gates: [],
    loose: [],
    tieComponent: null,
    ...changes,
  };
}

export const known = { designs: new Set(['GA', 'GB']), components: new Set(['LK', 'TR']) };
