// Two saved states of a design: the drawings side by side, panels that only one of them has in heavy lines, then
// the pieces and findings that differ.
import { type ReactNode, useMemo } from 'react';
import { type Output, useCore } from '../../../client/core.tsx';
import { RefusalNote, Waiting } from '../../../parts/notes.tsx';
import { useUnits } from '../../../parts/units.tsx';
import type { Finding } from '../design-shapes.ts';
import { Elevation } from '../elevation.tsx';
import { elevationMarks } from '../elevation-marks.ts';
import { numbered } from '../finding-pins.ts';
import type { Lit } from '../lit.ts';
import { placeInWords } from '../reason-words.ts';
import { sizeWords } from '../size-words.ts';

type Comparison = Output<'design.compare'>;
type State = Comparison['before'];
type Panels = Comparison['panelsOnlyBefore'];

export function Compared(props: {
  readonly code: string;
  readonly before: number;
  readonly after: number;
}): ReactNode {
  const { code, before, after } = props;
  const compared = useCore('design.compare', { design: code, before, after });
  if (compared.error !== null) return <RefusalNote error={compared.error} />;
  if (compared.data === undefined) return <Waiting what="Holding them against each other …" />;
  const { data } = compared;
  return (
    <>
      <div className="compared">
        <Side code={code} word="Before" state={data.before} only={data.panelsOnlyBefore} />
        <Side code={code} word="After" state={data.after} only={data.panelsOnlyAfter} />
      </div>
      <div className="differences">
        <ChangedPieces lines={data.lines} />
        <ChangedPanels before={data.panelsOnlyBefore} after={data.panelsOnlyAfter} />
        <ChangedFindings gone={data.findingsGone} added={data.findingsNew} />
      </div>
    </>
  );
}

function Side(props: {
  readonly code: string;
  readonly word: string;
  readonly state: State;
  readonly only: Panels;
}): ReactNode {
  const { code, word, state, only } = props;
  const units = useUnits();
  const marks = useMemo(() => elevationMarks(state), [state]);
  const findings = useMemo(() => numbered(state.findings), [state]);
  const lit = useMemo<Lit>(() => {
    const places = new Set(only.map(placeOf));
    const ids = marks.flatMap((mark) =>
      mark.kind === 'panel' && places.has(placeOf(mark)) ? [mark.id] : [],
    );
    return { marks: ids.length === 0 ? null : new Set(ids), lines: new Set(), finding: null };
  }, [marks, only]);
  return (
    <section aria-label={`${word}: state ${state.number}`}>
      <div className="part-head">
        <h2>
          {word}: state {state.number}
        </h2>
        <span className="soft">
          revision {state.revision} · {sizeWords(state.widthNm, state.heightNm, units.system)} ·{' '}
          {units.weight(state.weightGrams)}
        </span>
      </div>
      <Elevation
        name={`${code}, state ${state.number}`}
        design={state}
        marks={marks}
        findings={findings}
        lit={lit}
        onPoint={nothing}
        onPin={nothing}
      />
    </section>
  );
}

const nothing = (): void => undefined;

function placeOf({ panel, onSide, xNm, yNm }: Omit<Panels[number], 'widthNm' | 'heightNm'>): string {
  return `${panel} ${onSide} ${xNm} ${yNm}`;
}

function ChangedPieces(props: { readonly lines: Comparison['lines'] }): ReactNode {
  return (
    <section aria-labelledby="changed-pieces">
      <h2 id="changed-pieces">Pieces</h2>
      {props.lines.length === 0 ? (
        <p className="soft">The piece lists are the same.</p>
      ) : (
        <table className="plain">
          <thead>
            <tr>
              <th scope="col">Component</th>
              <th scope="col">Name</th>
              <th scope="col" className="numeric">
                Before
              </th>
              <th scope="col" className="numeric">
                After
              </th>
              <th scope="col" className="numeric">
                Change
              </th>
            </tr>
          </thead>
          <tbody>
            {props.lines.map(({ component, name, before, after }) => (
              <tr key={component}>
                <td>{component}</td>
                <td>{name}</td>
                <td className="numeric">{before}</td>
                <td className="numeric">{after}</td>
                <td className="numeric">{after > before ? `+${after - before}` : `−${before - after}`}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </section>
  );
}

function ChangedPanels(props: { readonly before: Panels; readonly after: Panels }): ReactNode {
  const { system } = useUnits();
  const list = (words: string, panels: Panels): ReactNode =>
    panels.map((panel) => (
      <li key={`${words} ${placeOf(panel)}`}>
        <span className="soft">{words}</span> {panel.panel}
        {panel.onSide ? ' on its side' : ''}, {placeInWords(panel, system)}
      </li>
    ));
  const none = props.before.length + props.after.length === 0;
  return (
    <section aria-labelledby="changed-panels">
      <h2 id="changed-panels">Panels in their places</h2>
      {none ? (
        <p className="soft">The same panels stand in the same places.</p>
      ) : (
        <ul>
          {list('only before', props.before)}
          {list('only after', props.after)}
        </ul>
      )}
    </section>
  );
}

function ChangedFindings(props: {
  readonly gone: readonly Finding[];
  readonly added: readonly Finding[];
}): ReactNode {
  const { system } = useUnits();
  const list = (words: string, findings: readonly Finding[]): ReactNode =>
    numbered(findings).map(({ number, finding }) => (
      <li key={`${words} ${number}`}>
        <span className="soft">{words}</span>{' '}
        <span className={`severity severity-${finding.severity}`}>{finding.severity}</span> {finding.message}
        {finding.where === undefined || finding.where === finding.rule ? null : (
          <span className="soft"> {placeInWords(finding.where, system)}</span>
        )}
      </li>
    ));
  const none = props.gone.length + props.added.length === 0;
  return (
    <section aria-labelledby="changed-findings">
      <h2 id="changed-findings">Findings</h2>
      {none ? (
        <p className="soft">Both have the same findings.</p>
      ) : (
        <ul>
          {list('gone', props.gone)}
          {list('new', props.added)}
        </ul>
      )}
    </section>
  );
}
