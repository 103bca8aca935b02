/**
 * Everything the server may answer instead of what was asked: the code travels, screens put it into words by that code.
 * `message` is for logs and for people who speak HTTP by hand; it never carries what an entry says.
 */
export const problems = {
  'not-signed-in': { status: 401, message: 'Sign in first: this address needs a session.' },
  'not-granted': { status: 403, message: 'Your account has no grant for this district.' },
  'office-only': { status: 403, message: 'Only an account of the office may do this.' },
  'not-found': { status: 404, message: 'Nothing stands at this address, or your account may not see it.' },
  'method-not-allowed': { status: 405, message: 'This address does not take that method.' },
  'protocol-too-old': {
    status: 426,
    message: 'This program is older than the oldest this server still serves: update it.',
  },
  'protocol-too-new': {
    status: 409,
    message: 'This program is newer than this server: the office must update the server.',
  },
  'bad-request': { status: 400, message: 'The message does not have the shape of the contract; see `where`.' },
  'bad-json': { status: 400, message: 'The message is not readable JSON in UTF-8.' },
  'too-large': { status: 413, message: 'The message is larger than the server takes: send fewer entries at a time.' },
  'too-many-requests': { status: 429, message: 'Too many attempts: wait, then try again.' },
  'wrong-origin': { status: 403, message: 'The message came from a page that is not part of this server.' },
  'photograph-hash': {
    status: 460,
    message: 'The bytes that arrived do not have the SHA-256 that was announced: send them again.',
  },
  'photograph-announcement': {
    status: 400,
    message:
      'An upload announces hash (SHA-256, 64 hexadecimal digits) and mediaType (image/jpeg, image/png or image/webp).',
  },
  'server-failed': { status: 500, message: 'The server failed at this request; nothing of it was stored.' },
  'server-busy': { status: 503, message: 'The server is starting or stopping: try again in a moment.' },
} as const satisfies Record<string, { readonly status: number; readonly message: string }>;

export type ProblemCode = keyof typeof problems;
