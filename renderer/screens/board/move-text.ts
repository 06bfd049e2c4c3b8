// Reads a move as people type it: "14 +1d", "P07 -2d", "W5 +1w", several parted by commas. A pour is meant
// by its code, its name, or the number in its code. Two that fit are asked about, never chosen between.
import type { Move } from './board-types.ts';

export interface PourName {
  readonly code: string;
  readonly name: string;
}

export type MoveText =
  | { readonly kind: 'moves'; readonly moves: readonly Move[] }
  | { readonly kind: 'empty' }
  | { readonly kind: 'unclear'; readonly message: string; readonly choices: readonly string[] };

/** Five working days a week: "+1w" is "+5d". */
const daysPerWeek = 5;
const mostDays = 60;
const form = /^(.+?)\s*(?<=\s|\w)([+\-−–])\s*(\d{1,3})\s*(d|days?|w|weeks?)?$/iu;

export function readMoves(text: string, pours: readonly PourName[]): MoveText {
  const parts = text
    .split(/[,;]/u)
    .map((part) => part.trim())
    .filter((part) => part !== '');
  if (parts.length === 0) return { kind: 'empty' };
  const moves: Move[] = [];
  for (const part of parts) {
    const read = readOne(part, pours);
    if (read.kind === 'unclear') return read;
    if (moves.some((move) => move.pour === read.move.pour)) {
      return unclear(`${read.move.pour} is moved twice.`);
    }
    moves.push(read.move);
  }
  return { kind: 'moves', moves };
}

type Unclear = Extract<MoveText, { kind: 'unclear' }>;

function readOne(part: string, pours: readonly PourName[]): { kind: 'move'; move: Move } | Unclear {
  const found = form.exec(part);
  if (found === null) {
    const fits = matching(part, pours);
    if (fits.length === 1 && fits[0] !== undefined) {
      return unclear(`By how many working days? Maybe ${fits[0].code} +1d.`, [`${fits[0].code} +1d`]);
    }
    return unclear(`"${part}" is not a move. Maybe write it like 14 +1d or W5 -2d.`);
  }
  const [, who = '', sign = '+', count = '0', unit = 'd'] = found;
  const days = Number(count) * (unit.toLowerCase().startsWith('w') ? daysPerWeek : 1);
  const workingDays = sign === '+' ? days : -days;
  if (days === 0) return unclear(`${part} moves nothing.`);
  if (days > mostDays) return unclear(`${days} working days are more than the ${mostDays} a move may have.`);
  const fits = matching(who.trim(), pours);
  const [only, another] = fits;
  if (only === undefined) return unclear(`No pour is called "${who.trim()}".`);
  if (another !== undefined) {
    return unclear(
      `"${who.trim()}" fits ${fits.length} pours: which one?`,
      fits.slice(0, 6).map((pour) => `${pour.code} ${sign === '+' ? '+' : '-'}${days}d`),
    );
  }
  return { kind: 'move', move: { pour: only.code, workingDays } };
}

/** Code first, then name, then the number in the code, then the beginning of a name: the first that fits. */
export function matching(who: string, pours: readonly PourName[]): readonly PourName[] {
  const said = who.toLowerCase();
  const ways: readonly ((pour: PourName) => boolean)[] = [
    (pour) => pour.code.toLowerCase() === said,
    (pour) => withoutZeros(pour.code) === withoutZeros(said),
    (pour) => pour.name.toLowerCase() === said,
    (pour) => /^\d+$/u.test(said) && numberIn(pour.code) === Number(said),
    (pour) =>
      pour.name
        .toLowerCase()
        .split(/[^\p{L}\p{N}-]+/u)
        .includes(said),
    (pour) => pour.name.toLowerCase().startsWith(said) || pour.code.toLowerCase().startsWith(said),
  ];
  for (const fits of ways) {
    const found = pours.filter(fits);
    if (found.length > 0) return found;
  }
  return [];
}

/** "P07" and "p7" are the same pour to whoever says it. */
function withoutZeros(code: string): string {
  return code.toLowerCase().replaceAll(/(?<!\d)0+(?=\d)/gu, '');
}

function numberIn(code: string): number | undefined {
  const digits = /(\d+)\D*$/u.exec(code)?.[1];
  return digits === undefined ? undefined : Number(digits);
}

function unclear(message: string, choices: readonly string[] = []): Unclear {
  return { kind: 'unclear', message, choices };
}

/** "move W5 by 1 day", "move P07 back by 2 days": for undo and for reading aloud. */
export function moveWords(moves: readonly Move[]): string {
  return moves
    .map(({ pour, workingDays }) => {
      const size = Math.abs(workingDays);
      return `move ${pour} ${workingDays < 0 ? 'back ' : ''}by ${size} working day${size === 1 ? '' : 's'}`;
    })
    .join(', ');
}
