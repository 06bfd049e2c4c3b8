// At the left: the panel systems, and of the chosen one its catalogue, its tables and its versions. A table that
// the system does not have stands back; one with refused cells says so.
import type { ReactNode } from 'react';
import { Link } from 'wouter';
import { useAddressQuery } from '../../client/query.ts';
import { tableForms } from './all-forms.ts';
import { NewSystem } from './new-system.tsx';
import { problemsOf } from './problem-places.ts';
import type { Problem, RulesDraft } from './rules-draft.ts';

export interface SystemName {
  readonly code: string;
  readonly name: string;
  readonly isNew: boolean;
}

export function RulesNav(props: {
  readonly systems: readonly SystemName[];
  readonly draft: RulesDraft | null;
  readonly problems: readonly Problem[];
  readonly part: string;
  readonly onBegin: (code: string, name: string) => void;
}): ReactNode {
  const { systems, draft } = props;
  return (
    <nav className="rules-nav off-paper" aria-label="Panel systems and their tables">
      <h2>Panel systems</h2>
      <ul>
        {systems.map(({ code, name, isNew }) => (
          <li key={code}>
            <Link
              href={`/rules/${encodeURIComponent(code)}`}
              aria-current={code === draft?.system ? 'true' : undefined}
            >
              <b>{code}</b> {name}
              {isNew ? <span className="nav-note"> not saved</span> : null}
            </Link>
          </li>
        ))}
      </ul>
      <NewSystem taken={systems.map(({ code }) => code)} onBegin={props.onBegin} />
      {draft === null ? null : (
        <Parts
          {...props}
          draft={draft}
          isNew={systems.some(({ code, isNew }) => code === draft.system && isNew)}
        />
      )}
    </nav>
  );
}

function Parts(props: {
  readonly draft: RulesDraft;
  readonly isNew: boolean;
  readonly problems: readonly Problem[];
  readonly part: string;
}): ReactNode {
  const { draft, problems } = props;
  const part = (name: string, words: string, note: ReactNode, has: boolean): ReactNode => (
    <PartLink
      key={name}
      system={draft.system}
      name={name}
      words={words}
      here={props.part}
      has={has}
      note={note}
    />
  );
  return (
    <>
      <h2>{draft.system}</h2>
      <ul>
        {part('components', 'Catalogue', noteOf(problems, 'components', draft.catalogue.length), true)}
        {tableForms.map(({ name, words }) => {
          const has = draft.tables.has(name);
          return part(name, words, noteOf(problems, name, has ? null : 'none'), has);
        })}
        {props.isNew ? null : part('versions', 'Versions', null, true)}
      </ul>
    </>
  );
}

function noteOf(
  problems: readonly Problem[],
  name: Parameters<typeof problemsOf>[1],
  otherwise: string | number | null,
): ReactNode {
  const refused = problemsOf(problems, name).length;
  if (refused > 0) return <span className="short-word">{refused} refused</span>;
  return otherwise === null ? null : <span className="nav-note">{otherwise}</span>;
}

function PartLink(props: {
  readonly system: string;
  readonly name: string;
  readonly words: string;
  readonly here: string;
  readonly has: boolean;
  readonly note: ReactNode;
}): ReactNode {
  const [address] = useAddressQuery();
  const query = new URLSearchParams(address);
  query.set('table', props.name);
  query.delete('version');
  return (
    <li>
      <Link
        href={`/rules/${encodeURIComponent(props.system)}?${query.toString()}`}
        aria-current={props.name === props.here ? 'page' : undefined}
        className={props.has ? undefined : 'stands-back'}
      >
        <span>{props.words}</span> {props.note}
      </Link>
    </li>
  );
}
