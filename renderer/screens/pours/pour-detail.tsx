// The chosen pour in full: where its gangs stand, loose pieces, gates by others, why it may be stripped
// when, and what the core finds.
import type { ReactNode } from 'react';
import { Link } from 'wouter';
import { useUnits } from '../../parts/units.tsx';
import { DatePart } from './date-part.tsx';
import { GatesPart } from './gates-part.tsx';
import { LoosePart } from './loose-part.tsx';
import type { CellContext, PourRow } from './pour-shapes.ts';
import { withSpokenInstants } from '../../parts/spoken-instants.ts';
import { stripReasons } from './pour-words.ts';
import { SidesPart } from './sides-part.tsx';
import type { PourEdits } from './use-pour-edits.ts';

export interface PartProps {
  readonly row: PourRow;
  readonly context: CellContext;
  readonly edits: PourEdits;
}

export function PourDetail(props: PartProps & { readonly onDates: () => void }): ReactNode {
  const { row } = props;
  const units = useUnits();
  return (
    <section className="pour-detail" aria-label={`Pour ${row.pour.code}`}>
      <div className="pour-part part-sides">
        <h2>
          {row.pour.code} {row.pour.name}{' '}
          <span className="soft part-fact" title="contact area of both sides">
            {units.area(row.areaM2)}
          </span>
        </h2>
        <SidesPart {...props} />
      </div>
      <div className="pour-part">
        <h2>Loose pieces</h2>
        <LoosePart {...props} />
      </div>
      <div className="pour-part">
        <h2>Gates by others</h2>
        <GatesPart {...props} />
      </div>
      <section className="pour-part" aria-label="Its date, and when it may be stripped">
        <DatePart row={row} onDates={props.onDates} />
        <FindingLines row={row} timeZone={props.context.timeZone} />
        <h2>When it may be stripped</h2>
        <ol className="strip-reasons">
          {stripReasons(row, props.context.timeZone).map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ol>
        <p className="forecast-word">A forecast, not a release: a named person clears the strip.</p>
        <Link href={`/board/work?view=pours&pour=${encodeURIComponent(row.pour.code)}`}>
          Hold it, crane and storey below
        </Link>
      </section>
    </section>
  );
}

function FindingLines(props: { readonly row: PourRow; readonly timeZone: string }): ReactNode {
  const units = useUnits();
  if (props.row.findings.length === 0) return null;
  return (
    <>
      <h2>Findings</h2>
      <ul className="pour-findings">
        {props.row.findings.map((finding) => (
          <li key={`${finding.rule} ${finding.message}`} className={`note note-${finding.severity}`}>
            <span className="note-word">{finding.severity}</span>
            <span>
              {withSpokenInstants(finding.message, props.timeZone)}
              {typeof finding.where === 'object' ? (
                <span className="soft"> {units.length(finding.where.xNm)} along.</span>
              ) : null}
            </span>
          </li>
        ))}
      </ul>
    </>
  );
}
