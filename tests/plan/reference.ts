// A second reading of `calc plan`, written apart from the planner and by another method: every instant at
// which anything changes is looked at by itself, times are whole nanoseconds in big integers, time zones
// come from Intl. Slow and plain on purpose; it shares no code with core/plan.
import type { PlanInput } from '../../core/plan/contract.ts';

const hourNs = 3_600_000_000_000n;
const dayMs = 86_400_000;

/** A decimal as a whole number of billionths; the tests use no finer ones. */
function billionths(value: number): bigint {
  const [, whole, fraction = ''] = /^(\d+)(?:\.(\d{1,9}))?$/u.exec(String(value)) ?? [];
  if (whole === undefined) throw new Error(`${value} has more than nine decimals`);
  return BigInt(whole + fraction.padEnd(9, '0'));
}

function hoursNs(hours: bigint): bigint {
  return (hours * hourNs) / 1_000_000_000n;
}

export function nsOf(text: string): bigint {
  return BigInt(Date.parse(text)) * 1_000_000n;
}

const formats = new Map<string, Intl.DateTimeFormat>();

/** Milliseconds that the zone's wall clock is ahead of UTC at the instant. */
function offsetMs(timeZone: string, epochMs: number): number {
  let format = formats.get(timeZone);
  if (format === undefined) {
    format = new Intl.DateTimeFormat('en-US', {
      timeZone,
      hourCycle: 'h23',
      year: 'numeric',
      month: 'numeric',
      day: 'numeric',
      hour: 'numeric',
      minute: 'numeric',
      second: 'numeric',
    });
    formats.set(timeZone, format);
  }
  const parts = Object.fromEntries(
    format.formatToParts(epochMs).map(({ type, value }) => [type, Number(value)]),
  );
  const wall = Date.UTC(
    parts.year ?? 0,
    (parts.month ?? 1) - 1,
    parts.day,
    parts.hour,
    parts.minute,
    parts.second,
  );
  return wall - Math.floor(epochMs / 1000) * 1000;
}

/** The instant of a wall-clock time that exists once: of two tries the one that reads back the same. */
function wallToMs(timeZone: string, wallMs: number): number {
  for (const guess of [wallMs - dayMs, wallMs + dayMs, wallMs]) {
    const at = wallMs - offsetMs(timeZone, guess);
    if (at + offsetMs(timeZone, at) === wallMs) return at;
  }
  throw new Error('A wall-clock time that does not exist');
}

interface Interval {
  from: bigint;
  to: bigint;
}

function minutes(time: string): number {
  return Number(time.split(':')[0]) * 60 + Number(time.split(':')[1]);
}

const shiftLists = new WeakMap<object, Interval[]>();

function shiftList(shifts: NonNullable<PlanInput['shifts']>): Interval[] {
  const known = shiftLists.get(shifts);
  if (known !== undefined) return known;
  const list: Interval[] = [];
  for (let wall = Date.UTC(2025, 11, 1); wall < Date.UTC(2026, 8, 1); wall += dayMs) {
    const weekday = new Date(wall).getUTCDay() === 0 ? 7 : new Date(wall).getUTCDay();
    const date = new Date(wall).toISOString().slice(0, 10);
    const at = (time: string, nextDay = false): bigint =>
      BigInt(wallToMs(shifts.timeZone, wall + minutes(time) * 60_000 + (nextDay ? dayMs : 0))) * 1_000_000n;
    if (shifts.days.includes(weekday) && shifts.off?.includes(date) !== true)
      list.push({ from: at(shifts.start), to: at(shifts.end) });
    for (const { start, end } of (shifts.extra ?? []).filter((each) => each.date === date))
      list.push({ from: at(start), to: at(end, end <= start) });
  }
  const once = shifts.extra === undefined ? list : union(list);
  shiftLists.set(shifts, once);
  return once;
}

/** Between two neighbouring ends of intervals there is work where any interval covers it. */
function union(intervals: readonly Interval[]): Interval[] {
  const ends = [...new Set(intervals.flatMap(({ from, to }) => [from, to]))].sort((one, other) =>
    one < other ? -1 : 1,
  );
  return ends
    .map((from, index) => ({ from, to: ends[index + 1] ?? from }))
    .filter(({ from, to }) => intervals.some((each) => each.from <= from && to <= each.to && from < to));
}

/** For tests of calendars by themselves: hours of work between two instants in epoch milliseconds. */
export function shiftHoursBetween(
  shifts: NonNullable<PlanInput['shifts']>,
  from: number,
  to: number,
): number {
  return (
    shiftStretches(shifts).reduce(
      (sum, shift) => sum + Math.max(0, Math.min(shift.to, to) - Math.max(shift.from, from)),
      0,
    ) / 3_600_000
  );
}

export function shiftStretches(shifts: NonNullable<PlanInput['shifts']>): { from: number; to: number }[] {
  return shiftList(shifts).map(({ from, to }) => ({
    from: Number(from / 1_000_000n),
    to: Number(to / 1_000_000n),
  }));
}

function workBetween(input: PlanInput, from: bigint, to: bigint): bigint {
  if (input.shifts === undefined) return to - from;
  let sum = 0n;
  for (const shift of shiftList(input.shifts)) {
    const begin = shift.from > from ? shift.from : from;
    const end = shift.to < to ? shift.to : to;
    if (end > begin) sum += end - begin;
  }
  return sum;
}

/** Walks back shift by shift until the work is done. */
function refBefore(input: PlanInput, at: bigint, work: bigint): bigint {
  if (work === 0n) return at;
  if (input.shifts === undefined) return at - work;
  let left = work;
  for (const shift of shiftList(input.shifts).toReversed()) {
    if (shift.from >= at) continue;
    const end = shift.to < at ? shift.to : at;
    if (end - shift.from >= left) return end - left;
    left -= end - shift.from;
  }
  throw new Error('The list of shifts is too short');
}

function refAfter(input: PlanInput, at: bigint, work: bigint): bigint {
  if (work === 0n) return at;
  if (input.shifts === undefined) return at + work;
  let left = work;
  for (const shift of shiftList(input.shifts)) {
    if (shift.to <= at) continue;
    const begin = shift.from > at ? shift.from : at;
    if (shift.to - begin >= left) return begin + left;
    left -= shift.to - begin;
  }
  throw new Error('The list of shifts is too short');
}

type Turn = PlanInput['turns'][number];
type Pieces = Record<string, number>;

function piecesOf(input: PlanInput, turn: Turn): Pieces {
  return input.designs.find(({ code }) => code === turn.design)?.pieces ?? {};
}

function designOf(input: PlanInput, turn: Turn): PlanInput['designs'][number] {
  const found = input.designs.find(({ code }) => code === turn.design);
  if (found === undefined) throw new Error(turn.design);
  return found;
}

/** Billionths of hours. */
function refRegang(input: PlanInput, earlier: Turn, later: Turn): bigint {
  if (earlier.design === later.design) return 0n;
  const { regangH = [], regangBaseH, regangPerPieceH } = input.turnaround;
  const entry = regangH.find(({ from, to }) => from === earlier.design && to === later.design);
  if (entry !== undefined) return billionths(entry.hours);
  let sum = billionths(regangBaseH);
  for (const { code } of input.components) {
    const rate = typeof regangPerPieceH === 'number' ? regangPerPieceH : (regangPerPieceH[code] ?? 0);
    const difference = Math.abs((piecesOf(input, earlier)[code] ?? 0) - (piecesOf(input, later)[code] ?? 0));
    sum += billionths(rate) * BigInt(difference);
  }
  return sum;
}

export function refMayFollow(input: PlanInput, earlier: Turn, later: Turn): boolean {
  const flown = nsOf(earlier.to) + hoursNs(billionths(input.turnaround.flyOnH));
  if (flown > nsOf(later.from)) return false;
  if (earlier.design === later.design) return true;
  const after = piecesOf(input, later);
  const shared = Object.entries(piecesOf(input, earlier)).some(
    ([code, n]) => n > 0 && (after[code] ?? 0) > 0,
  );
  return shared && workBetween(input, flown, nsOf(later.from)) >= hoursNs(refRegang(input, earlier, later));
}

export interface RefHold {
  code: string;
  n: number;
  from: bigint;
  to: bigint;
  who: { turn?: string; loose?: string };
}

function minus(left: Pieces, right: Pieces): Pieces {
  return Object.fromEntries(
    Object.entries(left).map(([code, n]) => [code, Math.max(0, n - (right[code] ?? 0))]),
  );
}

function common(left: Pieces, right: Pieces): Pieces {
  return Object.fromEntries(Object.entries(left).map(([code, n]) => [code, Math.min(n, right[code] ?? 0)]));
}

/** What a plan holds and the billionths of hours of work it takes. */
export function refHolds(
  input: PlanInput,
  runs: readonly (readonly string[])[],
): { holds: RefHold[]; hours: bigint } {
  const holds: RefHold[] = [];
  let hours = 0n;
  const { flyOnH, cleanH = 0 } = input.turnaround;
  const clean = hoursNs(billionths(cleanH));
  const hold = (pieces: Pieces, from: bigint, to: bigint, who: RefHold['who']): void => {
    for (const [code, n] of Object.entries(pieces))
      if (n > 0 && from < to) holds.push({ code, n, from, to, who });
  };
  for (const { id, pieces, from, to } of input.loose ?? [])
    hold(pieces, nsOf(from), nsOf(to) + clean, { loose: id });
  for (const run of runs) {
    const turns = run.map((id) => input.turns.find((turn) => turn.id === id) ?? fail(id));
    for (const [place, turn] of turns.entries()) {
      const own = piecesOf(input, turn);
      const design = designOf(input, turn);
      const next = turns[place + 1];
      hold(own, nsOf(turn.from), nsOf(turn.to), { turn: turn.id });
      if (place === 0 && turn.built !== true) {
        const work = billionths(design.assembleH);
        hours += work;
        hold(own, refBefore(input, nsOf(turn.from), hoursNs(work)), nsOf(turn.from), { turn: turn.id });
      }
      if (next === undefined) {
        const work = billionths(design.breakDownH);
        hours += work;
        hold(own, nsOf(turn.to), refAfter(input, nsOf(turn.to), hoursNs(work)) + clean, { turn: turn.id });
        continue;
      }
      const work = refRegang(input, turn, next);
      const other = piecesOf(input, next);
      hours += billionths(flyOnH) + work;
      hold(common(own, other), nsOf(turn.to), nsOf(next.from), { turn: turn.id });
      hold(minus(other, own), refBefore(input, nsOf(next.from), hoursNs(work)), nsOf(next.from), {
        turn: next.id,
      });
      hold(minus(own, other), nsOf(turn.to), refAfter(input, nsOf(turn.to), hoursNs(work)) + clean, {
        turn: turn.id,
      });
    }
  }
  return { holds, hours };
}

function fail(id: string): never {
  throw new Error(`No turn ${id}`);
}

export function refStock(input: PlanInput, code: string, at: bigint): number {
  const stock = input.components.find((component) => component.code === code)?.stock ?? 0;
  if (typeof stock === 'number') return stock;
  let level = 0;
  let latest: bigint | undefined;
  for (const { from, quantity } of stock) {
    if (nsOf(from) <= at && (latest === undefined || nsOf(from) > latest)) {
      latest = nsOf(from);
      level = quantity;
    }
  }
  return level;
}

/** The local date of an instant, as the number of days. */
function localDay(input: PlanInput, at: bigint): number {
  const epochMs = Number(at / 1_000_000n) - (at % 1_000_000n < 0n ? 1 : 0);
  if (input.shifts !== undefined)
    return Math.floor((epochMs + offsetMs(input.shifts.timeZone, epochMs)) / dayMs);
  const stockList = input.components
    .map(({ stock }) => stock)
    .find((stock) => typeof stock !== 'number' && stock.length > 0);
  const first =
    typeof stockList === 'object' ? stockList[0]?.from : (input.turns[0]?.from ?? input.loose?.[0]?.from);
  const sign = /([+-])(\d\d):(\d\d)$/u.exec(first ?? 'Z');
  const ahead =
    sign === null ? 0 : (sign[1] === '-' ? -1 : 1) * (Number(sign[2]) * 60 + Number(sign[3])) * 60_000;
  return Math.floor((epochMs + ahead) / dayMs);
}

export interface RefCost {
  /** Quintillionths (1e-18) of a minor unit. */
  labour: bigint;
  hire: bigint;
  unmet: number;
}

const days = new WeakMap<PlanInput, Map<bigint, number>>();

export function dayAt(input: PlanInput, at: bigint): number {
  let known = days.get(input);
  if (known === undefined) days.set(input, (known = new Map()));
  let day = known.get(at);
  if (day === undefined) known.set(at, (day = localDay(input, at)));
  return day;
}

/** Every instant at which the component's held or stock can change, and every midnight between. */
export function instantsOf(input: PlanInput, code: string, holds: readonly RefHold[]): bigint[] {
  const all = new Set<bigint>();
  for (const { from, to } of holds) all.add(from).add(to);
  const sorted = [...all].sort((left, right) => (left < right ? -1 : 1));
  const [first, last] = [sorted[0] ?? 0n, sorted.at(-1) ?? 0n];
  const stock = input.components.find((component) => component.code === code)?.stock;
  if (typeof stock === 'object')
    for (const { from } of stock) if (nsOf(from) > first && nsOf(from) < last) all.add(nsOf(from));
  // Midnights fall on whole quarter hours in every zone of today.
  const quarter = 900_000_000_000n;
  for (let at = (first / quarter) * quarter; at < last; at += quarter) {
    if (at > first && dayAt(input, at) !== dayAt(input, at - quarter)) all.add(at);
  }
  return [...all].sort((left, right) => (left < right ? -1 : 1));
}

export function refCost(input: PlanInput, runs: readonly (readonly string[])[]): RefCost {
  const { holds, hours } = refHolds(input, runs);
  const labour = hours * billionths(input.labourPerH);
  const crew = billionths(input.crew ?? 1);
  let [hire, unmet] = [0n, 0];
  for (const { code, hirePerDay } of input.components) {
    const own = holds.filter((entry) => entry.code === code);
    const most = new Map<number, number>();
    for (const at of instantsOf(input, code, own)) {
      let held = 0;
      for (const { n, from, to } of own) if (from <= at && at < to) held += n;
      const day = dayAt(input, at);
      most.set(day, Math.max(most.get(day) ?? 0, held - refStock(input, code, at)));
    }
    for (const excess of most.values()) {
      if (hirePerDay === null) unmet += excess;
      else hire += BigInt(excess) * billionths(hirePerDay) * 1_000_000_000n;
    }
  }
  return { labour: (labour * crew) / 1_000_000_000n, hire, unmet };
}

export interface RefShortfall {
  component: string;
  from: bigint;
  to: bigint;
  quantity: number;
  turns: string[];
  loose: string[];
}

export function refShortfalls(input: PlanInput, runs: readonly (readonly string[])[]): RefShortfall[] {
  const { holds } = refHolds(input, runs);
  const found: RefShortfall[] = [];
  for (const { code } of input.components) {
    const own = holds.filter((entry) => entry.code === code);
    const instants = instantsOf(input, code, own);
    let open: RefShortfall | undefined;
    for (const [place, at] of instants.entries()) {
      const here = own.filter(({ from, to }) => from <= at && at < to);
      const quantity = here.reduce((sum, { n }) => sum + n, 0) - refStock(input, code, at);
      if (open !== undefined && open.quantity !== quantity) {
        found.push({ ...open, to: at });
        open = undefined;
      }
      if (quantity <= 0 || place === instants.length - 1) continue;
      open ??= { component: code, from: at, to: at, quantity, turns: [], loose: [] };
      for (const { who } of here) {
        if (who.turn !== undefined && !open.turns.includes(who.turn)) open.turns.push(who.turn);
        if (who.loose !== undefined && !open.loose.includes(who.loose)) open.loose.push(who.loose);
      }
    }
  }
  return found;
}

/** Every way to divide the turns into runs that the rule allows. */
export function everyPlan(input: PlanInput, look: (runs: string[][]) => void): void {
  const order = [...input.turns].sort((left, right) => Date.parse(left.from) - Date.parse(right.from));
  const may = new Map<string, boolean>();
  for (const left of order)
    for (const right of order) may.set(`${left.id}>${right.id}`, refMayFollow(input, left, right));
  const runs: string[][] = [];
  const place = (index: number): void => {
    const turn = order[index];
    if (turn === undefined) {
      look(runs.map((run) => [...run]));
      return;
    }
    for (const run of runs) {
      if (may.get(`${run.at(-1)}>${turn.id}`) !== true) continue;
      run.push(turn.id);
      place(index + 1);
      run.pop();
    }
    runs.push([turn.id]);
    place(index + 1);
    runs.pop();
  };
  place(0);
}

/** Quintillionths rounded half up to whole minor units. */
export function refRound(amount: bigint): number {
  return Number((amount + 500_000_000_000_000_000n) / 1_000_000_000_000_000_000n);
}
