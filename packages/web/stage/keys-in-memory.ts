import type { Keys, Signer } from '@combside/record/ports';
import { ecdsa, ecdsaSha256, publicKeyText } from '../src/device/keys/web-ports.ts';

/** Keys of devices that live as long as the program, in the browser and in Node alike. */
export function keysInMemory(): Keys {
  const signers = new Map<string, Promise<Signer>>();
  return {
    signerFor(device) {
      const signer = signers.get(device) ?? newSigner();
      signers.set(device, signer);
      return signer;
    },
  };
}

async function newSigner(): Promise<Signer> {
  const { privateKey, publicKey } = await crypto.subtle.generateKey(ecdsa, true, ['sign', 'verify']);
  return {
    publicKey: await publicKeyText(publicKey),
    sign: async (bytes) => new Uint8Array(await crypto.subtle.sign(ecdsaSha256, privateKey, bytes as BufferSource)),
  };
}
