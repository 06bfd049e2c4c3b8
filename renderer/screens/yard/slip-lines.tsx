// The lines of a slip: component, how many, in which condition before and after. Enter in the last line
// begins another one.
import type { ReactNode } from 'react';
import { conditions } from '../../../core/yard/movement.ts';
import { type DraftError, type DraftLine } from './booking-draft.ts';
import { type ComponentChoice, ComponentField } from './component-field.tsx';
import { FieldError } from './field.tsx';
import { type Condition, conditionWords } from './yard-words.ts';

export function SlipLines(props: {
  readonly lines: readonly DraftLine[];
  readonly errors: readonly DraftError[];
  readonly components: readonly ComponentChoice[];
  readonly onLine: (index: number, part: Partial<DraftLine>) => void;
  readonly onRemove: (index: number) => void;
  readonly onAdd: () => void;
}): ReactNode {
  return (
    <table className="plain slip-lines">
      <thead>
        <tr>
          <th scope="col">Component</th>
          <th scope="col" className="numeric">
            How many
          </th>
          <th scope="col">Condition</th>
          <th scope="col">After</th>
          <th scope="col">
            <span className="visually-hidden">Take the line out</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {props.lines.map((line, index) => (
          <SlipLine
            key={line.id}
            line={line}
            number={index + 1}
            errors={props.errors.filter((error) => error.line === index)}
            components={props.components}
            onChange={(part) => props.onLine(index, part)}
            onRemove={() => props.onRemove(index)}
          />
        ))}
      </tbody>
      <tfoot>
        <tr>
          <td colSpan={5}>
            <button type="button" className="quiet" onClick={props.onAdd}>
              Another line
            </button>
          </td>
        </tr>
      </tfoot>
    </table>
  );
}

function SlipLine(props: {
  readonly line: DraftLine;
  readonly number: number;
  readonly errors: readonly DraftError[];
  readonly components: readonly ComponentChoice[];
  readonly onChange: (part: Partial<DraftLine>) => void;
  readonly onRemove: () => void;
}): ReactNode {
  const { line, number, errors } = props;
  const wrong = (field: string): boolean => errors.some((error) => error.field === field);
  const name = props.components.find(({ code }) => code === line.component)?.name;
  return (
    <>
      <tr>
        <td>
          <ComponentField
            label={`Component of line ${number}`}
            value={line.component}
            invalid={wrong('component')}
            components={props.components}
            onChange={(component) => props.onChange({ component })}
          />
          {name === undefined ? null : <span className="soft line-name">{name}</span>}
          {line.owner === '' && line.place === '' ? null : (
            <span className="soft line-name">
              {[line.owner, line.place].filter((part) => part !== '').join(', at ')}
            </span>
          )}
        </td>
        <td className="numeric">
          <input
            className="quantity"
            inputMode="numeric"
            aria-label={`How many of line ${number}`}
            aria-invalid={wrong('quantity')}
            value={line.quantity}
            onChange={(event) => props.onChange({ quantity: event.target.value })}
          />
        </td>
        <td>
          <ConditionSelect
            label={`Condition of line ${number}`}
            value={line.condition}
            onChange={(condition) => props.onChange({ condition })}
          />
        </td>
        <td>
          <ConditionSelect
            label={`Condition after of line ${number}`}
            value={line.conditionAfter}
            onChange={(conditionAfter) => props.onChange({ conditionAfter })}
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
          <td colSpan={5}>
            {errors.map((error) => (
              <FieldError key={`${error.field} ${error.message}`} error={error} />
            ))}
          </td>
        </tr>
      )}
    </>
  );
}

function ConditionSelect(props: {
  readonly label: string;
  readonly value: Condition;
  readonly onChange: (condition: Condition) => void;
}): ReactNode {
  return (
    <select
      aria-label={props.label}
      value={props.value}
      onChange={(event) => {
        const chosen = conditions.find((condition) => condition === event.target.value);
        if (chosen !== undefined) props.onChange(chosen);
      }}
    >
      {conditions.map((condition) => (
        <option key={condition} value={condition}>
          {conditionWords[condition]}
        </option>
      ))}
    </select>
  );
}
