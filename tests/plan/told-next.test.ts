// The instructions of a plan with the stretch of their work, and which of them fall to the shifts that are told.
import { describe, expect, test } from 'vitest';
import type { Instruction } from '../../core/plan/choices.ts';
import { describeRuns } from '../../core/plan/describe-runs.ts';
import { msOf } from '../../core/plan/local-time.ts';
import { plannedInstructions, toldUntil, toTell } from '../../core/plan/told-next.ts';
import { job } from './pours-for-tests.ts';

/** New York, Monday to Friday 07:00 to 15:30; 2 March 2026 is a Monday, 6 March a Friday. */
const at = (day: number, time: string): number =>
  msOf(`2026-03-${String(day).padStart(2, '0')}T${time}:00-05:00`);

describe('the end of the last shift told', () => {
  test.each([
    ['in a shift: that one and the next', at(2, '08:00'), 2, at(3, '15:30')],
    ['in a shift, one: its end', at(2, '08:00'), 1, at(2, '15:30')],
    ['at night: the next two', at(2, '20:00'), 2, at(4, '15:30')],
    ['at the end of a shift: the next one', at(2, '15:30'), 1, at(3, '15:30')],
    ['on Friday: over the weekend', at(6, '08:00'), 2, msOf('2026-03-09T15:30:00-04:00')],
    ['none: now', at(2, '08:00'), 0, at(2, '08:00')],
  ])('%s', (_, now, count, until) => {
    expect(toldUntil(now, count, job.shifts)).toBe(until);
  });
});

const text = (ms: number): string => new Date(ms).toISOString();

describe('what is told next', () => {
  const described = describeRuns(
    {
      components: [{ code: 'P', stock: 9, hirePerDay: 1 }],
      designs: [{ code: 'A', pieces: { P: 1 }, assembleH: 4, breakDownH: 3 }],
      turns: [
        { id: 'T1', design: 'A', from: text(at(3, '07:00')), to: text(at(4, '12:00')) },
        { id: 'T2', design: 'A', from: text(at(5, '07:00')), to: text(at(6, '12:00')) },
        { id: 'T3', design: 'A', from: text(at(5, '07:00')), to: text(at(6, '12:00')), built: true },
      ],
      turnaround: { flyOnH: 2, regangBaseH: 1, regangPerPieceH: 0 },
      labourPerH: 1,
      shifts: job.shifts,
    },
    [{ turns: ['T1', 'T2'] }, { turns: ['T3'] }],
  );
  if (!described.ok) throw new Error(described.error.message);
  const planned = plannedInstructions(described.value);
  const told = (now: number, until: number, before: Instruction[] = []): string[] =>
    toTell(planned, before, now, until).map(({ instruction }) =>
      instruction.kind === 'follow'
        ? `${instruction.from}>${instruction.to}`
        : `${instruction.kind} ${instruction.turn}`,
    );

  test('each instruction has the hours in which it is worked on', () => {
    expect(planned.map(({ from, to }) => [from, to])).toEqual([
      [at(2, '11:30'), at(3, '07:00')],
      [at(4, '12:00'), at(4, '14:00')],
      [at(6, '12:00'), at(6, '15:00')],
      [at(5, '07:00'), at(5, '07:00')],
      [at(6, '12:00'), at(6, '15:00')],
    ]);
  });

  test('what begins before the end of the last shift told, or is being done, and nothing that is done', () => {
    expect(told(at(2, '07:00'), at(2, '15:30'))).toEqual(['assemble T1']);
    expect(told(at(2, '14:00'), at(3, '15:30'))).toEqual(['assemble T1']);
    expect(told(at(4, '07:00'), at(5, '15:30'))).toEqual(['T1>T2', 'assemble T3']);
    expect(told(at(5, '07:00'), at(5, '15:30'))).toEqual(['assemble T3']);
    expect(told(at(5, '07:01'), at(6, '12:00'))).toEqual([]);
    expect(told(at(6, '07:00'), at(6, '12:01'))).toEqual(['break-down T2', 'break-down T3']);
  });

  test('what stands told is not told again', () => {
    expect(told(at(4, '07:00'), at(5, '15:30'), [{ kind: 'follow', from: 'T1', to: 'T2' }])).toEqual([
      'assemble T3',
    ]);
  });
});
