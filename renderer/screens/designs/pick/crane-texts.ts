// A crane as texts that are typed, and back. A bare number has the unit that its label names.
import { type Answer, answer, refuse } from '../../../../core/answer.ts';
import { type Crane, crane as craneShape } from '../../../../core/pick/setup.ts';
import { speedWords } from '../../../../core/sheets/pick-words.ts';
import { formatLength, type UnitSystem } from '../../../../core/units/length.ts';
import { formatWeight } from '../../../../core/units/weight.ts';
import { readRadius, readSpeed, readWeight } from './typed-amounts.ts';

export interface CraneTexts {
  readonly code: string;
  readonly name: string;
  readonly deduct: string;
  readonly caution: string;
  readonly stop: string;
  readonly wind: string;
  readonly whose: string;
  readonly chart: string;
}

/** Common practice, no source: from three quarters of the chart on the weight is proven, not estimated. */
const empty: CraneTexts = {
  code: '',
  name: '',
  deduct: '',
  caution: '75',
  stop: '100',
  wind: '',
  whose: '',
  chart: '',
};

export function textsOf(crane: Crane | null, system: UnitSystem): CraneTexts {
  if (crane === null) return empty;
  return {
    code: crane.code,
    name: crane.name,
    deduct: crane.deductGrams === 0 ? '' : formatWeight(crane.deductGrams, system),
    caution: String(crane.cautionPercent),
    stop: String(crane.stopPercent),
    wind: crane.windLimitMps === null ? '' : speedWords(crane.windLimitMps, system),
    whose: crane.windWhose,
    chart: crane.chart
      .map((row) => `${formatLength(row.radiusNm, system)}  ${formatWeight(row.capacityGrams, system)}`)
      .join('\n'),
  };
}

/** Refuses the first thing that cannot be read, and names it. */
export function craneOf(texts: CraneTexts, system: UnitSystem): Answer<Crane> {
  const chart: Crane['chart'] = [];
  for (const [index, line] of texts.chart.split('\n').entries()) {
    if (line.trim() === '') continue;
    const read = chartRow(line.trim(), system);
    if (!read.ok) return refuse('chart-unreadable', `Line ${index + 1} of the chart: ${read.error.message}`);
    chart.push(read.value);
  }
  const deduct = texts.deduct.trim() === '' ? answer(0) : readWeight(texts.deduct.trim(), system, 0);
  if (!deduct.ok) return deduct;
  const wind = texts.wind.trim() === '' ? answer(null) : readSpeed(texts.wind.trim(), system);
  if (!wind.ok) return wind;
  const read = craneShape.safeParse({
    code: texts.code,
    name: texts.name,
    chart,
    deductGrams: deduct.value,
    cautionPercent: Number(texts.caution),
    stopPercent: Number(texts.stop),
    windLimitMps: wind.value,
    windWhose: texts.whose,
  });
  if (read.success) return answer(read.data);
  const field = String(read.error.issues[0]?.path[0] ?? '');
  return refuse('crane-unreadable', wanted[field] ?? 'Something of it cannot be read.');
}

const wanted: Readonly<Record<string, string>> = {
  code: 'It needs a code of at most 40 characters.',
  name: 'It needs a name of at most 80 characters.',
  chart: 'The chart needs at least one line, and at most 200.',
  cautionPercent: 'The percentage from which weight is proven is over 0 and at most 100.',
  stopPercent: 'The percentage at which the site refuses is over 0 and at most 100.',
  windLimitMps: 'A wind limit is over 0.',
};

/** `60 8800`, `60' 8,800 lb`: parted by two spaces, a tab, a semicolon, or by one space between bare numbers. */
function chartRow(line: string, system: UnitSystem): Answer<Crane['chart'][number]> {
  const parts = line.split(/\s{2,}|\t|;/u).map((part) => part.trim());
  const [radius = '', capacity = ''] = parts.length === 2 ? parts : line.split(/\s+/u, 2);
  const radiusNm = readRadius(radius, system);
  if (!radiusNm.ok) return radiusNm;
  const capacityGrams = readWeight(capacity, system, 1);
  if (!capacityGrams.ok) return capacityGrams;
  return answer({ radiusNm: radiusNm.value, capacityGrams: capacityGrams.value });
}
