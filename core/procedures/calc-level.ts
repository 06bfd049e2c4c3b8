// `regang calc level`: activities that share resources, each with its start, given as JSON.
import { answer } from '../answer.ts';
import { levelAnswer, levelInput } from '../plan/level/contract.ts';
import { levelProject } from '../plan/level/level-project.ts';
import { calculation } from './procedure.ts';

export const calcLevel = calculation({
  name: 'level',
  input: levelInput,
  output: levelAnswer,
  run: (input) => {
    const levelled = levelProject(input);
    return levelled.ok ? answer(levelled.value.answer) : levelled;
  },
});
