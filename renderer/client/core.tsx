// How screens ask the core. A query is kept until the book changes; a command makes its own id, so that
// one sent twice is done once, and renews everything when it is done.
import {
  QueryClient,
  QueryClientProvider,
  keepPreviousData,
  useMutation,
  type UseMutationResult,
  useQuery,
  useQueryClient,
  type UseQueryResult,
} from '@tanstack/react-query';
import { createContext, type ReactNode, useContext, useEffect, useState } from 'react';
import type { z } from 'zod';
import type { Answer } from '../../core/answer.ts';
// oxlint-disable-next-line no-restricted-imports -- types of the contract only, nothing of it runs here
import type { HostCallName, hostCalls } from '../../core/host/host-calls.ts';
import type { Procedures } from '../../core/procedures/all.ts';
import { type Refused, unwrap } from './refused.ts';
import type { Input, Output } from './shapes.ts';
import type { Transport } from './transport.ts';

type Kind = Procedures[keyof Procedures]['kind'];
type NamesOf<K extends Kind> = {
  [N in keyof Procedures]: Procedures[N]['kind'] extends K ? N : never;
}[keyof Procedures];
export type QueryName = NamesOf<'query'>;
export type CommandName = NamesOf<'command'>;

export type { Input, Output };
/** What a screen gives to a command: all but the id, which the hook makes. */
export type CommandInput<N extends CommandName> = Omit<Input<N>, 'commandId'>;

type HostCalls = typeof hostCalls;
export type HostInput<N extends HostCallName> = z.input<HostCalls[N]['input']>;
export type HostOutput<N extends HostCallName> = z.output<HostCalls[N]['output']>;

const TransportContext = createContext<Transport | null>(null);

function useTransport(): Transport {
  const transport = useContext(TransportContext);
  if (transport === null) throw new Error('A screen stands outside CoreProvider.');
  return transport;
}

export function CoreProvider(props: {
  readonly transport: Transport;
  readonly children: ReactNode;
}): ReactNode {
  const { transport } = props;
  const [client] = useState(
    () =>
      new QueryClient({
        defaultOptions: {
          // Answers come from this machine and change only when the book does: never stale by age.
          queries: { staleTime: Infinity, retry: false, refetchOnWindowFocus: false, networkMode: 'always' },
          mutations: { retry: false, networkMode: 'always' },
        },
      }),
  );
  useEffect(() => transport.onChanged(() => void client.invalidateQueries()), [transport, client]);
  return (
    <TransportContext value={transport}>
      <QueryClientProvider client={client}>{props.children}</QueryClientProvider>
    </TransportContext>
  );
}

/** Asks a query of the core. While the input changes, the last answer stays on screen. */
export function useCore<N extends QueryName>(
  name: N,
  input: Input<N>,
  more: { readonly enabled?: boolean } = {},
): UseQueryResult<Output<N>, Refused> {
  const transport = useTransport();
  return useQuery<Output<N>, Refused>({
    queryKey: [name, input],
    queryFn: async () => unwrap((await transport.call(name, input)) as Answer<Output<N>>),
    enabled: more.enabled ?? true,
    placeholderData: keepPreviousData,
  });
}

/** A command of the core; `mutate(input)` and the rest of a mutation. */
export function useCommand<N extends CommandName>(
  name: N,
): UseMutationResult<Output<N>, Refused, CommandInput<N>> {
  const transport = useTransport();
  const client = useQueryClient();
  return useMutation<Output<N>, Refused, CommandInput<N>>({
    mutationFn: async (input) => {
      const whole = { ...input, commandId: crypto.randomUUID() };
      return unwrap((await transport.call(name, whole)) as Answer<Output<N>>);
    },
    onSuccess: () => client.invalidateQueries(),
  });
}

/** Which book is open, at which door, opened by whom. */
export function useHostState(): UseQueryResult<HostOutput<'host.state'>, Refused> {
  const transport = useTransport();
  return useQuery<HostOutput<'host.state'>, Refused>({
    queryKey: ['host.state'],
    queryFn: async () => unwrap((await transport.call('host.state', {})) as Answer<HostOutput<'host.state'>>),
  });
}

/** How something of the host stands that changes by itself, asked for again and again. */
export function useHostQuery<N extends HostCallName>(
  name: N,
  input: HostInput<N>,
  everyMs: number,
): UseQueryResult<HostOutput<N>, Refused> {
  const transport = useTransport();
  return useQuery<HostOutput<N>, Refused>({
    queryKey: [name, input],
    queryFn: async () => unwrap((await transport.call(name, input)) as Answer<HostOutput<N>>),
    refetchInterval: everyMs,
  });
}

/** A call to the host that does something: the demo, a new book, another book, a copy. */
export function useHostCall<N extends HostCallName>(
  name: N,
): UseMutationResult<HostOutput<N>, Refused, HostInput<N>> {
  const transport = useTransport();
  const client = useQueryClient();
  return useMutation<HostOutput<N>, Refused, HostInput<N>>({
    mutationFn: async (input) => unwrap((await transport.call(name, input)) as Answer<HostOutput<N>>),
    onSuccess: () => client.invalidateQueries(),
  });
}
