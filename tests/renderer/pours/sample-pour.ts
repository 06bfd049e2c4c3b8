// A pour of an invented wall, for tests of reading and writing its cells.
import type { CellContext, Pour } from '../../../renderer/screens/pours/pour-shapes.ts';

export const chicago: CellContext = { timeZone: 'America/Chicago', system: 'us' };

export const samplePour: Pour = {
  code: 'P07',
  name: 'W5',
  element: 'wall',
  order: 'face-first',
  sides: [
    { side: 'A', setAt: '2026-03-05T07:00:00-06:00', setH: 6, gangs: [{ design: 'GA', atNm: 0 }] },
    { side: 'B', setAt: '2026-03-06T07:00:00-06:00', setH: 4, gangs: [] },
  ],
  finishAt: '2026-03-06T14:00:00-06:00',
  stripMinimumH: 24,
  stripH: 6,
  after: ['P05'],
  gates: [],
  loose: [],
  tieComponent: null,
};
