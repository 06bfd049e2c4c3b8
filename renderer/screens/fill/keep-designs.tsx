// New gangs of a proposal get their names, hands and hours, and are kept: all of them or none. A refusal stands under the
// gang that it is about.
import { Fragment, type ReactNode, useState } from 'react';
import { Button } from 'react-aria-components';
import { Link } from 'wouter';
import { useCommand } from '../../client/core.tsx';
import { wordsOf } from '../../client/refused.ts';
import { useUnits } from '../../parts/units.tsx';
import type { Proposal } from './fill-shapes.ts';
import { hoursOf, keptDesigns, type NamedGang, namesOf, refusedGang } from './named-gangs.ts';

type TextKey = 'code' | 'name' | 'revision' | 'assemble' | 'breakDown';

export function KeepDesigns(props: { readonly proposal: Proposal; readonly system: string }): ReactNode {
  const { proposal, system } = props;
  const units = useUnits();
  const [named, setNamed] = useState<readonly NamedGang[]>(() => namesOf(proposal));
  const { mutateAsync: keep, isPending, error } = useCommand('fill.keep');
  const [kept, setKept] = useState<readonly string[]>([]);
  if (named.length === 0) return <p className="soft">All gangs of it are on paper already.</p>;
  if (kept.length > 0) return <Kept codes={kept} />;
  const change = (more: Partial<NamedGang>, which?: number): void =>
    setNamed(named.map((each, at) => (which === undefined || at === which ? { ...each, ...more } : each)));
  const ready = named.every(
    (each) => each.hand !== '' && hoursOf(each.assemble) !== null && hoursOf(each.breakDown) !== null,
  );
  const run = async (): Promise<void> => {
    const designs = keptDesigns(proposal, named, system);
    if (designs === null) return;
    try {
      const done = await keep({ designs });
      setKept(done.kept.map(({ code }) => code));
    } catch {
      // Said in the table.
    }
  };
  const refused = error === null ? null : refusedGang(error.field);
  const cell = (index: number, key: TextKey, label: string): ReactNode => (
    <td>
      <input
        aria-label={`${label} of ${named[index]?.proposed ?? ''}`}
        aria-invalid={refused?.index === index && refused.field === key}
        className={`fill-${key}`}
        value={named[index]?.[key] ?? ''}
        spellCheck={false}
        autoComplete="off"
        onChange={(event) => change({ [key]: event.target.value }, index)}
      />
    </td>
  );
  const forAll = (key: 'assemble' | 'breakDown', label: string): ReactNode => (
    <td>
      <input
        aria-label={label}
        className={`fill-${key}`}
        placeholder="for all"
        value={named.every((each) => each[key] === named[0]?.[key]) ? (named[0]?.[key] ?? '') : ''}
        autoComplete="off"
        onChange={(event) => change({ [key]: event.target.value })}
      />
    </td>
  );
  return (
    <section aria-labelledby="fill-keep" className="fill-keep">
      <h2 id="fill-keep">New gangs</h2>
      <table>
        <thead>
          <tr>
            <th scope="col">Gang</th>
            <th scope="col" className="number">
              Weight
            </th>
            <th scope="col">Code</th>
            <th scope="col" className="fill-wide">
              Name
            </th>
            <th scope="col">Revision</th>
            <th scope="col">Hand</th>
            <th scope="col">Assemble, h</th>
            <th scope="col">Break down, h</th>
          </tr>
        </thead>
        <tbody>
          {named.map((each, index) => (
            <Fragment key={each.proposed}>
              <tr>
                <th scope="row">
                  {each.proposed}, {units.length(each.widthNm)} × {units.length(each.heightNm)}
                </th>
                <td className="number">{units.weight(each.weightGrams)}</td>
                {cell(index, 'code', 'Code')}
                {cell(index, 'name', 'Name')}
                {cell(index, 'revision', 'Revision')}
                <td>
                  {each.hand === 'symmetrical' ? (
                    <span className="soft">symmetrical</span>
                  ) : (
                    <select
                      aria-label={`Hand of ${each.proposed}`}
                      aria-invalid={refused?.index === index && refused.field === 'hand'}
                      value={each.hand}
                      onChange={(event) => change({ hand: event.target.value as NamedGang['hand'] }, index)}
                    >
                      <option value="">choose</option>
                      <option value="left">left</option>
                      <option value="right">right</option>
                    </select>
                  )}
                </td>
                {cell(index, 'assemble', 'Hours to assemble')}
                {cell(index, 'breakDown', 'Hours to break down')}
              </tr>
              {error !== null && refused?.index === index ? (
                <tr>
                  <td colSpan={8}>
                    <Wrong error={error} />
                  </td>
                </tr>
              ) : null}
            </Fragment>
          ))}
          {named.length > 1 ? (
            <tr>
              <td colSpan={6} className="soft">
                The same hours for all of them
              </td>
              {forAll('assemble', 'Hours to assemble, for all')}
              {forAll('breakDown', 'Hours to break down, for all')}
            </tr>
          ) : null}
        </tbody>
      </table>
      <p className="fill-kept">
        <Button className="primary" isDisabled={!ready || isPending} onPress={() => void run()}>
          Keep these gangs
        </Button>
        <span className="soft">{ready ? 'All of them or none.' : 'Hands or hours are missing.'}</span>
      </p>
      {error !== null && refused === null ? <Wrong error={error} /> : null}
    </section>
  );
}

function Wrong(props: { readonly error: unknown }): ReactNode {
  const { message, hint } = wordsOf(props.error);
  return (
    <span className="field-error" role="alert">
      {message} {hint}
    </span>
  );
}

function Kept(props: { readonly codes: readonly string[] }): ReactNode {
  return (
    <section aria-labelledby="fill-keep">
      <h2 id="fill-keep">New gangs</h2>
      <p className="fill-kept">
        <output>Kept:</output>
        {props.codes.map((code) => (
          <Link key={code} href={`/designs/${encodeURIComponent(code)}`}>
            {code}
          </Link>
        ))}
      </p>
    </section>
  );
}
