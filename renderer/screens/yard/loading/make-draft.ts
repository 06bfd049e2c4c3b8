// What is to be sent as it is typed: lines of pieces, containers and gangs, each with its stop; and what the core is asked.
import type { z } from 'zod';
import type { loadPropose } from '../../../../core/procedures/load-propose.ts';

export interface SendLine {
  readonly id: string;
  /** A component's code, or the tag of a container or a gang. */
  readonly what: string;
  readonly quantity: string;
  readonly stop: string;
}

export interface MakeDraft {
  /** Empty: the lines. */
  readonly note: string;
  readonly lines: readonly SendLine[];
  readonly trucks: readonly string[];
}

export function emptyLine(): SendLine {
  return { id: crypto.randomUUID(), what: '', quantity: '', stop: '1' };
}

export function emptyMake(): MakeDraft {
  return { note: '', lines: [emptyLine()], trucks: [] };
}

type ToSend = NonNullable<z.input<typeof loadPropose.input>['lines']>;

export interface Tags {
  readonly components: ReadonlySet<string>;
  readonly containers: ReadonlySet<string>;
  readonly gangs: ReadonlySet<string>;
}

/** Lines that say nothing yet are left out; of the others each says what is wrong with it. */
export function readLines(
  lines: readonly SendLine[],
  tags: Tags,
): { readonly lines: ToSend; readonly wrong: Readonly<Record<string, string>> } {
  const read: ToSend = [];
  const wrong: Record<string, string> = {};
  for (const line of lines) {
    const what = line.what.trim();
    if (what === '' && line.quantity.trim() === '') continue;
    const stop = wholeNumber(line.stop, 50);
    if (stop === undefined) wrong[line.id] = 'The stop is a whole number from 1 to 50.';
    else if (tags.containers.has(what)) read.push({ container: what, stop });
    else if (tags.gangs.has(what)) read.push({ gang: what, stop });
    else if (!tags.components.has(what))
      wrong[line.id] = `${what || 'Nothing'} is no component, container or gang.`;
    else {
      const quantity = wholeNumber(line.quantity, 100_000);
      if (quantity === undefined) wrong[line.id] = `How many ${what}?`;
      else read.push({ component: what, quantity, stop });
    }
  }
  return { lines: read, wrong };
}

function wholeNumber(text: string, most: number): number | undefined {
  const value = /^\d{1,6}$/u.test(text.trim()) ? Number(text.trim()) : 0;
  return value >= 1 && value <= most ? value : undefined;
}
