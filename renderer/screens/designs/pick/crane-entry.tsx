// A crane with its chart, typed as it stands on paper: a radius and what it carries there, one a line.
import { type ReactNode, useState } from 'react';
import { Button, Dialog, Heading, Modal, ModalOverlay } from 'react-aria-components';
import type { Crane } from '../../../../core/pick/setup.ts';
import type { UnitSystem } from '../../../../core/units/length.ts';
import { useCommand } from '../../../client/core.tsx';
import { wordsOf } from '../../../client/refused.ts';
import { type CraneTexts, craneOf, textsOf } from './crane-texts.ts';

const labels: readonly (readonly [keyof CraneTexts, string])[] = [
  ['code', 'Code'],
  ['name', 'Name'],
  ['deduct', 'Always hangs on it'],
  ['caution', 'Weight to be proven from, % of the chart'],
  ['stop', 'Site refuses from, % of the chart'],
  ['wind', 'Wind limit'],
  ['whose', 'Whose limit'],
];

export function CraneEntry(props: {
  /** One to change; null for a new one. */
  readonly crane: Crane | null;
  readonly system: UnitSystem;
  /** The code of the crane that was kept, or null. */
  readonly onDone: (code: string | null) => void;
}): ReactNode {
  const { system } = props;
  const [texts, setTexts] = useState<CraneTexts>(() => textsOf(props.crane, system));
  const [problem, setProblem] = useState<string | null>(null);
  const { mutateAsync: save, isPending } = useCommand('crane.save');
  const keep = async (): Promise<void> => {
    const read = craneOf(texts, system);
    if (!read.ok) {
      setProblem(`${read.error.message} ${read.error.hint ?? ''}`);
      return;
    }
    try {
      await save({ crane: read.value });
      props.onDone(read.value.code);
    } catch (error) {
      setProblem(`${wordsOf(error).message} ${wordsOf(error).hint ?? ''}`);
    }
  };
  return (
    <ModalOverlay className="overlay" isOpen onOpenChange={(open) => (open ? undefined : props.onDone(null))}>
      <Modal>
        <Dialog className="dialog crane-entry">
          <Heading slot="title" level={2}>
            {props.crane === null ? 'New crane' : `Crane ${props.crane.code}`}
          </Heading>
          <div className="crane-fields">
            {labels.map(([key, label]) => (
              <label className="field" key={key}>
                <span className="field-label">{label}</span>
                <input
                  value={texts[key]}
                  disabled={key === 'code' && props.crane !== null}
                  autoComplete="off"
                  spellCheck={false}
                  onChange={(event) => setTexts({ ...texts, [key]: event.target.value })}
                />
              </label>
            ))}
          </div>
          <label className="field">
            <span className="field-label">
              Chart: radius in {system === 'us' ? 'ft and capacity in lb' : 'm and capacity in kg'}, one a
              line
            </span>
            <textarea
              rows={8}
              value={texts.chart}
              spellCheck={false}
              placeholder={system === 'us' ? '60  8800\n92  5400' : '18  4000\n28  2450'}
              onChange={(event) => setTexts({ ...texts, chart: event.target.value })}
            />
          </label>
          {problem === null ? null : (
            <p className="field-error" role="alert">
              {problem}
            </p>
          )}
          <p className="soft">
            Copy the chart of the crane that comes, for the counterweight and falls it will have. Between two
            radii the smaller figure counts; outside the chart nothing is known.
          </p>
          <div className="confirm-answers">
            <Button className="primary" isDisabled={isPending} onPress={() => void keep()}>
              Keep
            </Button>
            <Button onPress={() => props.onDone(null)}>Leave</Button>
          </div>
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}
