// What happens with a gang before or after a turn, as an instruction: it follows another turn, is assembled, or is
// broken down. Told to the crew it costs something to change; fixed by a person it is obeyed.
import { z } from 'zod';

const turn = z.string().min(1);

const follow = z.strictObject({ kind: z.literal('follow'), from: turn, to: turn });
const assemble = z.strictObject({ kind: z.literal('assemble'), turn });
const breakDown = z.strictObject({ kind: z.literal('break-down'), turn });

export const instruction = z.discriminatedUnion('kind', [follow, assemble, breakDown]);
export type Instruction = z.output<typeof instruction>;

/** `no-regang`: the gang of the turn flies on as it stands or is broken down, but is not made into another. */
export const fixedChoice = z.discriminatedUnion('kind', [
  follow,
  assemble,
  breakDown,
  z.strictObject({ kind: z.literal('no-regang'), turn }),
]);
export type FixedChoice = z.output<typeof fixedChoice>;
