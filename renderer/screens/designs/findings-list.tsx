// Findings in words, the gravest first, each with the sign and number that it has on the drawing.
import type { ReactNode } from 'react';
import { useUnits } from '../../parts/units.tsx';
import { PinShape } from './finding-pin.tsx';
import type { NumberedFinding } from './finding-pins.ts';
import type { Lit, Pointed } from './lit.ts';
import { placeInWords, ruleInWords } from './reason-words.ts';

export function FindingsList(props: {
  readonly findings: readonly NumberedFinding[];
  readonly lit: Lit;
  readonly onPoint: (pointed: Pointed | null) => void;
}): ReactNode {
  const { system } = useUnits();
  return (
    <section aria-labelledby="findings-head">
      <div className="part-head">
        <h2 id="findings-head">Findings</h2>
      </div>
      {props.findings.length === 0 ? (
        <p className="soft part-words">No rule of the table is broken. That is not a release for use.</p>
      ) : (
        <ol className="design-findings">
          {props.findings.map(({ number, finding }) => (
            <li
              key={number}
              className={props.lit.finding === number ? 'design-finding lit' : 'design-finding'}
              onPointerEnter={() => props.onPoint({ kind: 'finding', number })}
              onPointerLeave={() => props.onPoint(null)}
            >
              <svg width="26" height="24" aria-hidden="true">
                <PinShape severity={finding.severity} number={number} x={13} y={12} />
              </svg>
              <div>
                <span className={`severity severity-${finding.severity}`}>{finding.severity}</span>{' '}
                {finding.message}
                <span className="soft design-finding-source">
                  {finding.where === undefined || finding.where === finding.rule
                    ? ''
                    : `${placeInWords(finding.where, system)} · `}
                  {finding.source ?? `rule: ${ruleInWords(finding.rule)}`}
                </span>
              </div>
            </li>
          ))}
        </ol>
      )}
    </section>
  );
}
