// Keeps a load: as proposed, or as it was put together by hand; when it leaves, and who tied it down. A load that
// passes a limit of its truck, or that cannot come off stop by stop, is not kept; nor are more pieces of a note than
// it has.
import { z } from 'zod';
import { type Answer, answer, refuse } from '../answer.ts';
import type { BookReader } from '../book/book.ts';
import { checkLoad, type LoadBreach } from '../yard/check-load.ts';
import type { Truck, TruckLoad } from '../yard/truck.ts';
import { unknownTruck } from './load-propose.ts';
import { loadId, loadShape } from './load-shapes.ts';
import { readNote } from './note-shapes.ts';
import { command } from './procedure.ts';
import { commandId } from './shapes.ts';

export const loadSave = command({
  name: 'load.save',
  input: z.strictObject({ commandId, load: loadShape }),
  output: z.strictObject({ load: loadId, version: z.int() }),
  run: async (book, { load }) => {
    const [trucks, loads] = await Promise.all([book.trucks(), book.truckLoads()]);
    const truck = trucks.find(({ code }) => code === load.truck);
    if (truck === undefined) return unknownTruck(load.truck);
    const before = loads.find(({ id }) => id === load.id);
    if ((before?.version ?? 0) !== load.version)
      return refuse(
        'changed-meanwhile',
        `The load is at version ${before?.version ?? 0}, and you edited version ${load.version}.`,
        { field: 'load.version', hint: 'Maybe somebody else wrote on it: look at it again before you save.' },
      );
    const [breach] = checkLoad(load.stacks, truck);
    if (breach !== undefined) return refusedBreach(breach, truck);
    const others = loads.filter(({ id, paper }) => id !== load.id && paper !== null && paper === load.paper);
    const refusal = load.paper === null ? null : await loadedTwice(book, load.paper, [...others, load]);
    if (refusal !== null) return refusal;
    const version = load.version + 1;
    await book.putTruckLoad({ ...load, version });
    return answer({ load: load.id, version });
  },
});

function refusedBreach(breach: LoadBreach, truck: Truck) {
  const { rule, stack, other, is, most } = breach;
  const which = stack === null ? 'The load' : `Stack ${stack + 1}`;
  const beside = other === null ? '' : ` and stack ${other + 1}`;
  const figures =
    is === null || most === null ? '' : ` (${figure(rule, is)}, and ${figure(rule, most)} may be)`;
  const words: Readonly<Record<LoadBreach['rule'], string>> = {
    payload: `weighs more than ${truck.name} carries`,
    'deck-length': `stands out beyond the end of the deck of ${truck.name}`,
    'deck-width': `stands out beside the deck of ${truck.name}`,
    'stack-height': `is higher than ${truck.name} may be stacked`,
    'lies-on': 'has something on a thing that is smaller, lighter, wanted earlier, or carries nothing',
    stops: `${beside} stand so that a stop cannot reach its things: behind it stands what comes off later`,
    overlap: `${beside} stand in the same place`,
  };
  return refuse(
    `load-${rule}`,
    `${which}${rule === 'stops' || rule === 'overlap' ? '' : ' '}${words[rule]}${figures}.`,
    {
      field: 'load.stacks',
      hint: 'Maybe have the loads proposed anew, or leave something for another truck.',
    },
  );
}

function figure(rule: LoadBreach['rule'], value: number): string {
  if (rule === 'payload') return `${(value / 1000).toFixed(1)} kg`;
  return rule === 'stops' ? `stop ${value}` : `${(value / 1e6).toFixed(0)} mm`;
}

/** More of a component on the loads of a note than the note has, or one container or gang on two of them. */
async function loadedTwice(
  book: BookReader,
  paper: string,
  loads: readonly Pick<TruckLoad, 'stacks'>[],
): Promise<Answer<never> | null> {
  const note = await readNote(book, paper);
  if (!note.ok) return note;
  const loaded = new Map<string, number>();
  const once = new Set<string>();
  for (const { what } of loads.flatMap(({ stacks }) => stacks.flatMap(({ layers }) => layers))) {
    if ('component' in what) {
      loaded.set(what.component, (loaded.get(what.component) ?? 0) + what.quantity);
      continue;
    }
    const tag = 'container' in what ? what.container : what.gang;
    if (once.has(tag)) return twice(`${tag} is on two loads, or twice on one.`);
    once.add(tag);
  }
  for (const [component, quantity] of loaded) {
    const most = note.value.lines
      .filter((line) => line.component === component)
      .reduce((sum, { counted, sent }) => sum + (counted ?? sent), 0);
    if (quantity > most)
      return twice(
        `${quantity} ${component} are on the loads of note ${note.value.number}; the note has ${most}.`,
      );
  }
  return null;
}

function twice(message: string): Answer<never> {
  return refuse('loaded-twice', message, {
    field: 'load.stacks',
    hint: 'Maybe another load of the same note carries them already.',
  });
}
