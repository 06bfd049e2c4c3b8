// Why a component is short: what every gang that holds it does just then, and what those that do not stand at a pour could
// do otherwise, with what that would cost and how many would be short even so. Asked for only when opened.
import { type ReactNode, useState } from 'react';
import { Button } from 'react-aria-components';
import { Link } from 'wouter';
import { never } from '../../../core/answer.ts';
import { useCore } from '../../client/core.tsx';
import type { Output } from '../../client/shapes.ts';
import { useLiveNow } from '../../parts/live-now.ts';
import { RefusalNote } from '../../parts/notes.tsx';
import type { TimeWords } from '../../parts/time-words.ts';
import { useUnits } from '../../parts/units.tsx';
import { costWords, shortWords, wayWords } from '../board/gang-words.ts';
import '../board/why.css';

type Why = Output<'shortfall.why'>;
type GangHolding = Why['gangs'][number];

export function WhyShort(props: {
  readonly job: string;
  readonly component: string;
  readonly from: string;
  readonly words: TimeWords;
}): ReactNode {
  const { job, component, from, words } = props;
  const [asked, setAsked] = useState(false);
  const live = useLiveNow(job);
  const why = useCore('shortfall.why', { job, component, from, ...live }, { enabled: asked });
  if (!asked) {
    return (
      <section className="pane-part">
        <Button onPress={() => setAsked(true)}>Why this?</Button>{' '}
        <span className="soft">what each gang that holds it does, and could do otherwise</span>
      </section>
    );
  }
  return (
    <section className="pane-part" aria-label="Why it is short">
      <h3>What the gangs that hold it do then</h3>
      {why.error === null ? null : <RefusalNote error={why.error} />}
      {why.data === undefined || why.isPlaceholderData ? (
        why.error === null ? (
          <output className="soft">Planning what they could do otherwise …</output>
        ) : null
      ) : why.data.gangs.length === 0 ? (
        <p className="soft">No gang holds it: only loose pieces do.</p>
      ) : (
        <ul>
          {why.data.gangs.map((gang) => (
            <li key={gang.turns.join(' ')}>
              <Holding gang={gang} of={why.data} words={words} />
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

function Holding(props: {
  readonly gang: GangHolding;
  readonly of: Why;
  readonly words: TimeWords;
}): ReactNode {
  const { gang, of, words } = props;
  const units = useUnits();
  const { otherwise, turns } = gang;
  const many = turns.length === 1 ? gang.design : `${turns.length} ${gang.design}`;
  const isComing = gang.doing === 'assembled' || gang.doing === 'made-into';
  const money = (cents: number): string => units.money(cents, of.currency);
  return (
    <>
      <Link href={`/board?pour=${encodeURIComponent(gang.pour)}&gang=${encodeURIComponent(turns[0] ?? '')}`}>
        {many} at {gang.pour}
      </Link>{' '}
      {gang.pieces} pieces: {doingWords(gang, words)}
      {otherwise === null ? null : (
        <span className="why-effect soft">
          could {isComing ? 'come otherwise: ' : ''}
          {wayWords(otherwise, isComing ? 'arrival' : 'departure')}: whole plan{' '}
          {costWords(otherwise.costCents, money)},{' '}
          {otherwise.shortThen >= of.shortfall.quantity
            ? `still ${otherwise.shortThen} short`
            : otherwise.shortThen === 0
              ? 'none short then'
              : `${otherwise.shortThen} short then`}
          {otherwise.shortfalls.length === 0 ? '' : ` (${shortWords(otherwise.shortfalls)})`}
        </span>
      )}
    </>
  );
}

function doingWords({ doing, until, nextPour }: GangHolding, words: TimeWords): string {
  const end = words.dayTime(until);
  switch (doing) {
    case 'assembled':
      return `being assembled until ${end}`;
    case 'made-into':
      return `being re-ganged until ${end}`;
    case 'stands':
      return `stands until ${end}`;
    case 'waits':
      return `waits for ${nextPour ?? 'its next pour'} until ${end}`;
    case 'taken-apart':
      return `taken apart and cleaned until ${end}`;
    default:
      return never(doing);
  }
}
