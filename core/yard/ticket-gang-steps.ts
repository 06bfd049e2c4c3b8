// What a booked strip makes of the gangs on the ticket: stripped, and with that on the way to their next turn, standing
// by, or broken down.
import { answer, type Answer, never } from '../answer.ts';
import type { Gang } from './gang.ts';
import { type NewGangStep, nextGangStep, type StepChange } from './gang-steps.ts';
import { type StripTicket, ticketName } from './strip-ticket.ts';

/** Codes: those of nextGangStep. */
export function stepsOfTicket(
  ticket: Pick<StripTicket, 'number' | 'parts' | 'place'>,
  gangs: readonly Gang[],
  at: string,
): Answer<readonly NewGangStep[]> {
  const steps: NewGangStep[] = [];
  for (const { gang: tag, next } of ticket.parts) {
    let gang = gangs.find(({ code }) => code === tag);
    if (gang === undefined || next === null) continue;
    for (const change of changesOf(next, ticket.place)) {
      const step = nextGangStep(gang, { ...change, at, remark: `Strip ticket ${ticketName(ticket)}` });
      if (!step.ok) return step;
      steps.push(step.value);
      gang = { ...gang, last: { ...step.value, number: gang.last.number + 1, who: '' } };
    }
  }
  return answer(steps);
}

type Change = Omit<StepChange, 'at'>;

function changesOf(
  next: NonNullable<StripTicket['parts'][number]['next']>,
  place: string,
): readonly Change[] {
  const stripped = { state: 'stripped' } as const;
  switch (next.how) {
    case 'fly-on':
      return [{ ...stripped, nextTurn: next.turn }];
    case 'regang':
      return [{ ...stripped, nextTurn: next.turn, place, laying: 'laid-down' }];
    case 'stand-by':
      return [
        { ...stripped, nextTurn: null },
        { state: 'standing-by', place: next.place, nextTurn: null },
      ];
    case 'break-down':
      return [
        { ...stripped, nextTurn: null },
        { state: 'broken-down', place: next.place, laying: 'laid-down', nextTurn: null },
      ];
    default:
      return never(next);
  }
}
