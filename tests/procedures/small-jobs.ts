// Small invented jobs at random in a book of their own: three designs over a tiny catalogue, pours of one or two gangs a
// side, a little less in stock than they need. The same seed gives the same job.
import type { BookComponent } from '../../core/book/book.ts';
import { numbersFrom } from '../bench/jobs.ts';
import { job as plainJob, pourOf } from '../plan/pours-for-tests.ts';
import { component } from '../book/a-book.ts';
import { type AskedBook, askedBook } from './asked-book.ts';

const began = '2026-02-20T07:00:00-05:00';
const meter = 1_000_000_000;

export const smallJob = 'J1';

/** 1 m and 2 m panels of 2 m height; a lock that can be hired or not; rails of two lengths that form no part of a gang. */
function catalogue(canHire: boolean): readonly BookComponent[] {
  const panel = { kind: 'panel' as const, system: 'S', heightNm: 2 * meter, regangPerPieceH: 0.05 };
  const rail = { kind: 'stiffening-rail' as const, system: 'S', hirePerDayCents: canHire ? 55 : null };
  return [
    component('PA', { ...panel, widthNm: meter, hirePerDayCents: canHire ? 90 : null }),
    component('PB', { ...panel, widthNm: 2 * meter, hirePerDayCents: null }),
    component('LK', { kind: 'lock', hirePerDayCents: canHire ? 4 : null }),
    component('R2', { ...rail, lengthNm: 2 * meter }),
    component('R3', { ...rail, lengthNm: 3 * meter }),
  ];
}

/** As wide as one another: two of 1 m, one of 2 m; and three of 1 m. */
const designs = {
  DA: ['PA', 'PA'],
  DB: ['PB'],
  DC: ['PA', 'PA', 'PA'],
} as const;

function geometryOf(panels: readonly ('PA' | 'PB')[]) {
  let xNm = 0;
  const placed = panels.map((panel) => {
    const here = { panel, xNm, yNm: 0, onSide: false };
    xNm += panel === 'PA' ? meter : 2 * meter;
    return here;
  });
  const edges = { left: 'next-gang' as const, right: 'next-gang' as const };
  return { panels: placed, fillers: [], edges, equalised: false };
}

export async function smallBook(seed: number): Promise<AskedBook> {
  const next = numbersFrom(seed);
  const whole = (from: number, to: number): number => from + Math.floor(next() * (to - from + 1));
  const book = await askedBook(began);
  const components = catalogue(seed % 3 !== 0);
  await book.write(async (writer) => {
    await writer.putLocation({ code: 'START', name: 'First figures', kind: 'opening' });
    await writer.putLocation({ code: 'YARD', name: 'Yard', kind: 'yard' });
    await writer.putOwner({ code: 'OURS', name: 'Ours', kind: 'ours', agreement: null });
    for (const each of components) await writer.putComponent(each);
    await writer.putRules('S', 'Small panels', {
      locks: { component: 'LK', bands: [{ upToNm: 3 * meter, count: 3 }] },
    });
    for (const [code, panels] of Object.entries(designs))
      await writer.putDesign({
        code,
        name: code,
        system: 'S',
        revision: 'A',
        hand: 'symmetrical',
        geometry: geometryOf(panels),
        assembleH: 1.5,
        breakDownH: 0.5,
      });
    await writer.putJob({ ...plainJob, cleanH: whole(0, 16) });
    for (let index = 1; index <= whole(4, 7); index += 1) {
      const day = 2 + Math.min(9, whole(0, index * 2));
      await writer.putPour(smallJob, smallPour(`W${index}`, day + (day > 6 ? 1 : 0), next));
    }
  });
  const stocked = { PA: whole(5, 9), PB: whole(1, 3), LK: whole(9, 16), R2: whole(0, 1), R3: 6 };
  await book.ask('yard.move', {
    movements: Object.entries(stocked)
      .filter(([, quantity]) => quantity > 0)
      .map(([code, quantity]) => ({
        id: `opening-${code}`,
        component: code,
        quantity,
        owner: 'OURS',
        from: 'START',
        to: 'YARD',
        condition: 'ready' as const,
        reason: 'opening' as const,
        at: began,
        basis: 'counted' as const,
        basisDate: '2026-02-20',
      })),
  });
  return book;
}

/** Set on a day of March 2026, poured the day after it; its rails stand loose. */
function smallPour(code: string, day: number, next: () => number) {
  const codes = ['DA', 'DB', 'DC'] as const;
  const design = codes[Math.floor(next() * 3)] ?? 'DA';
  const gangs = Array.from({ length: 1 + Math.floor(next() * 2) }, (_, index) => ({
    design,
    atNm: index * 3 * meter,
  }));
  const offset = day > 8 || day + 1 > 8 ? '-04:00' : '-05:00';
  return pourOf({
    code,
    name: code,
    order: 'steel-first',
    sides: [
      { side: 'A', setAt: `${date(day)}T07:00:00${offset}`, setH: 2, gangs },
      { side: 'B', setAt: `${date(day)}T10:00:00${offset}`, setH: 2, gangs },
    ],
    finishAt: `${date(day + 1)}T13:00:00-05:00`,
    stripMinimumH: [12, 24, 48][Math.floor(next() * 3)] ?? 24,
    stripH: 2,
    loose:
      next() < 0.5 ? [{ side: 'both', component: 'R2', quantity: 2, purpose: 'a rail over the joint' }] : [],
  });
}

function date(day: number): string {
  return `2026-03-${String(day).padStart(2, '0')}`;
}
