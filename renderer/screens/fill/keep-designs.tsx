// New gangs of a proposal get their names, hands and hours, and are kept: all of them or none.
import { type ReactNode, useState } from 'react';
import { Button } from 'react-aria-components';
import { Link } from 'wouter';
import { useCommand } from '../../client/core.tsx';
import { wordsOf } from '../../client/refused.ts';
import { useUnits } from '../../parts/units.tsx';
import type { Proposal } from './fill-shapes.ts';
import { hoursOf, keptDesigns, type NamedGang, namesOf } from './named-gangs.ts';

export function KeepDesigns(props: { readonly proposal: Proposal; readonly system: string }): ReactNode {
  const { proposal, system } = props;
  const units = useUnits();
  const [named, setNamed] = useState<readonly NamedGang[]>(() => namesOf(proposal));
  const { mutateAsync: keep, isPending, error } = useCommand('fill.keep');
  const [kept, setKept] = useState<readonly string[]>([]);
  if (named.length === 0) return <p className="soft">All gangs of it are on paper already.</p>;
  const change = (index: number, more: Partial<NamedGang>): void =>
    setNamed(named.map((each, at) => (at === index ? { ...each, ...more } : each)));
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
      // Said under the table.
    }
  };
  const cell = (
    index: number,
    key: 'code' | 'name' | 'revision' | 'assemble' | 'breakDown',
    label: string,
  ): ReactNode => (
    <td>
      <input
        aria-label={`${label} of ${named[index]?.proposed ?? ''}`}
        className={`fill-${key}`}
        value={named[index]?.[key] ?? ''}
        spellCheck={false}
        autoComplete="off"
        onChange={(event) => change(index, { [key]: event.target.value })}
      />
    </td>
  );
  return (
    <section aria-labelledby="fill-keep" className="fill-keep">
      <h2 id="fill-keep">New gangs</h2>
      <table>
        <thead>
          <tr>
            <th>Proposed</th>
            <th>Size</th>
            <th className="number">Weight</th>
            <th>Code</th>
            <th>Name</th>
            <th>Revision</th>
            <th>Hand</th>
            <th>Assemble, h</th>
            <th>Break down, h</th>
          </tr>
        </thead>
        <tbody>
          {named.map((each, index) => (
            <tr key={each.proposed}>
              <td>{each.proposed}</td>
              <td>
                {units.length(each.widthNm)} × {units.length(each.heightNm)}
              </td>
              <td className="number">{units.weight(each.weightGrams)}</td>
              {cell(index, 'code', 'Code')}
              {cell(index, 'name', 'Name')}
              {cell(index, 'revision', 'Revision')}
              <td>
                {each.hand === 'symmetrical' ? (
                  'either'
                ) : (
                  <select
                    aria-label={`Hand of ${each.proposed}`}
                    value={each.hand}
                    onChange={(event) => change(index, { hand: event.target.value as NamedGang['hand'] })}
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
          ))}
        </tbody>
      </table>
      {kept.length > 0 ? (
        <p className="fill-kept">
          Kept:{' '}
          {kept.map((code) => (
            <Link key={code} href={`/designs/${encodeURIComponent(code)}`}>
              {code}
            </Link>
          ))}
        </p>
      ) : (
        <p className="fill-kept">
          <Button className="primary" isDisabled={!ready || isPending} onPress={() => void run()}>
            Keep these gangs
          </Button>
          <span className="soft">{ready ? 'All of them or none.' : 'Hands and hours are missing.'}</span>
        </p>
      )}
      {error === null ? null : (
        <p className="field-error" role="alert">
          {wordsOf(error).message} {wordsOf(error).hint}
        </p>
      )}
    </section>
  );
}
