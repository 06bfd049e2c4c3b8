// Two plans in rows: each figure of the one beside that of the other, and what lies between.
import type { Output } from '../../client/shapes.ts';
import { costParts, type Says, signed, type Summary } from '../../parts/changes/difference.ts';
import { dateWords } from '../../parts/time-words.ts';

export type Comparison = Output<'whatif.compare'>;

export interface CompareRow {
  readonly key: string;
  readonly name: string;
  readonly one: string;
  readonly other: string;
  /** Empty where both are the same, or no number lies between. */
  readonly between: string;
}

export function compareRows(comparison: Comparison, money: Says['money']): readonly CompareRow[] {
  const [one, other] = [comparison.one.summary, comparison.other.summary];
  const cents = (name: string, of: (summary: Summary) => number): CompareRow => {
    const change = of(other) - of(one);
    return {
      key: name,
      name,
      one: money(of(one)),
      other: money(of(other)),
      between: change === 0 ? '' : signed(change, money),
    };
  };
  const count = (name: string, of: (summary: Summary) => number): CompareRow =>
    countRow(name, of(one), of(other));
  const used = costParts.filter(({ of }) => of(one) !== 0 || of(other) !== 0);
  return [
    cents('Cost in all', ({ allCents }) => allCents),
    ...used.map(({ name, of }) => cents(name, of)),
    cents('Still to be saved at most', ({ savableCents }) => savableCents),
    count('Piece-days short that cannot be hired', ({ cost }) => cost.unmet),
    count('Shortfalls', ({ shortfalls }) => shortfalls.length),
    ...comparison.components.map(({ component, one: was, other: is }) =>
      countRow(`${component} short at most`, was, is),
    ),
    count('Told instructions changed', ({ changedTold }) => changedTold),
    count('Gangs used', ({ gangs }) => gangs),
    count('Pours', ({ pours }) => pours),
    peakRow('Fullest day of the crew', one.crewPeak, other.crewPeak, 'h'),
    peakRow('Fullest day of the crane', one.cranePeak, other.cranePeak, 'min'),
  ].filter((row) => row.one !== '' || row.other !== '');
}

function countRow(name: string, one: number, other: number): CompareRow {
  const change = other - one;
  const between = change === 0 ? '' : change > 0 ? `+${change}` : `−${-change}`;
  return { key: name, name, one: String(one), other: String(other), between };
}

type Peak = Summary['crewPeak'];

function peakRow(name: string, one: Peak, other: Peak, unit: string): CompareRow {
  const text = (peak: Peak): string =>
    peak === null
      ? ''
      : `${dateWords(peak.date)}: ${rounded(peak.needed)} of ${rounded(peak.there)} ${unit}${peak.needed > peak.there ? ', over' : ''}`;
  return { key: name, name, one: text(one), other: text(other), between: '' };
}

function rounded(value: number): number {
  return Math.round(value * 10) / 10;
}
