// Loads the SQLite library only after looking whether this Node can carry it: under an older Node-API
// its binary ends the whole process without a word, so the question comes before the import.
import type Database from 'better-sqlite3';
import { answer, refuse } from '../answer.ts';
import type { Answer, Refusal } from '../answer.ts';

/** One open connection, as the library gives it. */
export type Handle = Database.Database;
export type OpenHandle = (file: string, options: Database.Options) => Handle;

const leastNodeApi = 10;

/** Why this Node cannot open a book; null where it can. */
export function nodeRefusal(versions: { readonly node: string; readonly napi?: string }): Refusal | null {
  if (Number(versions.napi ?? 0) >= leastNodeApi) return null;
  return {
    code: 'node-too-old',
    message:
      `Node ${versions.node} (Node-API ${versions.napi ?? 'unknown'}) cannot open a book: ` +
      `Node 22.14 or newer (Node-API ${leastNodeApi}) is needed.`,
    hint: "Maybe the machine's own Node was called: `npm start` and `npm run regang` use the Node that npm installed with the app.",
  };
}

export async function loadSqlite(): Promise<Answer<OpenHandle>> {
  const { node, napi } = process.versions;
  const refusal = nodeRefusal(napi === undefined ? { node } : { node, napi });
  if (refusal !== null) return { ok: false, error: refusal };
  try {
    const { default: Sqlite } = await import('better-sqlite3');
    return answer((file, options) => new Sqlite(file, options));
  } catch (error) {
    return refuse('sqlite-not-loaded', `The database library could not be loaded: ${String(error)}.`, {
      hint: 'Maybe the packages were installed for another machine: `npm ci` installs them anew.',
    });
  }
}
