// What goes into a procedure and comes out of it, as the page sees it.
import type { z } from 'zod';
import type { Procedures } from '../../core/procedures/all.ts';

export type Input<N extends keyof Procedures> = z.input<Procedures[N]['input']>;
export type Output<N extends keyof Procedures> = z.output<Procedures[N]['output']>;
