// Lines of a note out of a spreadsheet: by the headings of its first row, or without headings as component, how many,
// counted, condition, owner, remark. Rows that cannot be read stay as they are, each with why.
import { conditions } from '../../../../core/yard/movement.ts';
import { pastedGrid } from '../../pours/pasted-cells.ts';
import { type Condition, conditionWords } from '../yard-words.ts';
import { emptyNoteLine, type NoteDraftLine, readPieces } from './note-draft.ts';

export interface PastedRow {
  /** Counted from one, as the spreadsheet counts what was copied. */
  readonly row: number;
  readonly text: string;
  readonly why: string;
}

export interface PastedLines {
  readonly lines: readonly NoteDraftLine[];
  readonly bad: readonly PastedRow[];
  /** Rows without a piece: headings, empty rows, sums. */
  readonly left: readonly PastedRow[];
}

export interface KnownCodes {
  readonly components: readonly string[];
  readonly owners: readonly string[];
  /** Whose pieces they are where a row does not say. */
  readonly owner: string;
}

type Cell = 'component' | 'sent' | 'counted' | 'condition' | 'owner' | 'remark';

const plainOrder: readonly Cell[] = ['component', 'sent', 'counted', 'condition', 'owner', 'remark'];

const headings: readonly (readonly [Cell, RegExp])[] = [
  ['component', /^(component|item|code|piece|part)( code| no\.?)?$/iu],
  ['sent', /^(sent|quantity|qty|how many|pieces|to go|on paper|number)$/iu],
  ['counted', /^(counted|received|loaded|count)$/iu],
  ['condition', /^(condition|state)$/iu],
  ['owner', /^(owner|whose)$/iu],
  ['remark', /^(remarks?|comment)$/iu],
];

const sums = /^(totals?|sum|subtotal)\b/iu;

/** @param keyOf a new key for each line */
export function pastedLines(text: string, known: KnownCodes, keyOf: () => string): PastedLines {
  const grid = pastedGrid(text);
  const lines: NoteDraftLine[] = [];
  const bad: PastedRow[] = [];
  const left: PastedRow[] = [];
  let order: readonly (Cell | null)[] = plainOrder;
  grid.forEach((cells, index) => {
    const row = { row: index + 1, text: cells.join('\t') };
    const headed = headingsOf(cells);
    if (headed !== null) {
      order = headed;
      left.push({ ...row, why: 'headings' });
    } else if (cells.every((cell) => cell.trim() === '')) left.push({ ...row, why: 'empty' });
    else if (sums.test((cells.find((cell) => cell.trim() !== '') ?? '').trim()))
      left.push({ ...row, why: 'a sum' });
    else {
      const line = lineOf(cells, order, known, keyOf);
      if (typeof line === 'string') bad.push({ ...row, why: line });
      else lines.push(line);
    }
  });
  return { lines, bad, left };
}

/** Null where the row is no row of headings: that has at least two of them, and names the component. */
function headingsOf(cells: readonly string[]): readonly (Cell | null)[] | null {
  const found = cells.map((cell) => headings.find(([, words]) => words.test(cell.trim()))?.[0] ?? null);
  const named = found.filter((cell) => cell !== null);
  return named.length >= 2 && named.includes('component') ? found : null;
}

/** The line, or why there is none. */
function lineOf(
  cells: readonly string[],
  order: readonly (Cell | null)[],
  known: KnownCodes,
  keyOf: () => string,
): NoteDraftLine | string {
  const at = (cell: Cell): string => {
    const index = order.indexOf(cell);
    return index < 0 ? '' : (cells[index] ?? '').trim();
  };
  const typed = at('component');
  if (typed === '') return 'The component is missing.';
  const component = codeAmong(known.components, typed);
  if (component === undefined) return unknownComponent(typed, known.components);
  const [sent, counted] = [at('sent'), at('counted')];
  if (sent === '' && counted === '') return 'How many is missing.';
  for (const figure of [sent, counted]) {
    if (figure === '') continue;
    const read = readPieces(figure, component);
    if (!read.ok) return [read.error.message, read.error.hint ?? ''].join(' ').trim();
  }
  const condition = conditionOf(at('condition'));
  if (condition === undefined)
    return `"${at('condition')}" is no condition: it is one of ${conditions.map((each) => conditionWords[each]).join('; ')}.`;
  const owner = at('owner') === '' ? known.owner : codeAmong(known.owners, at('owner'));
  if (owner === undefined) return `There is no owner ${at('owner')}.`;
  return {
    ...emptyNoteLine(keyOf(), owner),
    component,
    condition,
    sent: sent === '' ? counted : sent,
    counted,
    remark: at('remark'),
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
  if (words === '') return 'ready';
  const plain = words.toLowerCase();
  return conditions.find((condition) => condition === plain || conditionWords[condition] === plain);
}
