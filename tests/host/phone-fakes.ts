// Tickets and counts small enough to see through: what is entered is kept and listed, by id once, with who and when.
import { z } from 'zod';
import { answer, refuse } from '../../core/answer.ts';
import { importFile } from '../../core/procedures/import-file.ts';
import { calculation, type Procedure } from '../../core/procedures/procedure.ts';

export interface Entered {
  readonly name: string;
  readonly id: string;
  readonly at: string;
  readonly device: string;
}

export interface Fakes {
  readonly entered: Entered[];
  readonly asked: { readonly name: string; readonly input: unknown }[];
  readonly procedures: Readonly<Record<string, Procedure>>;
}

const jobOf: Readonly<Record<string, string>> = { 'S-1': 'J1', 'S-2': 'J2' };

export function phoneFakes(): Fakes {
  const entered: Entered[] = [];
  const asked: { name: string; input: unknown }[] = [];
  const any = z.looseObject({});
  const fake = (name: string, run: (input: Record<string, unknown>) => ReturnType<typeof answer<unknown>>) =>
    calculation({
      name,
      input: any,
      output: z.unknown(),
      run: (input) => {
        asked.push({ name, input });
        return run(input);
      },
    });
  const enter = (name: string) =>
    fake(name, (input) => {
      if (!entered.some(({ id }) => id === input['id']))
        entered.push({
          name,
          id: String(input['id']),
          at: String(input['at']),
          device: String(input['device']),
        });
      return answer({ entries: entered.length });
    });
  const all: readonly Procedure[] = [
    fake('ticket.list', ({ job, state }) => answer({ tickets: [{ job, state }] })),
    calculation({
      name: 'ticket.read',
      input: any,
      output: z.unknown(),
      run: ({ ticket }) => {
        const job = jobOf[String(ticket)];
        return job === undefined
          ? refuse('unknown-ticket', `There is no ticket ${String(ticket)}.`)
          : answer({ ticket: { job } });
      },
    }),
    enter('ticket.enter'),
    fake('count.list', () => answer({ counts: [] })),
    fake('count.read', () => answer({})),
    enter('count.enter'),
    fake('ticket.book', () => answer({})),
    fake('yard.move', () => answer({})),
  ];
  return {
    entered,
    asked,
    procedures: Object.fromEntries(
      [...all, importFile].map((each): [string, Procedure] => [each.name, each]),
    ),
  };
}
