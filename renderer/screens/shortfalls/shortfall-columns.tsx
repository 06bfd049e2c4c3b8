// The columns of the list of shortfalls; every part as words and as something to sort by.
import { roughMoney } from '../../../core/units/money.ts';
import type { Column } from '../../parts/data-table.tsx';
import type { TimeWords } from '../../parts/time-words.ts';
import { type Decision, decisionWords } from './decision-part.tsx';
import { daysOf, figureWords, hireWords, holderWords, type Shortfall, spanWords } from './shortfall-rows.ts';
import type { Cheapest } from './use-cheapest.ts';
import { unmetWords } from './way-text.ts';

export interface ColumnFacts {
  readonly words: TimeWords;
  readonly money: (cents: number) => string;
  readonly currency: string;
  readonly cheapest: Cheapest;
  /** The shortfall whose ways out are looked for just now. */
  readonly looking: string | null;
  readonly decisions: ReadonlyMap<string, Decision>;
}

export function makeColumns(of: ColumnFacts): readonly Column<Shortfall>[] {
  const { words } = of;
  return [
    {
      id: 'quantity',
      header: 'Short',
      value: (row) => row.quantity,
      numeric: true,
      width: 72,
      show: (row) => (
        <span className="short-number">
          <span className="short-block" aria-hidden="true" />
          {row.quantity}
        </span>
      ),
    },
    {
      id: 'component',
      header: 'Component',
      value: (row) => `${row.component} ${row.name}`,
      width: 222,
      show: (row) => (
        <>
          <b>{row.component}</b> {row.name}
        </>
      ),
    },
    {
      id: 'from',
      header: 'From – to',
      value: (row) => Date.parse(row.from),
      text: (row) => spanWords(row.from, row.to, words),
      show: (row) => spanWords(row.from, row.to, words),
      width: 286,
    },
    {
      id: 'held',
      header: 'Held',
      value: (row) => row.held,
      numeric: true,
      width: 56,
    },
    { id: 'stock', header: 'Stock', value: (row) => row.stock, numeric: true, width: 56 },
    {
      id: 'way',
      header: 'Cheapest way out',
      value: (row) => wayWords(row, of),
      show: (row) =>
        of.cheapest.get(row.id) === null ? (
          <span className="short-word">{wayWords(row, of)}</span>
        ) : (
          wayWords(row, of)
        ),
      width: 320,
    },
    {
      id: 'holders',
      header: 'Held by',
      value: (row) => holderWords(row),
      width: 200,
    },
    {
      id: 'decided',
      header: 'Decided',
      value: (row) => decided(row, of),
      show: (row) =>
        of.decisions.get(row.id)?.hasGrown === true ? (
          <span className="short-word">{decided(row, of)}</span>
        ) : (
          decided(row, of)
        ),
      width: 120,
    },
    {
      id: 'rests',
      header: 'Rests on',
      value: figureWords,
      show: (row) =>
        row.restsOn === 'counted' && !row.restsOnOld ? (
          'counted'
        ) : (
          <span className="caution-word-ink">{figureWords(row)}</span>
        ),
      width: 110,
    },
  ];
}

/** The cheapest way with its cost; until it is known what hire costs, which the plan reckons anyway. */
function wayWords(row: Shortfall, { words, money, currency, cheapest, looking }: ColumnFacts): string {
  const way = cheapest.get(row.id);
  if (way === null) return 'no way out found';
  if (way !== undefined) {
    const unmet = unmetWords(way);
    return `${roughMoney(way.costCents, currency)}: ${way.text}${unmet === '' ? '' : `, ${unmet}`}${way.movesClash ? ', moves the clash' : ''}`;
  }
  if (row.canBeHired) return hireWords(row, daysOf(row, words), money);
  return looking === row.id ? 'being looked for …' : 'not looked for yet: open it';
}

function decided(row: Shortfall, { decisions }: ColumnFacts): string {
  const decision = decisions.get(row.id);
  return decision === undefined ? '' : decisionWords(decision);
}
