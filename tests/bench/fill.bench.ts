// Filling a face: a wall of 60 ft by 12 panel widths and a stock limit, proven, beside larger and harder ones.
import { fillRows } from '../../core/face/fill-rows.ts';
import type { RowsRequest } from '../../core/face/rows.ts';
import type { Bench, BenchLine } from './bench-line.ts';
import { median, referenceMs } from './reference-work.ts';

const rounds = 9;
const inchNm = 25_400_000;
const inches = [48, 42, 36, 32, 30, 28, 24, 20, 18, 16, 14, 12];
const widthsNm = inches.map((inch) => inch * inchNm);
const stock = inches.map(() => 2);
const sixtyFeet = { lengthNm: 720 * inchNm, widthsNm, stock, maximumFillerNm: 6 * inchNm, best: 3 };
const sixteenths = inches.map((inch, place) => inch * inchNm + (place * inchNm) / 16);
const oddNanometres = inches.map((inch, place) => inch * inchNm + place * 1_234_567 + 891);

const faces: readonly (readonly [what: string, request: RowsRequest, aim?: string])[] = [
  ['60 ft, 12 widths, stock limit', { ...sixtyFeet, rows: 1 }, 'proven, under 1 s'],
  ['60 ft and 1/2 in, one of each width, 50 proposals', { ...sixtyFeet, rows: 1, lengthNm: 720.5 * inchNm, stock: inches.map(() => 1), best: 50 }, 'proven, under 1 s'],
  ['60 ft, 12 widths in sixteenths of an inch, stock limit', { ...sixtyFeet, rows: 1, widthsNm: sixteenths }, 'proven, under 1 s'],
  ['60 ft, 12 widths, stock limit, two rows', { ...sixtyFeet, rows: 2 }, 'proven, under 1 s'],
  ['60 ft, 12 widths, stock limit, four rows', { ...sixtyFeet, rows: 4 }, 'proven, under 1 s'],
  ['60 ft, 12 widths in odd nanometres, stock limit', { ...sixtyFeet, rows: 1, widthsNm: oddNanometres }],
]; // prettier-ignore

export const bench: Bench = { name: 'Filling a face', run: lines };

async function* lines(): AsyncGenerator<BenchLine> {
  const reference = referenceMs();
  yield { what: 'fixed reference computation', value: `${reference.toFixed(0)} ms` };
  for (const [what, request, aim] of faces) {
    const times: number[] = [];
    let proven = true;
    for (let round = 0; round <= rounds; round += 1) {
      const started = performance.now();
      const found = fillRows(request);
      times.push(performance.now() - started);
      proven = found.proven;
      if (found.fillings.length < request.best) throw new Error(`${what}: fewer proposals than asked for.`);
    }
    if (!proven && aim !== undefined) throw new Error(`${what}: not proven.`);
    const warm = median(times.slice(1));
    const said = proven ? 'proven' : 'not proven';
    yield { what: `${what}: the first`, value: `${(times[0] ?? 0).toFixed(1)} ms` };
    yield {
      what: `${what}: ${said}, median of the next ${rounds}`,
      value: `${warm.toFixed(1)} ms`,
      ...(aim !== undefined && { aim }),
    };
    yield { what: `${what}: over the reference`, value: (warm / reference).toFixed(3) };
  }
}
