// A told instruction in words: "GA of P04/A1 goes on to P09/A1".
import { never } from '../../../core/answer.ts';
import type { Output } from '../../client/shapes.ts';

type Row = Output<'told.list'>['next'][number];

export function instructionWords({
  instruction,
  from,
  to,
}: Pick<Row, 'instruction' | 'from' | 'to'>): string {
  switch (instruction.kind) {
    case 'follow': {
      const isRegang = from !== null && to !== null && from.design !== to.design;
      return isRegang
        ? `re-gang ${from.design} of ${instruction.from} into ${to.design} for ${instruction.to}`
        : `${from?.design ?? 'the gang'} of ${instruction.from} flies on to ${instruction.to}`;
    }
    case 'assemble':
      return `assemble ${to?.design ?? 'the gang'} for ${instruction.turn}`;
    case 'break-down':
      return `break down ${from?.design ?? 'the gang'} of ${instruction.turn}`;
    default:
      return never(instruction);
  }
}
