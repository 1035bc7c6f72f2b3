/** Exit codes, after the BSD convention of sysexits.h. */
export const EXIT = {
  good: 0,
  usage: 64,
  content: 65,
  noSuchFile: 66,
  ourFault: 70,
  cannotCreate: 73,
  cannotWrite: 74,
  busy: 75,
} as const;
