// `regang calc takeoff`: the take-off of a design by a system's rule tables, or the quick estimate from panel
// counts alone.
import { z } from 'zod';
import { type Answer, answer, refuse } from '../answer.ts';
import { codeInput } from '../catalogue/rules-input.ts';
import { systemFromInput, systemInput } from '../catalogue/system-input.ts';
import { designFromInput, designInput } from '../gang/design-input.ts';
import { estimate } from '../gang/estimate.ts';
import { takeOff } from '../gang/take-off.ts';
import { lengthReader } from '../units/length-reader.ts';
import { calculation } from './procedure.ts';
import { estimateAnswer, takeOffAnswer, takeoffOutput, type TakeoffOutput } from './takeoff-shapes.ts';

const takeoffInput = z.strictObject({
  system: systemInput,
  /** Either a design, or panel counts for the quick estimate. */
  design: z.exactOptional(designInput),
  panels: z.exactOptional(z.record(codeInput, z.int().min(0).max(1_000_000))),
});

export const calcTakeoff = calculation({
  name: 'takeoff',
  input: takeoffInput,
  output: takeoffOutput,
  run: takeoffOf,
});

function takeoffOf(input: z.output<typeof takeoffInput>): Answer<TakeoffOutput> {
  if ((input.design === undefined) === (input.panels === undefined)) {
    return refuse('design-or-panels', 'Give either a design or panel counts, one of them.', {
      field: 'design',
    });
  }
  const reader = lengthReader();
  const system = systemFromInput(input.system, reader, 'system');
  if (!system.ok) return system;
  if (input.panels !== undefined) {
    const found = estimate(system.value, input.panels);
    return found.ok ? answer(estimateAnswer(found.value)) : found;
  }
  if (input.design === undefined)
    return refuse('design-or-panels', 'There is no design.', { field: 'design' });
  const design = designFromInput(input.design, reader, 'design');
  const refusal = reader.refusal();
  if (refusal !== undefined) return refusal;
  const found = takeOff(system.value, design);
  return found.ok ? answer(takeOffAnswer(found.value)) : found;
}
