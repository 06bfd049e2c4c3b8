// The legs of a wall in one line: lengths with a turn between them, `24' left 12' right 8'`; `l` and `r` do as well.
import { type Answer, answer, refuse } from '../../../core/answer.ts';

export interface Legs {
  readonly lengthsNm: readonly number[];
  readonly turns: readonly ('left' | 'right')[];
}

const hint = "Maybe write it like 24' left 12'.";

/** Refuses an empty line, two turns in a row, and a length that cannot be read, with what was read. */
export function readLegs(text: string, lengthOf: (text: string) => Answer<number>): Answer<Legs> {
  const parts = text
    .trim()
    .split(/\s*[,;]?\s*\b(left|right|l|r)\b\s*[,;]?\s*/iu)
    .map((part) => part.trim());
  const lengthsNm: number[] = [];
  const turns: ('left' | 'right')[] = [];
  for (const [index, part] of parts.entries()) {
    if (index % 2 === 1) {
      turns.push(part.toLowerCase().startsWith('l') ? 'left' : 'right');
      continue;
    }
    // A closed wall may end with the turn back to its start.
    if (part === '' && index > 0 && index === parts.length - 1) break;
    if (part === '') return refuse('legs-unreadable', 'A leg has no length.', { hint });
    const read = lengthOf(part);
    if (!read.ok) return refuse('legs-unreadable', `"${part}": ${read.error.message}`, { hint });
    if (read.value <= 0) return refuse('legs-unreadable', `"${part}" must be over zero.`, { hint });
    lengthsNm.push(read.value);
  }
  return lengthsNm.length === 0
    ? refuse('legs-unreadable', 'A wall has at least one leg.', { hint })
    : answer({ lengthsNm, turns });
}
