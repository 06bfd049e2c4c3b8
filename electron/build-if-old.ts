// Builds before the start where that is needed, and says so, since it takes some seconds. The builder is
// loaded only then: an app that is handed on built has none.
import { isBuilt } from './build-stamp.ts';

export async function buildIfOld(root: string): Promise<void> {
  if (isBuilt(root)) return;
  console.log('Building the app: the sources are newer than what was built (a few seconds).');
  const { buildAll } = await import('./build.ts');
  await buildAll();
}
