// What a line of a paper stands at on this phone: what was last read of it, with what is not sent yet laid over it.
// On a ticket entries add up; on a count the last figure of this counter is the figure.
import type { Condition } from '../../../core/yard/movement.ts';
import { type ByCondition, noPieces } from '../../../core/yard/ticket-counts.ts';
import { type EntryLine, type ReadCount, type ReadTicket, sameThing } from '../kept/kept.ts';

export interface CountLine {
  readonly group: string;
  readonly component: string;
  readonly owner: string | null;
  readonly name: string;
  /** On a ticket how many should come back, of late finds how many are missing; null on a count. */
  readonly expected: number | null;
  readonly isLate: boolean;
  /** Pieces of the design that the book has nowhere. */
  readonly unbooked: number;
  readonly lookAlike: string | null;
  readonly bundleSize: number | null;
  readonly isCounted: boolean;
  readonly counted: ByCondition;
  /** Beyond what is expected, said on purpose; always empty on a count. */
  readonly extra: ByCondition;
  /** Whether anything of it is only on this phone. */
  readonly isUnsent: boolean;
}

export interface CountGroup {
  readonly group: string;
  /** Where it goes, in the largest type; of a count the place. */
  readonly goes: string;
  readonly title: string;
  readonly lines: readonly CountLine[];
}

type Pending = readonly (readonly EntryLine[])[];

export function ticketGroups(read: ReadTicket, pendingBatches: Pending): readonly CountGroup[] {
  const pending = pendingBatches.flat();
  return read.parts.map((part) => {
    const group = part.part;
    const own = pending.filter((line) => line.group === group);
    const known = new Map(part.extra.map((line) => [line.component, line]));
    const expected = part.expected.map((line): CountLine => {
      const { component, name, quantity, sought, unbooked, lookAlike } = line;
      const mine = own.filter((each) => each.component === component);
      return {
        group,
        component,
        owner: null,
        name,
        expected: quantity + sought,
        isLate: sought > 0,
        unbooked,
        lookAlike,
        bundleSize: null,
        isCounted: line.isCounted || mine.some(({ extra }) => !extra),
        counted: added(
          line.counted,
          mine.filter(({ extra }) => !extra),
        ),
        extra: added(
          known.get(component)?.counted ?? noPieces,
          mine.filter(({ extra }) => extra),
        ),
        isUnsent: mine.length > 0,
      };
    });
    const others = [...new Set([...known.keys(), ...own.map(({ component }) => component)])].filter(
      (component) => !expected.some((line) => line.component === component),
    );
    return {
      group,
      goes: part.nextWords,
      title: part.title,
      lines: [
        ...expected,
        ...others.map((component): CountLine => {
          const mine = own.filter((each) => each.component === component);
          return {
            group,
            component,
            owner: null,
            name: known.get(component)?.name ?? 'not on this ticket',
            expected: 0,
            isLate: false,
            unbooked: 0,
            lookAlike: null,
            bundleSize: null,
            isCounted: true,
            counted: noPieces,
            extra: added(known.get(component)?.counted ?? noPieces, mine),
            isUnsent: mine.length > 0,
          };
        }),
      ],
    };
  });
}

export function countGroups(read: ReadCount, counter: 1 | 2, pending: Pending): readonly CountGroup[] {
  return read.places.map(({ code, name }) => ({
    group: code,
    goes: name === code ? code : `${code} ${name}`,
    title: '',
    lines: read.lines
      .filter(({ location }) => location === code)
      .map((line): CountLine => {
        const thing = { group: code, component: line.component, owner: line.owner };
        const mine = lastFigure(pending, thing);
        const figure = line.figures.find((each) => each.counter === counter);
        return {
          ...thing,
          name: line.name,
          expected: null,
          isLate: false,
          unbooked: 0,
          lookAlike: line.lookAlikes.length === 0 ? null : line.lookAlikes.join(', '),
          bundleSize: line.bundleSize,
          isCounted: mine.length > 0 || figure !== undefined,
          counted: mine.length > 0 ? added(noPieces, mine) : { ...noPieces, ...figure?.byCondition },
          extra: noPieces,
          isUnsent: mine.length > 0,
        };
      }),
  }));
}

/** A figure is entered whole, in all its conditions: the last batch that has the thing says all of it. */
function lastFigure(pending: Pending, thing: Parameters<typeof sameThing>[0]): readonly EntryLine[] {
  const figures = pending.map((lines) => lines.filter((line) => sameThing(line, thing)));
  return figures.findLast((lines) => lines.length > 0) ?? [];
}

function added(counted: ByCondition, lines: readonly EntryLine[]): ByCondition {
  const sum: Record<Condition, number> = { ...counted };
  for (const { condition, quantity } of lines) sum[condition] += quantity;
  return sum;
}
