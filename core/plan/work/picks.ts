// What the crane lifts for the forms, and when: every gang is set and stripped, loose pieces go as loads of their own.
// Between two pours a gang that goes on the same day and is not laid down is one pick, else two.
import { localDate } from '../local-time.ts';
import type { LooseTurn, PourTurn } from '../turns-from-pours.ts';
import type { PourTimes } from '../pour-times.ts';

/** In the order in which they are done where nothing else tells them apart. */
export const pickKinds = ['strip', 'fly-on', 'strip-loose', 'set', 'set-loose'] as const;
export type PickKind = (typeof pickKinds)[number];

export interface Pick {
  readonly kind: PickKind;
  readonly date: string;
  /** It cannot be done before: epoch milliseconds. */
  readonly earliest: number;
  readonly pour: string;
  /** Of a gang flown on, the pour it goes to. */
  readonly toPour: string | null;
  /** Null for loose pieces. */
  readonly turn: string | null;
  readonly design: string | null;
}

export interface PickFacts {
  readonly timeZone: string;
  readonly turns: readonly PourTurn[];
  readonly loose: readonly LooseTurn[];
  readonly times: ReadonlyMap<string, PourTimes>;
  /** As `straightOn` has them. */
  readonly straight: ReadonlyMap<string, PourTurn>;
  /** When work planned for an instant is really begun: the instant itself, or the next shift. */
  readonly begun: (at: number) => number;
}

/**
 * Where a gang goes that stands at its next pour on the day of its strip and is not laid down between, by the turn it leaves.
 * @param flownOn the turn that a gang goes to as it stands, by the turn that it leaves
 */
export function straightOn(
  turns: readonly PourTurn[],
  flownOn: ReadonlyMap<string, string>,
  laidDown: (pour: string) => boolean,
  timeZone: string,
): ReadonlyMap<string, PourTurn> {
  const byId = new Map(turns.map((turn) => [turn.id, turn]));
  return new Map(
    turns.flatMap((turn) => {
      const next = byId.get(flownOn.get(turn.id) ?? '');
      if (next === undefined || laidDown(turn.pour)) return [];
      const isSameDay = localDate(turn.to, timeZone) === localDate(next.from, timeZone);
      return isSameDay ? [[turn.id, next] as const] : [];
    }),
  );
}

export function picksOf(facts: PickFacts): readonly Pick[] {
  const { turns, timeZone, times, straight, begun } = facts;
  const arrivesStraight = new Set([...straight.values()].map(({ id }) => id));
  const pick = (kind: PickKind, at: number, { id, pour, design }: PourTurn, toPour: string | null): Pick => {
    const earliest = begun(at);
    const date = localDate(earliest, timeZone);
    return { kind, date, earliest, pour, toPour, turn: id, design };
  };
  const gangs = turns.flatMap((turn) => {
    const next = straight.get(turn.id);
    const stripFrom = times.get(turn.pour)?.stripFrom ?? turn.to;
    return [
      ...(arrivesStraight.has(turn.id) ? [] : [pick('set', turn.from, turn, null)]),
      next === undefined
        ? pick('strip', stripFrom, turn, null)
        : pick('fly-on', Math.max(stripFrom, Math.min(turn.to, next.from)), turn, next.pour),
    ];
  });
  return inOrder([...gangs, ...loosePicks(facts)]);
}

/** One load of loose pieces for every moment at which some of a pour are needed, one with its strip. */
function loosePicks({ loose, times, timeZone, begun }: PickFacts): readonly Pick[] {
  const load = (kind: PickKind, pour: string, at: number): Pick => {
    const earliest = begun(at);
    const date = localDate(earliest, timeZone);
    return { kind, date, earliest, pour, toPour: null, turn: null, design: null };
  };
  return [...Map.groupBy(loose, ({ pour }) => pour)].flatMap(([pour, lines]) => [
    ...[...new Set(lines.map(({ from }) => from))].map((from) => load('set-loose', pour, from)),
    load('strip-loose', pour, times.get(pour)?.stripFrom ?? lines[0]?.to ?? 0),
  ]);
}

function inOrder(picks: readonly Pick[]): readonly Pick[] {
  return [...picks].sort(
    (one, other) =>
      one.earliest - other.earliest ||
      pickKinds.indexOf(one.kind) - pickKinds.indexOf(other.kind) ||
      (one.pour < other.pour ? -1 : one.pour > other.pour ? 1 : 0),
  );
}
