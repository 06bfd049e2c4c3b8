// Lines of what is to be sent: a component and how many, or the tag of a container or a gang; and the stop at which it
// comes off.
import { type ReactNode, useMemo } from 'react';
import { useCore } from '../../../client/core.tsx';
import { type ComponentChoice, ComponentField } from '../component-field.tsx';
import { FieldError } from '../field.tsx';
import { emptyLine, type SendLine } from './make-draft.ts';

export function SendLines(props: {
  readonly lines: readonly SendLine[];
  readonly wrong: Readonly<Record<string, string>>;
  readonly gangs: readonly string[];
  readonly containers: readonly string[];
  readonly onLines: (lines: readonly SendLine[]) => void;
}): ReactNode {
  const { lines, onLines, gangs, containers } = props;
  const components = useCore('component.list', {});
  const choices = useMemo(
    (): readonly ComponentChoice[] => [
      ...gangs.map((code) => tagChoice(code, 'gang, laid down')),
      ...containers.map((code) => tagChoice(code, 'container')),
      ...(components.data?.components ?? []),
    ],
    [gangs, containers, components.data],
  );
  const whole = new Set([...gangs, ...containers]);
  const put = (id: string, part: Partial<SendLine>): void =>
    onLines(lines.map((line) => (line.id === id ? { ...line, ...part } : line)));
  return (
    <table className="plain slip-lines send-lines">
      <thead>
        <tr>
          <th scope="col">What</th>
          <th scope="col" className="numeric">
            How many
          </th>
          <th scope="col" className="numeric">
            Stop
          </th>
          <th scope="col">
            <span className="visually-hidden">Take the line out</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {lines.map((line, index) => (
          <Line
            key={line.id}
            line={line}
            number={index + 1}
            wrong={props.wrong[line.id]}
            choices={choices}
            isWhole={whole.has(line.what)}
            onChange={(part) => put(line.id, part)}
            onRemove={() => {
              const rest = lines.filter((each) => each.id !== line.id);
              onLines(rest.length === 0 ? [emptyLine()] : rest);
            }}
          />
        ))}
      </tbody>
      <tfoot>
        <tr>
          <td colSpan={4}>
            <button type="button" className="quiet" onClick={() => onLines([...lines, emptyLine()])}>
              Another line
            </button>
          </td>
        </tr>
      </tfoot>
    </table>
  );
}

function tagChoice(code: string, name: string): ComponentChoice {
  return {
    code,
    name,
    kind: 'other',
    system: null,
    weightGrams: 0,
    widthNm: null,
    heightNm: null,
    lengthNm: null,
    hirePerDayCents: null,
    valueCents: null,
    remark: null,
  };
}

function Line(props: {
  readonly line: SendLine;
  readonly number: number;
  readonly wrong: string | undefined;
  readonly choices: readonly ComponentChoice[];
  /** A container or a gang goes once. */
  readonly isWhole: boolean;
  readonly onChange: (part: Partial<SendLine>) => void;
  readonly onRemove: () => void;
}): ReactNode {
  const { line, number, wrong } = props;
  return (
    <>
      <tr>
        <td>
          <ComponentField
            label={`What of line ${number}`}
            hint="P836, or a tag"
            value={line.what}
            invalid={wrong !== undefined}
            components={props.choices}
            onChange={(what) => props.onChange({ what })}
          />
        </td>
        <td className="numeric">
          {props.isWhole ? (
            'whole'
          ) : (
            <input
              className="quantity"
              inputMode="numeric"
              aria-label={`How many of line ${number}`}
              aria-invalid={wrong !== undefined}
              value={line.quantity}
              onChange={(event) => props.onChange({ quantity: event.target.value })}
            />
          )}
        </td>
        <td className="numeric">
          <input
            className="quantity"
            inputMode="numeric"
            aria-label={`Stop of line ${number}`}
            value={line.stop}
            onChange={(event) => props.onChange({ stop: event.target.value })}
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
      {wrong === undefined ? null : (
        <tr className="line-errors">
          <td colSpan={4}>
            <FieldError error={{ line: null, field: 'what', message: wrong }} />
          </td>
        </tr>
      )}
    </>
  );
}
