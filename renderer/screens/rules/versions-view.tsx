// Every version of a system's rule tables that was ever saved: looked at, held against what stands here now, and
// taken up again as the next one.
import type { ReactNode } from 'react';
import { useCore } from '../../client/core.tsx';
import { useAddressQuery } from '../../client/query.ts';
import { RefusalNote, Waiting } from '../../parts/notes.tsx';
import { useUnits } from '../../parts/units.tsx';
import type { DraftEdits } from './draft-store.ts';
import { ruleDifferences, type RuleDifference } from './rule-differences.ts';
import { draftOfRules } from './rules-draft.ts';
import type { RulesRead } from './rules-shapes.ts';
import type { Checked } from './use-checked.ts';

export function VersionsView(props: {
  readonly read: RulesRead;
  readonly edits: DraftEdits;
  readonly checked: Checked;
}): ReactNode {
  const { read, edits, checked } = props;
  const [address, change] = useAddressQuery();
  const versions = read.systems.find(({ code }) => code === read.system)?.versions ?? [];
  const asked = Number(address.get('version'));
  const chosen = versions.includes(asked)
    ? asked
    : checked.isChanged
      ? read.version
      : (versions.filter((one) => one !== read.version).at(-1) ?? read.version);
  const other = useCore('rules.read', { system: read.system, version: chosen });
  const now = checked.isChanged ? 'the draft' : `version ${read.version}`;
  return (
    <section className="rule-table" aria-labelledby="rule-table-head">
      <div className="rule-table-head">
        <h2 id="rule-table-head">Versions</h2>
      </div>
      <p className="rule-about">
        Every saved change of the tables is a version of its own and stays. Weights and sizes of the catalogue
        have no versions: they are as they are now.
      </p>
      <ul className="version-list">
        {versions.toReversed().map((version) => (
          <li key={version}>
            <button
              type="button"
              aria-pressed={version === chosen}
              onClick={() => change({ version: String(version) })}
            >
              Version {version}
              {version === read.version ? ', in force' : ''}
            </button>
          </li>
        ))}
      </ul>
      {other.error !== null ? <RefusalNote error={other.error} /> : null}
      {other.data?.version !== chosen ? (
        <Waiting what={`Reading version ${chosen} …`} />
      ) : (
        <Against version={chosen} now={now} then={other.data} edits={edits} checked={checked} />
      )}
    </section>
  );
}

function Against(props: {
  readonly version: number;
  readonly now: string;
  readonly then: RulesRead;
  readonly edits: DraftEdits;
  readonly checked: Checked;
}): ReactNode {
  const { version, now, then, edits, checked } = props;
  const { system } = useUnits();
  const differences = ruleDifferences(then.rules, checked.rules, system);
  const name = `version ${version}`;
  if (differences.length === 0)
    return (
      <p className="soft">
        {name === now ? `${capital(name)} is in force.` : `${capital(now)} says the same as ${name}.`}
      </p>
    );
  return (
    <>
      <div className="rule-table-head">
        <h3>
          {capital(name)} against {now}: {differences.length}{' '}
          {differences.length === 1 ? 'difference' : 'differences'}
        </h3>
        <button
          type="button"
          onClick={() =>
            edits.change(`${name} taken up again`, (old) => ({
              ...old,
              ...draftOfRules(then.rules, old.nextId),
            }))
          }
        >
          Take {name} up again
        </button>
      </div>
      <Differences differences={differences} before={capital(name)} after={capital(now)} />
    </>
  );
}

function Differences(props: {
  readonly differences: readonly RuleDifference[];
  readonly before: string;
  readonly after: string;
}): ReactNode {
  return (
    <table className="plain version-differences">
      <thead>
        <tr>
          <th scope="col">Where</th>
          <th scope="col">{props.before}</th>
          <th scope="col">{props.after}</th>
        </tr>
      </thead>
      <tbody>
        {props.differences.map(({ where, before, after }) => (
          <tr key={where}>
            <th scope="row">{where}</th>
            <td>{before === '' ? <span className="soft">nothing</span> : before}</td>
            <td>{after === '' ? <span className="soft">nothing</span> : after}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
