// One line of a draft.
import type { ReactNode } from 'react';
import { conditions } from '../../../../core/yard/movement.ts';
import type { DraftError } from '../booking-draft.ts';
import { type ComponentChoice, ComponentField } from '../component-field.tsx';
import { FieldError } from '../field.tsx';
import { conditionWords, type Places } from '../yard-words.ts';
import { type NoteDraftLine, readPieces } from './note-draft.ts';

export function NoteLine(props: {
  readonly line: NoteDraftLine;
  readonly number: number;
  readonly heads: { readonly paper: string; readonly ours: string };
  readonly owners: Places['owners'];
  readonly containers: Places['locations'];
  readonly errors: readonly DraftError[];
  readonly components: readonly ComponentChoice[];
  readonly onChange: (part: Partial<NoteDraftLine>) => void;
  readonly onRemove: () => void;
}): ReactNode {
  const { line, number, heads, errors, onChange } = props;
  const wrong = (field: string): boolean => errors.some((error) => error.field === field);
  const name = props.components.find(({ code }) => code === line.component)?.name;
  const figure = (field: 'sent' | 'counted', head: string): ReactNode => (
    <td className="numeric">
      <input
        className="quantity"
        data-column={field}
        aria-label={`${head} of line ${number}`}
        aria-invalid={wrong(field)}
        value={line[field]}
        onChange={(event) => {
          const text = event.target.value;
          onChange({ [field]: field === 'counted' && text.trim() === '=' ? line.sent : text });
        }}
      />
    </td>
  );
  return (
    <>
      <tr className="note-line">
        <td>
          <ComponentField
            label={`Component of line ${number}`}
            value={line.component}
            invalid={wrong('component')}
            components={props.components}
            onChange={(component) => onChange({ component })}
          />
          <span className="soft line-name">{name ?? ''}</span>
        </td>
        {figure('sent', heads.paper)}
        {figure('counted', heads.ours)}
        <td className="note-differs">{differsWords(line)}</td>
        <td>
          <select
            aria-label={`Condition of line ${number}`}
            value={line.condition}
            onChange={(event) => {
              const chosen = conditions.find((condition) => condition === event.target.value);
              if (chosen !== undefined) onChange({ condition: chosen });
            }}
          >
            {conditions.map((condition) => (
              <option key={condition} value={condition}>
                {conditionWords[condition]}
              </option>
            ))}
          </select>
        </td>
        <td>
          <select
            aria-label={`Whose pieces in line ${number}`}
            aria-invalid={wrong('owner')}
            value={line.owner}
            onChange={(event) => onChange({ owner: event.target.value })}
          >
            <option value="">choose …</option>
            {props.owners.map(({ code }) => (
              <option key={code} value={code}>
                {code}
              </option>
            ))}
          </select>
        </td>
        {props.containers.length === 0 ? null : (
          <td>
            <select
              aria-label={`Container of line ${number}`}
              value={line.container}
              onChange={(event) => onChange({ container: event.target.value })}
            >
              <option value="">loose</option>
              {props.containers.map(({ code }) => (
                <option key={code} value={code}>
                  {code}
                </option>
              ))}
            </select>
          </td>
        )}
        <td>
          <input
            className="line-remark"
            data-column="remark"
            aria-label={`Remark of line ${number}`}
            maxLength={400}
            value={line.remark}
            onChange={(event) => onChange({ remark: event.target.value })}
          />
        </td>
        <td>
          <button
            type="button"
            className="quiet"
            aria-label={`Take out line ${number}`}
            onClick={props.onRemove}
          >
            ✕
          </button>
        </td>
      </tr>
      {errors.length === 0 ? null : (
        <tr className="line-errors">
          <td colSpan={9}>
            {errors.map((error) => (
              <FieldError key={`${error.field} ${error.message}`} error={error} />
            ))}
          </td>
        </tr>
      )}
    </>
  );
}

/** "4 short", "2 over", "not counted", nothing where both are one. */
export function differsWords({
  component,
  sent,
  counted,
}: Pick<NoteDraftLine, 'component' | 'sent' | 'counted'>): ReactNode {
  if (component.trim() === '' || (sent.trim() === '' && counted.trim() === '')) return '';
  if (counted.trim() === '') return <span className="soft">not counted</span>;
  const [paper, ours] = [
    readPieces(sent.trim() === '' ? counted : sent, component),
    readPieces(counted, component),
  ];
  if (!paper.ok || !ours.ok) return '';
  const by = ours.value - paper.value;
  if (by === 0) return <span className="soft">none</span>;
  return by < 0 ? <b className="short-word">{-by} short</b> : <b className="caution-word-ink">{by} over</b>;
}
