// Scrap needs a second name: whoever books it does not decide it alone. Common practice, no source.
import type { Refusal } from '../answer.ts';

/** Codes: second-name, same-name. */
export function checkSecondName(
  scrapped: number,
  who: string,
  secondName: string | undefined,
): Refusal | null {
  if (scrapped === 0) return null;
  const second = secondName?.trim() ?? '';
  const pieces = `${scrapped} ${scrapped === 1 ? 'piece' : 'pieces'}`;
  if (second === '')
    return {
      code: 'second-name',
      message: `${pieces} would be scrapped, and nobody beside ${who} has agreed.`,
      field: 'secondName',
      hint: 'Maybe enter the name of the one who looked at them too.',
    };
  if (second.toLowerCase() === who.trim().toLowerCase())
    return {
      code: 'same-name',
      message: `${who} books it: the second name for scrapping ${pieces} has to be another one.`,
      field: 'secondName',
      hint: 'Maybe somebody else looked at them too.',
    };
  return null;
}
