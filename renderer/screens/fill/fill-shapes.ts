// What this screen asks and is answered, by the core's own shapes.
import type { z } from 'zod';
import type { Procedures } from '../../../core/procedures/all.ts';

export type Asked = z.input<Procedures['fill.propose']['input']>;
export type Proposal = z.output<Procedures['fill.propose']['output']>['proposals'][number];
export type KeptDesigns = z.input<Procedures['fill.keep']['input']>['designs'];
