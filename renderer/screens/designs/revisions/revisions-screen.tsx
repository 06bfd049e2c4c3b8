// Every state in which a design was saved, and two of them held against each other: drawings side by side, then
// what differs in pieces and findings. Which two stands in the address.
import type { ReactNode } from 'react';
import { Link, useParams } from 'wouter';
import { type Output, useCore } from '../../../client/core.tsx';
import { useAddressQuery } from '../../../client/query.ts';
import { useTimeWords } from '../../../parts/job-time.ts';
import { CautionLine, RefusalNote, Waiting } from '../../../parts/notes.tsx';
import '../designs.css';
import '../elevation.css';
import { handWords } from '../hand-words.ts';
import { Compared } from './compared.tsx';
import './revisions.css';

export type SavedState = Output<'design.revisions'>['revisions'][number];

export function RevisionsScreen(): ReactNode {
  const params = useParams<{ code: string }>();
  const code = decodeURIComponent(params.code);
  const list = useCore('design.revisions', { design: code });
  const [query, change] = useAddressQuery();
  if (list.error !== null) return <RefusalNote error={list.error} />;
  if (list.data === undefined) return <Waiting what={`Reading what was saved of ${code} …`} />;
  const states = list.data.revisions;
  const newest = states.at(-1)?.number ?? 1;
  const known = (name: string, otherwise: number): number => {
    const asked = Number(query.get(name));
    return states.some(({ number }) => number === asked) ? asked : otherwise;
  };
  const before = known('before', Math.max(1, newest - 1));
  const after = known('after', newest);
  return (
    <div className="screen revisions">
      <header className="screen-head">
        <h1>{code}, saved states</h1>
        <p className="soft">
          Both are taken off by the rule table in force, so that what differs is the gang.{' '}
          <Link href={`/designs/${encodeURIComponent(code)}`}>Back to {code}</Link>
        </p>
      </header>
      <States
        states={states}
        before={before}
        after={after}
        onChoose={(which, number) => change({ [which]: String(number) })}
      />
      {before === after ? (
        <p className="soft part-words">
          {states.length === 1
            ? 'It was saved once, so there is nothing to hold it against.'
            : 'Choose two different states to hold against each other.'}
        </p>
      ) : (
        <Compared code={code} before={before} after={after} />
      )}
      <CautionLine about="A gang built to an older state does not fly on until someone says so." />
    </div>
  );
}

function States(props: {
  readonly states: readonly SavedState[];
  readonly before: number;
  readonly after: number;
  readonly onChoose: (which: 'before' | 'after', number: number) => void;
}): ReactNode {
  const words = useTimeWords();
  const pick = (which: 'before' | 'after', number: number): ReactNode => (
    <input
      type="radio"
      name={which}
      aria-label={`State ${number} as ${which}`}
      checked={props[which] === number}
      onChange={() => props.onChoose(which, number)}
    />
  );
  return (
    <table className="plain states">
      <thead>
        <tr>
          <th scope="col">Before</th>
          <th scope="col">After</th>
          <th scope="col" className="numeric">
            State
          </th>
          <th scope="col">Revision</th>
          <th scope="col">Name</th>
          <th scope="col">Hand</th>
          <th scope="col">Rule table then</th>
          <th scope="col">Saved</th>
          <th scope="col">Who</th>
        </tr>
      </thead>
      <tbody>
        {props.states.toReversed().map((state) => (
          <tr key={state.number}>
            <td>{pick('before', state.number)}</td>
            <td>{pick('after', state.number)}</td>
            <td className="numeric">{state.number}</td>
            <td>{state.revision}</td>
            <td>{state.name}</td>
            <td>{handWords[state.hand]}</td>
            <td>
              {state.system} {state.ruleVersion === 0 ? 'none' : state.ruleVersion}
            </td>
            <td>{state.savedAt === null ? 'before states were kept' : words.full(state.savedAt)}</td>
            <td>{state.who ?? ''}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
