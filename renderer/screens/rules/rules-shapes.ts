// The core's answers as the parts of this screen name them.
import type { z } from 'zod';
import type { designDraft } from '../../../core/procedures/design-draft.ts';
import type { rulesCheck } from '../../../core/procedures/rules-check.ts';
import type { rulesRead } from '../../../core/procedures/rules-read.ts';

export type RulesRead = z.output<typeof rulesRead.output>;
export type BookComponent = RulesRead['components'][number];
export type RulesCheck = z.output<typeof rulesCheck.output>;
export type DesignChange = RulesCheck['changes'][number];
export type ExampleGang = z.output<typeof designDraft.output>;
