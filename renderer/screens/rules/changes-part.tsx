// Before saving: which designs the draft would change, and by how much.
import type { ReactNode } from 'react';
import { Link } from 'wouter';
import { useUnits } from '../../parts/units.tsx';
import type { DesignChange } from './rules-shapes.ts';
import type { Checked } from './use-checked.ts';

export function ChangesPart(props: { readonly checked: Checked }): ReactNode {
  const { checked } = props;
  return (
    <section className="rule-changes" aria-labelledby="changes-head">
      <div className="rule-side-head">
        <h2 id="changes-head">What changes</h2>
      </div>
      <Words checked={checked} />
    </section>
  );
}

/** Each of them, under the example: a change of one band may touch them all. */
export function ChangeList(props: { readonly checked: Checked }): ReactNode {
  const changes = props.checked.changes?.changes ?? [];
  if (changes.length === 0) return null;
  return (
    <section className="change-list" aria-labelledby="change-list-head">
      <h2 id="change-list-head">Design by design</h2>
      {changes.map((change) => (
        <Change key={change.design} change={change} />
      ))}
    </section>
  );
}

function Words(props: { readonly checked: Checked }): ReactNode {
  const { isChanged, problems, changes, error } = props.checked;
  if (problems.length > 0)
    return (
      <p className="short-word">
        {problems.length === 1
          ? '1 place is refused; nothing is saved until it is mended.'
          : `${problems.length} places are refused; nothing is saved until they are mended.`}
      </p>
    );
  if (!isChanged) return <p className="soft">Nothing here differs from the book.</p>;
  if (error !== null) return <p className="short-word">{error.message}</p>;
  if (changes === undefined) return <p className="soft">Taking the designs off again …</p>;
  const { length } = changes.changes;
  if (length + changes.unchanged === 0)
    return <output className="changes-words">No design is taken off by these tables yet.</output>;
  const stay = `${changes.unchanged} ${changes.unchanged === 1 ? 'stays as it is' : 'stay as they are'}`;
  return (
    <output className="changes-words">
      {length === 0 ? 'No design changes' : length === 1 ? '1 design changes' : `${length} designs change`};{' '}
      {stay}.
    </output>
  );
}

function Change(props: { readonly change: DesignChange }): ReactNode {
  const { change } = props;
  const units = useUnits();
  const weights = [change.weightGramsBefore, change.weightGramsAfter].map(units.weight);
  return (
    <div className="design-change">
      <h3>
        <Link href={`/designs/${encodeURIComponent(change.design)}`}>{change.design}</Link>{' '}
        <span className="pane-name">{change.name}</span>
      </h3>
      <ul>
        {change.lines.map(({ component, before, after }) => (
          <li key={component}>
            <b>{component}</b> {before} → {after}{' '}
            <span className="soft">
              ({after > before ? `${after - before} more` : `${before - after} fewer`})
            </span>
          </li>
        ))}
        {weights[0] === weights[1] ? null : (
          <li>
            weight {weights[0]} → {weights[1]}
          </li>
        )}
        <Findings word="new" findings={change.findingsNew} />
        <Findings word="gone" findings={change.findingsGone} />
      </ul>
    </div>
  );
}

function Findings(props: {
  readonly word: string;
  readonly findings: DesignChange['findingsNew'];
}): ReactNode {
  return props.findings.map(({ severity, message }, index) => (
    // Two findings may say the same of two places.
    // oxlint-disable-next-line react/no-array-index-key
    <li key={`${index} ${message}`}>
      {props.word}: <span className={`severity severity-${severity}`}>{severity}</span> {message}
    </li>
  ));
}
