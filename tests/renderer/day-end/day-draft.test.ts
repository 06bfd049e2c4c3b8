// What is said of a day before it is saved: ticks, reasons, and times typed in few keys.
import { describe, expect, test } from 'vitest';
import {
  beginDraft,
  type DayRead,
  faultOfField,
  type Line,
  saidOf,
  stepOf,
  tickAll,
  withDone,
  withReason,
  withStep,
} from '../../../renderer/screens/day-end/day-draft.ts';

const line = (id: string, reported: Line['reported'] = null): Line => ({
  id,
  kind: 'set',
  pour: 'P01',
  pourName: 'Wall',
  toPour: null,
  turns: [],
  designs: [],
  gangs: [],
  from: '2026-03-09T07:00:00-04:00',
  to: '2026-03-09T11:00:00-04:00',
  leftFrom: null,
  openGates: [],
  feeds: [],
  reported,
});

const day = (lines: Line[]): DayRead => ({
  date: '2026-03-09',
  timeZone: 'America/New_York',
  working: true,
  report: null,
  lines,
  notEnded: [],
  before: null,
  after: null,
  reasons: [{ reason: 'weather', words: 'weather' }],
});

const time = (instant: string): string => instant.slice(11, 16);
const three = day([line('a'), line('b'), line('c')]);
const begun = beginDraft(three, time);

describe('what is said of a day', () => {
  test('nothing is ticked at first, and each step still wants a reason or a tick', () => {
    expect(saidOf(begun, three).faults.map(({ id, field }) => [id, field])).toEqual([
      ['a', 'reason'],
      ['b', 'reason'],
      ['c', 'reason'],
    ]);
  });

  test('one key ticks everything but what has a reason; a tick takes the reason away', () => {
    const ticked = tickAll(withReason(begun, 'b', 'weather'), three.lines);
    expect(saidOf(ticked, three)).toMatchObject({
      faults: [],
      steps: [
        { id: 'a', done: true, reason: null },
        { id: 'b', done: false, reason: 'weather' },
        { id: 'c', done: true, reason: null },
      ],
    });
    expect(stepOf(withDone(ticked, 'b', true), 'b')).toMatchObject({ done: true, reason: null });
  });

  test('a time typed is of that day by the clock of the job, the day after the clock was put on too', () => {
    const typed = withStep(tickAll(begun, three.lines), 'a', { from: '7:10', to: '1:05 pm', people: '2,5' });
    expect(saidOf(typed, three).steps[0]).toEqual({
      id: 'a',
      done: true,
      reason: null,
      from: '2026-03-09T07:10:00-04:00',
      to: '2026-03-09T13:05:00-04:00',
      people: 2.5,
    });
  });

  test('what cannot be read is said beside its field, and stays as typed', () => {
    const typed = withStep(tickAll(begun, three.lines), 'a', { from: 'seven', people: 'all' });
    const { faults } = saidOf(typed, three);
    expect(faults.map(({ id, field }) => [id, field])).toEqual([
      ['a', 'from'],
      ['a', 'people'],
    ]);
    expect(stepOf(typed, 'a').from).toBe('seven');
  });

  test('times of a step that did not happen are not said, and come back with the tick', () => {
    const missed = withReason(withStep(tickAll(begun, three.lines), 'a', { from: '7:10' }), 'a', 'weather');
    expect(saidOf(missed, three)).toMatchObject({ faults: [], steps: [{ from: null }, {}, {}] });
    expect(stepOf(withDone(missed, 'a', true), 'a').from).toBe('7:10');
  });

  test('a day ended before begins with what was reported', () => {
    const reported = {
      done: true,
      reason: null,
      from: '2026-03-09T07:10:00-04:00',
      to: null,
      people: 4,
    };
    expect(stepOf(beginDraft(day([line('a', reported)]), time), 'a')).toEqual({
      done: true,
      reason: null,
      from: '07:10',
      to: '',
      people: '4',
    });
  });

  test('a refusal of the core goes to the step and the field that it names', () => {
    expect(faultOfField('steps[1].to', 'It ended before it began.', three)).toEqual({
      id: 'b',
      field: 'to',
      message: 'It ended before it began.',
    });
    expect(faultOfField('steps[7].to', 'No such step.', three)).toBeNull();
    expect(faultOfField('job', 'No such job.', three)).toBeNull();
  });
});
