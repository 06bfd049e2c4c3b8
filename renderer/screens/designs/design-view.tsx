// One design: its figures, the elevation, the take-off, the findings and where it stands.
import { type ReactNode, useMemo, useState } from 'react';
import { formatHours } from '../../../core/units/hours.ts';
import { useCore } from '../../client/core.tsx';
import { useIsPrinting } from '../../parts/printing.ts';
import { CautionLine, RefusalNote, Waiting } from '../../parts/notes.tsx';
import { useUnits } from '../../parts/units.tsx';
import type { DesignDetail, Finding } from './design-shapes.ts';
import { DesignTools } from './design-tools.tsx';
import { Elevation } from './elevation.tsx';
import { Legend } from './elevation-frame.tsx';
import { elevationMarks } from './elevation-marks.ts';
import { numbered } from './finding-pins.ts';
import { FindingsList } from './findings-list.tsx';
import { handWords } from './hand-words.ts';
import { LikenessNote } from './likeness-note.tsx';
import { litBy, type Pointed } from './lit.ts';
import { pressureWords } from './pressure-words.ts';
import { sizeWords } from './size-words.ts';
import { TakeoffTable } from './takeoff-table.tsx';
import { WhereItStands } from './where-it-stands.tsx';

export function DesignView(props: { readonly code: string }): ReactNode {
  const design = useCore('design.read', { design: props.code });
  if (design.error !== null) return <RefusalNote error={design.error} />;
  if (design.data === undefined) return <Waiting what={`Taking off ${props.code} …`} />;
  return <Shown key={design.data.summary.code} design={design.data} />;
}

function Shown(props: { readonly design: DesignDetail }): ReactNode {
  const { design } = props;
  const marks = useMemo(() => elevationMarks(design), [design]);
  const findings = useMemo(() => numbered(findingsOf(design)), [design]);
  const [pointed, setPointed] = useState<Pointed | null>(null);
  const [pinned, setPinned] = useState<Pointed | null>(null);
  const isPrinting = useIsPrinting();
  // On paper no piece stands back for another.
  const lit = litBy(isPrinting ? null : (pointed ?? pinned), marks);
  return (
    <article className="design" aria-label={`Design ${design.summary.code}`}>
      <Facts design={design} />
      <LikenessNote code={design.summary.code} sameAs={design.sameAs} />
      <div className="design-parts">
        <div className="design-drawing">
          <Elevation
            name={design.summary.code}
            design={design}
            marks={marks}
            findings={findings}
            lit={lit}
            onPoint={setPointed}
            onPin={setPinned}
          />
          <Legend design={design} />
        </div>
        <div className="design-tables">
          <TakeoffTable design={design} ruleVersion={design.ruleVersion} lit={lit} onPoint={setPointed} />
          <div>
            <FindingsList findings={findings} lit={lit} onPoint={setPointed} />
            <WhereItStands turns={design.turns} />
          </div>
        </div>
      </div>
      <CautionLine about="The take-off follows the entered rule table; hook loads are computed from entered weights." />
    </article>
  );
}

/** Of one that has a twin of the other hand also where the twin's holes do not come. */
function findingsOf({ findings, mirrorFindings, sameAs }: DesignDetail): readonly Finding[] {
  return sameAs.some(({ how }) => how === 'mirrored') ? [...findings, ...mirrorFindings] : findings;
}

function Facts(props: { readonly design: DesignDetail }): ReactNode {
  const { design } = props;
  const { summary } = design;
  const units = useUnits();
  const facts: readonly (readonly [string, string])[] = [
    ['Size', sizeWords(summary.widthNm, summary.heightNm, units.system)],
    ['Area', units.area(summary.areaM2)],
    ['Weight without hooks', units.weight(summary.weightGrams)],
    ['Permitted pressure', pressureWords(design, units.system)],
    ['Hand', handWords[summary.hand]],
    ['Revision', summary.revision],
    ['Assemble', formatHours(design.assembleH)],
    ['Break down', formatHours(design.breakDownH)],
  ];
  return (
    <header className="design-head">
      <h1>
        {summary.code} <span className="design-name">{summary.name}</span>
      </h1>
      <dl className="design-facts">
        {facts.map(([label, value]) => (
          <div key={label}>
            <dt>{label}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
      <DesignTools design={design} />
    </header>
  );
}
