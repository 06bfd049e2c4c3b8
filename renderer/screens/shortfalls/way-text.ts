// A way out in words: what it does to the rest of the plan, and until when its pieces can be ordered.
import type { Output } from '../../client/shapes.ts';
import type { TimeWords } from '../../parts/time-words.ts';
import { dateWords } from '../../parts/time-words.ts';
import { type Shortfall, spanWords } from './shortfall-rows.ts';

export type Ways = Output<'shortfall.ways'>;
export type Way = Ways['ways'][number];

/** Pieces that cannot be hired weigh before money. */
export function unmetWords({ before, after }: Way): string {
  const more = after.cost.unmet - before.cost.unmet;
  if (more === 0) return '';
  const many = Math.abs(more);
  const days = `${many} piece-${many === 1 ? 'day' : 'days'}`;
  return more > 0 ? `${days} more that cannot be hired` : `${days} fewer that cannot be hired`;
}

export function effectWords(way: Way): readonly string[] {
  const gone = way.goneShortfalls.length - 1;
  const unmet = unmetWords(way);
  return [
    ...(way.movesClash ? ['Moves the clash: other pieces, or other days, are short instead.'] : []),
    ...(unmet === '' ? [] : [unmet]),
    ...(gone > 0 ? [`${gone} other ${gone === 1 ? 'shortfall goes' : 'shortfalls go'} too`] : []),
    ...way.overDays.slice(0, mostDays).map(overWords),
    ...moreDays(way.overDays.length - mostDays),
    way.changedTold === 0
      ? 'no told instruction changes'
      : way.changedTold > 0
        ? `${way.changedTold} told ${way.changedTold === 1 ? 'instruction changes' : 'instructions change'}`
        : `${-way.changedTold} told ${way.changedTold === -1 ? 'instruction is' : 'instructions are'} kept again`,
  ];
}

export function shortWords({ quantity, component, from, to }: Shortfall, words: TimeWords): string {
  return `${quantity} ${component}, ${spanWords(from, to, words)}`;
}

export function orderWords(way: Way): string {
  if (way.order === null) return '';
  const by = dateWords(way.order.by);
  return way.order.isOver ? `To be ordered by ${by}: that is over.` : `Order by ${by} at the latest.`;
}

const mostDays = 2;

function overWords({ date, crewHours, craneMinutes }: Way['overDays'][number]): string {
  const parts = [
    ...(crewHours === 0 ? [] : [`${crewHours} crew hours`]),
    ...(craneMinutes === 0 ? [] : [`${craneMinutes} crane minutes`]),
  ];
  return `${dateWords(date)}: ${parts.join(' and ')} too many`;
}

function moreDays(count: number): readonly string[] {
  if (count <= 0) return [];
  return [`and ${count} more ${count === 1 ? 'day' : 'days'} with too much work`];
}
