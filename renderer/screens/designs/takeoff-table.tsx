// The take-off: a line a component with its weight, and behind each line the reasons for its number.
import { type ReactNode, useState } from 'react';
import { useUnits } from '../../parts/units.tsx';
import type { ShownTakeOff, TakeoffLine } from './design-shapes.ts';
import type { Lit, Pointed } from './lit.ts';
import { placeInWords, reasonGroups } from './reason-words.ts';

export function TakeoffTable(props: {
  readonly design: ShownTakeOff;
  /** Of the rule tables; null while they are those in force. */
  readonly ruleVersion: number | null;
  readonly lit: Lit;
  readonly onPoint: (pointed: Pointed | null) => void;
}): ReactNode {
  const { lines, weightGrams } = props.design;
  const pieces = lines.reduce((sum, line) => sum + line.quantity, 0);
  const units = useUnits();
  const [open, setOpen] = useState<ReadonlySet<string>>(new Set());
  const toggle = (component: string): void =>
    setOpen((old) => {
      const next = new Set(old);
      if (!next.delete(component)) next.add(component);
      return next;
    });
  const all = open.size === lines.length;
  return (
    <section aria-labelledby="takeoff-head">
      <div className="part-head">
        <h2 id="takeoff-head">Take-off</h2>
        {props.ruleVersion === null ? null : <span className="soft">by rule table {props.ruleVersion}</span>}
        <button
          type="button"
          className="quiet part-end"
          onClick={() => setOpen(all ? new Set() : new Set(lines.map(({ component }) => component)))}
        >
          {all ? 'Hide all reasons' : 'Show all reasons'}
        </button>
      </div>
      <table className="plain takeoff">
        <thead>
          <tr>
            <th scope="col">Component</th>
            <th scope="col">Name</th>
            <th scope="col" className="numeric">
              Pieces
            </th>
            <th scope="col" className="numeric">
              Weight
            </th>
          </tr>
        </thead>
        <tbody>
          {lines.map((line) => (
            <Line
              key={line.component}
              line={line}
              open={open.has(line.component)}
              lit={props.lit.lines.has(line.component)}
              onToggle={() => toggle(line.component)}
              onPoint={props.onPoint}
            />
          ))}
        </tbody>
        <tfoot>
          <tr>
            <td colSpan={2}>{props.design.hooks.length > 0 ? 'All; weight without hooks' : 'All pieces'}</td>
            <td className="numeric">{pieces}</td>
            <td className="numeric">{units.weight(weightGrams)}</td>
          </tr>
        </tfoot>
      </table>
    </section>
  );
}

function Line(props: {
  readonly line: TakeoffLine;
  readonly open: boolean;
  readonly lit: boolean;
  readonly onToggle: () => void;
  readonly onPoint: (pointed: Pointed | null) => void;
}): ReactNode {
  const { line, open } = props;
  const units = useUnits();
  const point = (): void => props.onPoint({ kind: 'line', component: line.component });
  const leave = (): void => props.onPoint(null);
  return (
    <>
      <tr className={props.lit ? 'lit' : undefined} onPointerEnter={point} onPointerLeave={leave}>
        <td>
          <button
            type="button"
            className="disclose"
            aria-expanded={open}
            aria-label={`${line.component}: reasons`}
            onClick={props.onToggle}
            onFocus={point}
            onBlur={leave}
          >
            <span aria-hidden="true">{open ? '▾' : '▸'}</span> {line.component}
          </button>
        </td>
        <td>{line.name}</td>
        <td className="numeric">{line.quantity}</td>
        <td className="numeric">{units.weight(line.weightGrams)}</td>
      </tr>
      {open ? (
        <tr className="reasons">
          <td colSpan={4}>
            <Reasons line={line} />
          </td>
        </tr>
      ) : null}
    </>
  );
}

function Reasons(props: { readonly line: TakeoffLine }): ReactNode {
  const { system } = useUnits();
  return (
    <ul className="reason-list">
      {reasonGroups(props.line.because).map((group) => (
        <li key={`${group.rule} ${group.each}`}>
          <strong>{group.count}</strong> {group.words}
          {group.places.length > 1 ? `: ${group.each} at each of ${group.places.length} places` : null}
          {group.places.length === 1 && group.places[0] !== undefined ? (
            <>: {placeInWords(group.places[0], system)}</>
          ) : (
            <ul className={`reason-places ${system}`}>
              {group.places.map((place, index) => (
                <li key={`${index} ${placeInWords(place, system)}`}>{placeInWords(place, system)}</li>
              ))}
            </ul>
          )}
        </li>
      ))}
    </ul>
  );
}
