/** Hashing, given from the edge. Acceptance suite: `acceptance/hasher.ts`. */
export interface Hasher {
  /** @returns the 32 bytes of SHA-256 */
  sha256(bytes: Uint8Array): Promise<Uint8Array>;
}

/** Signing with the device's own key, which never leaves it. Acceptance suite: `acceptance/signer.ts`. */
export interface Signer {
  /** Uncompressed P-256 point, 65 bytes, base64url. */
  readonly publicKey: string;
  /** @returns a raw 64-byte ECDSA P-256 signature over SHA-256 of the bytes */
  sign(bytes: Uint8Array): Promise<Uint8Array>;
}

/**
 * The signing keys of this device. A key belongs to one device identity; a new identity (after a clone or a restored
 * backup was noticed) gets a new key. Asking again for the same device gives the same key.
 */
export interface Keys {
  signerFor(device: string): Promise<Signer>;
}

/** Checking signatures of any device. */
export interface Verifier {
  verify(publicKey: string, bytes: Uint8Array, signature: Uint8Array): Promise<boolean>;
}

/** The wall clock of this device, in milliseconds since 1970 UTC. */
export interface WallClock {
  now(): number;
}

/** Unpredictable bytes, for salts and identifiers. */
export interface Chance {
  bytes(count: number): Uint8Array;
}
