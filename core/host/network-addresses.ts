// The addresses under which this machine can be reached, each with how far it reaches: a door that is opened to
// phones listens on one of them that a person chose, never on all.
import { networkInterfaces } from 'node:os';

/** By the blocks set aside for them: 127/8 (RFC 1122), RFC 1918, RFC 3927; any other may be seen from anywhere. */
export type Reach = 'this-machine' | 'private' | 'self-given' | 'public';

export interface NetworkAddress {
  readonly address: string;
  /** What the system calls the way to it: eth0, Wi-Fi. */
  readonly name: string;
  readonly reach: Reach;
}

/** Version 4 only: that is what a person can type on a phone. Networks first, this machine last. */
export function networkAddresses(interfaces = networkInterfaces()): readonly NetworkAddress[] {
  const found = Object.entries(interfaces).flatMap(([name, addresses = []]) =>
    addresses
      .filter(({ family }) => family === 'IPv4')
      .map(({ address }) => ({ address, name, reach: reachOf(address) })),
  );
  const order: readonly Reach[] = ['private', 'self-given', 'public', 'this-machine'];
  return found.sort((one, other) => order.indexOf(one.reach) - order.indexOf(other.reach));
}

export function reachOf(address: string): Reach {
  const [first = 0, second = 0] = address.split('.').map(Number);
  if (first === 127) return 'this-machine';
  if (first === 169 && second === 254) return 'self-given';
  const isPrivate =
    first === 10 || (first === 172 && second >= 16 && second <= 31) || (first === 192 && second === 168);
  return isPrivate ? 'private' : 'public';
}
