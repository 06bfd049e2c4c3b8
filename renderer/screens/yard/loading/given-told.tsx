// What came of entering what was given: what the designer is to be asked, and what of the list nobody gave.
import type { ReactNode } from 'react';
import type { Output } from '../../../client/core.tsx';

export function GivenTold({ answer }: { readonly answer: Output<'picklist.given'> }): ReactNode {
  const { findings, missing } = answer;
  return (
    <>
      <output>
        Kept.{' '}
        {findings.length === 0
          ? 'Everything was given as listed or is still missing.'
          : `${findings.length} given in place of something else:`}
      </output>
      {findings.map((finding) => (
        <div
          key={finding.message}
          className={`note note-${finding.severity === 'stop' ? 'stop' : 'caution'}`}
        >
          <span className="note-word">{finding.severity === 'stop' ? 'Stop' : 'Caution'}</span>
          <span>{finding.message}</span>
        </div>
      ))}
      {missing.length === 0 ? null : (
        <p>
          Still missing: {missing.map(({ component, quantity }) => `${quantity} ${component}`).join(', ')}.
        </p>
      )}
    </>
  );
}
