// What was counted on a strip ticket: entries come in parts and add up, whoever made them. What is more than expected
// is kept apart from what is expected, so that the one never hides that the other is missing.
import { conditions, type Condition } from './movement.ts';
import type { StripTicket, TicketEntry, TicketPart } from './strip-ticket.ts';

export type ByCondition = Readonly<Record<Condition, number>>;

export const noPieces: ByCondition = {
  ready: 0,
  'ready-hidden': 0,
  'to-clean': 0,
  'to-repair': 0,
  quarantine: 0,
  scrapped: 0,
};

/** Pieces of one mark: an owner's, or of those that nobody looked at. */
export interface MarkedCount {
  readonly owner: string | null;
  readonly condition: Condition;
  readonly quantity: number;
}

export interface CountedLine {
  readonly part: TicketPart;
  readonly expected: TicketPart['expected'][number];
  /** As many as may be counted without saying that they are extra. */
  readonly most: number;
  readonly isCounted: boolean;
  readonly counted: ByCondition;
  readonly marked: readonly MarkedCount[];
  readonly missing: number;
}

export interface ExtraCount {
  readonly part: string;
  readonly component: string;
  readonly counted: ByCondition;
  readonly marked: readonly MarkedCount[];
}

export function total(counts: ByCondition): number {
  return conditions.reduce((sum, condition) => sum + counts[condition], 0);
}

type Line = TicketEntry['lines'][number];
type Entries = readonly Pick<TicketEntry, 'lines'>[];

/** The expected lines of a ticket in their order, with what was counted of each. */
export function countedLines(ticket: Pick<StripTicket, 'parts'>, entries: Entries): readonly CountedLine[] {
  const lines = entries.flatMap((entry) => entry.lines).filter(({ extra }) => extra !== true);
  return ticket.parts.flatMap((part) =>
    part.expected.map((expected): CountedLine => {
      const own = lines.filter((line) => line.part === part.part && line.component === expected.component);
      const counted = byCondition(own);
      const most = expected.quantity + (expected.sought ?? 0);
      return {
        part,
        expected,
        most,
        isCounted: own.length > 0,
        counted,
        marked: markedOf(own),
        missing: most - total(counted),
      };
    }),
  );
}

/** What was entered as extra, part by part in the order of the codes. */
export function extraCounts(ticket: Pick<StripTicket, 'parts'>, entries: Entries): readonly ExtraCount[] {
  const lines = entries.flatMap((entry) => entry.lines).filter(({ extra }) => extra === true);
  return ticket.parts.flatMap(({ part }) => {
    const own = lines.filter((line) => line.part === part);
    return [...new Set(own.map(({ component }) => component))].sort().flatMap((component) => {
      const of = own.filter((line) => line.component === component);
      const marked = markedOf(of);
      return marked.length === 0 ? [] : [{ part, component, counted: byCondition(of), marked }];
    });
  });
}

function byCondition(lines: readonly Line[]): ByCondition {
  const counts: Record<Condition, number> = { ...noPieces };
  for (const { condition, quantity } of lines) counts[condition] += quantity;
  return counts;
}

/** Marked owners by code, then what nobody looked at; each by condition; without zeros. */
function markedOf(lines: readonly Line[]): readonly MarkedCount[] {
  const owners = [...new Set(lines.flatMap(({ owner }) => owner ?? []))].sort();
  return [...owners, null].flatMap((owner) => {
    const counts = byCondition(lines.filter((line) => (line.owner ?? null) === owner));
    return conditions.flatMap((condition) =>
      counts[condition] === 0 ? [] : [{ owner, condition, quantity: counts[condition] }],
    );
  });
}
