// What the tables find at the example, the gravest first.
import type { ReactNode } from 'react';
import type { ExampleGang } from './rules-shapes.ts';

const order = ['stop', 'caution', 'note'] as const;

export function ExampleFindings(props: { readonly findings: ExampleGang['findings'] }): ReactNode {
  const sorted = order.flatMap((severity) => props.findings.filter((one) => one.severity === severity));
  if (sorted.length === 0) return <p className="soft">No finding. That is not a release for use.</p>;
  return (
    <ul className="example-findings">
      {sorted.map(({ severity, message, source }, index) => (
        // Two findings may say the same of two places.
        // oxlint-disable-next-line react/no-array-index-key
        <li key={`${index} ${message}`}>
          <span className={`severity severity-${severity}`}>{severity}</span> {message}
          {source === undefined ? null : <span className="soft"> ({source})</span>}
        </li>
      ))}
    </ul>
  );
}
