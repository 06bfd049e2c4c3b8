// What a line says of itself in words: how it stands against what is expected, and in which conditions.
import { conditions } from '../../../core/yard/movement.ts';
import { total } from '../../../core/yard/ticket-counts.ts';
import { conditionWords } from '../../screens/yard/yard-words.ts';
import type { CountLine } from '../counting/figures.ts';

/** "12 of 16 expected, 4 missing" */
export function standsWords(line: CountLine): string {
  const { expected, isCounted, isLate, unbooked } = line;
  const counted = total(line.counted);
  const extra = total(line.extra);
  const more = extra === 0 ? '' : `, ${extra} extra`;
  if (expected === null) return isCounted ? `${counted} counted` : 'not counted yet';
  if (expected === 0 && counted === 0)
    return unbooked > 0 ? `${unbooked} in the design, none in the book${more}` : `not expected${more}`;
  const sought = isLate ? 'missing before' : 'expected';
  if (!isCounted) return `${expected} ${sought}, not counted yet${more}`;
  const off = expected - counted;
  const stands = off === 0 ? 'all there' : off > 0 ? `${off} missing` : `${-off} more than ${sought}`;
  return `${counted} of ${expected} ${sought}, ${stands}${more}`;
}

/** "9 ready, 3 to clean" */
export function conditionsOf(line: CountLine): string {
  return conditions
    .filter((condition) => line.counted[condition] + line.extra[condition] > 0)
    .map((condition) => `${line.counted[condition] + line.extra[condition]} ${conditionWords[condition]}`)
    .join(', ');
}
