// Pieces that are more than expected or not on the list: entered on purpose, so that they never hide what is missing.
import { type ReactNode, useState } from 'react';
import { useCommand, useCore } from '../../../client/core.tsx';
import { errorFor, FormEnd, SelectField, TextField } from '../gangs/form-parts.tsx';
import { Field } from '../field.tsx';
import { ComponentField } from '../component-field.tsx';
import type { Ticket } from './asked.ts';
import { type Column, columns, columnWords } from './count-draft.ts';

interface Draft {
  readonly part: string;
  readonly component: string;
  readonly quantity: string;
  readonly condition: Column;
  readonly owner: string;
}

export function ExtraForm(given: { readonly ticket: Ticket }): ReactNode {
  const { ticket, parts } = given.ticket;
  const components = useCore('component.list', {});
  const places = useCore('yard.places', {});
  const enter = useCommand('ticket.enter');
  const [draft, setDraft] = useState<Draft>({
    part: parts[0]?.part ?? '',
    component: '',
    quantity: '',
    condition: 'to-clean',
    owner: '',
  });
  const [wrong, setWrong] = useState<Parameters<typeof errorFor>[0]>({});
  const [said, setSaid] = useState<string | null>(null);
  const error = (field: string) =>
    errorFor(wrong, enter.error, field) ?? errorFor({}, enter.error, `lines.0.${field}`);
  const edit = (part: Partial<Draft>): void => {
    enter.reset();
    setWrong({});
    setSaid(null);
    setDraft((old) => ({ ...old, ...part }));
  };
  const add = (): void => {
    if (enter.isPending) return;
    const quantity = Number(draft.quantity.trim());
    const isNumber = /^-?\d{1,9}$/u.test(draft.quantity.trim()) && quantity !== 0;
    const missing = {
      ...(draft.component.trim() === '' && { component: { message: 'The component is missing.' } }),
      ...(!isNumber && { quantity: { message: 'How many is a whole number of pieces.' } }),
    };
    setWrong(missing);
    if (Object.keys(missing).length > 0) return;
    const { part, condition, owner } = draft;
    const component = draft.component.trim();
    const line = { part, component, quantity, condition, extra: true as const };
    enter.mutate(
      {
        ticket: ticket.id,
        id: crypto.randomUUID(),
        lines: [owner === '' ? line : { ...line, owner }],
        device: 'here',
      },
      {
        onSuccess: () => {
          setSaid(`Entered: ${quantity} ${component} more than expected.`);
          setDraft((old) => ({ ...old, component: '', quantity: '' }));
        },
      },
    );
  };
  const quantityError = error('quantity');
  return (
    <form
      className="slip"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        add();
      }}
    >
      <div className="slip-fields">
        <Field label="Component" error={error('component')}>
          <ComponentField
            label="Component that is more than expected"
            value={draft.component}
            invalid={error('component') !== undefined}
            components={components.data?.components ?? []}
            onChange={(component) => edit({ component })}
          />
        </Field>
        <TextField
          label="Pieces"
          value={draft.quantity}
          error={quantityError}
          onChange={(quantity) => edit({ quantity })}
        />
        <SelectField
          label="Condition"
          value={draft.condition}
          options={columns.map((column) => [column, columnWords[column]] as const)}
          onChange={(condition) => edit({ condition: condition === '' ? 'to-clean' : condition })}
        />
        <SelectField
          label="Whose by the mark"
          value={draft.owner}
          none="not looked at"
          options={(places.data?.owners ?? []).map((each) => [each.code, each.name] as const)}
          error={error('owner')}
          onChange={(owner) => edit({ owner })}
        />
        {parts.length === 1 ? null : (
          <SelectField
            label="Found with"
            value={draft.part}
            options={parts.map((each) => [each.part, each.title] as const)}
            onChange={(part) => edit({ part: part === '' ? draft.part : part })}
          />
        )}
      </div>
      <FormEnd
        words="Enter as extra"
        busy={enter.isPending}
        done={said}
        refused={enter.error}
        fields={['lines.0.component', 'lines.0.quantity', 'lines.0.owner']}
      />
    </form>
  );
}
