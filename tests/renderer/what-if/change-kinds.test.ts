import { describe, expect, test } from 'vitest';
import type { Known } from '../../../renderer/parts/changes/change-text.ts';
import {
  type ChangeKind,
  changeKinds,
  readForm,
  type Values,
} from '../../../renderer/screens/what-if/change-kinds.ts';
import { draftOf, draftText, sideInput } from '../../../renderer/screens/what-if/draft-address.ts';

const known: Known = {
  pours: [{ code: 'P08', name: 'Core' }],
  components: [{ code: 'LK' }],
  designs: [{ code: 'GA' }],
  notes: [{ id: 'note-101', number: 'D-101', expectedAt: '2026-03-12T09:00:00-04:00' }],
  from: '2026-03-02T05:00:00.000Z',
  timeZone: 'America/New_York',
  later: (instant) => instant,
};

const read = (kind: ChangeKind, values: Values): unknown => {
  const answered = readForm(kind, values, known);
  return answered.ok ? answered.value : `${answered.error.field}: ${answered.error.message}`;
};

describe('a change entered by a form', () => {
  test.each<[ChangeKind, Values, unknown]>([
    ['move', { pour: 'P08', days: '2' }, [{ kind: 'move', pour: 'P08', workingDays: 2 }]],
    ['move', { pour: 'P08', days: '-1' }, [{ kind: 'move', pour: 'P08', workingDays: -1 }]],
    ['drop', { pour: 'P08' }, [{ kind: 'drop', pour: 'P08' }]],
    [
      'set',
      { design: 'GA', quantity: '2', from: '9 Mar 07:00' },
      [
        {
          kind: 'set-of-forms',
          gangs: [{ design: 'GA', quantity: 2 }],
          // The clock of the job goes forward on 8 March 2026.
          from: '2026-03-09T07:00:00-04:00',
        },
      ],
    ],
    [
      'delivery',
      { note: 'note-101', at: '13 Mar' },
      [{ kind: 'delivery', note: 'note-101', expectedAt: '2026-03-13T09:00:00-04:00' }],
    ],
    [
      'extra',
      { date: '14 Mar', start: '07:00', end: '12:00' },
      [
        {
          kind: 'calendar',
          exception: {
            kind: 'extra',
            date: '2026-03-14',
            start: '07:00',
            end: '12:00',
            reason: 'saturday',
            remark: null,
          },
        },
      ],
    ],
    [
      'off',
      { date: '11 Mar' },
      [
        {
          kind: 'calendar',
          exception: { kind: 'off', date: '2026-03-11', reason: 'other', remark: null },
        },
      ],
    ],
  ])('%s of %j', (kind, values, changes) => {
    expect(read(kind, values)).toEqual(changes);
  });

  test('a night shift ends on the day after', () => {
    expect(read('extra', { date: '12 Mar', start: '22:00', end: '04:00' })).toMatchObject([
      { exception: { reason: 'night' } },
    ]);
  });

  test('pieces have a quantity, and from and until when', () => {
    const values = { component: 'LK', quantity: '40', from: '9 Mar 07:00', to: '20 Mar' };
    expect(read('pieces', values)).toMatchObject([
      {
        kind: 'stock',
        entry: { quantity: 40, from: '2026-03-09T07:00:00-04:00', to: '2026-03-20T07:00:00-04:00' },
      },
    ]);
  });

  test.each<[ChangeKind, Values, string]>([
    ['move', { pour: 'P08', days: 'two' }, 'days: '],
    ['move', { pour: 'P08', days: '0' }, 'days: P08 +0d moves nothing.'],
    ['drop', { pour: '' }, 'pour: '],
    ['pieces', { component: '', quantity: '4' }, 'component: Which component?'],
    ['pieces', { component: 'LK', quantity: '4', to: '20 Mar' }, 'from: From when until then?'],
    ['pieces', { component: 'LK', quantity: '4', from: '3/4' }, 'from: "3/4" can be read as'],
    ['set', { design: 'GA', quantity: '1', from: 'soon' }, 'from: "soon" cannot be read'],
    ['set', { design: 'GA', quantity: '0' }, 'quantity: A set has 1 to 100 gangs'],
    ['delivery', { note: '', at: '13 Mar' }, 'note: Which draft note?'],
    ['delivery', { note: 'note-101', at: 'soon' }, 'at: "soon" cannot be read'],
    [
      'extra',
      { date: '14 Mar', start: '7', end: '12:00' },
      'start: "7" is no time of day. Write it like 07:00.',
    ],
    ['off', { date: '' }, 'date: '],
  ])('%s of %j is refused at its field', (kind, values, message) => {
    expect(String(read(kind, values)).startsWith(message)).toBe(true);
  });

  test('every form asks for something', () => {
    expect(changeKinds.map(({ fields }) => fields.length > 0)).toEqual(changeKinds.map(() => true));
  });
});

describe('changes in the address', () => {
  test('come out as they went in; what cannot be read is none', () => {
    const changes = [{ kind: 'drop', pour: 'P08' }] as const;
    expect(draftOf(draftText(changes))).toEqual(changes);
    expect([draftOf(null), draftOf('{'), draftOf('7'), draftOf('[3]')]).toEqual([[], [], [], []]);
    expect(draftText([])).toBeNull();
  });

  test('a side is the plan as it stands, the changes tried, or a kept what-if', () => {
    const changes = [{ kind: 'drop', pour: 'P08' }] as const;
    expect(sideInput('now', changes)).toBe('now');
    expect(sideInput('draft', changes)).toEqual({ changes });
    expect(sideInput('draft', [])).toBe('now');
    expect(sideInput('some-id', changes)).toEqual({ kept: 'some-id' });
  });
});
