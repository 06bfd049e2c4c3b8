// The desktop's main as the test driver needs it: held back from `ready` until the driver has attached, by
// the driver's own loader, which it uses only where it chooses the runtime itself. Without it a quick
// start is over before anybody looks, and the first window is missed or stands still.
import { createRequire } from 'node:module';
import path from 'node:path';

const require = createRequire(import.meta.url);
const driver = path.dirname(require.resolve('playwright-core/package.json'));
require(path.join(driver, 'lib', 'server', 'electron', 'loader.js'));
await import('../../dist/electron/main.mjs');
