// What the core is asked and answers, as types alone: files without a window take them from here.
import type { z } from 'zod';
import type { Procedures } from '../../../../core/procedures/all.ts';

export type Input<N extends keyof Procedures> = z.input<Procedures[N]['input']>;
export type Output<N extends keyof Procedures> = z.output<Procedures[N]['output']>;
