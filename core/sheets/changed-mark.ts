// How a sheet says what has changed since it was last printed, and what ends its own time: by a sign and words, since
// a colour is lost in the first copy.
import type { PrintState } from './changes.ts';
import { momentWords } from './day-words.ts';
import { of, type SheetElement } from './node.ts';

const changedSign = '▲';

/** What every sheet that is told to people says of its own age. */
export function supersededWords(print: PrintState, what: string): string {
  const marks =
    print.before === null
      ? `First printing of ${what}: nothing is marked.`
      : `${changedSign} changed: not as in revision ${print.before.revision} of ${momentWords(print.before.at)}.`;
  return `Superseded once revision ${print.revision + 1} exists. ${marks} Strip times are forecasts, never a release.`;
}

export function changedMark(words: string): SheetElement {
  return of('div', 'changed', of('span', 'changed-sign', changedSign), ` changed: ${words}`);
}
