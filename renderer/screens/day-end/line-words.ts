// What stands beside a step of the day in words: gates that are open, what waits for it, where it would go.
import { dateWords, type TimeWords } from '../../parts/time-words.ts';
import type { Output } from '../../client/shapes.ts';
import type { Line } from './day-draft.ts';

export type Move = Output<'dayend.preview'>['moves'][number];

export function gateWords(gate: Line['openGates'][number]): string {
  return `open: ${gate.name} by ${gate.who}, ${dateWords(gate.promised)}${gate.late ? ', too late' : ''}`;
}

/** "strip P01 Wed 4 Mar 13:00" */
export function feedWords({ kind, pour, at }: Line['feeds'][number], words: TimeWords): string {
  return `${kind} ${pour} ${words.full(at)}`;
}

const because: Readonly<Record<Move['because'], string>> = {
  'not-done': 'was not done',
  'comes-after': 'comes after it',
  really: 'as it really was',
};

/** "set P02 side A: Tue 3 Mar 07:00 to Wed 4 Mar 07:00, was not done" */
export function moveWords(move: Move, words: TimeWords): string {
  const { what, pour, side } = move;
  const name =
    what === 'pour' ? `${pour} is poured` : `${what} ${pour}${side === null ? '' : ` side ${side}`}`;
  return `${name}: ${words.full(move.from)} to ${words.full(move.to)}, ${because[move.because]}`;
}
