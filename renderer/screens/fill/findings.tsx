// What was found of a proposal, stops first; one and the same of several gangs is said once, with all its places.
import type { ReactNode } from 'react';
import { type GatheredFinding, gatheredFindings } from './gathered.ts';
import type { Proposal } from './fill-shapes.ts';

export function Findings(props: { readonly findings: Proposal['findings'] }): ReactNode {
  const gathered = gatheredFindings(props.findings);
  return (
    <section aria-labelledby="fill-findings">
      <h2 id="fill-findings">Findings</h2>
      {gathered.length === 0 ? (
        <p className="soft">Nothing was found. That is not a release for use.</p>
      ) : (
        <ul className="fill-findings">
          {gathered.map((finding) => (
            <Line key={`${finding.severity} ${finding.message}`} finding={finding} />
          ))}
        </ul>
      )}
    </section>
  );
}

function Line(props: { readonly finding: GatheredFinding }): ReactNode {
  const { severity, message, places } = props.finding;
  return (
    <li>
      <span className={`severity severity-${severity}`}>{severity}</span>
      <span>
        {message} <span className="soft">{places.join(', ').replaceAll(', design ', ', ')}</span>
      </span>
    </li>
  );
}
