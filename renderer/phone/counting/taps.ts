// What a tap does to the lines of a draft. On a ticket it adds or takes back; on a count it sets the whole figure of a
// thing, in every condition in which any lies there.
import { type Condition, conditions } from '../../../core/yard/movement.ts';
import { type ByCondition, noPieces, total } from '../../../core/yard/ticket-counts.ts';
import { type EntryLine, type Paper, sameLine, sameThing } from '../kept/kept.ts';
import type { CountLine } from './figures.ts';

type Change = (lines: readonly EntryLine[]) => readonly EntryLine[];

/** One more, one less, a bundle more; never below nothing. */
export function addTo(paper: Paper, line: CountLine, condition: Condition, wanted: number): Change {
  const by = Math.max(wanted, -standsAt(line, condition));
  if (paper.kind === 'ticket') return byTicket(line, condition, by, isOnlyExtra(line));
  return (lines) => {
    const figure = figureIn(lines, line);
    return withFigure(lines, line, { ...figure, [condition]: Math.max(0, figure[condition] + by) });
  };
}

/** The figure of one condition as it should stand. */
export function setTo(paper: Paper, line: CountLine, condition: Condition, quantity: number): Change {
  return addTo(paper, line, condition, quantity - standsAt(line, condition));
}

/** As many more in this condition as the ticket still misses. */
export function asExpected(line: CountLine, condition: Condition): Change {
  return byTicket(line, condition, (line.expected ?? 0) - total(line.counted), false);
}

/** What is beyond the expected goes over to what is entered as extra, in the condition that has it. */
export function overAsExtra(line: CountLine): Change {
  return (lines) => {
    let over = total(line.counted) - (line.expected ?? 0);
    let changed = lines;
    for (const condition of [...conditions].reverse()) {
      const some = Math.min(over, line.counted[condition]);
      if (some <= 0) continue;
      over -= some;
      changed = byExtra(line, condition, some)(byTicket(line, condition, -some, false)(changed));
    }
    return changed;
  };
}

/** Looked for, and none was there. */
export function noneThere(paper: Paper, line: CountLine): Change {
  return (lines) =>
    paper.kind === 'ticket' ? byTicket(line, 'ready', 0, false)(lines) : withFigure(lines, line, noPieces);
}

/** As if nobody had counted it here; what was sent stays. */
export function forget(line: CountLine): Change {
  return (lines) => lines.filter((each) => !sameThing(each, line));
}

/** Something that the ticket does not expect. */
export function somethingElse(group: string, component: string, condition: Condition, by: number): Change {
  return (lines) => plus(lines, { group, component, owner: null, condition, extra: true, quantity: by });
}

/** What is tapped on this line: of what nobody expects, the extra. */
export function standsAt(line: CountLine, condition: Condition): number {
  return isOnlyExtra(line) ? line.extra[condition] : line.counted[condition];
}

/** The ticket expects none of it, so that all of it is more than expected. */
export function isOnlyExtra(line: CountLine): boolean {
  return line.expected === 0 && total(line.counted) === 0;
}

function byTicket(line: CountLine, condition: Condition, by: number, extra: boolean): Change {
  const { group, component, owner } = line;
  return (lines) => plus(lines, { group, component, owner, condition, extra, quantity: by });
}

function byExtra(line: CountLine, condition: Condition, by: number): Change {
  return byTicket(line, condition, by, true);
}

function plus(lines: readonly EntryLine[], more: EntryLine): readonly EntryLine[] {
  if (!lines.some((line) => sameLine(line, more))) return [...lines, more];
  return lines.map((line) =>
    sameLine(line, more) ? { ...line, quantity: line.quantity + more.quantity } : line,
  );
}

/** As it stands in the draft, else as it is shown. */
function figureIn(lines: readonly EntryLine[], line: CountLine): ByCondition {
  const own = lines.filter((each) => sameThing(each, line));
  if (own.length === 0) return line.counted;
  const figure: Record<Condition, number> = { ...noPieces };
  for (const { condition, quantity } of own) figure[condition] = quantity;
  return figure;
}

/** Every condition that has any, and always one: a figure of nothing is a figure. */
function withFigure(lines: readonly EntryLine[], line: CountLine, figure: ByCondition): readonly EntryLine[] {
  const { group, component, owner } = line;
  const some = conditions.filter((condition) => figure[condition] > 0);
  const told = some.length === 0 ? (['ready'] as const) : some;
  return [
    ...lines.filter((each) => !sameThing(each, line)),
    ...told.map((condition) => ({
      group,
      component,
      owner,
      condition,
      extra: false,
      quantity: figure[condition],
    })),
  ];
}
