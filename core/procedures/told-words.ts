// A told instruction in words for the crew: "GA from P01 side A goes on to P04 side B".
import { never } from '../answer.ts';
import type { Instruction } from '../plan/choices.ts';
import type { PourTurn } from '../plan/turns-from-pours.ts';

export function toldWords(told: Instruction, turns: readonly PourTurn[]): string {
  const at = (id: string): PourTurn | undefined => turns.find((turn) => turn.id === id);
  const place = (id: string): string => {
    const turn = at(id);
    return turn === undefined ? id : `${turn.pour} side ${turn.side}`;
  };
  const design = (id: string): string => at(id)?.design ?? 'the gang';
  switch (told.kind) {
    case 'follow': {
      const [from, to] = [design(told.from), design(told.to)];
      const how = from === to ? 'goes on as it stands' : `is re-ganged into ${to}`;
      return `${from} from ${place(told.from)} ${how} to ${place(told.to)}`;
    }
    case 'assemble':
      return `${design(told.turn)} is assembled for ${place(told.turn)}`;
    case 'break-down':
      return `${design(told.turn)} from ${place(told.turn)} is broken down`;
    default:
      return never(told);
  }
}
