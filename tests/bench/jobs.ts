// Invented jobs made by a seed: gangs of a panel system over some weeks, with stock a little short of the
// peak. The same seed gives the same job, whatever the machine.
import type { PlanInput } from '../../core/plan/contract.ts';

/** A small generator of repeatable numbers in [0, 1): mulberry32. */
export function numbersFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}

export interface JobSize {
  readonly seed: number;
  readonly turns: number;
  readonly components: number;
  readonly weeks: number;
}

export function jobOf({ seed, turns, components, weeks }: JobSize): PlanInput {
  const next = numbersFrom(seed);
  const whole = (from: number, to: number): number => from + Math.floor(next() * (to - from + 1));
  const codes = Array.from({ length: components }, (_, index) => `C${index + 1}`);
  const designs = Array.from({ length: Math.max(3, Math.round(turns / 12)) }, (_, index) => {
    const pieces: Record<string, number> = {};
    const first = whole(0, components - 1);
    for (let part = whole(6, 14); part > 0; part -= 1) {
      // Designs near each other in the list share most of their pieces, as gangs of one wall do.
      const place = (first + whole(0, Math.ceil(components / 2))) % components;
      pieces[codes[place] ?? 'C1'] = part > 3 ? whole(1, 8) : whole(8, 40);
    }
    return { code: `D${index + 1}`, pieces, assembleH: whole(8, 40) / 4, breakDownH: whole(4, 16) / 4 };
  });
  const start = Date.UTC(2026, 2, 2, 12);
  const day = 86_400_000;
  const placed = Array.from({ length: turns }, (_, index) => {
    const first = whole(0, weeks * 7 - 4);
    const from = start + first * day + whole(0, 8) * 3_600_000;
    const to = from + whole(1, 4) * day + whole(-3, 5) * 3_600_000;
    const design = designs[whole(0, designs.length - 1)];
    return {
      id: `T${index + 1}`,
      design: design?.code ?? 'D1',
      pieces: design?.pieces ?? {},
      first,
      from,
      to,
    };
  });
  const peak = new Map<string, number>();
  for (let today = 0; today < weeks * 7; today += 1) {
    const sums = new Map<string, number>();
    for (const { pieces, first, from, to } of placed) {
      if (today < first || today > first + Math.ceil((to - from) / day)) continue;
      for (const [code, quantity] of Object.entries(pieces)) sums.set(code, (sums.get(code) ?? 0) + quantity);
    }
    for (const [code, sum] of sums) peak.set(code, Math.max(peak.get(code) ?? 0, sum));
  }
  return {
    components: codes.map((code) => ({
      code,
      stock: Math.round((peak.get(code) ?? 0) * (0.6 + 0.5 * next())),
      hirePerDay: whole(2, 60),
    })),
    designs,
    turns: placed.map(({ id, design, from, to }) => ({ id, design, from: instant(from), to: instant(to) })),
    turnaround: { flyOnH: 1.5, regangBaseH: 2, regangPerPieceH: 0.05, cleanH: 4 },
    labourPerH: 5800,
    crew: 1,
    shifts: { timeZone: 'America/New_York', days: [1, 2, 3, 4, 5, 6], start: '07:00', end: '15:30' },
  };
}

function instant(epochMs: number): string {
  return `${new Date(epochMs).toISOString().slice(0, 19)}Z`;
}
