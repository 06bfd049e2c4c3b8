// A small board made by hand for tests of the drawing: one pour poured on a Friday before the clock change
// of 8 March 2026 in New York, and turns as the core answers them.
import type { BoardDay, BoardPour, Shortfall, Turn } from '../../../renderer/screens/board/board-types.ts';
import { addDays } from '../../../renderer/parts/zoned.ts';

export const timeZone = 'America/New_York';

/** Days from a date; Saturdays and Sundays off; shifts 07:00 to 15:30 with the right offset. */
export function madeDays(from: string, count: number): readonly BoardDay[] {
  return Array.from({ length: count }, (_, index) => {
    const date = addDays(from, index);
    const weekday = new Date(`${date}T00:00:00Z`).getUTCDay();
    const working = weekday >= 1 && weekday <= 5;
    const offset = date >= '2026-03-08' ? '-04:00' : '-05:00';
    return {
      date,
      working,
      shift: working ? { from: `${date}T07:00:00${offset}`, to: `${date}T15:30:00${offset}` } : null,
      crewHoursNeeded: 0,
      crewHoursThere: working ? 42.5 : 0,
      craneMinutesNeeded: null,
      craneMinutesThere: null,
      padPlacesNeeded: null,
      padPlacesThere: null,
      overloads: [],
      shortfalls: [],
      restsOnWeak: [],
    };
  });
}

export function madePour(over: Partial<BoardPour> = {}): BoardPour {
  return {
    pour: {
      code: 'P04',
      name: 'Tank wall W3',
      element: 'tank wall',
      order: 'face-first',
      sides: [
        { side: 'A', setAt: '2026-03-04T07:00:00-05:00', setH: 3, gangs: [] },
        { side: 'B', setAt: '2026-03-06T07:00:00-05:00', setH: 2, gangs: [] },
      ],
      finishAt: '2026-03-06T15:00:00-05:00',
      stripMinimumH: 24,
      stripH: 3,
      after: [],
      gates: [],
      loose: [],
      tieComponent: null,
    },
    times: {
      pour: 'P04',
      sides: [
        { side: 'A', setFrom: '2026-03-04T07:00:00-05:00', setTo: '2026-03-04T10:00:00-05:00' },
        { side: 'B', setFrom: '2026-03-06T07:00:00-05:00', setTo: '2026-03-06T09:00:00-05:00' },
      ],
      finishAt: '2026-03-06T15:00:00-05:00',
      readyAt: '2026-03-07T15:00:00-05:00',
      stripFrom: '2026-03-09T07:00:00-04:00',
      stripTo: '2026-03-09T10:00:00-04:00',
      freeAt: '2026-03-09T12:00:00-04:00',
    },
    openGates: [],
    shortfalls: [],
    findings: [],
    ...over,
  };
}

export function madeTurn(
  id: string,
  pour: string,
  design: string,
  after: Turn['after'],
  over: Partial<Turn> = {},
): Turn {
  return {
    id,
    pour,
    side: 'A',
    design,
    from: '2026-03-04T07:00:00-05:00',
    to: '2026-03-09T10:00:00-04:00',
    run: 1,
    before: { how: 'built' },
    told: { before: null, after: null },
    fixed: { before: false, after: false, noRegang: false },
    after,
    ...over,
  };
}

export function madeShortfall(over: Partial<Shortfall> = {}): Shortfall {
  return {
    id: 's1',
    component: 'LK',
    name: 'Lock',
    from: '2026-03-11T07:00:00-04:00',
    to: '2026-03-11T15:30:00-04:00',
    quantity: 94,
    stock: 340,
    held: 434,
    canBeHired: true,
    hireCents: 2303,
    turns: [
      { id: 'a', pour: 'P07', design: 'GA', pieces: 23 },
      { id: 'b', pour: 'P07', design: 'GA', pieces: 23 },
      { id: 'c', pour: 'P08', design: 'GB', pieces: 16 },
    ],
    loose: [{ id: 'd', pour: 'P08', purpose: 'locks between gangs', pieces: 80 }],
    restsOn: 'taken-from-list',
    restsOnDate: '2026-02-20',
    restsOnOld: false,
    ...over,
  };
}
