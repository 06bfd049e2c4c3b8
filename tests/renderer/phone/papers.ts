// A ticket and a count as the phone reads them, small enough to add up in the head.
import type { EntryLine, KeptPaper, ReadCount, ReadTicket } from '../../../renderer/phone/kept/kept.ts';
import { noPieces as none } from '../../../core/yard/ticket-counts.ts';

const line = (
  component: string,
  quantity: number,
  ready = 0,
): ReadTicket['parts'][number]['expected'][number] => ({
  component,
  name: component,
  kind: 'lock',
  quantity,
  sought: 0,
  unbooked: 0,
  from: 'Y1',
  lookAlike: null,
  isCounted: ready > 0,
  counted: { ...none, ready },
  missing: quantity - ready,
});

/** LK 26 expected, 4 of them counted ready by the entry `there`; WB 8 expected. */
export const ticket: Extract<KeptPaper, { kind: 'ticket' }> = {
  key: 'ticket T1',
  kind: 'ticket',
  id: 'T1',
  name: 'S-1',
  counter: 1,
  read: {
    ticket: {
      id: 'T1',
      number: 1,
      name: 'S-1',
      job: 'TB26',
      pour: 'P01',
      state: 'open',
      place: 'Y1',
      plannedAt: '2026-03-05T07:00:00-05:00',
      cleared: null,
      follows: null,
      remark: null,
    },
    parts: [
      {
        part: 'P01/A1',
        turn: 'P01/A1',
        gang: null,
        design: 'GA',
        title: 'GA at P01 side A, nr 1',
        next: null,
        nextWords: 'Fly on to P04 side A, nr 1',
        expected: [line('LK', 26, 4), line('WB', 8)],
        extra: [],
      },
    ],
    entries: [
      {
        id: 'there',
        at: '2026-03-05T07:10:00-05:00',
        who: 'Ray',
        device: 'phone of Ray',
        lines: 1,
        pieces: 4,
      },
    ],
    booked: null,
    late: [],
    stillMissing: [],
    cautions: [],
    changeNumber: 7,
  },
};

const countRow: ReadCount['lines'][number] = {
  location: 'Y1',
  component: 'LK',
  owner: null,
  name: 'Lock',
  class: 'A',
  lookAlikes: [],
  bundleSize: 20,
  entered: [],
  booked: null,
  figures: [],
};

/** LK at Y1, counted blind, nothing entered. */
export const count: Extract<KeptPaper, { kind: 'count' }> = {
  key: 'count N1 1',
  kind: 'count',
  id: 'N1',
  name: 'N-1',
  counter: 1,
  read: {
    count: {
      id: 'N1',
      number: 1,
      name: 'N-1',
      kind: 'spot',
      state: 'open',
      startedAt: '2026-03-10T15:30:00-05:00',
      blind: true,
      counters: 1,
      remark: null,
      places: ['Y1'],
      lines: 1,
      counted: 0,
    },
    places: [{ code: 'Y1', name: 'Yard' }],
    lines: [countRow],
    moved: [],
    entries: 0,
  },
};

export const tapped = (component: string, more: Partial<EntryLine> = {}): EntryLine => ({
  group: 'P01/A1',
  component,
  owner: null,
  condition: 'ready',
  extra: false,
  quantity: 1,
  ...more,
});
