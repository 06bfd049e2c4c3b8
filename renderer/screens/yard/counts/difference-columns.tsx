// The columns of the differences: each percentage with what it is of.
import { conditionWords } from '../yard-words.ts';
import type { Column } from '../../../parts/data-table.tsx';
import { type DifferenceLine, differenceWords, percentWords, recountWords } from './count-words.ts';

export function differenceColumns(
  money: (cents: number) => string,
  isExplained: (line: DifferenceLine) => boolean,
): readonly Column<DifferenceLine>[] {
  const standing = (line: DifferenceLine): string => {
    if (line.state === 'waiting') return '';
    if (line.recount === 'counters-differ') return 'count again';
    if (line.unclear && !isExplained(line)) return 'open the bag';
    if (isExplained(line))
      return line.difference === 0 && line.conditionMoves.length === 0 ? 'as booked' : 'explained';
    return 'to explain';
  };
  return [
    {
      id: 'line',
      header: 'Component',
      value: (line) => `${line.location} ${line.component}`,
      text: (line) => `${line.component} ${line.name} ${line.location}`,
      show: (line) => (
        <>
          <b>{line.component}</b> <span className="soft">{line.name}</span>
        </>
      ),
      width: 190,
    },
    { id: 'place', header: 'Place', value: (line) => `${line.location}${line.owner === null ? '' : ` of ${line.owner}`}`, width: 90 },
    { id: 'counted', header: 'Counted', value: (line) => line.stands?.quantity ?? -1, show: (line) => line.figures.length > 1 && line.stands === null ? line.figures.map((figure) => figure.quantity).join(' / ') : (line.stands?.quantity ?? ''), numeric: true, width: 80 },
    { id: 'booked', header: 'Booked', value: (line) => line.booked, show: (line) => (line.state === 'waiting' ? '' : line.booked), numeric: true, width: 76 },
    {
      id: 'difference',
      header: 'Difference',
      value: (line) => line.difference,
      text: differenceWords,
      show: (line) =>
        line.state === 'waiting' ? '' : <span className={line.difference < 0 ? 'short-word' : ''}>{differenceWords(line)}</span>,
      width: 120,
    },
    { id: 'state', header: 'Standing', value: standing, width: 120 },
    {
      id: 'owned',
      header: 'Of owned',
      value: (line) => line.bases.percentOfOwned ?? -1,
      show: (line) => (size(line) === 0 ? '' : percentWords(line.bases.percentOfOwned, line.bases.owned, 'owned')),
      text: (line) => percentWords(line.bases.percentOfOwned, line.bases.owned, 'owned'),
      width: 158,
    },
    {
      id: 'expected',
      header: 'Of expected in the yard',
      value: (line) => line.bases.percentOfExpected ?? -1,
      show: (line) => (size(line) === 0 ? '' : percentWords(line.bases.percentOfExpected, line.bases.expectedInYard, 'expected')),
      text: (line) => percentWords(line.bases.percentOfExpected, line.bases.expectedInYard, 'expected'),
      width: 190,
    },
    {
      id: 'value',
      header: 'Value',
      value: (line) => line.valueCents ?? 0,
      show: (line) => (size(line) === 0 ? '' : line.valueCents === null ? 'not entered' : money(line.valueCents)),
      numeric: true,
      width: 100,
    },
    {
      id: 'class',
      header: 'Tolerance',
      value: (line) => `${line.class} ${line.within ? 'within' : 'out of'}`,
      show: (line) => (line.state === 'waiting' ? `class ${line.class}` : `${line.within ? 'within' : 'out of'} ${line.tolerancePercent} % (${line.class})`),
      width: 120,
    },
    {
      id: 'conditions',
      header: 'Found in',
      value: (line) => line.conditionMoves.map(({ to, quantity }) => `${quantity} ${conditionWords[to]}`).join(', '),
      width: 150,
    },
    { id: 'recount', header: 'Count again?',
      hidden: true, value: (line) => (line.recount === null ? '' : recountWords[line.recount]), width: 240 },
  ]; // prettier-ignore
}

function size({ difference, state }: DifferenceLine): number {
  return state === 'counted' ? Math.abs(difference) : 0;
}
