// What is filled in with a pen: lines to sign, boxes to tick.
import { of, type SheetElement } from './node.ts';
import { tick } from './pieces-part.ts';

/** A name in small letters under each line. */
export function handLines(name: string, lines: readonly (readonly string[])[]): SheetElement {
  return of(
    'section',
    'part by-hand',
    of('h2', 'part-name', name),
    ...lines.map((fields) =>
      of(
        'div',
        'hand-row',
        ...fields.map((field) => of('div', 'hand-field', of('span', 'hand-name', field))),
      ),
    ),
  );
}

export function tickList(name: string, lines: readonly string[]): SheetElement {
  return of(
    'section',
    'part to-tick',
    of('h2', 'part-name', name),
    of('ul', 'ticks', ...lines.map((words) => of('li', 'tick-line', tick(), words))),
  );
}

/** Before a gang leaves the ground. */
export const beforeFlying: readonly string[] = [
  'Every joint has its locks, and every lock is tight.',
  'Rail bolts are in and tight; rails cannot slide.',
  'Lifting hooks seated, undamaged, their latches closed; slings and shackles looked over, tags readable.',
  'Loose hardware, tools, timber and concrete are off the gang and its platform.',
  'Braces and shoes tied so that they cannot swing.',
  'Platform: planks fixed, guardrails firm.',
  'Tag lines on; the signal person is named and seen by the crane operator.',
  'Wind measured and under the limit of whoever sets it; ice and snow off.',
  'Nobody under the load or in its way; the exclusion zone is closed.',
  'Where it goes to is ready: braces can be anchored before the crane lets go.',
];
