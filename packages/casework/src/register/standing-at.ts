import type { ColonyState } from '@combside/record/states';

/** The colonies that the register says stand at an apiary and are not gone. */
export function standingAt(apiary: string, colonies: readonly ColonyState[]): ColonyState[] {
  return colonies.filter((one) => {
    const body = one.colony.current?.body;
    return body?.apiary === apiary && body.hiveState !== 'gone';
  });
}
