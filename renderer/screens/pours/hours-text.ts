// Hours as people type them into a cell: 24, 7.5, "7,5 h", "7 h 30 min", "7:30".
import { type Answer, answer, refuse } from '../../../core/answer.ts';

export function readHours(text: string): Answer<number> {
  const words = text.trim().toLowerCase().replace(',', '.');
  const plain = /^(\d+(?:\.\d+)?|\.\d+) ?(?:h|hrs?|hours?)?$/u.exec(words);
  const both = /^(\d+) ?(?:h|:) ?(\d{1,2}) ?(?:min|m)?$/u.exec(words);
  const minutes = both === null ? 0 : Number(both[2]);
  const hours =
    plain === null ? (both === null ? undefined : Number(both[1]) + minutes / 60) : Number(plain[1]);
  if (hours === undefined || minutes > 59)
    return refuse('hours-unreadable', `"${text.trim()}" cannot be read as hours.`, {
      hint: 'Maybe write it like 24, 7.5 or 7 h 30 min.',
    });
  if (hours > 10_000)
    return refuse('hours-out-of-range', `${hours} hours are more than the 10,000 a pour can have.`);
  return answer(hours);
}
