// Rates of labour: each names its step, its unit and whose it is; one without a source is marked so.
import type { ReactNode } from 'react';
import { stepName, unitWords } from '../day-end/rate-words.ts';
import { EntryList, type WrongField } from './entry-list.tsx';
import type { PlanningEdit, Settings } from './use-planning.ts';

type Rate = Settings['labourRates'][number];
const steps: readonly Rate['step'][] = [
  'assemble',
  'set',
  'close',
  'strip',
  'clean',
  'fly-on',
  'regang',
  'break-down',
];
const units: readonly Rate['unit'][] = ['h/ft2', 'h/m2', 'h/gang', 'h/piece'];

export function LabourPart({ edit }: { readonly edit: PlanningEdit }): ReactNode {
  const { labourRates } = edit.planning.settings;
  const add = async (typed: Readonly<Record<string, string>>): Promise<WrongField | null> => {
    const personHours = Number(typed.hours);
    if ((typed.hours ?? '').trim() === '' || !(personHours >= 0 && personHours <= 1000))
      return { name: 'hours', message: 'Hours of one person are wanted, such as 0.035.' };
    if ((typed.owner ?? '').trim() === '') return { name: 'owner', message: 'Whose rate is it?' };
    const step = steps.find((each) => each === typed.step) ?? 'set';
    if (labourRates.some((each) => each.step === step))
      return { name: 'step', message: 'It has a rate already: take that out first.' };
    const source = (typed.source ?? '').trim();
    const rate: Rate = {
      step,
      unit: units.find((each) => each === typed.unit) ?? 'h/ft2',
      personHours,
      owner: typed.owner ?? '',
      source: source === '' ? null : source,
    };
    const kept = await edit.set({ labourRates: [...labourRates, rate] }, `rate of ${stepName(step)}`);
    return kept ? null : { name: 'step', message: 'It was not kept.' };
  };
  return (
    <EntryList
      title="Labour by step"
      note="Hours of one person. Steps without a rate take the hours entered with designs and pours, by the whole crew."
      lines={labourRates.map((rate) => ({
        key: rate.step,
        name: `the rate of ${stepName(rate.step)}`,
        cells: [
          stepName(rate.step),
          `${rate.personHours} ${unitWords[rate.unit]}`,
          rate.owner,
          rate.source ?? <span className="caution-word-ink">no source</span>,
        ],
      }))}
      fields={[
        { name: 'step', label: 'Step', options: steps.map((step) => [step, stepName(step)]) },
        { name: 'hours', label: 'Hours of a person', placeholder: '0.035' },
        { name: 'unit', label: 'By', options: units.map((unit) => [unit, unitWords[unit]]) },
        { name: 'owner', label: 'Whose', placeholder: 'own record' },
        { name: 'source', label: 'Source', placeholder: 'empty: no source' },
      ]}
      onAdd={add}
      onTakeOut={(index) =>
        edit.set({ labourRates: labourRates.filter((_, at) => at !== index) }, 'take a rate of labour out')
      }
    />
  );
}
