// Lines of a slip out of a spreadsheet: by the headings of the first row, or without headings as component, how many,
// condition, owner, location. Rows that cannot be read stay as they are, each with why.
import { conditions } from '../../../core/yard/movement.ts';
import { pastedGrid } from '../pours/pasted-cells.ts';
import { type DraftLine, emptyLine, readQuantity } from './booking-draft.ts';
import { type Condition, conditionWords } from './yard-words.ts';

export interface UnreadRow {
  /** Counted from one, as the spreadsheet counts what was copied. */
  readonly row: number;
  readonly text: string;
  readonly why: string;
}

export interface PastedSlip {
  readonly lines: readonly DraftLine[];
  readonly bad: readonly UnreadRow[];
  /** Rows without a piece: headings, empty rows, sums. */
  readonly left: readonly UnreadRow[];
}

export interface SlipCodes {
  readonly components: readonly string[];
  readonly owners: readonly string[];
  readonly locations: readonly string[];
  /** Conditions of a line whose row names none. */
  readonly like: Pick<DraftLine, 'condition' | 'conditionAfter'>;
}

type Cell = 'component' | 'quantity' | 'condition' | 'owner' | 'location';

const plainOrder: readonly Cell[] = ['component', 'quantity', 'condition', 'owner', 'location'];

const headings: Readonly<Record<Cell, RegExp>> = {
  component: /^(component|item|code|piece|part)( code| no\.?)?$/iu,
  quantity: /^(quantity|qty|how many|pieces|count|number)$/iu,
  condition: /^(condition|state)$/iu,
  owner: /^(owner|whose)$/iu,
  location: /^(location|place|where|yard|rack)$/iu,
};

const sums = /^(totals?|sum|subtotal)\b/iu;

/** @param idOf a new id for each line */
export function pastedSlip(text: string, known: SlipCodes, idOf: () => string): PastedSlip {
  const lines: DraftLine[] = [];
  const bad: UnreadRow[] = [];
  const left: UnreadRow[] = [];
  let order: readonly (Cell | null)[] = plainOrder;
  for (const [index, given] of pastedGrid(text).entries()) {
    const cells = given.map((cell) => cell.trim());
    const row = { row: index + 1, text: given.join('\t') };
    const headed = cells.map((cell) => plainOrder.find((name) => headings[name].test(cell)) ?? null);
    if (headed.includes('component') && headed.includes('quantity')) {
      order = headed;
      left.push({ ...row, why: 'headings' });
    } else if (cells.every((cell) => cell === '')) left.push({ ...row, why: 'empty' });
    else if (sums.test(cells.find((cell) => cell !== '') ?? '')) left.push({ ...row, why: 'a sum' });
    else {
      const line = lineOf(cells, order, known, idOf);
      if (typeof line === 'string') bad.push({ ...row, why: line });
      else lines.push(line);
    }
  }
  return { lines, bad, left };
}

/** The line, or why there is none. */
function lineOf(
  cells: readonly string[],
  order: readonly (Cell | null)[],
  known: SlipCodes,
  idOf: () => string,
): DraftLine | string {
  const at = (cell: Cell): string => {
    const index = order.indexOf(cell);
    return index < 0 ? '' : (cells[index] ?? '');
  };
  const typed = at('component');
  if (typed === '') return 'The component is missing.';
  const component = codeAmong(known.components, typed);
  if (component === undefined) return unknownComponent(typed, known.components);
  const quantity = readQuantity(at('quantity'));
  if (!quantity.ok) return [quantity.error.message, quantity.error.hint ?? ''].join(' ').trim();
  const words = at('condition');
  const condition = words === '' ? known.like.condition : conditionOf(words);
  if (condition === undefined)
    return `"${words}" is no condition: it is one of ${conditions.map((each) => conditionWords[each]).join('; ')}.`;
  const owner = at('owner') === '' ? '' : codeAmong(known.owners, at('owner'));
  if (owner === undefined) return `There is no owner ${at('owner')}.`;
  const place = at('location') === '' ? '' : codeAmong(known.locations, at('location'));
  if (place === undefined) return `There is no location ${at('location')}.`;
  // Pieces that do not change their condition by the reason keep the one that the row names.
  const isKept = known.like.condition === known.like.conditionAfter;
  const conditionAfter = isKept ? condition : known.like.conditionAfter;
  return {
    ...emptyLine(idOf()),
    component,
    quantity: String(quantity.value),
    condition,
    conditionAfter,
    owner,
    place,
  };
}

function codeAmong(codes: readonly string[], typed: string): string | undefined {
  return codes.find((code) => code.toLowerCase() === typed.toLowerCase());
}

/** What may be meant is proposed and never taken by itself. */
function unknownComponent(typed: string, codes: readonly string[]): string {
  const like = codes.filter((code) => bare(code) === bare(typed));
  return `There is no component ${typed}.${like.length === 0 ? '' : ` Maybe ${like.join(' or ')} is meant.`}`;
}

function bare(code: string): string {
  return code.toLowerCase().replaceAll(/[^a-z0-9]/gu, '');
}

function conditionOf(words: string): Condition | undefined {
  const plain = words.toLowerCase();
  return conditions.find((condition) => condition === plain || conditionWords[condition] === plain);
}
