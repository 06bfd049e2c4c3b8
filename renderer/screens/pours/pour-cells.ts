// The columns of the pour table that can be written in: how a cell is printed, what its text becomes, and
// which fields of a refusal belong to it. The core decides whether a pour may be so.
import { type Answer, answer, refuse } from '../../../core/answer.ts';
import { timeWords } from '../../parts/time-words.ts';
import { readHours } from './hours-text.ts';
import type { CellContext, Pour } from './pour-shapes.ts';
import { readWhen } from '../../parts/when-text.ts';

export interface EditableCell {
  /** The text that stands in the cell and in the field when it is opened. */
  readonly text: (pour: Pour, context: CellContext) => string;
  /** The pour with this cell changed; everything else as it was. */
  readonly write: (pour: Pour, text: string, context: CellContext) => Answer<Pour>;
  /** Beginnings of `field` in a refusal of the core that point at this cell. */
  readonly fields: readonly string[];
}

export type CellId =
  | 'name'
  | 'element'
  | 'order'
  | 'setA'
  | 'setAH'
  | 'setB'
  | 'setBH'
  | 'finish'
  | 'minimumH'
  | 'stripH'
  | 'after';

function changed<T>(read: Answer<T>, change: (value: T) => Pour): Answer<Pour> {
  return read.ok ? answer(change(read.value)) : read;
}

function whenCell(
  read: (pour: Pour) => string,
  change: (pour: Pour, at: string) => Pour,
  fields: readonly string[],
): EditableCell {
  return {
    text: (pour, { timeZone }) => timeWords(timeZone).full(read(pour)),
    write: (pour, text, { timeZone }) =>
      changed(readWhen(text, read(pour), timeZone), (at) => change(pour, at)),
    fields,
  };
}

function hoursCell(
  read: (pour: Pour) => number,
  change: (pour: Pour, hours: number) => Pour,
  fields: readonly string[],
): EditableCell {
  return {
    text: (pour) => String(Math.round(read(pour) * 100) / 100),
    write: (pour, text) => changed(readHours(text), (hours) => change(pour, hours)),
    fields,
  };
}

function sideChanged(pour: Pour, index: 0 | 1, part: { setAt: string } | { setH: number }): Pour {
  const [a, b] = pour.sides;
  return { ...pour, sides: index === 0 ? [{ ...a, ...part }, b] : [a, { ...b, ...part }] };
}

const sideFields = (index: 0 | 1, part: string): string[] => [
  `sides.${index === 0 ? 'A' : 'B'}.${part}`,
  `sides.${index}.${part}`,
  `pour.sides.${index}.${part}`,
];

const orderWords = { 'face-first': 'face first', 'steel-first': 'steel first' } as const;

function readOrder(text: string): Answer<Pour['order']> {
  const words = text.trim().toLowerCase().replaceAll('-', ' ');
  if (words !== '' && 'face first'.startsWith(words)) return answer('face-first');
  if (words !== '' && 'steel first'.startsWith(words)) return answer('steel-first');
  return refuse('order-unreadable', `"${text.trim()}" is not an order of setting.`, {
    hint: 'Maybe write face first or steel first.',
  });
}

/** Codes parted by commas, semicolons or spaces. */
function readCodes(text: string): string[] {
  return [...new Set(text.split(/[\s,;]+/u).filter(Boolean))];
}

export const cells: Readonly<Record<CellId, EditableCell>> = {
  name: {
    text: (pour) => pour.name,
    write: (pour, text) => answer({ ...pour, name: text.trim() }),
    fields: ['name', 'pour.name'],
  },
  element: {
    text: (pour) => pour.element,
    write: (pour, text) => answer({ ...pour, element: text.trim() }),
    fields: ['element', 'pour.element'],
  },
  order: {
    text: (pour) => orderWords[pour.order],
    write: (pour, text) => changed(readOrder(text), (order) => ({ ...pour, order })),
    fields: ['order', 'pour.order'],
  },
  setA: whenCell(
    (pour) => pour.sides[0].setAt,
    (pour, setAt) => sideChanged(pour, 0, { setAt }),
    sideFields(0, 'setAt'),
  ),
  setAH: hoursCell(
    (pour) => pour.sides[0].setH,
    (pour, setH) => sideChanged(pour, 0, { setH }),
    sideFields(0, 'setH'),
  ),
  setB: whenCell(
    (pour) => pour.sides[1].setAt,
    (pour, setAt) => sideChanged(pour, 1, { setAt }),
    sideFields(1, 'setAt'),
  ),
  setBH: hoursCell(
    (pour) => pour.sides[1].setH,
    (pour, setH) => sideChanged(pour, 1, { setH }),
    sideFields(1, 'setH'),
  ),
  finish: whenCell(
    (pour) => pour.finishAt,
    (pour, finishAt) => ({ ...pour, finishAt }),
    ['finishAt', 'pour.finishAt'],
  ),
  minimumH: hoursCell(
    (pour) => pour.stripMinimumH,
    (pour, stripMinimumH) => ({ ...pour, stripMinimumH }),
    ['stripMinimumH', 'pour.stripMinimumH'],
  ),
  stripH: hoursCell(
    (pour) => pour.stripH,
    (pour, stripH) => ({ ...pour, stripH }),
    ['stripH', 'pour.stripH'],
  ),
  after: {
    text: (pour) => pour.after.join(', '),
    write: (pour, text) => answer({ ...pour, after: readCodes(text) }),
    fields: ['after', 'pour.after'],
  },
};

/** Cells by name in a sentence. */
export const cellWords: Readonly<Record<CellId, string>> = {
  name: 'name',
  element: 'element',
  order: 'order',
  setA: 'set side A',
  setAH: 'hours of setting side A',
  setB: 'set side B',
  setBH: 'hours of setting side B',
  finish: 'finish',
  minimumH: 'minimum hours',
  stripH: 'strip hours',
  after: 'after',
};

export function isCellId(id: string): id is CellId {
  return Object.hasOwn(cells, id);
}

/** The cell that a refusal of the core points at, if it points at one. */
export function cellOfField(field: string | undefined): CellId | undefined {
  if (field === undefined) return undefined;
  // The door writes `sides[0].setAt` where the core's own checks write `sides.A.setAt`.
  const dotted = field.replaceAll(/\[(\d+)\]/gu, '.$1');
  const ids = Object.keys(cells).filter(isCellId);
  return ids.find((id) =>
    cells[id].fields.some((start) => dotted === start || dotted.startsWith(`${start}.`)),
  );
}
