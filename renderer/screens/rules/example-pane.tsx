// Beside the tables: a gang of the system taken off by what is being written, with what that changes in it.
import { type ReactNode, useMemo, useState } from 'react';
import { useCore } from '../../client/core.tsx';
import { useAddressQuery } from '../../client/query.ts';
import { wordsOf } from '../../client/refused.ts';
import { useUnits } from '../../parts/units.tsx';
import { exampleJoints, exampleLines } from './example-changes.ts';
import { ExampleFindings } from './example-findings.tsx';
import { ExamplePicture } from './example-picture.tsx';
import { madeExample } from './made-example.ts';
import type { RulesDraft } from './rules-draft.ts';
import type { ExampleGang } from './rules-shapes.ts';
import type { Checked } from './use-checked.ts';

export function ExamplePane(props: { readonly draft: RulesDraft; readonly checked: Checked }): ReactNode {
  const { draft, checked } = props;
  const [address, change] = useAddressQuery();
  const list = useCore('design.list', {});
  const designs = (list.data?.designs ?? []).filter(({ system }) => system === draft.system);
  const asked = address.get('example');
  const chosen = designs.find(({ code }) => code === asked) ?? designs[0];
  const read = useCore('design.read', { design: chosen?.code ?? '' }, { enabled: chosen !== undefined });
  const design = read.data?.summary.code === chosen?.code ? read.data : undefined;
  const made = useMemo(() => madeExample(draft), [draft]);
  const geometry = chosen === undefined ? made : (design?.geometry ?? null);
  // Rules that the core has not let through are not tried on a gang.
  const isLetThrough = !checked.isChanged || checked.changes !== undefined;
  const isAsked = geometry !== null && checked.problems.length === 0 && isLetThrough;
  const taken = useCore(
    'design.draft',
    {
      system: draft.system,
      geometry: geometry ?? {
        panels: [],
        fillers: [],
        edges: { left: 'open', right: 'open' },
        equalised: false,
      },
      rules: checked.rules,
      components: [...checked.components],
    },
    { enabled: isAsked },
  );
  const gang = useLast(
    `${draft.system} ${chosen?.code ?? ''}`,
    isAsked && !taken.isPlaceholderData ? taken.data : undefined,
  );
  const name = chosen?.code ?? 'the example';
  return (
    <section className="example" aria-labelledby="example-head">
      <div className="rule-side-head">
        <h2 id="example-head">Example</h2>
        {chosen === undefined ? null : (
          <select
            aria-label="Design of the example"
            value={chosen.code}
            onChange={(event) => change({ example: event.target.value })}
          >
            {designs.map((each) => (
              <option key={each.code} value={each.code}>
                {each.code} {each.name}
              </option>
            ))}
          </select>
        )}
      </div>
      {design === undefined ? null : (
        <p className="soft example-version">{versionWords(design, checked.isChanged)}</p>
      )}
      {chosen === undefined && made !== null ? (
        <p className="soft example-version">
          No design of this system yet: a row of its widest panels of the greatest height.
        </p>
      ) : null}
      {geometry === null ? (
        <p className="soft">
          {chosen === undefined
            ? 'A gang is drawn here as soon as the catalogue has a panel with width and height.'
            : `Reading ${name} …`}
        </p>
      ) : checked.problems.length > 0 ? (
        <p className="soft">
          What is refused has to be mended first;{' '}
          {gang === undefined ? 'then the example is drawn.' : 'until then the example stays as it was.'}
        </p>
      ) : taken.error !== null ? (
        <p className="short-word">{wordsOf(taken.error).message}</p>
      ) : null}
      {gang === undefined || geometry === null ? null : <Taken name={name} gang={gang} before={design} />}
    </section>
  );
}

/** The newest of them, kept while there is no newer one of the same. */
function useLast(whose: string, newest: ExampleGang | undefined): ExampleGang | undefined {
  const [last, setLast] = useState<{ readonly whose: string; readonly gang: ExampleGang } | null>(null);
  if (newest !== undefined && (last?.gang !== newest || last.whose !== whose))
    setLast({ whose, gang: newest });
  return newest ?? (last?.whose === whose ? last.gang : undefined);
}

function versionWords(
  design: { readonly ruleVersion: number; readonly savedWithRuleVersion: number },
  isChanged: boolean,
): string {
  const { ruleVersion, savedWithRuleVersion } = design;
  const saved =
    savedWithRuleVersion === 0 || savedWithRuleVersion === ruleVersion
      ? ''
      : ` It was last saved under version ${savedWithRuleVersion}.`;
  return `${isChanged ? 'Shown by this draft; in the book it is taken off' : 'Taken off'} by version ${ruleVersion}.${saved}`;
}

function Taken(props: {
  readonly name: string;
  readonly gang: ExampleGang;
  readonly before: Pick<ExampleGang, 'joints' | 'lines' | 'weightGrams'> | undefined;
}): ReactNode {
  const { gang, before } = props;
  const units = useUnits();
  const joints = exampleJoints(gang, before);
  const lines = exampleLines(gang, before, new Set(gang.panels.map(({ panel }) => panel)));
  return (
    <>
      <ExamplePicture name={props.name} gang={gang} joints={joints} />
      <table className="plain example-lines">
        <thead>
          <tr>
            <th scope="col">Piece</th>
            {before === undefined ? null : (
              <th scope="col" className="numeric">
                book
              </th>
            )}
            <th scope="col" className="numeric">
              here
            </th>
          </tr>
        </thead>
        <tbody>
          {lines.map((line) => {
            const differs = before !== undefined && line.before !== line.after;
            return (
              <tr key={line.component} className={differs ? 'differs' : undefined}>
                <th scope="row">
                  <b>{line.component}</b> <span className="soft">{line.name}</span>
                </th>
                {before === undefined ? null : <td className="numeric">{line.before}</td>}
                <td className="numeric">{line.after}</td>
              </tr>
            );
          })}
          <tr
            className={
              before !== undefined && before.weightGrams !== gang.weightGrams ? 'differs' : undefined
            }
          >
            <th scope="row">Weight without hooks</th>
            {before === undefined ? null : <td className="numeric">{units.weight(before.weightGrams)}</td>}
            <td className="numeric">{units.weight(gang.weightGrams)}</td>
          </tr>
        </tbody>
      </table>
      <ExampleFindings findings={gang.findings} />
    </>
  );
}
