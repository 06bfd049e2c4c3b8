// One count: entering what was found, then what differs and why, then booking it.
import { type ReactNode, useState } from 'react';
import { Link, useLocation } from 'wouter';
import { type Output, useCommand, useCore } from '../../../client/core.tsx';
import { useAddressQuery } from '../../../client/query.ts';
import { Choice } from '../../../parts/choice.tsx';
import { useTimeWords } from '../../../parts/job-time.ts';
import { CautionLine, RefusalNote, Waiting } from '../../../parts/notes.tsx';
import { paperSheetAddress } from '../../../parts/paper-sheets.ts';
import { kindWords, stateWords } from './count-words.ts';
import { DifferencesView } from './differences-view.tsx';
import { EntryGrid } from './entry-grid.tsx';
import { MovedList } from './moved-list.tsx';
import '../yard.css';
import './counts.css';

const views = [
  ['enter', 'Enter'],
  ['differences', 'Differences'],
  ['moved', 'Moved meanwhile'],
] as const;
const counterChoices = [
  ['1', 'counter 1'],
  ['2', 'counter 2'],
] as const;

export function CountScreen(props: { readonly id: string }): ReactNode {
  const { id } = props;
  const [query, change] = useAddressQuery();
  const counter = query.get('counter') === '2' ? 2 : 1;
  const read = useCore('count.read', { count: id, counter });
  if (read.error !== null)
    return (
      <div className="screen yard">
        <RefusalNote error={read.error} />
        <p className="counts-accuracy">
          <Link href="/yard/counts">All counts</Link>
        </p>
      </div>
    );
  if (read.data === undefined) return <Waiting what="Reading the count …" />;
  const { count, moved } = read.data;
  const asked = views.find(([name]) => name === query.get('do'))?.[0];
  const view = asked ?? (count.state === 'open' && count.counted < count.lines ? 'enter' : 'differences');
  return (
    <div className="screen yard">
      <Head id={id} count={count}>
        <Choice
          label="What of the count"
          value={view}
          options={views.map(
            ([name, words]) => [name, name === 'moved' ? `${words} (${moved.length})` : words] as const,
          )}
          onChange={(next) => change({ do: next, line: null }, { step: true })}
        />
        {count.counters === 2 && view === 'enter' ? (
          <Choice
            label="Who counts"
            value={counter === 2 ? '2' : '1'}
            options={counterChoices}
            onChange={(next) => change({ counter: next === '2' ? '2' : null })}
          />
        ) : null}
      </Head>
      <div className="screen-body">
        {view === 'enter' ? (
          <div className="pane grow yard-main">
            <EntryGrid key={`${id} ${counter}`} id={id} counter={counter} read={read.data} />
          </div>
        ) : null}
        {view === 'differences' ? <DifferencesView id={id} /> : null}
        {view === 'moved' ? (
          <div className="pane grow yard-main">
            <MovedList moved={moved} />
          </div>
        ) : null}
      </div>
      <CautionLine about="A plan runs on what was counted; a count is booked as explained movements." />
    </div>
  );
}

function Head(props: {
  readonly id: string;
  readonly count: Output<'count.read'>['count'];
  readonly children: ReactNode;
}): ReactNode {
  const { id, count } = props;
  const words = useTimeWords();
  return (
    <header className="screen-head">
      <h1>
        <Link href="/yard/counts" className="count-back">
          Counts
        </Link>{' '}
        {count.name}
      </h1>
      <span className="soft">
        <b className={`count-state-${count.state}`}>{stateWords[count.state]}</b> · {kindWords[count.kind]}
        {count.blind ? ' · blind' : ''} · begun {words.full(count.startedAt)} · {count.counted} of{' '}
        {count.lines} counted
      </span>
      {props.children}
      <span className="head-end count-head-end">
        <Link href={paperSheetAddress('count', id)}>Count sheet</Link>
        {count.state === 'open' ? <Drop id={id} name={count.name} /> : null}
      </span>
    </header>
  );
}

/** Asked once more, since a count given up is not taken up again. */
function Drop(props: { readonly id: string; readonly name: string }): ReactNode {
  const drop = useCommand('count.drop');
  const [, navigate] = useLocation();
  const [asked, setAsked] = useState(false);
  if (!asked)
    return (
      <button type="button" className="quiet" onClick={() => setAsked(true)}>
        Give it up
      </button>
    );
  return (
    <>
      <button
        type="button"
        onClick={() => drop.mutate({ count: props.id }, { onSuccess: () => navigate('/yard/counts') })}
      >
        Give {props.name} up: nothing is booked
      </button>
      <button type="button" className="quiet" onClick={() => setAsked(false)}>
        Keep it
      </button>
      {drop.error === null ? null : <RefusalNote error={drop.error} />}
    </>
  );
}
